using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Rulings.Games;

/// <summary>Leaves out what says nothing new: one name that nothing bears is told once, however often it is written, and what an entry lacks is not
/// told where a line of the same entry could not be read or bears a key that nobody knows.</summary>
internal static class Echoes
{
    private const int MostLines = 5;

    // What an entry lacks may stand in the line that is wrong.
    private static readonly string[] Lacks =
        ["ROS0148", "ROS0404", "ROS0503", "ROS0811", "ROS0812", "ROS0814", "ROS0821", "ROS0823", "ROS0825", "ROS0828", "ROS0829"];

    private static readonly string[] Names = ["ROS0201", "ROS0213", "ROS0214", "ROS0221", "ROS0228", "ROS0501", "ROS0207", "ROS0311", "ROS0302"];

    private static readonly string[] Rows = ["ROS0150", "ROS0151"];

    /// <summary>The problems that are worth telling, in order.</summary>
    /// <param name="problems">In order.</param>
    public static ImmutableArray<Diagnostic> Fold(ImmutableArray<Diagnostic> problems)
    {
        Diagnostic[] kept = [.. problems.Where(p => !problems.Any(cause => !ReferenceEquals(cause, p) && Follows(p, cause)))];
        return [.. kept.GroupBy(p => IsOfName(p) ? (p.Id, p.Message, p.At.Source.Name, p.At.Text.ToUpperInvariant()) : (p.Id, p.Message, $"{p.At}", "")).Select(g => One([.. g]))];
    }

    private static bool Follows(Diagnostic problem, Diagnostic cause) =>
        (Lacks.Contains(problem.Id) && IsWrong(cause) && EntryOf(problem.At).Holds(cause.At))
        || (IsWaiting(problem) && cause.Severity == Severity.Error)
        || (Rows.Contains(cause.Id) && !Rows.Contains(problem.Id) && cause.At.Source.Name == problem.At.Source.Name && cause.At.StartPosition.Line == problem.At.StartPosition.Line)
        || IsOtherSide(problem, cause);

    // Signs that wait for a mend say so themselves.
    private static bool IsWaiting(Diagnostic problem) => problem is { Id: "ROS0213", Severity: Severity.Warning };

    // A gap without a choice and a choice without a gap, in lines beside each other, are two ends of one slip.
    private static bool IsOtherSide(Diagnostic problem, Diagnostic cause) =>
        problem.Id == "ROS0197" && cause.Id is "ROS0197" or "ROS0195" && problem.At.Source.Name == cause.At.Source.Name && problem.At.Start > cause.At.Start
        && problem.At.StartPosition.Line - cause.At.StartPosition.Line <= 4;

    private static bool IsWrong(Diagnostic cause) =>
        (cause.Id.StartsWith("ROS01", StringComparison.Ordinal) && cause.Id[4..] is ['1', '0' or '1' or '2', _]) || cause.Id == "ROS0229" || IsOfKey(cause);

    // A key that nobody knows stands before its colon.
    private static bool IsOfKey(Diagnostic cause) => cause.Id == "ROS0201" && cause.At.Source.Span(cause.At.End, 1).Text == ":";

    private static bool IsOfName(Diagnostic problem) => problem.At.Length > 0 && Names.Contains(problem.Id);

    private static Diagnostic One(Diagnostic[] same)
    {
        if (same.Length == 1)
        {
            return same[0];
        }

        int[] lines = [.. same.Select(p => p.At.StartPosition.Line).Where(l => l != same[0].At.StartPosition.Line).Distinct().Order()];
        if (lines.Length == 0)
        {
            return same[0] with { Fix = Everywhere(same) };
        }

        string where = lines.Length > MostLines ? $"{string.Join(", ", lines.Take(MostLines))} and {lines.Length - MostLines} more" : Prose.And(lines.Select(l => $"{l}"));
        return same[0] with { Hint = $"{same[0].Hint} The same stands in {(lines.Length == 1 ? "line" : "lines")} {where}.", Fix = Everywhere(same) };
    }

    // Mended in one place alone, the others would be told next.
    private static Fix? Everywhere(Diagnostic[] same) =>
        same[0].Fix is { Edits.Length: 1 } first && same.All(p => p.Fix is { Edits.Length: 1 } fix && fix.Edits[0].NewText == first.Edits[0].NewText)
            ? first with { Edits = [.. same.Select(p => p.Fix!.Edits[0]).DistinctBy(e => e.At.Start)] }
            : same[0].Fix;

    private static Entry EntryOf(SourceSpan at)
    {
        SourceText text = at.Source;
        int line = text.LineIndexOf(at.Start);
        string head = text.Line(line);
        int column = head.Length - head.TrimStart().Length;
        // What stands in braces belongs to its own line; a key alone on its line owns what is deeper, and a key with a value belongs to what is around it.
        bool isHead = head.TrimEnd().EndsWith(':');
        return isHead ? new Entry(text, line, column) : Whole(text, line, column);
    }

    private static Entry Whole(SourceText text, int line, int column)
    {
        if (text.Line(line).Contains('{', StringComparison.Ordinal))
        {
            return new Entry(text, line, column);
        }

        int owner = line;
        while (owner > 0 && (string.IsNullOrWhiteSpace(text.Line(owner)) || Column(text.Line(owner)) >= column))
        {
            owner--;
        }

        return new Entry(text, owner, Column(text.Line(owner)));
    }

    private static int Column(string line) => line.Length - line.TrimStart().Length;

    /// <summary>A line and all that lie deeper below it.</summary>
    private readonly record struct Entry(SourceText Text, int First, int Column)
    {
        public bool Holds(SourceSpan at)
        {
            if (at.Source.Name != Text.Name)
            {
                return false;
            }

            int line = Text.LineIndexOf(at.Start);
            (SourceText text, int column) = (Text, Column);
            return line >= First && Enumerable.Range(First + 1, line - First).All(i => string.IsNullOrWhiteSpace(text.Line(i)) || Echoes.Column(text.Line(i)) > column);
        }
    }
}
