using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>A sentence with its checked values on one line of Markdown, written and read: <c>There are [three](fact:glazes) glazes.</c></summary>
internal static class SaidSentence
{
    private const string Heading = "## said\n\n";

    private const string Signs = "\\`*_[]<>&#!";

    /// <summary>The line for a sentence of a lesson.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="keeps">Which of its values are kept; of the others only the words are.</param>
    public static string Write(SpokenSentence sentence, Predicate<LessonRun.Claim> keeps)
    {
        string all = string.Concat(sentence.Runs.Select(r => r.Words));
        int start = Math.Max(0, all.IndexOf(sentence.Words, StringComparison.Ordinal));
        int end = Math.Min(all.Length, start + sentence.Words.Length);
        var line = new StringBuilder();
        int at = 0;
        foreach (LessonRun run in sentence.Runs)
        {
            (int from, int to) = (Math.Max(at, start), Math.Min(at + run.Words.Length, end));
            if (from < to)
            {
                string words = Escaped(all[from..to]);
                line.Append(run is LessonRun.Claim claim && keeps(claim) ? $"[{words}]({Target(claim.Target)})" : words);
            }

            at += run.Words.Length;
        }

        string said = OneLine.Of(line.ToString());
        return said.Length > 0 && said[0] is '-' or '+' ? $"\\{said}" : said;
    }

    /// <summary>The runs of such a line, values among them.</summary>
    public static ImmutableArray<LessonRun> Read(string line)
    {
        Lesson lesson = LessonReader.Read(new SourceText("said", Heading + line + "\n"), new DiagnosticBag());
        return [.. lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Runs)];
    }

    /// <summary>What is spoken, on one line.</summary>
    /// <param name="runs">The runs of the sentence.</param>
    /// <param name="instead">What is said in place of a value; null for what was said.</param>
    public static string Spoken(IEnumerable<LessonRun> runs, Func<LessonRun.Claim, string?> instead) =>
        OneLine.Of(string.Concat(runs.Select(r => (r is LessonRun.Claim claim ? instead(claim) : null) ?? r.Words)));

    private static string Target(string target) => target.Any(c => char.IsWhiteSpace(c) || c is '(' or ')') ? $"<{target}>" : target;

    private static string Escaped(string words)
    {
        var escaped = new StringBuilder();
        foreach (char c in words)
        {
            escaped.Append(Signs.Contains(c, StringComparison.Ordinal) ? $"\\{c}" : $"{c}");
        }

        return escaped.ToString();
    }
}
