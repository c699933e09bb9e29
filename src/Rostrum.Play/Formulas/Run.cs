using Rostrum.Play.Layout;

namespace Rostrum.Play.Formulas;

/// <summary>What formulas are worked out on: a state, whose turn it is to be asked, and room for letters and lists. One for each thread.</summary>
internal sealed class Run
{
    private readonly Stack<Elements> _free = [];
    private readonly List<Elements> _kept = [];
    private readonly Stack<Course.Machine> _askers = [];

    /// <summary>Room for a plan's letters.</summary>
    /// <param name="letters">How many letters its formulas need.</param>
    public Run(int letters) => Letters = new int[letters];

    /// <summary>The machine that works formulas out here.</summary>
    public Course.Machine? Host { get; set; }

    /// <summary>The state that is asked.</summary>
    public TableState State { get; set; } = null!;

    /// <summary>The seat that <c>me</c> is, 0-based.</summary>
    public int Me { get; set; }

    /// <summary>The letters of formulas, the subjects of words and the choices that are being tried; by the positions that the compiler gave.</summary>
    public int[] Letters { get; }

    /// <summary>How many lists are kept; give it to <see cref="Release"/> once the values that may be lists are no longer needed.</summary>
    public int Mark => _kept.Count;

    /// <summary>An empty list to work with; give it back with <see cref="Return"/> or <see cref="Keep"/>.</summary>
    public Elements Rent()
    {
        if (!_free.TryPop(out Elements? list))
        {
            return new Elements();
        }

        list.Clear();
        return list;
    }

    /// <summary>Gives a list back.</summary>
    public void Return(Elements list) => _free.Push(list);

    /// <summary>Keeps a list as a value and gives its number.</summary>
    public int Keep(Elements list)
    {
        _kept.Add(list);
        return _kept.Count - 1;
    }

    /// <summary>The list that a value stands for; it must not be changed.</summary>
    public Elements List(int value) => _kept[value];

    /// <summary>Forgets the lists that were kept since <see cref="Mark"/> was read.</summary>
    public void Release(int mark)
    {
        while (_kept.Count > mark)
        {
            if (!_kept[^1].IsConstant)
            {
                _free.Push(_kept[^1]);
            }

            _kept.RemoveAt(_kept.Count - 1);
        }
    }

    /// <summary>A machine that finds out what could be done, beside the one that plays; give it back with <see cref="Answered"/>.</summary>
    public Course.Machine Ask() => _askers.TryPop(out Course.Machine? asker) ? asker : new Course.Machine(Host!.Plan, this);

    /// <summary>Gives a machine back.</summary>
    public void Answered(Course.Machine asker) => _askers.Push(asker);
}
