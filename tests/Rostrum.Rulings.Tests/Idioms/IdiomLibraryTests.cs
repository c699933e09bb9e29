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
        (string with, string on, string gives) = IdiomFile.Of(idiom).Shown(key);

        Assert.Equal(gives, Answer(IdiomFile.Of(idiom).SheetWith(with), BenchGame.PositionWith(on)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_file_tries_three_clauses_and_gives_two_different_answers(string idiom)
    {
        IdiomFile file = IdiomFile.Of(idiom);

        Assert.Equal(3, file.Tried.Select(t => t.Reads).Distinct().Count());
        Assert.NotEqual(file.Shown("example").Gives, file.Shown("near miss").Gives);
        Assert.NotNull(file.Idiom.Body.Find("group"));
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

    private static string Answer(Sheet sheet, string position)
    {
        var problems = new DiagnosticBag();
        Position read = PositionReader.Read(sheet, new SourceText("positions/tried.yaml", position), problems).Position!;
        Assert.Empty(problems.InOrder().Select(p => p.Message));
        TallyLine? line = Tally.Of(read, 0).Lines.FirstOrDefault(l => l.Clause == "tried");
        return line is null ? Ruling.On(read, "tried").Ruling!.Verdict : $"{line.Points.Certain}";
    }
}
