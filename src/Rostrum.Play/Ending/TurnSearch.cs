using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Telling;

namespace Rostrum.Play.Ending;

/// <summary>Looks through every way in which one turn can be played, for one after which an end has come; where the same player has the next turn, that one too.</summary>
/// <remarks>First the turn alone, then with one turn more of the same player, and so on, so that the fewest turns are told. What the seat decides it may pick; chance and what others decide may come out in any way. States that nobody could tell apart are looked at once.</remarks>
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
    private readonly bool _isAlone;
    private readonly Dictionary<(string Key, int Extra), Finding> _known = [];
    private int _mostExtra;
    private int _looked;
    private bool _goesOn;

    /// <summary>A search in the turn of a seat, 0-based.</summary>
    public TurnSearch(CoursePlan plan, int seat)
    {
        (_seat, _isAlone) = (seat, plan.Layout.Seats == 1);
        _machine = new Machine(plan) { StopsAfterTurns = true };
        (_keys, _phrases, _chance) = (new(plan), new(plan), new(plan));
    }

    /// <summary>The best that can come of a state: an end by force, an end by chance, none.</summary>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next.</exception>
    public Finding Of(TableState state)
    {
        Finding best = Nothing;
        for (_mostExtra = 0; _mostExtra == 0 || (_goesOn && best.CanEnd != CanEnd.Yes && _looked < MostStates); _mostExtra++)
        {
            _goesOn = false;
            _known.Clear();
            Finding found = Of(state.Copy(), 0, 0);
            best = found.CanEnd > best.CanEnd || best.State is null ? found with { ExtraTurns = _mostExtra } : best;
        }

        return _goesOn && best.CanEnd == CanEnd.No ? GivenUp with { ExtraTurns = best.ExtraTurns } : best;
    }

    private Finding Of(TableState state, int depth, int extra)
    {
        _machine.State = state;
        Moment moment = _machine.Advance();
        if (moment is Moment.GameOver || state.Numbers[Slots.End] >= 0)
        {
            return new Finding(CanEnd.Yes, null, state) { IsTurnOver = moment is Moment.TurnOver };
        }

        if (moment is Moment.TurnOver)
        {
            return Over(state, depth, extra);
        }

        (string, int) key = (Convert.ToHexString(_keys.Write(state)), extra);
        if (_known.TryGetValue(key, out Finding known))
        {
            return known;
        }

        if (_looked >= MostStates || depth >= Deepest)
        {
            return GivenUp;
        }

        // A way that comes back to a state that is being looked at ends nothing by that.
        _looked++;
        _known[key] = Nothing;
        return _known[key] = moment is Moment.Decision decision ? Decided(state, decision, depth, extra) : Fallen(state, ((Moment.Chance)moment).Event, depth, extra);
    }

    // An extra turn comes before anybody else moves. Alone, every turn would.
    private Finding Over(TableState state, int depth, int extra)
    {
        if (_isAlone || state.Numbers[Slots.Turn] != _seat)
        {
            return Nothing;
        }

        _goesOn |= extra == _mostExtra;
        return extra == _mostExtra ? Nothing : depth >= Deepest ? GivenUp : Of(state, depth + 1, extra + 1);
    }

    private Finding Decided(TableState state, Moment.Decision decision, int depth, int extra)
    {
        Finding best = Nothing;
        bool isAlways = true;
        foreach (Option option in decision.Options)
        {
            Finding found = Of(After(state, () => _machine.Choose(option)), depth + 1, extra);
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

    private Finding Fallen(TableState state, ChanceEvent chance, int depth, int extra)
    {
        Finding best = Nothing;
        bool isAlways = true;
        for (int i = 0; i < chance.Weights.Length; i++)
        {
            int outcome = i;
            Finding found = Of(After(state, () => _machine.Choose(chance, outcome)), depth + 1, extra);
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
/// <param name="Line">The turn from here on, with the extra turns behind it, first things first; null for nothing more.</param>
/// <param name="State">The state after these turns; null where no end was found.</param>
internal readonly record struct Finding(CanEnd CanEnd, Phrases? Line, TableState? State)
{
    /// <summary>How many extra turns of the same player were looked at behind the first one.</summary>
    public int ExtraTurns { get; init; }

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
