using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Loading.Keys;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>Slips that an editor marks while somebody writes: one slip, one place; and our own reader refuses each of them too.</summary>
public sealed class SlipTests
{
    private static readonly EditorSchema OfSheets = new(SheetSchema.Write());
    private static readonly EditorSchema OfPositions = new(PositionSchema.Write());

    public static TheoryData<string, string> Sheets => new()
    {
        { "pices: {apple: {count: 12}}", "/pices" },
        { "pieces: 12 apples", "/pieces" },
        { "pieces: [apple, pear]", "/pieces" },
        { "pieces: {apple: 12}", "/pieces/apple" },
        { "pieces: {apple: twelve of them}", "/pieces/apple" },
        { "pieces: {apple: {count: many}}", "/pieces/apple/count" },
        { "pieces: {apple: {count: 12.5}}", "/pieces/apple/count" },
        { "pieces: {apple: {count: [12]}}", "/pieces/apple/count" },
        { "pieces: {apple: {cuont: 12}}", "/pieces/apple/cuont" },
        { "pieces: {apple: {attributes: [red, green]}}", "/pieces/apple/attributes" },
        { "pieces: {apple: {attributes: {hue: {red: 1}}}}", "/pieces/apple/attributes/hue" },
        { "pieces: {apple: {attributes: {hue: [red]}, count of each hue: {red: some}}}", "/pieces/apple/count of each hue/red" },
        { "sources: {book: {titel: Rulebook}}", "/sources/book/titel" },
        { "sources: {book: {title: Rulebook, pages: a few}}", "/sources/book/pages" },
        { "sources: {book: {title: Rulebook, rank: [1]}}", "/sources/book/rank" },
        { "sources: [Rulebook]", "/sources" },
        { "players: [2, 4]", "/players" },
        { "numbers: {m: several}", "/numbers/m" },
        { "dice: {die: {faces: 1 to 6, sides: 6}}", "/dice/die/sides" },
        { "cards: {order: {columns: number}}", "/cards/order/columns" },
        { "boards: {field: 4 across 3 up}", "/boards/field" },
        { "boards: {field: {squares: [4, 3]}}", "/boards/field/squares" },
        { "boards: {field: {squares: 4 across 3 up, neighbours: corner}}", "/boards/field/neighbours" },
        { "boards: {field: {squares: 4 across 3 up, stands: standing}}", "/boards/field/stands" },
        { "boards: {field: {squares: 4 across 3 up, of: everybody}}", "/boards/field/of" },
        { "boards: {field: {sqares: 4 across 3 up}}", "/boards/field/sqares" },
        { "places: {shelf: {row of: some}}", "/places/shelf/row of" },
        { "places: {shelf: [1, 2]}", "/places/shelf" },
        { "marks: {coins: {hold: 0 to 9}}", "/marks/coins/hold" },
        { "words: {big: {meens: 1 is 1}}", "/words/big/meens" },
        { "tables: {worth: {rows: [1, 3, 6]}}", "/tables/worth/rows" },
        { "actions: {pass: {phrase: pass, chose: nothing}}", "/actions/pass/chose" },
        { "actions: {pass: {phrase: pass (n), choose: [n], do: nothing}}", "/actions/pass/choose" },
        { "actions: {pass: {phrase: pass, do: nothing}}\nlaws: {quiet: {binds: pass, need: 1 is 1}}", "/laws/quiet/need" },
        { "actions: {pass: {phrase: pass, do: nothing}}\nlaws: {quiet: 1 is 1}", "/laws/quiet" },
        { "end: {done: {if: 1 is 1, then: never}}", "/end/done/then" },
        { "end: {done: {if: 1 is 1, then: soon}}", "/end/done/then" },
        { "score: {all: {point: 3}}", "/score/all/point" },
        { "score: {all: {points: [1, 2]}}", "/score/all/points" },
        { "score: [3]", "/score" },
        { "score:\n  all:\n    says: Three points, always.\n    ponts: 3\n", "/score/all/ponts" },
        { "rating: {step: {0: damp}}", "/rating/step" },
        { "variants: {Small: {piecs: {apple: {count: 6}}}}", "/variants/Small/piecs" },
        { "pieces: {apple: {count: 9}}\nvariants: {Small: {pieces: {apple: {count: few}}}}", "/variants/Small/pieces/apple/count" },
    };

    public static TheoryData<string, string> Positions => new()
    {
        { "seat 1: [3 sticks]", "/seat 1" },
        { "seat 1: {sticks: 3}\nplayers: all", "/players" },
        { "seat 1: {sticks: 3}\nturn of: [seat 1]", "/turn of" },
        { "seat 1: {sticks: 3}\nexpect: 12", "/expect" },
        { "seat 1: {sticks: 3}\nexpect: {taly: {jugs: 3}}", "/expect/taly" },
        { "seat 1: {sticks: 3}\nexpect: {tally: 12}", "/expect/tally" },
        { "seat 1: {sticks: 3}\nexpect: {tally: {jugs: {is: lots}}}", "/expect/tally/jugs/is" },
        { "seat 1: {sticks: 3}\nexpect: {tally: {jugs: {are: 3}}}", "/expect/tally/jugs/are" },
        { "seat 1: {sticks: 3}\nexpect: {tally: {jugs: [3]}}", "/expect/tally/jugs" },
        { "seat 1: {sticks: 3}\nexpect: {rule: {1 is 1: perhaps}}", "/expect/rule/1 is 1" },
        { "seat 1: {sticks: 3}\nexpect: {rule: {1 is 1: {is: 1}}}", "/expect/rule/1 is 1/is" },
    };

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Slip_in_a_sheet_is_marked_in_one_place(string sheet, string place)
    {
        Assert.Equal([place], OfSheets.Marks(PlainYaml.Read(sheet)));
        Assert.Contains(SheetReader.Read(GameFolder.InMemory("slip", (SheetReader.FileName, sheet)), ShippedGames.Idioms, [.. new[] { "Small" }.Where(v => sheet.Contains($"{v}:", StringComparison.Ordinal))]).Problems, p => p.Severity == Severity.Error);
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void Slip_in_a_position_is_marked_in_one_place(string position, string place)
    {
        Assert.Equal([place], OfPositions.Marks(PlainYaml.Read(position)));
        Assert.Contains(BenchGame.Read(position).Problems, p => p.Severity == Severity.Error);
    }
}
