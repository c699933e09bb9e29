using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Sheets.Tests.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.ReadBack;

/// <summary>A sheet is said back in English: the demo game, and small sheets of one clause.</summary>
public sealed class SheetReadBackTests
{
    private const string Folder = "games/kiln-night/";

    // Actions, laws and cards read as the sheet does; forty lines are what somebody looks at.
    private static readonly string[] Shown = ["Components", "Places", "Drawings", "End of the game", "Scoring", "Words", "Tables"];

    private static readonly GameFolder Kiln = GameFolder.InMemory(
        "kiln-night", [("sheet.yaml", TestFiles.Read($"{Folder}sheet.yaml")), ("commissions.csv", TestFiles.Read($"{Folder}commissions.csv"))]);

    [Fact]
    public void The_demo_game_reads_as_its_rulebook_does() =>
        Snapshots.Match(string.Join('\n', SheetReadBack.Of(Read()).Where(c => Shown.Contains(c.Section)).Select(Line)), "kiln-night");

    [Fact]
    public void A_variant_is_told_by_its_differences() =>
        Snapshots.Match(string.Join('\n', SheetReadBack.Differences(Read(), Read("Climbing Chamber")).Select(Line)), "climbing-chamber");

    [Fact]
    public void Every_clause_of_the_demo_game_is_a_sentence()
    {
        ReadClause[] clauses = [.. SheetReadBack.Of(Read("guild marks"))];

        Assert.All(clauses, c => Assert.Matches(@"^[\p{Lu}\d].*[.!?]$", c.Says));
        Assert.All(clauses, c => Assert.DoesNotContain("  ", c.Says + c.Meaning, StringComparison.Ordinal));
        Assert.Empty(clauses.SelectMany(c => BannedWords.In($"{c.StatusInWords}")));
    }

    [Theory]
    [InlineData("", false, "Nothing happens.")]
    [InlineData(", final: no", false, "Nothing happens.")]
    [InlineData(", final: yes", true, "Nothing happens; final: once done, nothing is taken back.")]
    public void A_final_action_is_said(string final, bool isFinal, string says)
    {
        Sheet sheet = Loaded.Of($"actions: {{wait: {{do: nothing{final}}}}}").Sheet;

        Assert.Equal(isFinal, sheet.Actions[0].IsFinal);
        Assert.Equal(says, SheetReadBack.Of(sheet).Single(c => c.Section == "Actions").Says);
    }

