using System.Collections.Immutable;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Chapters;

/// <summary>Chapters as lines of a video's description: <c>0:00 The aim</c>.</summary>
public static class ChapterLines
{
    /// <summary>A line for each chapter, in the order of their times, each with a line end; empty for none.</summary>
    /// <param name="list">The chapters; times are written in whole seconds.</param>
    public static string Write(ChapterList list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return string.Concat(list.Ordered.Select(c => TimedLine.Write(c.Start, c.Title) + "\n"));
    }

    /// <summary>Reads the chapters of a description.</summary>
    /// <param name="source">The description, or the lines alone.</param>
    /// <remarks>Lines that do not begin with a time are other words of the description, and skipped. What follows a line
    /// <c>Corrections:</c> are no chapters. A line whose time is none (<c>0:75</c>) is told and left out.</remarks>
    public static PlacedChapters Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var chapters = ImmutableArray.CreateBuilder<Chapter>();
        var places = ImmutableArray.CreateBuilder<SourceSpan>();
        var problems = new DiagnosticBag();
        for (int line = 0; line < source.LineCount && !CorrectionLines.IsHeading(source.Line(line)); line++)
        {
            SourceSpan at = source.Span(source.LineStart(line), source.LineEnd(line) - source.LineStart(line));
            switch (TimedLine.Read(at.Text))
            {
                case { Time: { } time } timed:
                    chapters.Add(new Chapter(time, timed.Words));
                    places.Add(at);
                    break;
                case { } timed:
                    problems.Add(FilmProblems.NoTime(at, timed.Written));
                    break;
            }
        }

        return new PlacedChapters(new ChapterList(chapters.ToImmutable(), null), places.ToImmutable(), source.Span(0, 0), problems.InOrder());
    }
}
