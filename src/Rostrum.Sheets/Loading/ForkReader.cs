using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>What a clause may mean: one text tree, or one for each reading.</summary>
/// <param name="Choice">The fork; null where there is one meaning.</param>
/// <param name="Alternatives">The clause's keys, with the changed keys of each reading laid over them; never empty.</param>
internal sealed record Forked(Choice? Choice, ImmutableArray<OutlineMapping> Alternatives);

/// <summary>Reads <c>readings</c>, <c>conflict</c>, <c>follow</c> and <c>why</c>.</summary>
internal static class ForkReader
{
    private static readonly string[] Deciders = ["follow", "why", "cite"];

    /// <summary>The meanings of a clause whose readings change some of its keys.</summary>
    /// <param name="context">Where choices are registered.</param>
    /// <param name="clause">The clause.</param>
    /// <param name="owner">Its name, for answers.</param>
    public static Forked OfClause(LoadContext context, OutlineMapping clause, string owner)
    {
        if (clause.Find("readings") is not { } entry)
        {
            return new Forked(null, [clause]);
        }

        ImmutableArray<OutlineEntry> readings = OutlineAsk.Entries(context, entry.Value, "the readings");
        if (readings.IsEmpty)
        {
            return new Forked(null, [clause]);
        }

        OutlineMapping common = OutlineMerge.Without(clause, "readings", "follow", "why");
        Choice choice = Register(context, owner, ChoiceCause.Reading, [.. readings.Select(r => r.Key)], clause, entry.Key);
        return new Forked(choice, [.. readings.Select(r => r.Value is OutlineMapping changes ? OutlineMerge.Lay(common, changes) : common)]);
    }

    /// <summary>The alternatives of a single value; null where the mapping is no fork.</summary>
    public static (Choice Choice, ImmutableArray<OutlineNode> Values)? OfValue(LoadContext context, OutlineMapping value, string owner)
    {
        OutlineEntry? entry = value.Find("conflict") ?? value.Find("readings");
        if (entry?.Value is not OutlineMapping inner)
        {
            return null;
        }

        ImmutableArray<OutlineEntry> alternatives = [.. inner.Entries.Where(e => !Deciders.Contains(e.Key.Text))];
        if (alternatives.IsEmpty)
        {
            return null;
        }

        ChoiceCause cause = entry.Key.Text == "conflict" ? ChoiceCause.Conflict : ChoiceCause.Reading;
        OutlineMapping deciders = inner.Find("follow") is null ? value : inner;
        Choice choice = Register(context, owner, cause, [.. alternatives.Select(a => a.Key)], OutlineMerge.Lay(value, deciders), entry.Key);
        return (choice, [.. alternatives.Select(a => a.Value)]);
    }

    /// <summary>A conflict that stands beside a clause and speaks of its wording only.</summary>
    public static Choice? OfWording(LoadContext context, OutlineMapping clause, string owner) => OfValue(context, clause, owner)?.Choice;

    private static Choice Register(LoadContext context, string owner, ChoiceCause cause, ImmutableArray<OutlineScalar> names, OutlineMapping deciders, OutlineScalar at)
    {
        if (cause == ChoiceCause.Conflict)
        {
            foreach (OutlineScalar name in names)
            {
                CitationReader.Read(context, name.Text, name.Span);
            }
        }

        int? followed = Followed(context, names, deciders);
        Citation? cite = deciders.Find("cite") is { } entry ? CitationReader.Read(context, entry.Value) : null;
        return context.Declared.AddChoice(id =>
            new Choice(id, owner, cause, [.. names.Select(n => OutlineAsk.Fold(n.Text))], followed, OutlineAsk.Prose(deciders, "why"), cite, at.Span));
    }

    private static int? Followed(LoadContext context, ImmutableArray<OutlineScalar> names, OutlineMapping deciders)
    {
        if (deciders.Find("follow")?.Value is not OutlineScalar follow)
        {
            return null;
        }

        string wanted = OutlineAsk.Fold(follow.Text);
        int at = names.Select(n => OutlineAsk.Fold(n.Text)).ToList().IndexOf(wanted);
        if (at < 0)
        {
            context.Problems.Add(SheetProblems.UnknownAlternative(follow.Span, wanted, names.Select(n => n.Text)));
            return null;
        }

        return at;
    }
}
