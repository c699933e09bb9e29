using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows a sheet read back as English: a heading for each section, each clause with its page, then variants.</summary>
internal sealed class ReadScreen
{
    private const int Indent = 4;

    private readonly Paper _paper = new();

    /// <summary>The text.</summary>
    public static string Of(SheetStory story)
    {
        var screen = new ReadScreen();
        screen._paper.Line(story.Title);
        foreach (IGrouping<string, ReadClause> section in story.Clauses.GroupBy(c => c.Section))
        {
            screen.Heading(section.Key);
            screen.Clauses(section);
        }

        foreach (VariantStory variant in story.Variants)
        {
            screen.Variant(variant);
        }

        return screen._paper.ToString();
    }

    private void Heading(string words)
    {
        _paper.Line();
        _paper.Line(words);
        _paper.Line(new string('-', DisplayText.WidthOf(words)));
    }

    private void Clauses(IEnumerable<ReadClause> clauses)
    {
        foreach (ReadClause clause in clauses)
        {
            Clause(clause);
        }
    }

    private void Clause(ReadClause clause)
    {
        _paper.Edges(clause.Name, clause.Status == ClauseStatus.NotModelled || clause.Section == "Sources" ? "" : Citation.Tell(clause.Cite));
        _paper.Wrapped(clause.Says, Indent);
        if (clause.Meaning is { } meaning && meaning != clause.Says)
        {
            _paper.Wrapped($"as modelled: {meaning}", Indent, hanging: 2);
        }

        if (clause.Status is not (ClauseStatus.Settled or ClauseStatus.NotModelled))
        {
            _paper.Wrapped(clause.StatusInWords, Indent, hanging: 2);
        }
    }

    private void Variant(VariantStory variant)
    {
        Heading($"With {variant.Name}");
        if (variant.Says is { } says)
        {
            _paper.Wrapped(says, 0);
        }

        foreach (ReadDifference difference in variant.Differences)
        {
            ReadClause either = difference.After ?? difference.Before!;
            string how = difference switch { { Before: null } => "new", { After: null } => "gone", _ => "changed" };
            _paper.Edges($"{how}: {either.Section}, {either.Name}", Citation.Tell(either.Cite));
            (string? before, string? after) = difference.InWords;
            Told("before: ", before);
            Told(before is null ? "" : "now: ", after);
        }

        if (!variant.Rest.Untold.IsEmpty)
        {
            _paper.Wrapped($"Written differently, though it reads the same: {Prose.And(variant.Rest.Untold.Select(u => $"'{u}'"))}.", 0);
        }

        _paper.Wrapped($"Nothing else changes: {Prose.Count(variant.Rest.Same, "other entry of the sheet is", "other entries of the sheet are")} the same, word for word.", 0);
    }

    private void Told(string how, string? words)
    {
        if (words is not null)
        {
            _paper.Wrapped(how + words, Indent, hanging: 2);
        }
    }
}
