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
            Points for each thing
            ---------------------
            leftovers by a rate                                                       scores
                Score ‹points› points for every ‹every› in ‹of›, rounded down.
                of            a place, such as 'my hand'
                every         a number
                points        a number; left out: 1

                score:
                  new clause:
                    says: Score 1 point for every three in your sticks, rounded down.
                    cite: book 1
                    idiom: leftovers by a rate
                    of: my sticks
                    every: 3

            """, shown);
    }

    [Fact]
    public void Read_without_game_and_idioms_says_what_is_missing() => Assert.Contains("'rostrum read' needs <game> as well, or '--idioms'.", Told.By("read").Talk);

    public static TheoryData<string, string, string> Clauses() => [.. Idioms().Select(i => (Text(i, "name"), Text(i, "use"), Text(i, "clause"))).Where(i => i.Item2 is "score" or "condition")];

    [Theory]
    [MemberData(nameof(Clauses))]
    public void Clause_that_is_copied_is_understood(string name, string use, string clause)
    {
        string section = clause.Split('\n')[0];
        string sheet = BenchGame.SheetText.Replace($"\n{section}\n", $"\n{clause}\n", StringComparison.Ordinal);

        SheetReading reading = SheetReader.Read(GameFolder.InMemory("bench", ("sheet.yaml", sheet)), BenchGame.Idioms, []);

        Assert.Contains(clause, sheet, StringComparison.Ordinal);
        Assert.True(reading.Problems.All(p => p.Severity == Severity.Warning), $"{name} ({use}): {string.Join(' ', reading.Problems.Select(p => p.Message))}");
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
