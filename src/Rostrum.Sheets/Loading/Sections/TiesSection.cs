using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>ties</c>: <c>fewer my shards</c>, <c>more my sticks</c>, <c>shared</c>. What is compared is a number, or several things, which are counted.</summary>
internal static class TiesSection
{
    private const string Shared = "shared";

    private static readonly string[] Comparisons = ["fewer", "more", "lower", "higher"];

    /// <summary>The tie-breaks in order: the author's words, and what they mean; null for one that is not modelled or holds a mistake.</summary>
    public static ImmutableArray<(string Words, TieBreak? Means)> Read(LoadContext context, OutlineNode section)
    {
        if (section is OutlineScalar { Style: OutlineStyle.Plain } line && line.Text.Contains(',', StringComparison.Ordinal))
        {
            context.Problems.Add(SheetProblems.SeveralTieBreaks(line.Span));
            return [];
        }

        return [.. OutlineAsk.Items(context, section, "the tie-breaks in order").Select(i => (Prose.Fold(i.Text), TieBreak(context, i)))];
    }

    private static TieBreak? TieBreak(LoadContext context, OutlineScalar item)
    {
        if (OutlineAsk.IsLeftOut(item))
        {
            context.LeaveOut("what tells equal players apart");
            return null;
        }

        string words = Prose.Fold(item.Text);
        return words == Shared ? new TieBreak(words, false, null) : Compared(context, item, words);
    }

    private static TieBreak? Compared(LoadContext context, OutlineScalar item, string words)
    {
        string first = Prose.WordsOf(item.Text).FirstOrDefault() ?? "";
        int counted = item.Text.IndexOf(first, StringComparison.Ordinal) + first.Length;
        if (!Comparisons.Contains(first) || counted >= item.Text.TrimEnd().Length)
        {
            string? near = first == "less" ? "fewer" : NearSpelling.Find(first, [.. Comparisons, Shared]);
            context.Problems.Add(SheetProblems.NoTieBreak(item.Span, item.Text, first == near ? null : near, item.SpanOf(counted - first.Length, first.Length)));
            return null;
        }

        FormulaReader reader = context.Formulas(new Scope());
        Term number = reader.Count(FormulaText.Of(item).Part(counted, item.Text.Length - counted), "ties");
        return new TieBreak(words, first is "more" or "higher", number) { FrameSize = reader.Scope.FrameSize };
    }
}
