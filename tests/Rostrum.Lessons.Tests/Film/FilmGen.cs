using CsCheck;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>Makes up chapters and corrections with titles that break what is careless.</summary>
internal static class FilmGen
{
    private static readonly Gen<string> Piece = Gen.OneOf(
        Gen.OneOf("The aim", "=", ";", "#", "\\", "\n", "\r\n", "\r", "\t", " ", "- ", ": ", "|", "•", "0:00", "12:05 ", "1. ", "[CHAPTER]", "title=", "\\n"),
        Gen.OneOf("🎲", "👩‍👩‍👧‍👦", "é", "e\u0301", "שלום", "\u202Eabc\u202C", "\u200F", "\u2028", "\u00A0", "\uFEFF", "\0", "\u0007", "\uFFFE", "\uD83D", "\uDE00"),
        Gen.OneOf("<a>", "&amp;", "&", "]]>", "<!DOCTYPE x>", "<!--", "\"", "'", "%s", "Correction:", "…", "—"));

    /// <summary>Titles of up to six strange pieces.</summary>
    public static Gen<string> Title { get; } = Piece.Array[0, 6].Select(string.Concat);

    private static readonly Gen<TimeSpan> Time = Gen.Long[0, 40_000_000].Select(ms => TimeSpan.FromMilliseconds(ms));

    private static readonly Gen<Chapter> Chapter = Gen.Select(Time, Title).Select((time, title) => new Chapter(time, title));

    /// <summary>Up to eight chapters in any order of times.</summary>
    public static Gen<ChapterList> Any { get; } =
        Gen.Select(Chapter.Array[0, 8], Gen.Long[1, 100_000]).Select((chapters, rest) =>
            new ChapterList([.. chapters], chapters.Length == 0 ? null : chapters.Max(c => c.Start) + TimeSpan.FromMilliseconds(rest)));

    /// <summary>Up to eight chapters in the order of their times.</summary>
    public static Gen<ChapterList> Ordered { get; } = Any.Select(list => list with { Chapters = [.. list.Ordered] });

    /// <summary>One to six corrections that say something, in the order of their times.</summary>
    public static Gen<Correction[]> Corrections { get; } =
        Gen.Select(Time, Title).Select((time, words) => new Correction(time, words)).Where(c => c.Words.Length > 0).Array[1, 6].Select(all => all.OrderBy(c => c.Time).ToArray());
}