    [Fact]
    public void Names_are_unique_in_their_section() =>
        Assert.Empty(SheetReadBack.Of(Read("solo", "guild marks")).GroupBy(c => (c.Section, c.Name)).Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void The_same_sheet_has_no_differences() => Assert.Empty(SheetReadBack.Differences(Read(), Read()));

    [Theory]
    [InlineData("score: {jugs: 2}", "score: {jugs: 3}")]
    [InlineData("laws: {a: {binds: lay, needs: 1 is 1}}", "laws: {a: {binds: lay, needs: 1 is 2}}")]
    [InlineData("laws: {a: {says: Once., binds: lay, needs: 1 is 1}}", "laws: {a: {says: Once., binds: lay, needs: 1 is 2}}")]
    [InlineData("tables: {t: {1: 2}}", "tables: {t: {1: 3}}")]
    [InlineData("tables: {t: {1: 2}}", "tables: {t: {1: 2, beyond: last}}")]
    [InlineData("words: {w: 1}", "words: {w: 2}")]
    [InlineData("numbers: {m: 1}", "numbers: {m: 2}")]
    [InlineData("end: {full: {if: 1 is 1, then: at once}}", "end: {full: {if: 1 is 2, then: at once}}")]
    [InlineData("end: {full: {says: The end., if: 1 is 1}}", "end: {full: {says: The end., if: 1 is 2}}")]
    [InlineData("score: {jugs: {says: Two., points: 2}}", "score: {jugs: {says: Two., points: 2, at most: 4}}")]
    [InlineData("marks: {coins: 0 to 3}", "marks: {coins: 0 to 4}")]
    [InlineData("boards: {field: {squares: 3 across 3 up}}", "boards: {field: {squares: 3 across 3 up, neighbours: corners}}")]
    [InlineData("boards: {field: {squares: 3 across 3 up}}", "boards: {field: {squares: 3 across 3 up, stands: upright}}")]
    [InlineData("seats: [A, B]", "seats: [B, A]")]
    [InlineData("powers: {key: {lifts: any one law}}", "powers: {key: {lifts: any one law, if: 1 is 1}}")]
    [InlineData("actions: {put: {do: nothing}}", "actions: {put: {phrase: put (n), choose: {n: a number from 1 to 3}, do: nothing}}")]
    [InlineData("pieces: {ware: {count: 3}}", "pieces: {ware: {each player: 3}}")]
    [InlineData("ties: [fewer players]", "ties: [more players]")]
    [InlineData("facts: {a: 1}", "facts: {a: 2}")]
    [InlineData("score: {jugs: 2}", "score: {jugs: 2, lamps: 1}")]
    [InlineData("score: {jugs: 2, lamps: 1}", "score: {jugs: 2}")]
    [InlineData("turn: nothing", "turn: end turn")]
    [InlineData("score: {jugs: {says: J., points: 2, readings: {a: {}, b: {points: 3}}}}", "score: {jugs: {says: J., points: 2, readings: {a: {}, b: {points: 4}}}}")]
    [InlineData("words: {w: {says: W., readings: {a: {means: 1}, b: {means: 2}}}}", "words: {w: {says: W., readings: {a: {means: 1}, b: {means: 3}}}}")]
    [InlineData("sources: {book: {pages: 9}}", "sources: {book: {pages: 8}}")]
    [InlineData("cards: {order: {columns: {asks: condition}, rows: {One: {says: One., asks: 1 is 1}}}}", "cards: {order: {columns: {asks: condition}, rows: {One: {says: One., asks: 1 is 2}}}}")]
    [InlineData("pieces: {ware: {attributes: {form: [jug, pot]}, count: 9, count of each form: {jug: 4}}}", "pieces: {ware: {attributes: {form: [jug, pot]}, count: 9, count of each form: {jug: 5}}}")]
    public void Whatever_a_variant_changes_is_told_and_nothing_else(string one, string other)
    {
        const string Common = "rule sheet: 1\nactions: {lay: nothing}\n";
        Sheet before = Loaded.Of(one.StartsWith("actions", StringComparison.Ordinal) ? one : Common + one).Sheet;
        Sheet after = Loaded.Of(other.StartsWith("actions", StringComparison.Ordinal) ? other : Common + other).Sheet;

        ReadDifference difference = Assert.Single(SheetReadBack.Differences(before, after));
        Assert.NotEqual(difference.InWords.Before, difference.InWords.After);
    }

    [Fact]
    public void Steps_are_told_where_the_sentence_stays()
    {
        const string Steps = "actions: {put: {says: Put it., do: [end turn, again]}}";

        ReadDifference difference = Assert.Single(SheetReadBack.Differences(Loaded.Of(Steps).Sheet, Loaded.Of(Steps.Replace(", again", "", StringComparison.Ordinal)).Sheet));

        Assert.Equal(("the turn is over; the same player has another turn.", "the turn is over."), difference.InWords);
    }

    [Theory]
    [InlineData("score: {jugs: {points: 2, readings: {a: {}, b: {}}}}", "open: a or b")]
    [InlineData("score: {jugs: {points: 2, readings: {a: {}, b: {}}, follow: b, why: Page 3 says so.}}", "decided: b (Page 3 says so)")]
    [InlineData("score: {jugs: 2}", "settled")]
    [InlineData("end: {full: {if: 1 is 1}}", "settled")]
    [InlineData("not modelled: [swaps]", "not modelled")]
    [InlineData("score: {jugs: not modelled}", "not modelled")]
    public void A_clause_says_how_sure_it_is(string text, string status) =>
        Assert.Equal(status, SheetReadBack.Of(Loaded.Of(text).Sheet).Single().StatusInWords);

    private static Sheet Read(params string[] variants) => SheetReader.Read(Kiln, BenchGame.Idioms, variants).Sheet!;

    private static string Line(ReadClause clause) =>
        $"{clause.Section} | {clause.Name} | {clause.Says}{(clause.Meaning is null ? "" : $" | {clause.Meaning}")} | {Citation.Tell(clause.Cite)} | {clause.StatusInWords}";

    private static string Line(ReadDifference difference) =>
        $"{(difference.Before is null ? "new" : difference.After is null ? "gone" : "changed")}: {Line(difference.After ?? difference.Before!)}";
}
