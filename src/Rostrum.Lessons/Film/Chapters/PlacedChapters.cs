using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Chapters with the places that they were taken from, so that what is wrong can be shown there.</summary>
public sealed class PlacedChapters
{
    /// <summary>Takes chapters and as many places.</summary>
    /// <param name="list">The chapters.</param>
    /// <param name="places">Where each was written, in the same order.</param>
    /// <param name="whole">Where to tell what is wrong with all of them.</param>
    /// <param name="problems">What was wrong while they were read.</param>
    internal PlacedChapters(ChapterList list, ImmutableArray<SourceSpan> places, SourceSpan whole, ImmutableArray<Diagnostic> problems)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(places.Length, list.Chapters.Length);
        (List, Places, Whole, Problems) = (list, places, whole, problems);
    }

    /// <summary>The chapters.</summary>
    public ChapterList List { get; }

    /// <summary>Where each chapter was written: a heading of the lesson, a line of a description, an element of a file.</summary>
    public ImmutableArray<SourceSpan> Places { get; }

    /// <summary>Where to tell what is wrong with all of them.</summary>
    public SourceSpan Whole { get; }

    /// <summary>What was wrong while they were read, in the order of the file.</summary>
    public ImmutableArray<Diagnostic> Problems { get; }

    /// <summary>True where the times were worked out from the words: they move when the lesson is filmed.</summary>
    public bool IsEstimate { get; init; }

    /// <summary>True where the file was refused; then there are no chapters.</summary>
    public bool IsRefused => Problems.Any(p => p.Severity == Severity.Error);

    /// <summary>What was wrong while they were read, and what keeps a platform from showing them, in the order of the places.</summary>
    /// <param name="video">How long the video is; null where that is not known.</param>
    public ImmutableArray<Diagnostic> Check(TimeSpan? video = null)
    {
        var problems = new DiagnosticBag();
        problems.AddRange(Problems);
        problems.AddRange(IsRefused ? [] : ChapterCheck.Of(this, video));
        return problems.InOrder();
    }
}
