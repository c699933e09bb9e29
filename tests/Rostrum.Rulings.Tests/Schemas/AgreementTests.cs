using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Loading.Keys;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>Whatever stands on a line behind a key: what our reader takes, the schema takes. A new key whose help names a form that is too narrow fails here.</summary>
public sealed class AgreementTests
{
    private static readonly EditorSchema OfSheets = new(SheetSchema.Write());

    // A text where names belong is dropped by the reader, which is no reason not to mark it.
    private static readonly string[] Dropped = ["readings", "conflict", "lines"];

    private static readonly string[] Values = ["tried", "3", "1.5", "yes", "", "nothing", "not modelled", "each player", "three", "2 across 2 up"];

    public static TheoryData<string, string> Entries => new()
    {
        { "sources", "title: Rulebook" }, { "facts", "is: 3" }, { "pieces", "plural: tries" }, { "dice", "faces: 1 to 6" }, { "cards", "plural: tries" },
        { "boards", "squares: 2 across 2 up" }, { "places", "heap of: coin" }, { "marks", "holds: number" }, { "words", "means: 1" }, { "tables", "rows: {1: 1}" },
        { "actions", "phrase: try it" }, { "laws", "binds: pass" }, { "powers", "lifts: any one law" }, { "end", "if: 1 is 1" }, { "score", "points: 3" },
        { "open questions", "says: Which?" },
    };

    [Fact]
    public void Every_section_with_entries_is_tried() =>
        Assert.Equal(SheetDialect.EntryKeys.Keys.Except(["variants", "rating"]).Order(), Entries.Select(e => e.Data.Item1).Order());

    [Theory]
    [MemberData(nameof(Entries))]
    public void What_the_reader_takes_behind_a_key_is_not_marked(string section, string usual)
    {
        IEnumerable<string> sheets =
            from key in SheetDialect.EntryKeys[section].Concat(SheetDialect.ClauseKeys).Except(Dropped)
            from value in Values
            let rest = usual.StartsWith($"{key}:", StringComparison.Ordinal) ? "" : $"    {usual}\n"
            select $"{(section == "pieces" ? "" : "pieces: {coin: {count: 3}}\n")}{(section == "actions" ? "" : "actions: {pass: {phrase: pass, do: nothing}}\n")}{section}:\n  tried:\n    {key}: {value}\n{rest}";

        Assert.Equal([], sheets.Where(s => IsTaken(s) && OfSheets.Marks(PlainYaml.Read(s)).Count > 0));
    }

    [Fact]
    public void What_the_reader_takes_behind_a_section_is_not_marked()
    {
        IEnumerable<string> sheets =
            from key in SheetDialect.TopKeys
            from value in Values.Concat(["{a: nothing}", "{a: not modelled}", "{a: }", "{a: 3}", "[3]", "{a: [3]}", "{a: {b: 3}}"])
            select $"{key}: {value}\n";

        Assert.Equal([], sheets.Where(s => !s.StartsWith("game: ", StringComparison.Ordinal) && !s.StartsWith("rule sheet: ", StringComparison.Ordinal) && !s.StartsWith("cite: ", StringComparison.Ordinal))
            .Where(s => IsTaken(s) && OfSheets.Marks(PlainYaml.Read(s)).Count > 0));
    }

    private static bool IsTaken(string sheet) =>
        SheetReader.Read(GameFolder.InMemory("tried", (SheetReader.FileName, sheet)), ShippedGames.Idioms, []).Problems.All(p => p.Severity != Severity.Error);
}
