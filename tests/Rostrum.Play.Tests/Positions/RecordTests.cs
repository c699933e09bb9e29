using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Ending;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Play.Positions;
using Rostrum.Play.Tests.Outside;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Positions;

/// <summary>What a position says was done before, in play: the compiled formulas answer as the reference does, and a game goes on from there.</summary>
public sealed class RecordTests
{
    // Each question is a scoring clause of its own, so that a tally asks all of them.
    private static readonly string[] Questions =
    [
        .. DoneTimes.All.SelectMany(t => new[] { "", " by me", " by opponent" }, (t, by) => $"1 if croak was done {t.Words}{by} otherwise 0"),
        .. DoneTimes.All.Select(t => $"1 if hop was not done {t.Words} otherwise 0"),
        "loudness of last croak if croak was done before otherwise 9",
        "loudness of my last croak if croak was done before by me otherwise 9",
        "1 if goal of last hop is A1 otherwise 0",
        "1 if goal of my last hop is B1 otherwise 0",
        "1 if goal of my last hop is nothing otherwise 0",
        "1 if stone of last hop is top of A1 otherwise 0",
        "count(spots of last rest)",
        "1 if B1 is in spots of my last rest otherwise 0",
        "1 if order of bank of last look is 2 otherwise 0",
        "1 if way of last look is north otherwise 0",
        "1 if who of last look is me otherwise 0",
    ];

    private static string Clauses => string.Join('\n', Questions.Select((q, i) => $"  question {(char)('A' + (i / 26))}{(char)('A' + (i % 26))}: {{points: {q}}}"));

    private static readonly GameTable Pond = TableOf.Written($$$"""
        rule sheet: 1
        game: Pond
        players: 2
        pieces: {stone: {count: 2}}
        boards: {pond: {squares: 2 across 2 up, spaces: cell, columns: column A to B, rows: row 1 to 2}}
        set-up: {do: [move a stone from supply to A1]}
        turn:
          - may: hop
          - may: croak
          - may: rest
          - may: look
        actions:
          hop: {phrase: hop (stone) to (goal), choose: {stone: a stone in pond, goal: a cell in pond where it is empty}, do: move stone to goal}
          croak: {phrase: croak (loudness) times, choose: {loudness: a number from 1 to 3}, do: nothing}
          rest: {phrase: rest on (spots), choose: {spots: 2 cells in pond}, do: nothing}
          look: {phrase: look along (bank) going (way) for (who), choose: {bank: one of rows of pond, way: a direction, who: a player}, do: nothing}
        laws:
          not twice: {says: Nobody croaks as loud as the last time., binds: croak, forbids: loudness is loudness of last croak}
        score:
        {{{Clauses}}}
        """);

    [Theory]
    [InlineData("")]
    [InlineData("this turn: croak 2 times")]
    [InlineData("this turn: [croak 2 times, croak 3 times]")]
    [InlineData("the turn before: croak 1 times")]
    [InlineData("the turn before: [seat 1: croak 1 times, seat 2: hop A1 to A1]")]
    [InlineData("this round: {seat 1: croak 1 times, seat 2: hop A1 to A1}")]
    [InlineData("the round before: {seat 1: croak 1 times, seat 2: rest on A1 and B1}")]
    [InlineData("before: {seat 1: [rest on A2 and B2, rest on B1 and B2], seat 2: look along row 2 going north for seat 2}")]
    [InlineData("{this turn: look along row 1 going north for seat 1, the turn before: hop A1 to A1, before: {seat 1: croak 3 times, seat 2: hop A1 to B1}}")]
    public void Play_answers_as_rulings_do(string done)
    {
        for (int turn = 1; turn <= Pond.Seats; turn++)
        {
            Position position = Read(done, turn);
            var machine = new Machine(Pond.Plan) { State = Beginning.Of(Pond.Plan, position) };
            for (int seat = 0; seat < Pond.Seats; seat++)
            {
                machine.State.Numbers[Slots.Me] = seat;
                Assert.Equal(Tally.Of(position, seat).Lines.Select(l => (l.Clause, l.Points.Certain)), Pond.Plan.Score.Select(s => (s.Clause.Name, (long?)machine.Number(s.Points))));
            }
        }
    }

