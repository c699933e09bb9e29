using System.Collections.Immutable;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

public sealed class PositionPrinterTests
{
    public static TheoryData<string> Sheets => ["round", "climbing", "stacks"];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_printed_position_reads_back_equal(string sheet) =>
        RandomPosition.Of(SheetOf(sheet)).Hold(
            position =>
            {
                Read read = Read.Of(PositionPrinter.Print(position), position.Sheet);

                Assert.Empty(read.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message}"));
                AssertSame(position, read.Position);
            },
            cases: 400,
            print: PositionPrinter.Print);

    [Fact]
    public void The_text_is_a_drawing_with_aligned_columns_and_heaps()
    {
        const string Text = """
            players: 2
            round: 3
            seat 1:
              chamber: |
                4 . .   . .  .
                3 . .   . .  .
                2 . ja! . .  .
                1 ? pi  l bi .
                / A B   C D  E
              sticks: 4
              shards: [2 ware, cracked ash ware]
              accepted: [Commission 12, Commission 6 face down]
              has passed: no
            turn of: seat 1

            """;

        Assert.Equal(Text, PositionPrinter.Print(Read.Fine(Text).Position));
    }

    [Fact]
    public void What_the_legend_cannot_draw_is_a_list_of_spaces()
    {
        const string Text = """
            players: 2
            field:
              A3: [crescent fire die]
              C3: [stone, 2 pawns of White]
            turn of: White

            """;

        Assert.Equal(Text, PositionPrinter.Print(Read.Fine(Text, TestSheet.Stacks).Position));
    }

    [Fact]
    public void A_stack_is_drawn_from_the_lowest_up_with_number_and_owner()
    {
        const string Text = """
            players: 2
            field: |
              3 2r1+bk2? w1 .
              2 7        -  s
              1 .        .  h
              / A        B  C
            turn of: Black

            """;

        Read read = Read.Fine(Text, TestSheet.Stacks);

        Assert.Equal(Text, PositionPrinter.Print(read.Position));
        Assert.Equal("2 of your red stones and White's back blue stone whose heat is not given", read.Say(read.On("A3")));
    }

    private static Sheet SheetOf(string name) => name switch
    {
        "round" => TestSheet.Round,
        "climbing" => TestSheet.Climbing,
        _ => TestSheet.Stacks,
    };

    private static void AssertSame(Position one, Position other)
    {
        Assert.Equal((one.Seats, one.Me), (other.Seats, other.Me));
        Assert.Equal(Flat(one.Boards), Flat(other.Boards));
        Assert.Equal(Flat(one.Places), Flat(other.Places));
        Assert.Equal(one.Marks.SelectMany(m => m), other.Marks.SelectMany(m => m));
    }

    private static IEnumerable<Stack> Flat(ImmutableArray<ImmutableArray<ImmutableArray<Stack>>> all) => all.SelectMany(a => a.SelectMany(b => b));
}
