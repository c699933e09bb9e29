using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Text.Outline;

namespace Rostrum.Text.Mending;

/// <summary>What may have slipped near a problem of an outline: a lost colon, a comma one word too late, a bracket, a line that went in or out.</summary>
/// <remarks>Guesses only: whether one explains what is told is seen by mending it on trial.</remarks>
/// <param name="dialect">The keys of the file.</param>
public sealed partial class OutlineGuesses(OutlineDialect dialect)
{
    // Columns to which a line may be meant to go, for each line that is looked at.
    private const int MostColumns = 4;

    // Keys that are tried where one is missing.
    private const int MostKeys = 8;

    private readonly ImmutableHashSet<string> _keys = dialect.KnownKeys.Union(dialect.ProseKeys);

    private (SourceText Source, OutlineCount Count)? _counted;

    /// <summary>The guesses, likeliest first, each with a fix.</summary>
    /// <param name="problem">A problem of the file.</param>
    public IEnumerable<Diagnostic> About(Diagnostic problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        SourceText text = problem.At.Source;
        int line = text.LineIndexOf(problem.At.Start);
        int before = Content(text, line, -1);
        SourceSpan here = LineAt(text, line);
        IEnumerable<Diagnostic> words = [.. Names(here), .. Colons(here), .. Commas(here).Where(c => IsOfOutline(problem) || IsTornName(problem, c)), .. Parted(problem, here), .. Doubled(here), .. Brackets(here)];
        IEnumerable<Diagnostic> above = before < line ? [.. Colons(LineAt(text, before)), .. Brackets(LineAt(text, before))] : [];
        return IsOfOutline(problem) ? [.. words, .. Columns(text, before), .. Columns(text, line), .. above, .. Columns(text, Content(text, line, 1))] : words.Concat(above);
    }

    /// <summary>True where a guess takes no part of the file away: a comma or a level that makes a key part of a sentence explains nothing.</summary>
    /// <param name="guess">A guess with its fix.</param>
    public bool Keeps(Diagnostic guess)
    {
        ArgumentNullException.ThrowIfNull(guess);
        SourceText source = guess.At.Source;
        if (!ReferenceEquals(_counted?.Source, source))
        {
            _counted = (source, OutlineCount.Of(source, dialect));
        }

        OutlineCount before = _counted.Value.Count;
        OutlineCount after = OutlineCount.Of(new SourceText(source.Name, TextEdit.Apply(source.Content, guess.Fix!.Edits)), dialect);
        // A line of a sentence may come back to it; nothing else makes a sentence longer.
        return after.Entries >= before.Entries && (after.Prose <= before.Prose || after.Entries > before.Entries || guess.Id == "ROS0102");
    }

    // Where every word was understood, no comma and no level is behind it; but what is missing may stand elsewhere. A key that nobody knows stands before its colon.
    private static bool IsOfOutline(Diagnostic problem) =>
        problem.Id.StartsWith("ROS01", StringComparison.Ordinal)
        || problem.Id is "ROS0503" or "ROS0811" or "ROS0812" or "ROS0814" or "ROS0821" or "ROS0823" or "ROS0825" or "ROS0828" or "ROS0829"
        || (problem.Id == "ROS0201" && problem.At.End < problem.At.Source.Content.Length && problem.At.Source.Content[problem.At.End] == ':');

    // A name that nothing bears may be two, or the half of one, where the comma touches it.
    private static bool IsTornName(Diagnostic problem, Diagnostic comma) =>
        problem.Id == "ROS0201" && comma.At.Start <= problem.At.End && comma.At.End >= problem.At.Start;

    private static SourceSpan LineAt(SourceText text, int line) => text.Span(text.LineStart(line), text.LineEnd(line) - text.LineStart(line));

    // The next line with something on it, in a direction; the line itself where there is none.
    private static int Content(SourceText text, int line, int step)
    {
        for (int i = line + step; i >= 0 && i < text.LineCount; i += step)
        {
            if (!string.IsNullOrWhiteSpace(text.Line(i)) && !text.Line(i).TrimStart().StartsWith('#'))
            {
                return i;
            }
        }

        return line;
    }

