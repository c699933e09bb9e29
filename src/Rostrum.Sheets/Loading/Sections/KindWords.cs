using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads the kinds that lie somewhere: <c>ware</c>, <c>ware and sticks</c>, <c>fox or hen</c>, <c>[ware, stick]</c>.</summary>
internal static class KindWords
{
    private static readonly string[] Between = [" and ", " or ", ","];

    /// <summary>The kinds of a place; empty where nothing is said.</summary>
    public static ImmutableArray<Kind> Read(LoadContext context, OutlineNode? node) =>
        node is null ? [] : [.. OutlineAsk.Items(context, node, "the kinds that lie there").SelectMany(i => Read(context, i, 0))];

    /// <summary>The kinds that a text names from a character on, in singular or plural; each that is none is reported.</summary>
    public static IEnumerable<Kind> Read(LoadContext context, OutlineScalar text, int from)
    {
        int at = from;
        foreach (string name in text.Text[from..].Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            at = text.Text.IndexOf(name, at, StringComparison.Ordinal);
            if (context.Declared.Names.Find(name).Select(s => s.Symbol).OfType<Kind>().FirstOrDefault() is { } kind)
            {
                yield return kind;
            }
            else
            {
                context.Problems.Add(SheetProblems.UnknownWord(text.SpanOf(at, name.Length), name, "a kind of piece, card or die", context.Declared.Kinds.Keys.Select(k => k.Name)));
            }

            at += name.Length;
        }
    }
}
