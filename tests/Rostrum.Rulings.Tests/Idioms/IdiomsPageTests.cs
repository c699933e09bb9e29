using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary><c>docs/idioms.md</c> says what the files of the library say; that its examples hold is tested there.</summary>
public sealed class IdiomsPageTests
{
    [Fact]
    public void Page_says_what_the_library_says() => Assert.Equal(IdiomsPage.Make(), TestFiles.Made("docs/idioms.md", IdiomsPage.Make()));

    [Fact]
    public void Every_idiom_stands_on_the_page_once() =>
        Assert.Equal(BenchGame.Idioms.All.Select(i => i.Name).Order(StringComparer.Ordinal), IdiomsPage.Sections.SelectMany(s => s.Names).Order(StringComparer.Ordinal));

    [Fact]
    public void Clauses_at_the_beginning_of_the_page_are_read_without_a_message()
    {
        string sheet = BenchGame.SheetText
            .Replace("\nscore:", "\n" + IdiomsPage.Score, StringComparison.Ordinal)
            .Replace("\nwords:", "\n" + IdiomsPage.Words, StringComparison.Ordinal)
            .Replace("\nlaws:", "\n" + IdiomsPage.Laws, StringComparison.Ordinal);

        Assert.Empty(SheetReader.Read(GameFolder.InMemory("bench", (SheetReader.FileName, sheet)), BenchGame.Idioms, []).Problems.Select(p => $"{p.At}: {p.Message}"));
    }

    [Fact]
    public void Ties_rating_and_limits_of_the_page_are_read_without_a_message()
    {
        string sheet = BenchGame.SheetText.Replace("\nscore:", "\n" + IdiomsPage.Ends[..IdiomsPage.Ends.IndexOf("\nties:", StringComparison.Ordinal)], StringComparison.Ordinal)
            + "\n" + IdiomsPage.Ends[IdiomsPage.Ends.IndexOf("ties:", StringComparison.Ordinal)..];

        Assert.Empty(SheetReader.Read(GameFolder.InMemory("bench", (SheetReader.FileName, sheet)), BenchGame.Idioms, []).Problems.Select(p => $"{p.At}: {p.Message}"));
    }
}
