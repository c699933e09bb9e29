using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Telling;

namespace Rostrum.Play.Ending;

/// <summary>Looks through every way in which one turn can be played, for one after which an end has come.</summary>
/// <remarks>What the seat decides it may pick; chance and what others decide may come out in any way. States that nobody could tell apart are looked at once.</remarks>
internal sealed class TurnSearch
{
    /// <summary>How many moments of play are looked at for one seat at the most.</summary>
    public const int MostStates = 20_000;

    // So many decisions and chance events follow each other in one turn at the most.
    private const int Deepest = 400;

    private static readonly Finding Nothing = new(CanEnd.No, null, null);
    private static readonly Finding GivenUp = new(CanEnd.Unknown, null, null);

    private readonly int _seat;
    private readonly Machine _machine;
    private readonly StateKey _keys;
    private readonly PhraseWriter _phrases;
    private readonly ChanceWords _chance;
    private readonly Dictionary<string, Finding> _known = [];

    /// <summary>A search in the turn of a seat, 0-based.</summary>
    public TurnSearch(CoursePlan plan, int seat)
    {
        _seat = seat;
        _machine = new Machine(plan) { StopsAfterTurns = true };
        (_keys, _phrases, _chance) = (new(plan), new(plan), new(plan));
    }

    /// <summary>The best that can come of a state: an end by force, an end by chance, none.</summary>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next.</exception>
    public Finding Of(TableState state) => Of(state, 0);

    private Finding Of(TableState state, int depth)
    {
        _machine.State = state;
        Moment moment = _machine.Advance();
        if (moment is Moment.TurnOver or Moment.GameOver || state.Numbers[Slots.End] >= 0)
        {
            return moment is Moment.GameOver || state.Numbers[Slots.End] >= 0 ? new Finding(CanEnd.Yes, null, state) { IsTurnOver = moment is Moment.TurnOver } : Nothing;
        }

        string key = Convert.ToHexString(_keys.Write(state));
        if (_known.TryGetValue(key, out Finding known))
        {
            return known;
        }

        if (_known.Count >= MostStates || depth >= Deepest)
        {
            return GivenUp;
        }

        // A way that comes back to a state that is being looked at ends nothing by that.
        _known[key] = Nothing;
        return _known[key] = moment is Moment.Decision decision ? Decided(state, decision, depth) : Fallen(state, ((Moment.Chance)moment).Event, depth);
    }

    private Finding Decided(TableState state, Moment.Decision decision, int depth)
    {
        Finding best = Nothing;
        bool isAlways = true;
        foreach (Option option in decision.Options)
        {
            Finding found = Of(After(state, () => _machine.Choose(option)), depth + 1);
            isAlways &= found.CanEnd == CanEnd.Yes;
            if (found.CanEnd > best.CanEnd)
            {
                best = found.Behind(_phrases.Phrase(state, option, decision.Options));
            }

            if (best.CanEnd == CanEnd.Yes && decision.Seat == _seat)
            {
                return best;
            }
        }

        return decision.Seat == _seat ? best : best.IfAlways(isAlways);
    }

    private Finding Fallen(TableState state, ChanceEvent chance, int depth)
    {
        Finding best = Nothing;
        bool isAlways = true;
        for (int i = 0; i < chance.Weights.Length; i++)
        {
            int outcome = i;
            Finding found = Of(After(state, () => _machine.Choose(chance, outcome)), depth + 1);
            isAlways &= found.CanEnd == CanEnd.Yes;
            if (found.CanEnd > best.CanEnd)
            {
                best = found.Behind(_chance.Of(state, chance, outcome));
            }
        }

        return best.IfAlways(isAlways);
    }

    private TableState After(TableState state, Action choose)
    {
        TableState next = state.Copy();
        _machine.State = next;
        choose();
        return next;
    }
}

/// <summary>What a search found.</summary>
/// <param name="CanEnd">Whether an end can come.</param>
/// <param name="Line">The turn from here on, first things first; null for nothing more.</param>
/// <param name="State">The state after that turn; null where no end was found.</param>
internal readonly record struct Finding(CanEnd CanEnd, Phrases? Line, TableState? State)
{
    /// <summary>True where the next turn is about to begin in <see cref="State"/>.</summary>
    public bool IsTurnOver { get; init; }

    /// <summary>The same, with something before it.</summary>
    public Finding Behind(string words) => State is null ? this : this with { Line = new Phrases(words, Line) };

    /// <summary>An end that comes in every case is certain, else it hangs on chance.</summary>
    public Finding IfAlways(bool isAlways) => CanEnd == CanEnd.Yes && !isAlways ? this with { CanEnd = CanEnd.ByChance } : this;
}

/// <summary>Words in an order.</summary>
/// <param name="First">The first.</param>
/// <param name="Rest">Those behind it; null for none.</param>
internal sealed record Phrases(string First, Phrases? Rest)
{
    /// <summary>All of them.</summary>
    public static IEnumerable<string> All(Phrases? phrases)
    {
        for (; phrases is not null; phrases = phrases.Rest)
        {
            yield return phrases.First;
        }
    }
}
