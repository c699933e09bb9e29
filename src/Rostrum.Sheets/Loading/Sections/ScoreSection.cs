using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>score</c>.</summary>
internal static class ScoreSection
{
    public static ImmutableArray<ScoreClause> Read(LoadContext context, OutlineNode section)
    {
        var clauses = ImmutableArray.CreateBuilder<ScoreClause>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the scoring clauses", "apples: {points: 2 times count(my apples)}"))
        {
            string name = Prose.Fold(entry.Key.Text);
            OutlineMapping mapping = entry.Value switch
            {
                OutlineMapping m => m,
                // `gold: 3 times count(my coins)` is short for its points.
                OutlineScalar points => new OutlineMapping(points.Span, [new OutlineEntry(new OutlineScalar(entry.Key.Span, "points", OutlineStyle.Plain, entry.Key.TextStart), points)]),
                _ => new OutlineMapping(entry.Value.Span, []),
            };
            clauses.Add(Clause(context, name, mapping, entry.Key));
        }

        return clauses.ToImmutable();
    }

    private static ScoreClause Clause(LoadContext context, string name, OutlineMapping mapping, OutlineScalar key)
    {
        if (mapping.Find("idiom") is null)
        {
            OutlineAsk.CheckKeys(context, mapping, "score");
        }

        Citation? cite = ClauseParts.CiteOrWarn(context, mapping, key, name);
        Forked forked = ForkReader.OfClause(context, mapping, name, "score");
        (ScoreBody Body, int Size)[] bodies = [.. forked.Alternatives.Select(a => Body(context, name, a, key))];
        return new ScoreClause(name, OutlineAsk.Prose(mapping, "says"), cite, forked.Choice, [.. bodies.Select(b => b.Body)], key.Span, bodies.Max(b => b.Size));
    }

    private static (ScoreBody Body, int Size) Body(LoadContext context, string name, OutlineMapping mapping, OutlineScalar key)
    {
        if (mapping.Find("idiom") is not null)
        {
            return IdiomExpander.Score(context, mapping, name) ?? (Mistake(key), 0);
        }

        if (mapping.Find("points") is not { } points)
        {
            if (!OutlineAsk.HasUnknownKey(mapping, "score"))
            {
                context.Problems.Add(SheetProblems.NoPoints(key.Span, name));
            }

            return (Mistake(key), 0);
        }

        FormulaReader reader = context.Formulas(new Scope());
        (Pick Pick, PickSyntax Syntax)? each = mapping.Find("each")?.Value is OutlineScalar domain ? reader.BeginPick(FormulaText.Of(domain)) : null;
        Term worth = reader.Value(points.Value, Sort.Number, name);
        if (each is { } open)
        {
            reader.EndPick(open.Syntax);
        }

        Term? Limit(string limitKey) => mapping.Find(limitKey) is { } limit ? reader.Value(limit.Value, Sort.Number, name) : null;
        return (new ScoreBody(each?.Pick, worth, Limit("at least"), Limit("at most"), null, InWords(mapping)), reader.Scope.FrameSize);
    }

    private static string InWords(OutlineMapping mapping)
    {
        string points = ClauseParts.Words(mapping.Find("points")?.Value);
        return mapping.Find("each") is { } each ? $"for each {ClauseParts.Words(each.Value)}: {points}" : points;
    }

    private static ScoreBody Mistake(OutlineScalar key) =>
        new(null, new Term.NotYet("a part with a mistake in it", Sort.Number, Origin.Of(key.Span)), null, null, null, "");
}
