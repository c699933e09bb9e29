using System.Text.RegularExpressions;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>The reference page and the reader know the same keys.</summary>
public sealed partial class DialectTests
{
    private static readonly string Page = TestFiles.Read("docs/language.md");
    private static readonly string Table = Page[Page.IndexOf("| section |", StringComparison.Ordinal)..Page.IndexOf("**How much there is.**", StringComparison.Ordinal)];

    public static TheoryData<string> Sections => [.. SheetDialect.EntryKeys.Keys.Where(k => k != "variants")];

    [Theory]
    [MemberData(nameof(Sections))]
    public void The_page_documents_the_keys_of_a_section(string section)
    {
        string row = Row().Matches(Table).Select(m => m.Value).Single(r => Names(r.Split('|')[1]).Contains(section));

        string[] documented = [.. Names(row.Split('|')[3]).Where(k => !k.StartsWith("count of each", StringComparison.Ordinal))];

        Assert.Equal(SheetDialect.EntryKeys[section].Order(), documented.Order());
    }

    [Theory]
    [MemberData(nameof(Sections))]
    public void The_page_marks_what_is_not_used_yet(string section)
    {
        string row = Row().Matches(Table).Select(m => m.Value).Single(r => Names(r.Split('|')[1]).Contains(section));

        string[] marked = [.. Names(string.Concat(Marked().Matches(row.Split('|')[3]).Select(m => m.Value)))];

        Assert.Equal(SheetDialect.LaterKeys.GetValueOrDefault(section, []).Except(SheetDialect.ClauseKeys).Order(), marked.Order());
    }

    [Fact]
    public void The_page_documents_every_section()
    {
        string[] documented = [.. Row().Matches(Table).SelectMany(m => Names(m.Value.Split('|')[1]))];

        Assert.Equal(SheetDialect.TopKeys.Except(["says", "cite"]).Order(), documented.Order());
    }

    [Fact]
    public void The_page_documents_the_keys_of_every_clause()
    {
        string sentence = Everywhere().Match(Page).Value;

        Assert.Equal(SheetDialect.ClauseKeys.Order(), Names(sentence).Order());
    }

    private static IEnumerable<string> Names(string text) => Code().Matches(text).Select(m => m.Groups[1].Value.Split(':')[0]);

    [GeneratedRegex(@"^\| `[^\n]*\|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"Everywhere `says`.*?\.\n", RegexOptions.Singleline)]
    private static partial Regex Everywhere();

    [GeneratedRegex(@"`[^`]+` \\\*")]
    private static partial Regex Marked();

    [GeneratedRegex(@"`([^`]+)`")]
    private static partial Regex Code();
}
