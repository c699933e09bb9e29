using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Findings;

/// <summary>A finding that the presenter looked at and lets stand.</summary>
/// <param name="Id">The id of the finding, such as <c>ROS0611</c>.</param>
/// <param name="Concerns">The words that it concerns.</param>
/// <param name="Because">The presenter's note.</param>
/// <param name="At">Where it stands.</param>
public sealed record Dismissal(string Id, string Concerns, string Because, SourceSpan At);

/// <summary>The dismissals of a game's folder, in the file <see cref="FileName"/>: id, words, note.</summary>
/// <remarks>Keyed by what is found and the words it concerns, never by line or message, so that a dismissal outlives moved paragraphs and
/// reworded messages.</remarks>
public static class Dismissals
{
    /// <summary>The name of the file in a game's folder.</summary>
    public const string FileName = "dismissed.yaml";

    private const string Note = "because";

    private static readonly OutlineDialect Dialect = new([Note], [Note]);

    /// <summary>Reads a file of dismissals.</summary>
    /// <param name="text">The file.</param>
    /// <param name="problems">Receives ROS0622 for one without a note or with an id of no finding, and what is wrong with the outline.</param>
    public static ImmutableArray<Dismissal> Read(SourceText text, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        var read = ImmutableArray.CreateBuilder<Dismissal>();
        foreach (OutlineEntry rule in OutlineReader.Read(text, Dialect, problems).Entries)
        {
            if (!ScriptProblems.Dismissible.Contains(rule.Key.Text))
            {
                problems.Add(ScriptProblems.NoSuchFinding(rule.Key.Span, rule.Key.Text, ScriptProblems.Dismissible));
            }
            else if (rule.Value is not OutlineMapping entries)
            {
                problems.Add(ScriptProblems.NoNote(rule.Key.Span, rule.Key.Text));
            }
            else
            {
                read.AddRange(entries.Entries.Select(e => Of(rule.Key.Text, e, problems)).OfType<Dismissal>());
            }
        }

        return read.ToImmutable();
    }

    private static Dismissal? Of(string id, OutlineEntry entry, DiagnosticBag problems)
    {
        string note = entry.Value switch
        {
            OutlineScalar scalar => Prose.Fold(scalar.Text),
            OutlineMapping mapping when mapping.Find(Note)?.Value is OutlineScalar because => Prose.Fold(because.Text),
            _ => "",
        };
        if (note.Length == 0)
        {
            problems.Add(ScriptProblems.NoNote(entry.Key.Span, entry.Key.Text));
            return null;
        }

        return new Dismissal(id, Prose.Fold(entry.Key.Text), note, entry.Key.Span);
    }

    /// <summary>True where the dismissal lets this finding stand.</summary>
    internal static bool Covers(this Dismissal dismissal, ScriptFinding finding) =>
        dismissal.Id == finding.Problem.Id && dismissal.Concerns.Equals(Prose.Fold(finding.Concerns), StringComparison.OrdinalIgnoreCase);
}
