using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <summary>The letters at hand while a formula is bound, each with its sort and its position in the frame.</summary>
internal sealed class Scope
{
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<Named, Entry> _byName = [];
    private int _leftFree;

    /// <summary>The number of frame positions used so far, at the deepest.</summary>
    public int FrameSize { get; private set; }

    /// <summary>The action that the formulas belong to, which <c>this action</c> means; null outside of actions and laws.</summary>
    public ActionName? Action { get; init; }

    /// <summary>Leaves the frame positions below one to others: what a clause gives to an idiom stands above everything that the meaning goes through.</summary>
    public void BeginAt(int slot) => _leftFree = slot - _entries.Count;

    /// <summary>Asks for a frame of at least this size.</summary>
    public void Need(int frameSize) => FrameSize = Math.Max(FrameSize, frameSize);

    /// <summary>Letters that stand outside any pick: subjects of a word, choices of an action.</summary>
    public Entry Declare(LetterName name, Sort sort)
    {
        Entry entry = Push(name, sort, isElement: false);
        return entry;
    }

    /// <summary>The element of a pick; with a letter or as <c>it</c>.</summary>
    public Entry Push(LetterName? letter, Sort sort, bool isElement = true)
    {
        var entry = new Entry(_entries.Count + _leftFree, letter, sort, isElement);
        _entries.Add(entry);
        Need(_entries.Count + _leftFree);
        if (letter is not null)
        {
            _byName[letter] = entry;
        }

        return entry;
    }

    /// <summary>Leaves the innermost pick.</summary>
    public void Pop()
    {
        Entry last = _entries[^1];
        _entries.RemoveAt(_entries.Count - 1);
        if (last.Letter is not null)
        {
            _byName.Remove(last.Letter);
        }
    }

    /// <summary>The entry of a letter, or null.</summary>
    public Entry? Find(Named name) => _byName.TryGetValue(name, out Entry? entry) ? entry : null;

    /// <summary>The innermost element, or null.</summary>
    public Entry? It => _entries.FindLast(e => e.IsElement);

    /// <summary>True where an outer element has no letter, so that <c>it</c> could be either.</summary>
    public bool ItIsDoubtful => _entries.Where(e => e.IsElement).SkipLast(1).Any(e => e.Letter is null);

    /// <summary>A letter with its place in the frame.</summary>
    /// <param name="Slot">0-based frame position.</param>
    /// <param name="Letter">The letter; null for <c>it</c> only.</param>
    /// <param name="Sort">What it stands for.</param>
    /// <param name="IsElement">True for the element of a pick.</param>
    internal sealed record Entry(int Slot, LetterName? Letter, Sort Sort, bool IsElement)
    {
        public bool IsUsed { get; set; }
    }
}
