using System.Collections.Immutable;
using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>One reading of a text in the keys that sheets use: the tree and the problems.</summary>
internal sealed record Reading(OutlineMapping Tree, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>The keys of sheets, as far as the tests use them.</summary>
    public static OutlineDialect Dialect { get; } = new(
        ["says", "why", "title", "note", "reads"],
        [
            "says", "why", "title", "note", "reads", "cite", "is", "of", "because", "phrase", "choose", "do", "binds", "needs", "forbids", "rank", "pages",
            "printing", "date", "plural", "points", "each", "if", "then", "readings", "follow", "conflict", "count", "file", "columns", "price", "unless",
        ]);

    public ImmutableArray<string> Ids => [.. Problems.Select(p => p.Id)];

    public static Reading Of(string content)
    {
        var problems = new DiagnosticBag();
        OutlineMapping tree = OutlineReader.Read(new SourceText("sheet.yaml", content), Dialect, problems);
        return new Reading(tree, problems.InOrder());
    }

    /// <summary>The tree on one line: <c>{key: value}</c>, <c>[item]</c>, texts in angle quotes, <c>~</c> for nothing.</summary>
    public string Told => Tell(Tree);

    public static string Tell(OutlineNode node) => node switch
    {
        OutlineMapping m => $"{{{string.Join(", ", m.Entries.Select(e => $"{e.Key.Text}: {Tell(e.Value)}"))}}}",
        OutlineSequence s => $"[{string.Join(", ", s.Items.Select(Tell))}]",
        OutlineScalar s => $"‹{s.Text}›",
        _ => "~",
    };
}
