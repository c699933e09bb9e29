using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes the words of a block.</summary>
internal static class RunWriter
{
    /// <summary>Writes runs from left to right.</summary>
    public static void Write(PageContext page, ImmutableArray<PageRun> runs)
    {
        foreach (PageRun run in runs)
        {
            Write(page, run);
        }
    }

    private static void Write(PageContext page, PageRun run)
    {
        _ = run switch
        {
            PageRun.Text text => page.Out.Text(text.Words),
            PageRun.Emphasis emphasis => page.Out.Leaf("em", emphasis.Words),
            PageRun.Strong strong => page.Out.Leaf("strong", strong.Words),
            PageRun.Code code => page.Out.Leaf("code", code.Words),
            PageRun.Link link when LinkFilter.Allows(link.Target) => page.Out.Leaf("a", link.Words, ("href", link.Target), ("rel", "noreferrer")),
            PageRun.Link link => page.Out.Text(link.Words),
            PageRun.Value value => Value(page, value),
            PageRun.Marked marked => Note(page.Out.Leaf("u", marked.Said, ("class", $"said {ToneOf(marked.Status)}")), marked.Note, marked.Status),
            _ => throw new InvalidOperationException("A kind of run is not written."),
        };
    }

    private static Markup Value(PageContext page, PageRun.Value value)
    {
        string tone = ToneOf(value.Status);
        string? id = page.MentionAnchor(value.SlipId);
        page.Out.Leaf("a", value.Said, ("class", $"said {tone}"), ("id", id), ("href", $"#{page.SlipAnchor(value.SlipId)}"));
        return Note(page.Out, NoteOf(value), value.Status);
    }

    private static Markup Note(Markup written, string note, ValueStatus status) =>
        note.Length == 0 ? written : written.Text(" ").Leaf("span", $"({note})", ("class", $"note {ToneOf(status)}"));

    private static string ToneOf(ValueStatus status) => status switch
    {
        ValueStatus.Right => "right",
        ValueStatus.Wrong => "wrong",
        _ => "open",
    };

    private static string NoteOf(PageRun.Value value) => value switch
    {
        { Status: ValueStatus.Right } => "",
        { Note.Length: > 0 } => value.Note,
        { Status: ValueStatus.Wrong } => "the rules say otherwise",
        _ => "the rules do not say",
    };
}
