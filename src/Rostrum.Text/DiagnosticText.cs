using System.Globalization;

namespace Rostrum.Text;

/// <summary>Writes a problem for a terminal: place and message, the line with the words underlined, the hint, the places that belong to it.</summary>
/// <remarks>Plain text, no colour, lines end with <c>\n</c>. Characters that move a terminal's cursor are shown as <c>·</c>.</remarks>
public static class DiagnosticText
{
    /// <summary>The least width that is obeyed, in columns.</summary>
    public const int LeastWidth = 40;

    private const int GutterWidth = 8;
    private const string Gutter = "      | ";

    /// <summary>The text for one problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="width">Columns of the terminal; below <see cref="LeastWidth"/> counts as that. The first line is never cut.</param>
    /// <returns>Three lines or more, without a line end behind the last.</returns>
    public static string Render(Diagnostic problem, int width)
    {
        ArgumentNullException.ThrowIfNull(problem);
        int columns = Math.Max(width, LeastWidth) - GutterWidth;
        string severity = problem.Severity == Severity.Error ? "error" : "warning";
        var shown = SourceExcerpt.Of(problem.At, columns);
        string number = problem.At.StartPosition.Line.ToString(CultureInfo.InvariantCulture).PadLeft(5);
        var lines = new List<string>
        {
            $"{problem.At}: {severity} {problem.Id}: {DisplayText.Of(problem.Message)}",
            $"{number} | {shown.Line}".TrimEnd(),
        };

        string carets = new string(' ', shown.Start) + new string('^', shown.Width);
        AddHint(lines, carets, problem, columns);
        return string.Join('\n', lines);
    }

    private static void AddHint(List<string> lines, string carets, Diagnostic problem, int columns)
    {
        string[] hint = [.. problem.Hint.Split('\n').Select(DisplayText.Of)];
        string related = string.Concat(problem.Related.Select(r => $"  ({DisplayText.Of(r.Note)}: {PlaceOf(r.At, problem.At)})"));
        string one = $"{carets} {hint[0]}{related}";
        if (hint.Length == 1 && DisplayText.WidthOf(one) <= columns)
        {
            lines.Add(Gutter + one);
            return;
        }

        lines.Add(Gutter + carets);
        lines.AddRange(hint.SelectMany(h => h.StartsWith(' ') ? [h] : Wrapped(h, columns)).Select(l => Gutter + l));
        foreach (RelatedPlace place in problem.Related)
        {
            lines.AddRange(Wrapped($"({DisplayText.Of(place.Note)}: {PlaceOf(place.At, problem.At)})", columns).Select(l => Gutter + l));
        }
    }

    private static string PlaceOf(SourceSpan at, SourceSpan beside) =>
        ReferenceEquals(at.Source, beside.Source) ? at.StartPosition.ToString() : at.ToString();

    private static IEnumerable<string> Wrapped(string words, int columns)
    {
        string line = "";
        foreach (string word in words.Split(' '))
        {
            if (line.Length > 0 && DisplayText.WidthOf(line) + 1 + DisplayText.WidthOf(word) > columns)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }
}