    // A known key at the beginning of the line or of a piece in braces, with words behind it and no colon; else the whole line, or its first word.
    private IEnumerable<Diagnostic> Colons(SourceSpan line)
    {
        foreach (Match piece in Piece().Matches(line.Text))
        {
            Group words = piece.Groups["words"];
            string? key = _keys.Where(k => words.Value.StartsWith(k, StringComparison.Ordinal) && (words.Length == k.Length || words.Value[k.Length] is ' ' or '[' or '{'))
                .MaxBy(k => k.Length);
            if (key is not null && !words.Value.StartsWith(key + ":", StringComparison.Ordinal))
            {
                yield return OutlineProblems.LostColon(line.Part(words.Index, key.Length));
            }
        }

        string trimmed = line.Text.Trim();
        if (!trimmed.Contains(':', StringComparison.Ordinal) && trimmed.Length > 0)
        {
            yield return OutlineProblems.LostColon(line.Part(line.Text.IndexOf(trimmed, StringComparison.Ordinal), trimmed.Length));
        }

        foreach (int brace in (IEnumerable<int>)[line.Text.IndexOf(" {", StringComparison.Ordinal), line.Text.IndexOf(" [", StringComparison.Ordinal), line.Text.IndexOf(" |", StringComparison.Ordinal)])
        {
            int start = line.Text.Length - line.Text.TrimStart().Length;
            if (brace > start && !line.Text[start..brace].Contains(':', StringComparison.Ordinal))
            {
                yield return OutlineProblems.LostColon(line.Part(start, brace - start));
            }
        }
    }

    // Every comma one word to either side; those beside a colon first, for there a key was torn.
    private static IEnumerable<Diagnostic> Commas(SourceSpan line)
    {
        IEnumerable<(Match Found, string Meant)> late = LateComma().Matches(line.Text).Select(m => (m, $", {m.Groups["word"].Value}"));
        IEnumerable<(Match Found, string Meant)> early = EarlyComma().Matches(line.Text).Select(m => (m, $" {m.Groups["word"].Value},"));
        return late.Concat(early).OrderBy(m => TouchesColon(line.Text, m.Found) ? 0 : 1).Select(m => OutlineProblems.MisplacedComma(line.Part(m.Found.Index, m.Found.Length), m.Meant));
    }

    private static bool TouchesColon(string line, Match found) =>
        (found.Index > 0 && line[found.Index - 1] == ':') || (found.Index + found.Length < line.Length && line[found.Index + found.Length] == ':');

    // The key that stands most often in the file, in the place of one that is missing.
    private IEnumerable<Diagnostic> Names(SourceSpan line)
    {
        Match bare = NoName().Match(line.Text);
        return bare.Success
            ? _keys.Select(k => (Key: k, Count: CountOf(line.Source.Content, k + ":"))).Where(k => k.Count > 0).OrderByDescending(k => k.Count).Take(MostKeys)
                .Select(k => OutlineProblems.LostName(line.Part(bare.Index + bare.Length, 1), k.Key))
            : [];
    }

    private static int CountOf(string content, string words)
    {
        int count = 0;
        for (int at = content.IndexOf(words, StringComparison.Ordinal); at >= 0; at = content.IndexOf(words, at + words.Length, StringComparison.Ordinal))
        {
            count++;
        }

        return count;
    }

    // A comma that is lost before the words of a second colon, or before words that stand behind something complete.
    private static IEnumerable<Diagnostic> Parted(Diagnostic problem, SourceSpan line)
    {
        int at = problem.At.Start - line.Start;
        if (problem.Id == "ROS0116" && at > 0 && line.Text[at - 1] == ' ')
        {
            yield return OutlineProblems.LostComma(line.Part(at, problem.At.Length), line.Part(at - 1, 1));
        }

        if (problem.Id != "ROS0117" || at <= 0)
        {
            yield break;
        }

        foreach (Match blank in Blank().Matches(line.Text[..at]).Reverse().Take(3))
        {
            yield return OutlineProblems.LostComma(line.Part(blank.Index + 1, at - blank.Index - 1), line.Part(blank.Index, 1));
        }
    }

