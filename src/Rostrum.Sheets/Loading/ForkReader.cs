using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
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
    /// <param name="section">The section whose keys the changes may have; null where they are looked at elsewhere.</param>
    public static Forked OfClause(LoadContext context, OutlineMapping clause, string owner, string? section = null)
    {
        if ((clause.Find("readings") ?? ConflictOf(clause)) is not { } entry)
        {
            return new Forked(null, [clause]);
        }

        bool isConflict = entry.Key.Text == "conflict";
        ImmutableArray<OutlineEntry> inner = OutlineAsk.Entries(context, entry.Value, isConflict ? "what each source says" : "the readings");
        ImmutableArray<(OutlineEntry Entry, Citation? Source)> alternatives = Alternatives(context, inner, isConflict);
        if (alternatives.IsEmpty)
        {
            return new Forked(null, [clause]);
        }

        foreach (OutlineMapping changes in section is null || clause.Find("idiom") is not null ? [] : alternatives.Select(a => a.Entry.Value).OfType<OutlineMapping>())
        {
            OutlineAsk.CheckKeys(context, changes, section!);
        }

        OutlineMapping common = isConflict ? OutlineMerge.Without(clause, "conflict") : OutlineMerge.Without(clause, "readings", "follow", "why");
        OutlineMapping deciders = entry.Value is OutlineMapping own && own.Find("follow") is not null ? own : clause;
        Choice choice = Register(context, owner, isConflict ? ChoiceCause.Conflict : ChoiceCause.Reading, alternatives, deciders, entry.Key);
        return new Forked(choice, [.. alternatives.Select(r => r.Entry.Value is OutlineMapping changes ? OutlineMerge.Lay(common, changes) : common)]);
    }

    // A conflict of a clause changes keys, or only tells how the sources word it; alone in a mapping it is a value.
    private static OutlineEntry? ConflictOf(OutlineMapping clause) =>
        clause.Find("conflict") is { Value: OutlineMapping inner } entry
        && (inner.Entries.Any(e => e.Value is OutlineMapping) || clause.Entries.Any(e => !SheetDialect.ClauseKeys.Contains(e.Key.Text))) ? entry : null;

    /// <summary>The alternatives of a single value; null where the mapping is no fork.</summary>
    public static (Choice Choice, ImmutableArray<OutlineNode> Values)? OfValue(LoadContext context, OutlineMapping value, string owner)
    {
        OutlineEntry? entry = value.Find("conflict") ?? value.Find("readings");
        if (entry?.Value is not OutlineMapping inner)
        {
            return null;
        }

        ChoiceCause cause = entry.Key.Text == "conflict" ? ChoiceCause.Conflict : ChoiceCause.Reading;
        ImmutableArray<(OutlineEntry Entry, Citation? Source)> alternatives = Alternatives(context, inner.Entries, cause == ChoiceCause.Conflict);
        if (alternatives.IsEmpty)
        {
            return null;
        }

        OutlineMapping deciders = inner.Find("follow") is null ? value : inner;
        Choice choice = Register(context, owner, cause, alternatives, OutlineMerge.Lay(value, deciders), entry.Key);
        return (choice, [.. alternatives.Select(a => a.Entry.Value)]);
    }

    // Readings as they are written; of sources that disagree the weightiest first, so that an answer under the first of them is the likeliest.
    private static ImmutableArray<(OutlineEntry Entry, Citation? Source)> Alternatives(LoadContext context, IEnumerable<OutlineEntry> entries, bool isConflict)
    {
        (OutlineEntry Entry, Citation? Source)[] all =
            [.. entries.Where(e => !Deciders.Contains(e.Key.Text)).Select(e => (e, isConflict ? CitationReader.Read(context, e.Key.Text, e.Key.Span) : null))];
        return [.. all.OrderBy(a => a.Source?.Source.Rank ?? int.MaxValue)];
    }

    /// <summary>A conflict that stands beside a clause and speaks of its wording only.</summary>
    public static Choice? OfWording(LoadContext context, OutlineMapping clause, string owner) => OfValue(context, clause, owner)?.Choice;

    private static Choice Register(
        LoadContext context, string owner, ChoiceCause cause, ImmutableArray<(OutlineEntry Entry, Citation? Source)> alternatives, OutlineMapping deciders, OutlineScalar at)
    {
        ImmutableArray<OutlineScalar> names = [.. alternatives.Select(a => a.Entry.Key)];
        int? followed = Followed(context, names, deciders);
        Citation? cite = deciders.Find("cite") is { } entry ? CitationReader.Read(context, entry.Value) : null;
        return context.Declared.AddChoice(id =>
            new Choice(id, owner, cause, [.. names.Select(n => Prose.Fold(n.Text))], followed, OutlineAsk.Prose(deciders, "why"), cite, at.Span)
            {
                Says = [.. alternatives.Select(a => Says(a.Entry.Value))],
                Sources = [.. alternatives.Select(a => a.Source)],
            });
    }

    // What a source says is a value or a sentence; what a reading says is told where the author tells it.
    private static string Says(OutlineNode alternative) => alternative switch
    {
        OutlineScalar value => Prose.Fold(value.Text),
        OutlineMapping changes => OutlineAsk.Prose(changes, "says") ?? "",
        _ => "",
    };

    private static int? Followed(LoadContext context, ImmutableArray<OutlineScalar> names, OutlineMapping deciders)
    {
        if (deciders.Find("follow")?.Value is not OutlineScalar follow)
        {
            return null;
        }

        string wanted = Prose.Fold(follow.Text);
        int at = names.Select(n => Prose.Fold(n.Text)).ToList().IndexOf(wanted);
        if (at < 0)
        {
            context.Problems.Add(SheetProblems.UnknownAlternative(follow.Span, wanted, names.Select(n => n.Text)));
            return null;
        }

        return at;
    }
}