    [Fact]
    public void What_a_game_remembers_is_told_as_it_answers()
    {
        var machine = new Machine(Pond.Plan) { State = Pond.Plan.Start() };
        for (int moves = 0; moves < 40; moves++)
        {
            Moment.Decision decision = Assert.IsType<Moment.Decision>(machine.Advance());
            Position position = StateWriter.Write(Pond.Plan, machine.State, "told", decision.Seat);
            Assert.Equal(
                Tally.Of(position, decision.Seat).Lines.Select(l => (l.Clause, l.Points.Certain)), Pond.Plan.Score.Select(s => (s.Clause.Name, (long?)machine.Number(s.Points))));
            machine.Choose(decision.Options[7 * moves % decision.Options.Length]);
        }
    }

    [Fact]
    public void A_game_goes_on_from_what_was_done()
    {
        TranscriptResult result = Transcript.Play(Pond, ["seat 1: no", "seat 1: croak 2 times"], Read("the turn before: croak 2 times", 1));

        Assert.Equal((1, "Nobody croaks as loud as the last time."), (result.Played, result.Refusal!.Why.Because));
        Assert.Null(Transcript.Play(Pond, ["seat 1: no", "seat 1: croak 1 times"], Read("the turn before: croak 2 times", 1)).Refusal);
    }

    [Fact]
    public void What_the_record_leaves_out_is_told()
    {
        string Why(string done) => Assert.Throws<NotPlayableException>(() => Beginning.Of(Pond.Plan, Read(done, 1))).Message;

        Assert.Equal("To play on, everything must be given: nobody says which 'loudness' the last 'croak' had.", Why("this turn: croak ? times"));
    }

    private static readonly GameTable Calls = TableOf.Written("""
        rule sheet: 1
        game: Calls
        players: 2
        boards: {row: {squares: 2 across 1 up}}
        turn: call
        actions: {call: {phrase: call (n), choose: {n: a number from 1 to 3}, do: nothing}}
        laws: {next: {says: Call the next number., binds: call, needs: n is 1 + n of last call}}
        end: {three: {if: n of last call is 3, winner: me}}
        """);

    [Theory]
    [InlineData("the turn before: call 2", 1, 1)]
    [InlineData("the turn before: call 1", 2, 2)]
    public void Lines_and_games_begin_from_what_was_done(string done, int plies, int turns)
    {
        Position from = Read(Calls.Sheet, $"row: {{}}\nturn of: seat 1\ndone:\n  {done}");
        PlyCount[] counted = [.. Calls.Count(5, from: from)];
        var game = new PlayedGame(Calls, [PlayerKind.Random], 1, from: from);

        Assert.Equal(Enumerable.Repeat((UInt128)1, plies + 1), counted.Select(c => c.Lines));
        Assert.Equal((UInt128)1, counted[^1].Ended);
        Assert.Equal(plies, game.Moves().Count());
        Assert.Equal(turns, game.Result!.Turns);
    }

    [Fact]
    public void Threats_know_what_was_done()
    {
        CanEnd[] Asked(string done) => [.. Calls.Threats(Read(Calls.Sheet, $"row: {{}}\nturn of: seat 1\ndone:\n  {done}")).Seats.Select(s => s.CanEnd)];

        Assert.Equal([CanEnd.Yes, CanEnd.Yes], Asked("the turn before: call 2"));
        Assert.Equal([CanEnd.No, CanEnd.No], Asked("the turn before: call 1"));
    }

    private static Position Read(string done, int turn) =>
        Read(Pond.Sheet, $"pond: {{A1: stone}}\nturn of: seat {turn}\ndone:{(done.StartsWith('{') || done.Length == 0 ? $" {(done.Length == 0 ? "{}" : done)}" : $"\n  {done}")}\n");

    private static Position Read(Sheet sheet, string text)
    {
        var problems = new DiagnosticBag();
        PositionFile file = PositionReader.Read(sheet, new SourceText("told.yaml", text), problems);
        Assert.Empty(problems.InOrder().Select(p => $"{p.At}: {p.Message}"));
        return file.Position!;
    }
}
