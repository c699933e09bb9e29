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

    private readonly ImmutableHashSet<string> _keys = dialect.KnownKeys.Union(dialect.ProseKeys);

    /// <summary>The guesses, likeliest first, each with a fix.</summary>
    /// <param name="text">The file.</param>
    /// <param name="problem">A problem in it.</param>
    public IEnumerable<Diagnostic> About(SourceText text, Diagnostic problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problem);
        int line = text.LineIndexOf(problem.At.Start);
        int before = Content(text, line, -1);
        SourceSpan here = LineAt(text, line);
        return
        [
            .. Colons(here), .. Commas(here), .. Doubled(here), .. Brackets(here), .. Columns(text, line), .. Columns(text, before),
            .. before < line ? [.. Colons(LineAt(text, before)), .. Brackets(LineAt(text, before))] : (IEnumerable<Diagnostic>)[],
            .. Columns(text, Content(text, line, 1)),
        ];
    }

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
