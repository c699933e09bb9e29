using System.Collections.Immutable;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>laws</c>.</summary>
internal static class LawsSection
{
    private static readonly (string Key, DemandKind Kind)[] Demands =
        [("needs", DemandKind.Needs), ("forbids", DemandKind.Forbids), ("must leave", DemandKind.MustLeave), ("must not leave", DemandKind.MustNotLeave)];

    public static ImmutableArray<Law> Read(LoadContext context, OutlineNode section, ImmutableArray<ActionFacts> actions)
    {
        var laws = ImmutableArray.CreateBuilder<Law>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the laws"))
        {
            if (OutlineAsk.Mapping(context, entry, "what the law binds and demands") is { } mapping)
            {
                if (mapping.Find("idiom") is null)
                {
                    OutlineAsk.CheckKeys(context, mapping, "laws");
                }

                laws.Add(ReadLaw(context, entry.Key, mapping, actions));
            }
        }

        return laws.ToImmutable();
    }

    private static Law ReadLaw(LoadContext context, OutlineScalar key, OutlineMapping mapping, ImmutableArray<ActionFacts> actions)
    {
        string name = Prose.Fold(key.Text);
        Citation? cite = ClauseParts.CiteOrWarn(context, mapping, key, name);
        ImmutableArray<ActionFacts> bound = Binds(context, key, mapping, actions);
        Forked forked = ForkReader.OfClause(context, mapping, name, "laws");
        if (forked.Alternatives.Any(a => !SaysSomething(a) && !OutlineAsk.HasUnknownKey(a, "laws")))
        {
            context.Problems.Add(SheetProblems.LawBindsNothing(key.Span, name));
        }

        int size = 0;
        ImmutableArray<ImmutableArray<LawBody>> bodies = [.. forked.Alternatives.Select(a => bound.Select(b => Body(context, name, a, b, ref size)).ToImmutableArray())];
        return new Law(name, OutlineAsk.Prose(mapping, "says"), cite, forked.Choice, [.. bound.Select(b => b.Action)], bodies, key.Span, size);
    }

    private static ImmutableArray<ActionFacts> Binds(LoadContext context, OutlineScalar key, OutlineMapping mapping, ImmutableArray<ActionFacts> actions)
    {
        if (mapping.Find("binds") is not { } binds)
        {
            if (!OutlineAsk.HasUnknownKey(mapping, "laws"))
            {
                context.Problems.Add(SheetProblems.BindsNothing(key.Span, key.Text));
            }

            return [];
        }

        var bound = ImmutableArray.CreateBuilder<ActionFacts>();
        foreach (OutlineScalar item in OutlineAsk.Items(context, binds.Value, "the action that the law binds"))
        {
            string name = Prose.Fold(item.Text);
            ActionFacts? action = actions.FirstOrDefault(a => a.Action.Name == name);
            if (action is null)
            {
                context.Problems.Add(SheetProblems.UnknownWord(item.Span, name, "an action", actions.Select(a => a.Action.Name)));
            }
            else
            {
                bound.Add(action);
            }
        }

        return bound.ToImmutable();
    }

    private static bool SaysSomething(OutlineMapping law) => law.Find("idiom") is not null || Demands.Any(d => law.Find(d.Key) is not null);

    private static LawBody Body(LoadContext context, string name, OutlineMapping mapping, ActionFacts action, ref int size)
    {
        if (mapping.Find("idiom") is not null)
        {
            (LawBody said, int needed) = IdiomExpander.Law(context, mapping, name, action, Demands) ?? (new LawBody([], null, ""), 0);
            size = Math.Max(size, needed);
            return said;
        }

        FormulaReader reader = ActionScope.Open(context, action);
        var demands = ImmutableArray.CreateBuilder<LawDemand>();
        foreach ((string key, DemandKind kind) in Demands)
        {
            foreach (OutlineNode truth in Truths(mapping.Find(key)?.Value))
            {
                demands.Add(new LawDemand(kind, reader.Value(truth, Sort.Truth, name)));
            }
        }

        Term? unless = mapping.Find("unless") is { } u ? reader.Value(u.Value, Sort.Truth, name) : null;
        size = Math.Max(size, reader.Scope.FrameSize);
        IEnumerable<string> words = Demands.Where(d => mapping.Find(d.Key) is not null).Select(d => $"{d.Key} {ClauseParts.Words(mapping.Find(d.Key)!.Value)}");
        string formula = string.Join("; ", mapping.Find("unless") is { } given ? words.Append($"unless {ClauseParts.Words(given.Value)}") : words);
        return new LawBody(demands.ToImmutable(), unless, formula);
    }

    /// <summary>The demands behind one key: one, or a list of them.</summary>
    public static IEnumerable<OutlineNode> Truths(OutlineNode? node) => node switch
    {
        null => [],
        OutlineSequence list => list.Items,
        _ => [node],
    };
}
