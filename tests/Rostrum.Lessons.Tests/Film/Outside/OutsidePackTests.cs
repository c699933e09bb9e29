using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Outside;

/// <summary>Programs of other people open the files of a pack: <c>pdfinfo</c>, <c>pdffonts</c>, <c>pdftotext</c> of poppler, <c>ffprobe</c>.</summary>
public sealed class OutsidePackTests : IDisposable
{
    private static readonly Game Kiln = ShippedGames.Open("kiln-night");
    private static readonly ImmutableArray<PackFile> Files = LessonPack.Of(Kiln, LessonCheck.Of(Kiln)!);

    private readonly string _folder = Directory.CreateTempSubdirectory("rostrum-pack-").FullName;

    [Theory]
    [InlineData("a4", @"595 x 842 pts \(A4\)")]
    [InlineData("letter", @"612 x 792 pts \(letter\)")]
    public void Hand_out_is_one_page_of_its_paper_with_title_and_without_a_date(string paper, string size)
    {
        string told = FilmTool.Run("pdfinfo", _folder, Put($"hand-out-{paper}.pdf"));

        Assert.Matches(@"Title:\s+Kiln Night: player aid\n", told);
        Assert.Matches(@"Pages:\s+1\n", told);
        Assert.Matches($@"Page size:\s+{size}\n", told);
        Assert.DoesNotContain("Date", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void Every_font_of_a_hand_out_is_in_the_file_and_its_letters_can_be_read(string paper)
    {
        string[] fonts = [.. FilmTool.Run("pdffonts", _folder, Put($"hand-out-{paper}.pdf")).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2)];

        // The last columns: embedded, subset, with a map to Unicode.
        Assert.NotEmpty(fonts);
        Assert.All(fonts, f => Assert.Matches(@"\s+yes\s+yes\s+yes\s+\d+\s+\d+\s*$", f));
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void Words_of_a_hand_out_can_be_taken_out(string paper)
    {
        string words = Prose.Fold(FilmTool.Run("pdftotext", _folder, Put($"hand-out-{paper}.pdf"), "-"));

        Assert.Contains("Copper never stands beside ash. p. 5", words, StringComparison.Ordinal);
        Assert.Contains("Of equal players: fewer shards, then more sticks, then shared.", words, StringComparison.Ordinal);
        Assert.Contains("First printing. Correct as of 25 November 2026.", words, StringComparison.Ordinal);
        Assert.Contains("Unofficial.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Chapters_of_the_pack_are_read_by_ffprobe()
    {
        string told = FilmTool.Run("ffprobe", _folder, "-v", "error", "-show_chapters", Put("chapters.ffmeta"));

        Assert.Equal(12, Regex.Count(told, @"^\[CHAPTER\]", RegexOptions.Multiline));
        Assert.Contains("TAG:title=What the rulebook leaves open", told, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Put(string name)
    {
        File.WriteAllBytes(Path.Combine(_folder, name), [.. Files.Single(f => f.Name == name).Bytes]);
        return name;
    }
}
