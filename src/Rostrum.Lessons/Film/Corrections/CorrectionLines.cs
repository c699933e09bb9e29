using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Corrections;

/// <summary>Corrections with the places that they were read from.</summary>
/// <param name="Corrections">In the order of the text.</param>
/// <param name="Places">The line of each.</param>
/// <param name="Problems">What is wrong, in the order of the text.</param>
public sealed record PlacedCorrections(ImmutableArray<Correction> Corrections, ImmutableArray<SourceSpan> Places, ImmutableArray<Diagnostic> Problems);

/// <summary>Corrections as lines of a video's description: below <c>Corrections:</c> a line for each, with its time.</summary>
/// <remarks>The form is that of YouTube (realmicentral.com, 16 June 2022, and support.google.com/youtube/answer/57404 as told there): a viewer sees one
/// card, at the first of them. That they stand behind the chapter lines is from memory; our own reader of chapters ends at them.</remarks>
public static class CorrectionLines
{
    private static readonly string[] Headings = ["correction", "corrections"];

    /// <summary>True for the line above corrections: <c>Correction:</c> or <c>Corrections:</c>, in small or large letters, with the colon or without.</summary>
    /// <param name="line">A line without its line end.</param>
    public static bool IsHeading(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Headings.Contains(line.Trim().TrimEnd(':').TrimEnd(), StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The heading and a line for each, in the order of their times, each with a line end; empty for none.</summary>
    /// <param name="corrections">In any order.</param>
    public static string Write(IEnumerable<Correction> corrections)
    {
        Correction[] all = [.. corrections.OrderBy(c => c.Time)];
        return all.Length == 0 ? "" : $"{(all.Length == 1 ? "Correction:" : "Corrections:")}\n{Lines(all)}";
    }

    /// <summary>Reads the corrections of a description; none where no line is their heading.</summary>
    /// <param name="source">The description.</param>
    /// <remarks>They end before the first line without a time that stands behind a blank line. A line without a time among them is told and left out.</remarks>
    public static PlacedCorrections Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var corrections = ImmutableArray.CreateBuilder<Correction>();
        var places = ImmutableArray.CreateBuilder<SourceSpan>();
        var problems = new DiagnosticBag();
        foreach (SourceSpan at in Section(source))
        {
            TimedLine? line = TimedLine.Read(at.Text);
            if (Problem(at, line) is { } problem)
            {
                problems.Add(problem);
            }
            else
            {
                corrections.Add(new Correction(line!.Time!.Value, line.Words));
                places.Add(at);
            }
        }

        return new PlacedCorrections(corrections.ToImmutable(), places.ToImmutable(), problems.InOrder());
    }

    /// <summary>Words for a comment below the film: which lesson, what is right, and up to which day.</summary>
    /// <param name="title">What the lesson is called.</param>
    /// <param name="corrections">In any order.</param>
    /// <param name="correctAsOf">A day, as the lesson's head says it; empty where that is not known.</param>
    /// <returns>Lines with a line end each; empty where there is nothing to correct.</returns>
    public static string PinnedComment(string title, IEnumerable<Correction> corrections, string correctAsOf)
    {
        Correction[] all = [.. corrections.OrderBy(c => c.Time)];
        string day = correctAsOf.Length == 0 ? "" : $"\nCorrect as of {OneLine.Of(correctAsOf)}.\n";
        return all.Length == 0 ? "" : $"{(all.Length == 1 ? "Correction" : "Corrections")} to “{OneLine.Of(title)}”:\n\n{Lines(all)}{day}";
    }

    private static string Lines(Correction[] all) => string.Concat(all.Select(c => TimedLine.Write(c.Time, c.Words) + "\n"));

    private static Diagnostic? Problem(SourceSpan at, TimedLine? line) => line switch
    {
        null => FilmProblems.UntimedCorrection(at),
        { Time: null } => FilmProblems.NoTime(at, line.Written),
        { Words: "" } => FilmProblems.EmptyCorrection(at, line.Written),
        _ => null,
    };

    private static IEnumerable<SourceSpan> Section(SourceText source)
    {
        int heading = Enumerable.Range(0, source.LineCount).FirstOrDefault(l => IsHeading(source.Line(l)), source.LineCount);
        bool isBehindBlank = false;
        for (int line = heading + 1; line < source.LineCount; line++)
        {
            string text = source.Line(line);
            if (string.IsNullOrWhiteSpace(text))
            {
                isBehindBlank = line > heading + 1;
                continue;
            }

            if (isBehindBlank && TimedLine.Read(text) is null)
            {
                yield break;
            }

            isBehindBlank = false;
            yield return source.Span(source.LineStart(line), source.LineEnd(line) - source.LineStart(line));
        }
    }
}
