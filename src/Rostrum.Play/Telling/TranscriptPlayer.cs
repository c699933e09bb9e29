using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>Plays the lines of a transcript one after the other. What follows from a decision is carried out once the next line needs it, so that lines of chance may stand before or behind it.</summary>
internal sealed class TranscriptPlayer
{
    // No phrase begins with the word for a step.
    private const string BackWords = "take back";

    private readonly CoursePlan _plan;
    private readonly Machine _machine;
    private readonly ToldChance _chance;
    private readonly PhraseReader _reader;
    private readonly SeatWords _seats;
    private readonly TakingBack _back;
    private int _turns;

    public TranscriptPlayer(CoursePlan plan, Position? from)
    {
        (_plan, _seats, _reader) = (plan, new SeatWords(plan.Sheet), new PhraseReader(plan));
        _machine = new Machine(plan) { State = from is null ? plan.Start() : Beginning.Of(plan, from), StopsAfterTurns = true, StopsAtEveryDeal = true };
        _chance = new ToldChance(plan, _machine);
        _back = new TakingBack(_machine);
    }

    /// <summary>How the game came out; null while it goes on.</summary>
    public GameResult? Result => _machine.Moment is Moment.GameOver ? PlayedGame.ResultOf(_machine, _turns) : null;

    /// <summary>The table as it is now.</summary>
    public TableState State => _machine.State;

    /// <summary>Plays a line.</summary>
    /// <returns>Why it is refused; null where it is played.</returns>
    public Refusal? Read(string line, int number)
    {
        (string who, string words) = line.IndexOf(':', StringComparison.Ordinal) is var at and >= 0 ? (Prose.Fold(line[..at]), Prose.Fold(line[(at + 1)..])) : (Prose.Fold(line), "");
        return ToldChance.IsChance(who) ? _chance.Hear(who, words, number, line)
            : who switch
            {
                "now" => Advance() ?? Now(words),
                "over" => Advance() ?? Over(words),
                _ when _seats.NumberOf(who) is { } seat && seat <= _plan.Layout.Seats => Advance() ?? (words == BackWords ? _back.TakeBack(seat - 1, ref _turns) : Decide(seat - 1, words)),
                _ => new Refusal($"'{who}' is nobody at the table; lines begin with a player, 'rolled', 'shuffled', 'dealt from', 'now' or 'over'.", []),
            };
    }

    /// <summary>Carries out what follows from the last line.</summary>
    /// <returns>The line of chance that was not needed or could not be so; null where all is well.</returns>
    public (int Line, string Words, Refusal Why)? Finish() => Advance() is { } refusal ? (_chance.Last.Number, _chance.Last.Line, refusal) : _chance.Unused;

    // To the next decision, or to the end; how chance comes out is told or does not matter.
    private Refusal? Advance()
    {
        for (int moments = 0; _machine.Moment is not (Moment.Decision or Moment.GameOver); moments++)
        {
            if (moments == PlayedGame.MostMoves)
            {
                throw new NotPlayableException($"The game has gone on for {PlayedGame.MostMoves:N0} chance events and turns without a decision.");
            }

            switch (_machine.Advance())
            {
                case Moment.Chance chance:
                    if (_chance.Outcome(chance.Event, out int outcome) is { } refusal)
                    {
                        return refusal;
                    }

                    _back.CameOut(chance.Event, outcome);
                    _machine.Choose(chance.Event, outcome);
                    break;
                case Moment.TurnOver:
                    _turns++;
                    break;
            }
        }

        return null;
    }

    private Refusal? Decide(int seat, string words)
    {
        if (_machine.Moment is not Moment.Decision decision)
        {
            EndRule? end = _machine.State.Numbers[Slots.End] is >= 0 and var index ? _plan.Sheet.Ends[index] : null;
            return new Refusal("The game is over.", [new RefusedBy(end?.Name ?? (_plan.HasTurns ? "turn" : "course"), end?.Says, end?.Cite)]);
        }

        if (decision.Seat != seat)
        {
            return new Refusal($"It is {_seats.NameOf(decision.Seat)} who decides here.", [ByOrder()]);
        }

        PhraseReading reading = _reader.Read(_machine, decision.Options, words);
        if (reading.Option is { } option)
        {
            _back.Decided(seat, option, _turns);
            _machine.Choose(option);
            _machine.Moment = null;
        }

        return reading.Refusal;
    }

    private RefusedBy ByOrder()
    {
        RefusedBy block = _reader.BlockAt(_machine);
        return block.Clause == "turn" && _plan.NextToPlay is not null ? new RefusedBy("next to play", null, null) : block;
    }

    private Refusal? Now(string words)
    {
        int me = _machine.State.Numbers[_machine.Moment is Moment.GameOver ? Slots.Turn : Slots.Me];
        RulingAnswer answer = Ruling.On(StateWriter.Write(_plan, _machine.State, "transcript", me), words);
        return answer.Ruling switch
        {
            Ruling.Yes => null,
            { } other => new Refusal($"'{words}' is not so: {other.Reason(b => b.Because)}.", []),
            null => new Refusal(string.Join(' ', answer.Problems.Select(p => p.Message)), []),
        };
    }

    private Refusal? Over(string words)
    {
        if (Result is not { } result)
        {
            return new Refusal($"The game is not over: {_seats.NameOf(_machine.State.Numbers[Slots.Me])} decides next.", []);
        }

        string[] winners = [.. result.Seats.Where(s => s.Wins).Select(s => s.Player)];
        string[] said = words switch
        {
            "nobody" => [],
            "everyone" or "everybody" => [.. result.Seats.Select(s => s.Player)],
            _ => [.. words.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
        };
        return said.Order(StringComparer.OrdinalIgnoreCase).SequenceEqual(winners.Order(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase) ? null
            : new Refusal(winners.Length == 0 ? "The game is over and nobody has won." : $"The game is over and {Prose.And(winners)} {(winners.Length == 1 ? "has" : "have")} won.", []);
    }
}
