using System.Collections.Immutable;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>The chapters of a video: the one value from which every form is written.</summary>
/// <param name="Chapters">In the order in which they were given, which need not be that of their times; may be empty.</param>
/// <param name="Length">Where the last chapter ends; null where nobody said.</param>
public sealed record ChapterList(ImmutableArray<Chapter> Chapters, TimeSpan? Length)
{
    /// <summary>The chapters in the order of their times, as they are written; equal times keep their order.</summary>
    public IEnumerable<Chapter> Ordered => Chapters.OrderBy(c => c.Start);

    /// <summary>The chapters in the order of their times, each with its end: where the next begins.</summary>
    /// <remarks>The last ends with <see cref="Length"/>, else where it begins. None ends before it begins.</remarks>
    public IEnumerable<(Chapter Chapter, TimeSpan End)> WithEnds()
    {
        Chapter[] all = [.. Ordered];
        for (int i = 0; i < all.Length; i++)
        {
            TimeSpan end = i + 1 < all.Length ? all[i + 1].Start : Length ?? TimeSpan.Zero;
            yield return (all[i], end > all[i].Start ? end : all[i].Start);
        }
    }

    /// <summary>Equal lists hold equal chapters in the same order, and the same length.</summary>
    /// <param name="other">The other list.</param>
    public bool Equals(ChapterList? other) => other is not null && Length == other.Length && Chapters.SequenceEqual(other.Chapters);

    /// <inheritdoc />
    public override int GetHashCode() => Chapters.Aggregate(Length.GetHashCode(), HashCode.Combine);
}
