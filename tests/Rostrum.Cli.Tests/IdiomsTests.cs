using System.Text.Json;
using System.Text.RegularExpressions;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Cli.Tests;

/// <summary><c>rostrum read --idioms</c>: looking for a rule that needs only a name.</summary>
public class IdiomsTests
{
    [Fact]
    public void All_stand_in_the_order_of_the_page()
    {
        IEnumerable<string> page = Regex.Matches(TestFiles.Read("docs/idioms.md"), "^### (.+)$", RegexOptions.Multiline).Select(m => m.Groups[1].Value);

        Assert.Equal(page, Idioms().Select(i => Text(i, "name")));
        Assert.DoesNotContain("Others", Told.By("read", "--idioms").Output);
    }

    [Theory]
    [InlineData("full lines", "full lines")]
    [InlineData("LINES FULL", "full lines")]
    [InlineData("unbroken", "runs by length")]
    [InlineData("leftover", "leftovers by a rate")]
    [InlineData("conversion", "leftovers by a rate")]
    [InlineData("neighb", "different neighbours")]
    [InlineData("card", "cards met or not")]
    public void Words_of_name_group_or_sentence_find_it(string words, string name) =>
        Assert.Contains(name, Idioms(words.Split(' ')).Select(i => Text(i, "name")));

    [Fact]
    public void Several_words_must_all_be_there() => Assert.Equal(["a line of different ones"], Idioms("lines", "different", "whose").Select(i => Text(i, "name")));

    [Fact]
    public void Words_may_stand_between_quotes() => Assert.Equal(Idioms("different", "line").Select(i => Text(i, "name")), Idioms("different line").Select(i => Text(i, "name")));

    [Fact]
    public void Misspelt_word_gets_the_nearest() => Assert.Equal((2, "rostrum: No idiom speaks of 'neihbour'. Did you mean 'neighbour'?\n"), (Told.By("read", "--idioms", "neihbours").Code, Told.By("read", "--idioms", "neihbours").Talk));

    [Fact]
    public void Strange_word_gets_the_list() => Assert.Contains("'rostrum read --idioms' lists all.", Told.By("read", "--idioms", "xylophone").Talk);

    [Fact]
    public void Few_are_shown_whole()
    {
        string shown = Told.By("read", "--idioms", "leftovers").Output;

        Assert.Equal("""
            Points for what you have
            ------------------------
            leftovers by a rate                                                       scores
                Score ‹points› points for every ‹every› of ‹of›, rounded ‹rounded›.
                of            a number or what is counted, such as 'my coins' or 'stones in
                              my hand'
                every         a number
                points        a number; left out: 1
                rounded       one of 'down', 'up' or 'to the nearest'; left out: down

                score:
                  new clause:
                    says: Score 1 point for every three of your sticks, rounded down.
                    cite: book 1
                    idiom: leftovers by a rate
                    of: my sticks
                    every: 3

            """, shown);
    }

    [Fact]
    public void Read_without_game_and_idioms_says_what_is_missing() => Assert.Contains("'rostrum read' needs <game> as well, or '--idioms'.", Told.By("read").Talk);

    public static TheoryData<string, string, string> Clauses() => [.. Idioms().Select(i => (Text(i, "name"), Text(i, "use"), Text(i, "clause")))];

    [Theory]
    [MemberData(nameof(Clauses))]
    public void Clause_that_is_copied_is_understood(string name, string use, string clause)
    {
        string[] problems = [Problems(BenchGame.SheetText, clause, "lay"), Problems(BenchGame.SheetText, clause, "bring"), Problems(TableBench.SheetText, clause, "put"), Problems(TableBench.SheetText, clause, "climb")];

        Assert.True(problems.Contains(""), $"{name} ({use}): {string.Join(" | ", problems)}");
    }

    // What is wrong with the clause at the head of its section, an action of the sheet in the place of the one that the clause names.
    private static string Problems(string sheet, string clause, string action)
    {
        string section = clause.Split('\n')[0];
        string whole = sheet.Contains($"\n{section}\n", StringComparison.Ordinal) ? sheet.Replace($"\n{section}\n", $"\n{clause}\n", StringComparison.Ordinal) : $"{sheet}\n{clause}\n";
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("bench", ("sheet.yaml", whole.Replace("binds: place", $"binds: {action}", StringComparison.Ordinal))), BenchGame.Idioms, []);
        return string.Join(' ', reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => p.Message));
    }

    private static JsonElement[] Idioms(params string[] words) =>
        [.. JsonDocument.Parse(Command(["read", "--json", "--idioms", .. words])).RootElement.GetProperty("idioms").EnumerateArray()];

    // The cases of a theory are made before there is a test.
    private static string Command(params string[] args)
    {
        using var output = new StringWriter();
        RostrumCommand.Run(args, TextReader.Null, output, TextWriter.Null);
        return output.ToString();
    }

    private static string Text(JsonElement element, string key) => element.GetProperty(key).GetString()!;
}
