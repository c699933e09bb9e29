using CsCheck;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>A sheet may come from anyone: whatever stands in it, reading ends, and says why.</summary>
public sealed class HostileSheetTests
{
    public static TheoryData<string> Deep => new()
    {
        $"score: {{x: {new string('(', 20_000)}1{new string(')', 20_000)}}}",
        $"score: {{x: {string.Concat(Enumerable.Repeat("minus ", 20_000))}1}}",
        $"score: {{x: {string.Concat(Enumerable.Repeat("1 + ", 20_000))}1}}",
        $"score: {{x: {string.Concat(Enumerable.Repeat("1 if yes otherwise ", 20_000))}1}}",
        $"words: {{x: {string.Concat(Enumerable.Repeat("not ", 20_000))}yes}}",
        $"words: {{x: {string.Concat(Enumerable.Repeat("yes and ", 20_000))}yes}}",
        $"score: {{x: {string.Concat(Enumerable.Repeat("order of ", 20_000))}1}}",
        $"words:\n{string.Concat(Enumerable.Range(0, 20_000).Select(i => $"  w{i}: w{i + 1} + 1\n"))}  w20000: 1\n",
        string.Concat(Enumerable.Range(0, 200).Select(i => $"{new string(' ', 2 * i)}score:\n")),
        $"score: {new string('{', 5_000)}",
        $"pieces: {{{string.Join(", ", Enumerable.Range(0, 20_000).Select(i => $"p{i}: {{}}"))}}}",
    };

    [Theory]
    [MemberData(nameof(Deep))]
    public void Depth_and_length_end_in_an_answer(string text)
    {
        Loaded loaded = Loaded.Of(text);

        Assert.All(loaded.Reading.Problems, p => Assert.NotEmpty(p.Message));
    }

    [Theory]
    [InlineData("")]
    [InlineData("# only a remark")]
    [InlineData("- a list")]
    [InlineData("just words")]
    public void A_file_without_sections_is_told_so(string text) => Assert.NotEmpty(Loaded.Of(text).Told);

    [Fact]
    public void A_folder_without_a_sheet_is_told_so()
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("empty"), BenchGame.Idioms, []);

        Assert.Null(reading.Sheet);
        Assert.Equal("There is no file 'sheet.yaml' in the game's folder.", Assert.Single(reading.Problems).Message);
    }

    [Fact]
    public void Any_letters_in_the_place_of_others_give_problems_inside_their_file() =>
        Gen.Select(Gen.Int[0, BenchGame.SheetText.Length - 1], Gen.OneOf("", " ", ":", "{", "}", "\n", "- ", "'", "x", "of ", "not modelled", "[", "0")).Hold((at, with) =>
        {
            Loaded loaded = Loaded.Of(BenchGame.SheetText.Remove(at, 1).Insert(at, with));
            return loaded.Reading.Problems.All(p => p.At.Start >= 0 && p.At.End <= p.At.Source.Content.Length && p.Message.Length > 0)
                && loaded.Told.SequenceEqual(Loaded.Of(loaded.Text).Told);
        }, cases: 300);

    [Fact]
    public void Every_clause_keeps_a_place_inside_the_sheet()
    {
        Sheet sheet = BenchGame.Sheet;
        IEnumerable<SourceSpan> places =
        [
            .. sheet.Laws.Select(l => l.At), .. sheet.Score.Select(s => s.At), .. sheet.Facts.Select(f => f.At), .. sheet.Kinds.Select(k => k.Kind.DeclaredAt!.Value),
            .. sheet.Meanings.Select(m => m.Body.Origin.At), .. sheet.Tables.SelectMany(t => t.Versions).SelectMany(v => v.Rows).Select(r => r.Entry.Origin.At),
        ];

        Assert.All(places, p => Assert.InRange(p.End, p.Start, p.Source.Content.Length));
        Assert.All(places, p => Assert.Equal("sheet.yaml", p.Source.Name));
    }
}
