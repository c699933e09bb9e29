using CsCheck;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Outside;

/// <summary>What we write is put into a film by FFmpeg and mkvmerge, and read back out of it.</summary>
public sealed class OutsideFilmTests
{
    private static readonly string[] Titles =
        ["The aim = a; #1 \\ x", "ends with \\", "[CHAPTER]", "title=\\n", "👩‍👩‍👧‍👦 שלום \u202Eabc\u202C e\u0301", "<a> & \"b\" ]]> 'c'", ";note #x", "Credits\\"];

    private static readonly ChapterList Strange = new([.. Titles.Select((t, i) => new Chapter(TimeSpan.FromMilliseconds(i * 5001), t))], TimeSpan.FromSeconds(44));

    [Theory]
    [InlineData("film2.mkv")]
    [InlineData("film.mp4")]
    public void FFmpeg_puts_our_chapters_into_a_film_and_ffprobe_finds_them(string film)
    {
        using var bench = new FilmBench();

        (long, long, string)[] found = bench.Probed(bench.WithMetadata(FfMetadataWriter.Write(Strange, [new FfTag("title", "Kiln; Night")]), film));

        Assert.Equal(FilmBench.Expected(Strange), found);
    }

    [Fact]
    public void We_read_what_FFmpeg_writes_of_a_film()
    {
        using var bench = new FilmBench();

        FfMetadata read = FfMetadataReader.Read(new SourceText("a", bench.MetadataOf(bench.WithMetadata(FfMetadataWriter.Write(Strange, [new FfTag("title", "Kiln; Night")]), "film2.mkv"))));

        Assert.Equal(Strange, read.Chapters.List);
        Assert.Contains(new FfTag("title", "Kiln; Night"), read.Tags);
        Assert.Empty(read.Chapters.Problems);
    }

    [Fact]
    public void Without_a_length_every_title_reaches_the_film()
    {
        using var bench = new FilmBench();
        ChapterList open = Strange with { Length = null };

        Assert.Equal(Titles, bench.Probed(bench.WithMetadata(FfMetadataWriter.Write(open, []), "film2.mkv")).Select(c => c.Title));
        Assert.Equal(Titles, bench.Probed(bench.WithMatroska(MatroskaChapters.Write(open, MatroskaLanguage.English))).Select(c => c.Title));
    }

    [Fact]
    public void Mkvmerge_puts_our_chapters_into_a_film_and_ffprobe_finds_them()
    {
        using var bench = new FilmBench();

        (long, long, string)[] found = bench.Probed(bench.WithMatroska(MatroskaChapters.Write(Strange, MatroskaLanguage.English)));

        Assert.Equal(FilmBench.Expected(Strange), found);
    }

    [Fact]
    public void We_read_what_mkvextract_takes_out_of_a_film_and_our_numbers_are_kept()
    {
        using var bench = new FilmBench();
        string ours = MatroskaChapters.Write(Strange, MatroskaLanguage.English);

        string taken = bench.MatroskaOf(bench.WithMatroska(ours));

        Assert.Equal(Strange, MatroskaChapters.Read(new SourceText("a.xml", taken)).List);
        Assert.Equal(Numbers(ours), Numbers(taken));
    }

    [Fact]
    public void A_hundred_strange_titles_at_a_time_reach_a_film()
    {
        using var bench = new FilmBench();

        FilmGen.Title.Array[100].Hold(
            titles =>
            {
                var list = new ChapterList([.. titles.Select((t, i) => new Chapter(TimeSpan.FromMilliseconds(i * 400), t))], TimeSpan.FromSeconds(44));

                Assert.Equal(FilmBench.Expected(list), bench.Probed(bench.WithMetadata(FfMetadataWriter.Write(list, []), "film2.mkv")));
                Assert.Equal(FilmBench.Expected(list), bench.Probed(bench.WithMatroska(MatroskaChapters.Write(list, MatroskaLanguage.English))));
            },
            cases: 3);
    }

    [Fact]
    public void The_demo_lesson_reaches_a_film()
    {
        using var bench = new FilmBench();
        ChapterList list = LessonChapters.Estimate(LessonReader.Read(new SourceText("lesson.md", TestFiles.Read("games/kiln-night/lesson.md")), new DiagnosticBag())).List;

        Assert.Equal(FilmBench.Expected(list), bench.Probed(bench.WithMetadata(FfMetadataWriter.Write(list, []), "film2.mkv")));
        Assert.Equal(FilmBench.Expected(list), bench.Probed(bench.WithMatroska(MatroskaChapters.Write(list, MatroskaLanguage.English))));
    }

    private static string[] Numbers(string xml) => [.. xml.Split('\n').Select(l => l.Trim()).Where(l => l.Contains("UID>", StringComparison.Ordinal))];
}
