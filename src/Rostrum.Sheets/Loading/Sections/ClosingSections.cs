using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads the sections that close a sheet: <c>rating</c>, <c>open questions</c>, <c>not modelled</c>.</summary>
internal static class ClosingSections
{
    public static ImmutableArray<string> Words(LoadContext context, OutlineNode section, string what) =>
        [.. OutlineAsk.Items(context, section, what).Select(i => Prose.Fold(i.Text))];

    public static ImmutableArray<OpenQuestion> Questions(LoadContext context, OutlineNode section)
    {
        var questions = ImmutableArray.CreateBuilder<OpenQuestion>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the open questions"))
        {
            OutlineMapping? mapping = entry.Value as OutlineMapping;
            if (mapping is not null)
            {
                OutlineAsk.CheckKeys(context, mapping, "open questions");
            }

            string says = mapping is not null ? OutlineAsk.Prose(mapping, "says") ?? "" : ClauseParts.Words(entry.Value);
            string words = says.Length > 0 ? says : Prose.Fold(entry.Key.Text);
            Citation? cite = mapping is null ? null : ClauseParts.CiteOrWarn(context, mapping, entry.Key, entry.Key.Text);
            questions.Add(new OpenQuestion(Prose.Fold(entry.Key.Text), words, cite, About(context, mapping), entry.Key.Span));
        }

        return questions.ToImmutable();
    }

    private static string? About(LoadContext context, OutlineMapping? question)
    {
        if (question?.Find("about")?.Value is not OutlineScalar about)
        {
            return null;
        }

        string owner = Prose.Fold(about.Text);
        string[] known = [.. context.Declared.Choices.Select(c => c.Owner)];
        if (!known.Contains(owner))
        {
            context.Problems.Add(SheetProblems.UnknownWord(about.Span, owner, "something with readings or a conflict", known));
        }

        return owner;
    }

    public static (ImmutableArray<RatingStep> Steps, ImmutableArray<(string Variant, long Points)> Credit) Rating(
        LoadContext context, OutlineNode section, IReadOnlyCollection<string> variants)
    {
        if (section is not OutlineMapping mapping)
        {
            context.Problems.Add(SheetProblems.WantedEntries(section.Span, "'steps' and perhaps 'credit'"));
            return ([], []);
        }

        OutlineAsk.CheckKeys(context, mapping, "rating");
        var credit = ImmutableArray.CreateBuilder<(string, long)>();
        foreach (OutlineEntry entry in mapping.Find("credit") is { } c ? OutlineAsk.Entries(context, c.Value, "variants with points") : [])
        {
            string variant = Prose.Fold(entry.Key.Text);
            if (!variants.Contains(variant))
            {
                context.Problems.Add(SheetProblems.UnknownVariant(entry.Key.Span, variant, variants));
            }
            else if (OutlineAsk.Number(context, entry.Value, "points") is { } points)
            {
                credit.Add((variant, points));
            }
        }

        return (Steps(context, mapping), credit.ToImmutable());
    }

    private static ImmutableArray<RatingStep> Steps(LoadContext context, OutlineMapping mapping)
    {
        var steps = ImmutableArray.CreateBuilder<RatingStep>();
        foreach (OutlineEntry entry in mapping.Find("steps") is { } s ? OutlineAsk.Entries(context, s.Value, "totals with names") : [])
        {
            if (OutlineAsk.NumberIn(entry.Key.Text) is { } from)
            {
                steps.Add(new RatingStep(steps.Count == 0 ? null : from, ClauseParts.Words(entry.Value)));
            }
            else
            {
                context.Problems.Add(SheetProblems.WantedNumber(entry.Key.Span, entry.Key.Text, "the lowest total of a step"));
            }
        }

        return steps.ToImmutable();
    }
}