    private static IEnumerable<Diagnostic> Doubled(SourceSpan line) =>
        WordTwice().Matches(line.Text).Select(m => OutlineProblems.WordTwice(line.Part(m.Index, m.Length), m.Groups["word"].Value));

    // One sign for a bracket that has no partner on its line: openers behind a colon, a blank or a bracket, closers before a comma, a word or at the end.
    private static IEnumerable<Diagnostic> Brackets(SourceSpan line)
    {
        string text = line.Text;
        foreach ((char opener, char closer) in (IEnumerable<(char, char)>)[('{', '}'), ('[', ']'), ('(', ')')])
        {
            int more = text.Count(c => c == opener) - text.Count(c => c == closer);
            if (more == 0)
            {
                continue;
            }

            char sign = more > 0 ? closer : opener;
            SourceSpan partner = line.Part(more > 0 ? text.LastIndexOf(opener) : text.IndexOf(closer, StringComparison.Ordinal), 1);
            foreach (int spot in more > 0 ? ClosingSpots(text) : OpeningSpots(text, opener))
            {
                yield return OutlineProblems.LostSign(line.Part(spot, 0), partner, sign);
            }
        }
    }

    private static IEnumerable<int> ClosingSpots(string text) =>
        CloserSpot().Matches(text).Select(m => m.Index).Prepend(text.TrimEnd().Length).Distinct().Take(12);

    private static IEnumerable<int> OpeningSpots(string text, char opener) =>
        (opener == '(' ? CallSpot() : OpenerSpot()).Matches(text).Select(m => m.Index + m.Length).Distinct().Take(12);

    // The columns at which lines around this one begin, and one level deeper than the line before; the nearest first.
    private static IEnumerable<Diagnostic> Columns(SourceText text, int line)
    {
        string written = text.Line(line);
        int column = Column(written);
        int before = Content(text, line, -1);
        int after = Content(text, line, 1);
        var columns = new List<int> { Column(text.Line(before)), Column(text.Line(before)) + 2, Column(text.Line(after)) };
        for (int i = before, level = Column(text.Line(before)); i > 0 && level > 0; i = Content(text, i, -1) is var up && up < i ? up : 0)
        {
            level = Math.Min(level, Column(text.Line(i)));
            columns.Add(level);
        }

        SourceSpan blanks = text.Span(text.LineStart(line), column);
        SourceSpan words = text.Span(text.LineStart(line) + column, written.Length - column);
        return columns.Distinct().Where(c => c != column).OrderBy(c => Math.Abs(c - column)).Take(MostColumns).Select(c => OutlineProblems.WrongIndentation(words, blanks, c));
    }

    private static int Column(string line) => line.Length - line.TrimStart().Length;

    [GeneratedRegex(@"(?:^\s*(?:- )?|[{,]\s*)(?<words>[^{},:]+(?:[\[{]|:|$)?)")]
    private static partial Regex Piece();

    [GeneratedRegex(@"(?:^\s*|[{,]\s*)(?=:(?:\s|$))")]
    private static partial Regex NoName();

    [GeneratedRegex(@"(?<=[\w)\]}]) (?=\w)")]
    private static partial Regex Blank();

    [GeneratedRegex(@" (?<word>[^\s,]+),")]
    private static partial Regex LateComma();

    [GeneratedRegex(@", ?(?<word>[^\s,:]+)")]
    private static partial Regex EarlyComma();

    [GeneratedRegex(@"(?<![\w'])(?<word>[\w']+) \k<word>(?![\w'])")]
    private static partial Regex WordTwice();

    [GeneratedRegex(@"(?<=[\w)\]}""])(?=[ ,}\])])")]
    private static partial Regex CloserSpot();

    [GeneratedRegex(@": (?=[^{\[])|\{(?=\w)|- ")]
    private static partial Regex OpenerSpot();

    [GeneratedRegex(@"\w(?=\w* )|(?<= )(?=\w)|\b\w+ ?")]
    private static partial Regex CallSpot();
}
