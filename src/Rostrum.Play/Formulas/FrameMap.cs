using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>Where the frame positions of one action, word or clause are kept at play: choices and names of steps with the course, letters of formulas with the run.</summary>
/// <param name="letters">The counter of the run's letters, shared by all formulas of a plan.</param>
internal sealed class FrameMap(LetterCounter letters)
{
    private readonly Dictionary<int, Spot> _spots = [];
    private HashSet<int>? _asked;

    /// <summary>Where one frame position is kept.</summary>
    /// <param name="IsState">True for a number (or set) that the state keeps from step to step; false for a letter of the run.</param>
    /// <param name="At">The position in <see cref="Layout.TableState.Numbers"/> or <see cref="Layout.TableState.Sets"/>, or among the run's letters.</param>
    /// <param name="IsMany">True for a set or list.</param>
    internal readonly record struct Spot(bool IsState, int At, bool IsMany);

    /// <summary>A copy to which positions are added without changing this one.</summary>
    /// <param name="asked">Gets every letter of the run that is asked for there; null to note none, but what this one notes is noted on.</param>
    public FrameMap Inner(HashSet<int>? asked = null)
    {
        var inner = new FrameMap(letters) { _asked = asked ?? _asked };
        foreach ((int slot, Spot spot) in _spots)
        {
            inner._spots[slot] = spot;
        }

        return inner;
    }

    /// <summary>Keeps a frame position among the run's letters; one that is kept there already stays.</summary>
    /// <returns>The letter.</returns>
    public int Letter(int slot, Sort sort)
    {
        if (_spots.TryGetValue(slot, out Spot known) && !known.IsState && known.IsMany == sort.IsMany)
        {
            return known.At;
        }

        _spots[slot] = new Spot(false, letters.Next(), sort.IsMany);
        return _spots[slot].At;
    }

    /// <summary>Keeps a frame position with the state.</summary>
    public void Keep(int slot, int at, bool isMany) => _spots[slot] = new Spot(true, at, isMany);

    /// <summary>Where a frame position is kept.</summary>
    public Spot Of(int slot)
    {
        Spot spot = _spots.TryGetValue(slot, out Spot known) ? known : throw new InvalidOperationException($"Nothing is kept at frame position {slot}.");
        if (!spot.IsState)
        {
            _asked?.Add(spot.At);
        }

        return spot;
    }
}

/// <summary>Counts the letters of a plan.</summary>
internal sealed class LetterCounter
{
    /// <summary>How many there are.</summary>
    public int Count { get; private set; }

    /// <summary>Another one.</summary>
    public int Next() => Count++;
}
