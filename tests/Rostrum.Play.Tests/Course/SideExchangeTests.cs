using System.Collections.Immutable;
using CsCheck;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Play.Tests.Agreement;
using Rostrum.Play.Tests.Outside;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Course;

/// <summary>Players who change sides, on random tables: play leaves what the reference leaves, and twice is not at all.</summary>
public sealed class SideExchangeTests
{
    private const string SheetText = """
        rule sheet: 1
        game: Sides
        players: 3
        pieces:
          peg: {each player: 3, count of each tint: {red: 2, blue: 1}, attributes: {tint: [red, blue]}, states: {side: [plain, carved]}}
          plank: {each player: 2, shape: ". ., rotated"}
          flag: {count: 4, states: {keeper: players}}
        boards:
          yard: {squares: 3 across 2 up}
          bench: {of: each player, squares: 2 across 2 up}
        places: {pile: {heap of: [peg, flag], of: each player}, rack: {row of: 3, holds: flag, of: each player}}
        marks:
          dust: {holds: 0 to 9, of: each space of bench}
          wins: {holds: 0 to 9, of: each player}
          friend: {holds: player, of: each player}
          pot: {holds: 0 to 9}
        turn: [switch]
        actions:
          switch: {do: swap me and seat 3}
        """;

    [Fact]
    public void Play_leaves_what_the_reference_leaves()
    {
        CoursePlan plan = TableOf.Written(SheetText).Plan;
        RandomTable.Seeds.Hold(
            seed =>
            {
                Position position = StateWriter.Write(RandomTable.Of(plan.Layout, seed), "before", 0, 0);
                TableState state = Read(plan, position);
                new SideExchange(plan, 0, 2).Carry(state);

                Position? reference = new StepCarrier(position, 0, Setting.First, new SortedSet<int>(), Evaluator.Frame(1)).Carry(plan.Sheet.Actions[0].Steps).After;
                Assert.Equal(Words(reference!), Words(Told(plan, state)));

                new SideExchange(plan, 2, 0).Carry(state);
                Assert.Equal(Words(position), Words(Told(plan, state)));
            },
            cases: 200);
    }

    [Fact]
    public void Parts_of_boards_that_belong_to_seats_are_in_the_way()
    {
        string text = SheetText.Replace("yard: {squares: 3 across 2 up}", "yard: {squares: 3 across 2 up, regions: {gate: {seat 1: A1, seat 2: B1, seat 3: C1}}}", StringComparison.Ordinal);

        Assert.Equal("Players cannot change sides here, for parts of 'yard' belong to their seats.", Assert.Throws<NotPlayableException>(() => TableOf.Written(text)).Message);
    }

    [Theory]
    [InlineData("swap me and A1")]
    [InlineData("swap top of A1 and B1")]
    [InlineData("swap pile of me and seat 2")]
    public void What_is_not_alike_does_not_change_places(string step)
    {
        string text = SheetText.Replace("swap me and seat 3", step, StringComparison.Ordinal);

        Assert.Contains("ROS0302", SheetReader.Read(GameFolder.InMemory("sides", (SheetReader.FileName, text)), ShippedGames.Idioms, []).Problems.Select(p => p.Id));
    }

    // Of heaps the order does not matter.
    private static string Words(Position position)
    {
        ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> places = [.. position.Places.Select(p => p.Select(s => s.Select(Sorted).ToImmutableArray()).ToImmutableArray())];
        return PositionPrinter.Print(position with { Places = places });
    }

    private static Stack Sorted(Stack stack) => stack with { Things = [.. stack.Things.OrderBy(t => $"{t.Kind!.Name} {t.Owner} {string.Join(' ', t.Values)}")] };

    private static Position Told(CoursePlan plan, TableState state) => StateWriter.Write(state, "before", 0, plan.MarkBase);

    private static TableState Read(CoursePlan plan, Position position)
    {
        var state = new TableState(plan.Layout, plan.Numbers, plan.Sets);
        plan.Blank.CopyTo(state.Numbers);
        StateReader.Read(plan.Layout, position, state, plan.MarkBase);
        return state;
    }
}
