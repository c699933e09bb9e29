using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading;

/// <summary>Puts the problems of a sheet in the order in which they are best mended: what the file is made of, then names, then what speaks of them,
/// then the tables beside it; what merely follows from a problem is left out, or counted in one line.</summary>
internal static class CausesFirst
{
    // What is missing may stand in the line that could not be read.
    private static readonly string[] Lacks = ["ROS0404", "ROS0811", "ROS0814", "ROS0823", "ROS0825", "ROS0828", "ROS0829"];

    private const string UnknownSign = "ROS0213";

    /// <summary>All problems, in order.</summary>
    /// <param name="problems">What was found.</param>
    /// <param name="sheet">The sheet itself; other files lie beside it.</param>
    /// <param name="ofNames">What was found before all names were known.</param>
    public static ImmutableArray<Diagnostic> Of(DiagnosticBag problems, SourceText sheet, IReadOnlyCollection<Diagnostic> ofNames)
    {
        ImmutableArray<Diagnostic> all = UpToDoubtfulTabs(problems.InOrder(), sheet);
        Diagnostic[] shape = [.. all.Where(p => IsOfShape(p) && IsIn(p, sheet))];
        var early = ofNames.ToHashSet();
        Diagnostic[] kept = [.. all.Where(p => !(Lacks.Contains(p.Id) && IsIn(p, sheet) && shape.Any(s => !ReferenceEquals(s, p) && Entry.Holds(sheet, p.At, s.At))))];
        Diagnostic[] causes = [.. shape, .. kept.Where(p => p.Severity == Severity.Error && early.Contains(p) && IsIn(p, sheet))];
        return [.. FoldSigns(kept, causes).OrderBy(p => Rank(p, sheet, early))];
    }

    // Where lines with tabs fit nowhere, nobody can say what belongs to what from there on.
    private static ImmutableArray<Diagnostic> UpToDoubtfulTabs(ImmutableArray<Diagnostic> all, SourceText sheet)
    {
        Diagnostic? tabs = all.FirstOrDefault(p => p.Id == "ROS0101" && IsIn(p, sheet));
        bool doubtful = tabs is not null && all.Any(p => p.Id is "ROS0102" or "ROS0103" or "ROS0119" && IsIn(p, sheet) && p.At.Start > tabs.At.Start);
        return doubtful ? [.. all.Where(p => IsIn(p, sheet) && p.At.Start <= tabs!.At.Start)] : all;
    }

    private static int Rank(Diagnostic problem, SourceText sheet, HashSet<Diagnostic> early) =>
        !IsIn(problem, sheet) ? 3 : IsOfShape(problem) ? 0 : early.Contains(problem) ? 1 : 2;

    // A sign without meaning is most often one whose line holds another slip.
    private static IEnumerable<Diagnostic> FoldSigns(Diagnostic[] problems, Diagnostic[] causes)
    {
        Diagnostic[] signs = [.. problems.Where(p => p.Id == UnknownSign)];
        if (causes.Length == 0 || signs.Length < 2)
        {
            return problems;
        }

        string[] unknown = [.. signs.Select(s => $"'{s.At.Text}'").Distinct()];
        return problems.Where(p => p.Id != UnknownSign).Append(SheetProblems.SignsWait(signs[0].At, unknown, signs.Length));
    }

    private static bool IsOfShape(Diagnostic problem) =>
        problem.Severity == Severity.Error && problem.Id.StartsWith("ROS01", StringComparison.Ordinal) && problem.Id[4..] is ['1', '0' or '1' or '2', _];

    private static bool IsIn(Diagnostic problem, SourceText sheet) => ReferenceEquals(problem.At.Source, sheet);

    /// <summary>The lines that belong to a key, unreadable ones included.</summary>
    private static class Entry
    {
        public static bool Holds(SourceText sheet, SourceSpan key, SourceSpan at)
        {
            if (at.Start < key.Start)
            {
                return false;
            }

            int column = key.StartPosition.Column;
            int first = sheet.LineIndexOf(key.Start);
            int last = sheet.LineIndexOf(at.Start);
            return Enumerable.Range(first + 1, last - first).All(line => Belongs(sheet.Content[sheet.LineStart(line)..sheet.LineEnd(line)], column));
        }

        // A tab is a slip of its own; it stands for going in.
        private static bool Belongs(string line, int column) =>
            string.IsNullOrWhiteSpace(line) || line[..^line.TrimStart().Length].Contains('\t', StringComparison.Ordinal) || line.Length - line.TrimStart().Length >= column;
    }
}
