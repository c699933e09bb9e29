using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play;

/// <summary>One game that plays itself, move by move; equal for equal seed and players.</summary>
public sealed class PlayedGame
{
    /// <summary>A game stops after so many decisions, chance events and turns; a course may have no end.</summary>
    public const int MostMoves = 100_000;

    private readonly Machine _machine;
    private readonly TakingBack _back;
    private readonly PhraseWriter _phrases;
    private readonly ChanceWords _chance;
    private readonly PlayNames _names;
    private readonly Draws _table;
    private readonly Draws[] _players;

    /// <summary>A game that is about to begin.</summary>
    /// <param name="table">The game.</param>
    /// <param name="players">How each seat decides; the last one also decides for the seats that follow.</param>
    /// <param name="seed">The seed of chance.</param>
    /// <param name="game">The number of the game, from 0; others have other chances.</param>
    /// <param name="from">Where play begins, with whose turn it is; what is not given there is as after the set-up. Null for the set-up itself.</param>
    /// <exception cref="NotPlayableException">The position leaves something out.</exception>
    public PlayedGame(GameTable table, IReadOnlyList<PlayerKind> players, ulong seed, ulong game = 0, Position? from = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(players);
        CoursePlan plan = table.Plan;
        _machine = new Machine(plan) { State = from is null ? plan.Start() : Beginning.Of(plan, from), StopsAfterTurns = true };
        Turns = from is null ? 0 : 1;
        _back = new TakingBack(_machine);
        (_phrases, _chance, _names) = (new(plan), new(plan), new(plan));
        _table = new Draws(seed, game, 0);
        _players = [.. Enumerable.Range(0, table.Seats).Select(s => new Draws(seed, game, (uint)s + 1))];
    }

    /// <summary>How many turns have begun.</summary>
    public int Turns { get; private set; }

    /// <summary>How the game came out; null while it goes on.</summary>
    public GameResult? Result { get; private set; }

    /// <summary>The table as it is now, to be tallied or drawn; what lies in the supply or in the box is left out, as in every position.</summary>
    public Position Position => StateWriter.Write(_machine.Plan, State, $"turn {Turns}", State.Numbers[Slots.Turn]);

    /// <summary>How many of the last decisions, all of one player, may be taken back: none beyond chance, something newly seen, another player's decision or a
    /// final action.</summary>
    public int MayTakeBack => _back.Count;

    internal TableState State => _machine.State;

    /// <summary>The game stops after so many decisions, chance events and turns.</summary>
    internal int Most { get; init; } = MostMoves;

    /// <summary>False where nobody reads the words of the moves, which then are empty.</summary>
    internal bool IsTold { get; init; } = true;

    /// <summary>Told of each decision that had to be made and in which nothing was possible, with who had to make it.</summary>
    internal Action<Instruction, string> Impossible
    {
        set => _machine.Impossible = step =>
        {
            if (step is Decide decide && decide.Alternatives.Single() is not FirstAlternative)
            {
                value(step, _names.Seat(State.Numbers[Slots.Me]));
            }
        };
    }

    /// <summary>Told of each move of things that found fewer than its number says, with how many there were and who acted.</summary>
    internal Action<Instruction, int, string> Short
    {
        set => _machine.Short = (step, found) => value(step, found, _names.Seat(State.Numbers[Slots.Me]));
    }

    /// <summary>Plays on; each move is told as it happens.</summary>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next, or the game goes on and on.</exception>
    public IEnumerable<PlayedMove> Moves()
    {
        for (int moves = 0; Result is null; moves++)
        {
            if (moves == Most)
            {
                throw new NotPlayableException($"The game has not ended after {Most:N0} decisions, chance events and turns.");
            }

            if (Next() is { } move)
            {
                yield return move;
            }
        }
    }

    /// <summary>Takes the last decision back, if it may be; the game goes on from before it.</summary>
    /// <returns>Why not; null where it is taken back.</returns>
    public Refusal? TakeBack()
    {
        int turns = Turns;
        Refusal? refusal = _back.TakeBack(ref turns);
        (Turns, Result) = (turns, refusal is null ? null : Result);
        return refusal;
    }

    private PlayedMove? Next()
    {
        switch (_machine.Advance())
        {
            case Moment.Decision decision:
                Option option = decision.Options[(int)_players[decision.Seat].Below((uint)decision.Options.Length)];
                PlayedMove move = Told(decision, option);
                if (IsTold)
                {
                    _back.Decided(decision.Seat, option, Turns);
                }

                _machine.Choose(option);
                return move;
            case Moment.Chance chance:
                int outcome = _table.Weighted(chance.Event.Weights);
                string words = IsTold ? _chance.Of(State, chance.Event, outcome) : "";
                _back.CameOut(chance.Event, outcome);
                _machine.Choose(chance.Event, outcome);
                return new PlayedMove(Turns, null, null, words, chance.Event.Weights.Length, null);
            case Moment.TurnOver:
                Turns++;
                return null;
            default:
                Result = ResultOf(_machine, Turns);
                return null;
        }
    }

    private PlayedMove Told(Moment.Decision decision, Option option)
    {
        EndRule? end = option.Alternative is StepAlternative { Step: { Kind: StepKind.EndGame, Terms: [Term.Text { Words: var name }] } }
            ? _machine.Plan.Sheet.Ends.First(e => string.Equals(e.Name, name, StringComparison.OrdinalIgnoreCase)) : null;
        string words = IsTold ? _phrases.Phrase(State, option, decision.Options) : "";
        return new PlayedMove(Turns, decision.Seat, _names.Seat(decision.Seat), words, decision.Options.Length, end?.Cite ?? (option.Alternative as CallAlternative)?.Action.Facts.Cite)
        {
            About = (option.Alternative as EndingAlternative)?.Of,
            End = end,
        };
    }

    /// <summary>How a game that is over came out.</summary>
    internal static GameResult ResultOf(Machine machine, int turns)
    {
        Result result = Reckoning.Of(machine);
        var names = new PlayNames(machine.Plan);
        Sheet sheet = machine.Plan.Sheet;
        EndRule? end = result.End is { } index ? sheet.Ends[index] : null;
        return new GameResult(
            end?.Name, end?.Says, end?.Cite,
            [.. result.Totals.Select((t, s) => new SeatResult(s, names.Seat(s), sheet.Score.IsEmpty ? null : t, result.Ranks[s], result.Winners.Contains(s)))],
            result.TieBreak, turns);
    }
}
