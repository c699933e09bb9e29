using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary>Every file of the idiom library keeps what it promises, over the bench game.</summary>
public sealed class IdiomLibraryTests
{
    public static TheoryData<string> Names => [.. IdiomFile.All.Select(f => f.Idiom.Name)];

    public static TheoryData<string, string, string> Tried =>
        [.. IdiomFile.All.SelectMany(f => f.Tried.Select(t => (f.Idiom.Name, t.With, t.Reads)))];

    public static TheoryData<string, string> Shown => [.. IdiomFile.All.SelectMany(f => new[] { (f.Idiom.Name, "example"), (f.Idiom.Name, "near miss") })];

    [Theory]
    [MemberData(nameof(Tried))]
    public void A_clause_reads_back_as_its_file_says(string idiom, string with, string reads)
    {
        Sheet sheet = IdiomFile.Of(idiom).SheetWith(with);

        Assert.Equal(reads, IdiomFile.Sentence(sheet));
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void The_example_and_the_near_miss_give_what_the_file_says(string idiom, string key)
    {
        IdiomFile file = IdiomFile.Of(idiom);
        IdiomShown shown = file.Shown(key);

        Assert.Equal(shown.Gives, Answer(file.SheetWith(shown.With), file.PositionOf(shown), shown.Try));
    }

    [Theory]
    [MemberData(nameof(Shown))]
    public void What_is_told_of_an_example_holds_no_name_of_the_file(string idiom, string key)
    {
        IdiomFile file = IdiomFile.Of(idiom);
        IdiomShown shown = file.Shown(key);
        Position position = Read(file.SheetWith(shown.With), file.PositionOf(shown));

        string told = file.Idiom.Kind == IdiomUseKind.Score
            ? string.Join("; ", Tally.Of(position, 0).Lines.Single(l => l.Clause == "tried").Because.Select(p => p.Text))
            : Ruling.On(position, shown.Try ?? "tried").Ruling!.Reason(b => b.Because);

        Assert.All(file.Idiom.Parameters.Where(p => p.As != p.Name), p => Assert.DoesNotMatch($@"\b{p.As}\b", told));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_file_tries_several_clauses_and_gives_two_different_answers(string idiom)
    {
        IdiomFile file = IdiomFile.Of(idiom);

        Assert.True(file.Tried.Select(t => t.Reads).Distinct().Count() >= 2);
        Assert.NotEqual(file.Shown("example").Gives, file.Shown("near miss").Gives);
        Assert.NotEmpty(file.Idiom.Group);
    }

    [Theory]
    [MemberData(nameof(Tried))]
    public void A_sentence_is_whole_English(string idiom, string with, string reads)
    {
        Assert.NotEqual(idiom, with);
        Assert.Matches(@"^\p{Lu}[^()]*\.$", reads);
        Assert.DoesNotMatch(@"\b1 points\b|\bone \w+ values\b|  |\ba [aeio]", reads);
    }

    [Fact]
    public void The_whole_library_is_read_without_a_message_and_no_name_stands_twice()
    {
        var problems = new DiagnosticBag();
        (string, string)[] files = [.. TestFiles.In("idioms", "*.yaml").Select(f => (f["idioms/".Length..], TestFiles.Read(f)))];

        IdiomLibrary library = IdiomLibrary.Read(GameFolder.InMemory("idioms", files), problems);

        Assert.Empty(problems.InOrder().Select(p => $"{p.At}: {p.Message}"));
        Assert.Equal(files.Length, library.All.Select(i => i.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    public static TheoryData<int, string> TradeIdioms => [.. TradeScoring.All.SelectMany(w => w.Idioms.Select(i => (w.Number, i)))];

    [Theory]
    [MemberData(nameof(TradeIdioms))]
    public void Each_way_of_scoring_of_the_trade_has_its_idioms(int number, string idiom) =>
        Assert.True(BenchGame.Idioms.Find(idiom) is { Kind: IdiomUseKind.Score }, $"Way of scoring {number} needs '{idiom}'.");

    [Fact]
    public void All_22_ways_of_scoring_of_the_trade_are_answered()
    {
        Assert.Equal(Enumerable.Range(1, 22), TradeScoring.All.Select(w => w.Number));
        Assert.All(TradeScoring.All, w => Assert.True(w.Idioms.Length > 0 || w.Form.Length > 0, w.Words));
    }

    private static string Answer(Sheet sheet, string position, string? action)
    {
        Position read = Read(sheet, position);
        TallyLine? line = Tally.Of(read, 0).Lines.FirstOrDefault(l => l.Clause == "tried");
        return line is null ? Asked(read, action) : $"{line.Points.Certain}";
    }

    private static Position Read(Sheet sheet, string position)
    {
        var problems = new DiagnosticBag();
        Position read = PositionReader.Read(sheet, new SourceText("positions/tried.yaml", position), problems).Position!;
        Assert.Empty(problems.InOrder().Select(p => $"{p.At}: {p.Message}"));
        return read;
    }

    // Another law of the bench must not forbid what is tried.
    private static string Asked(Position position, string? action)
    {
        Ruling ruling = Ruling.On(position, action ?? "tried").Ruling!;
        Assert.All((ruling as Ruling.Illegal)?.Breaches ?? [], b => Assert.Equal("tried", b.Clause));
        return ruling.Verdict;
    }
}
