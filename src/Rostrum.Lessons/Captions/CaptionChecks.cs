using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions;

/// <summary>What is odd about the captions of a file that was read; each oddity is told once, with its first place.</summary>
internal static class CaptionChecks
{
    /// <summary>A caption later than this is told: times of hours where minutes were meant look so.</summary>
    public static readonly TimeSpan Late = TimeSpan.FromHours(6);

    /// <summary>The problems, in the order of the file.</summary>
    public static ImmutableArray<Diagnostic> Of(CaptionFile file, SourceText source)
    {
        var problems = new DiagnosticBag();
        Tell(problems, source, file.Blocks.OfType<UnreadBlock>(), (at, count, first) => CaptionProblems.Unread(at, count, first.Text.Contains("-->", StringComparison.Ordinal)));
        Tell(problems, source, file.Cues.Where(c => c.End <= c.Start), (at, count, _) => CaptionProblems.EndsTooEarly(at, count));
        Tell(problems, source, OutOfOrder(file.Cues), (at, count, _) => CaptionProblems.OutOfOrder(at, count));
        Tell(problems, source, Overlapping(file.Cues), (at, count, _) => CaptionProblems.Overlapping(at, count));
        Tell(problems, source, file.Cues.Where(c => c.Start > Late), (at, count, _) => CaptionProblems.Late(at, count));
        Tell(problems, source, file.Cues.Where(c => string.IsNullOrWhiteSpace(CueText.Read(c.Text, file.Format).Plain)), (at, count, _) => CaptionProblems.Empty(at, count));
        return problems.InOrder();
    }

    private static void Tell<T>(DiagnosticBag problems, SourceText source, IEnumerable<T> found, Func<SourceSpan, int, T, Diagnostic> problem)
        where T : CaptionBlock
    {
        T[] all = [.. found];
        if (all.Length > 0)
        {
            int line = all[0].Line - 1;
            problems.Add(problem(source.Span(source.LineStart(line), source.LineEnd(line) - source.LineStart(line)), all.Length, all[0]));
        }
    }

    private static IEnumerable<Cue> OutOfOrder(ImmutableArray<Cue> cues) =>
        cues.Skip(1).Zip(cues).Where(p => p.First.Start < p.Second.Start).Select(p => p.First);

    // A cue that begins before its predecessor is told as that, not as overlapping too.
    private static IEnumerable<Cue> Overlapping(ImmutableArray<Cue> cues)
    {
        TimeSpan latest = TimeSpan.Zero;
        TimeSpan start = TimeSpan.Zero;
        foreach (Cue cue in cues)
        {
            if (cue.Start < latest && cue.Start >= start)
            {
                yield return cue;
            }

            latest = cue.End > latest ? cue.End : latest;
            start = cue.Start;
        }
    }
}
