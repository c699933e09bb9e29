using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>ties</c>: <c>fewer my shards</c>, <c>more my sticks</c>, <c>shared</c>. What is counted is held against the names of the sheet.</summary>
internal static class TiesSection
{
    private static readonly string[] Comparisons = ["fewer", "more", "lower", "higher"];

    /// <summary>The tie-breaks in the author's words, in order.</summary>
    public static ImmutableArray<string> Read(LoadContext context, OutlineNode section)
    {
        if (section is OutlineScalar { Style: OutlineStyle.Plain } line && line.Text.Contains(',', StringComparison.Ordinal))
        {
            context.Problems.Add(SheetProblems.SeveralTieBreaks(line.Span));
            return [];
        }

        ImmutableArray<OutlineScalar> items = OutlineAsk.Items(context, section, "the tie-breaks in order");
        foreach (OutlineScalar item in items.Where(i => Prose.Fold(i.Text) != "shared" && !OutlineAsk.IsLeftOut(i)))
        {
            Check(context, item);
        }

        return [.. items.Select(i => Prose.Fold(i.Text))];
    }

    private static void Check(LoadContext context, OutlineScalar item)
    {
        string first = Prose.WordsOf(item.Text).FirstOrDefault() ?? "";
        int counted = item.Text.IndexOf(first, StringComparison.Ordinal) + first.Length;
        if (Comparisons.Contains(first) && counted < item.Text.TrimEnd().Length)
        {
            context.Formulas(new Scope()).Formula(FormulaText.Of(item).Part(counted, item.Text.Length - counted), Sort.Any, "ties");
            return;
        }

        string? near = first == "less" ? "fewer" : NearSpelling.Find(first, [.. Comparisons, "shared"]);
        context.Problems.Add(SheetProblems.NoTieBreak(item.Span, item.Text, first == near ? null : near, item.SpanOf(counted - first.Length, first.Length)));
    }
}
