using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Loading.Keys;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>Right lines in which YAML sees something else than our own reader: texts as numbers, truths, lists or keys.</summary>
public sealed class RightLineTests
{
    private static readonly EditorSchema OfSheets = new(SheetSchema.Write());
    private static readonly EditorSchema OfPositions = new(PositionSchema.Write());

    public static TheoryData<string> Sheets =>
    [
        "game: 1984",
        "game: yes",
        "game: 2.10",
        "says: [the best of games]",
        "says: {a game of apples}",
        "says:\n  A rule: one apple, one point.",
        "score: {all: {says: Apples, pears, or both: score., points: 3}}",
        "score: {all: {says: Apples, pears or both score., points: 3}}",
        "sources: {book: {title: Pots, kilns, and more: a guide, pages: 3}}",
        "score: {all: {points: largest((1, 2), it), says: The larger.}}",
        "score: {all: 3}",
        "pieces:\n  apple:\n",
        "pieces: {apple: {count: TWELVE}}",
        "pieces: {apple: {count: \"12\"}}",
        "pieces: {apple: not modelled}",
        "pieces: not modelled",
        "pieces: {apple: {count: 012}}",
        "pieces: {die: {attributes: {hue: [1, 2, yes]}, count of each hue: 3}}",
        "numbers: {m: minus 3}",
        "sources: {book: {title: Rulebook, date: 2026}}",
        "sources: {book: Rulebook, note: 7}",
        "sources: {book: {title: No, 5, pages: 3}}",
        "facts: {start: no, rounds: 1.5}",
        "boards: {field: {squares: 2 across 2 up, wraps: yes, neighbours: sides and  corners}}",
        "boards: {field: {squares: 2 across 2 up, of: the table}}",
        "boards: {roads: {points: [a b, b c]}}",
        "boards: {roads: {points: a b c}}",
        "end: {done: {if: 1 is 1, then: at once, winner: not modelled}}",
        "tables: {worth: {1: 1, 2: 3, beyond: last}}",
        "tables: {worth: {1: [1, 2], 2: [3, 4]}}",
        "tables: {worth: {1: not modelled, at least 0, 2: 3}}",
        "set-up: nothing",
        "actions: {pass: {phrase: pass, do: {cite: book 1, do: nothing}}}\nsources: {book: Rulebook}\nbefore pass: nothing",
        "score: {all: {points: 3, readings: {few: {points: 1}, many: {points: 2}}, follow: few, why: [so it is]}}",
        "pieces: {apple: {count: 9}}\nplaces: {pile: {heap of: apple, of: each player}}\nscore: {all: {idiom: so many for each, of: my pile, points: 1}}\nvariants: {More: {score: {all: {of: my pile}}}}",
        "pieces: {apple: {count: 9}}\nvariants: {Small: {pieces: {apple: removed}, says: [less of it]}, Tiny: {pieces: removed}}",
        "not modelled: [trades, the auction]",
        "open questions: {trade: May I trade?, more: {says: Who begins?}}",
    ];

    public static TheoryData<string> Positions =>
    [
        "says: [a corner]",
        "seat 1: {sticks: 4}\nexpect: {tally: {jugs: {is: 0, because: A1 counts 0, C2: none}}}",
        "says: {a corner}",
        "seat 1: {sticks: 4}\nexpect: {tally: {jugs: {is: 0, because: none lies there, or so}}}",
        "seat 1: {sticks: 4}\nSeat 2: {sticks: 1}\nexpect: {Tally of seat 2: {total: unsettled}, rule: {1 is 1: Yes, 1 is 2: {is: no}}}",
        "seat 1: {sticks: four}\nturn of: seat 1",
        "seat 1: {field: []}",
        "seat 1: {shards: [2 ware, jug]}\nplayers: Two",
        "seat 1:\n",
    ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Right_line_of_a_sheet_is_not_marked(string sheet)
    {
        Assert.Equal([], SheetReader.Read(GameFolder.InMemory("right", (SheetReader.FileName, sheet)), ShippedGames.Idioms, []).Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Message));
        Assert.Equal([], OfSheets.Marks(PlainYaml.Read(sheet)).Concat(OfSheets.Marks(PlainYaml.Read(sheet, isOld: true))));
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void Right_line_of_a_position_is_not_marked(string position) =>
        Assert.Equal([], OfPositions.Marks(PlainYaml.Read(position)).Concat(OfPositions.Marks(PlainYaml.Read(position, isOld: true))));
}
