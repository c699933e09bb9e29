using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>Gives a clause the meaning of the idiom that it uses. The idiom's words are bound for each use; their origin leads to both places.</summary>
internal static class IdiomExpander
{
    /// <summary>A scoring clause that uses an idiom; null where something is wrong, which was reported.</summary>
    public static (ScoreBody Body, int FrameSize)? Score(LoadContext context, OutlineMapping clause, string owner)
    {
        if (Begin(context, clause, owner, SheetDialect.EntryKeys["score"]) is not { } use)
        {
            return null;
        }

        OutlineMapping body = use.Idiom.Body;
        if (body.Find("points") is not { } points)
        {
            context.Problems.Add(SheetProblems.IdiomDoesNotScore(clause.Find("idiom")!.Value.Span, use.Idiom.Name));
            return null;
        }

        (Pick Pick, PickSyntax Syntax)? each = body.Find("each")?.Value is OutlineScalar domain ? use.Reader.BeginPick(FormulaText.Of(domain)) : null;
        Term worth = use.Reader.Value(points.Value, Sort.Number, owner);
        if (each is { } open)
        {
            use.Reader.EndPick(open.Syntax);
        }

        Term? Limit(string key) => (use.Idiom.Find(key) is null ? clause.Find(key) ?? body.Find(key) : null) is { } limit ? use.Reader.Value(limit.Value, Sort.Number, owner) : null;
        var score = new ScoreBody(each?.Pick, worth, Limit("at least"), Limit("at most"), use.Told, use.Told.Sentence);
        return (score, use.Reader.Scope.FrameSize);
    }

    /// <summary>A value or condition that an idiom says; null where something is wrong, which was reported.</summary>
    public static Term? Value(LoadContext context, OutlineMapping clause, Sort wanted, string owner)
    {
        if (Begin(context, clause, owner, ["means"]) is not { } use)
        {
            return null;
        }

        if (use.Idiom.Body.Find("means") is { } means)
        {
            Term inner = use.Reader.Value(means.Value, wanted, owner);
            return new Term.Idiomatic(inner, use.Told, inner.Sort, new Origin(clause.Span, [])) { FrameSize = use.Reader.Scope.FrameSize };
        }

        context.Problems.Add(SheetProblems.IdiomGivesNoValue(clause.Find("idiom")!.Value.Span, use.Idiom.Name));
        return null;
    }

    // Somebody asks for `majority` or `different things`, and an idiom answers that under another name.
    private static string? Answering(IdiomLibrary idioms, string wanted) => idioms.All
        .FirstOrDefault(i => OutlineAsk.Prose(i.Body, "group") is { } group && group.Contains(Prose.Fold(wanted), StringComparison.OrdinalIgnoreCase))?.Name;

    private static Use? Begin(LoadContext context, OutlineMapping clause, string owner, ImmutableArray<string> ownKeys)
    {
        if (OutlineAsk.Text(context, clause.Find("idiom")!.Value, "the name of an idiom") is not { } name)
        {
            return null;
        }

        if (context.Idioms.Find(Prose.Fold(name.Text)) is not { } idiom)
        {
            context.Problems.Add(SheetProblems.UnknownIdiom(name.Span, name.Text, context.Idioms.All.Select(i => i.Name), Answering(context.Idioms, name.Text)));
            return null;
        }

        ReportStrangers(context, clause, idiom, ownKeys);
        if (new IdiomArgumentReader(context, idiom, clause, owner).Read() is not { } arguments)
        {
            return null;
        }

        ImmutableArray<SourceSpan> through = [name.Span];
        Vocabulary names = KernelNames.Shared.Inner();
        foreach (IdiomArgument argument in arguments)
        {
            names.Add(argument.Parameter.As, argument.Symbol);
            if (argument.Parameter.Plural is { } plural)
            {
                names.Add(plural, argument.Symbol, isPlural: true);
            }
        }

        AddWords(context, idiom, names, through);
        var told = new IdiomUse(idiom.Name, IdiomSentence.Fill(idiom.Sentence, arguments), idiom.Source);
        return new Use(idiom, new FormulaReader(context, new Scope(), names, through), told);
    }

    private static void AddWords(LoadContext context, Idiom idiom, Vocabulary names, ImmutableArray<SourceSpan> through)
    {
        foreach (OutlineEntry entry in (idiom.Body.Find("words")?.Value as OutlineMapping)?.Entries ?? [])
        {
            if (WordHead.Read(context, entry.Key) is { } head)
            {
                names.Add(head.Name, context.AddWord(head.Name, head.Subjects, entry.Value, entry.Key.Span, through, names));
            }
        }
    }

    private static void ReportStrangers(LoadContext context, OutlineMapping clause, Idiom idiom, ImmutableArray<string> ownKeys)
    {
        foreach (OutlineEntry entry in clause.Entries)
        {
            string key = entry.Key.Text;
            bool isOwn = key is "idiom" or "at least" or "at most" || SheetDialect.ClauseKeys.Contains(key);
            if (idiom.Find(key) is null && !isOwn)
            {
                context.Problems.Add(ownKeys.Contains(key)
                    ? SheetProblems.TwoMeanings(entry.Key.Span, idiom.Name)
                    : SheetProblems.IdiomDoesNotTake(entry.Key.Span, idiom.Name, key, idiom.Parameters.Select(p => p.Name)));
            }
        }
    }

    private sealed record Use(Idiom Idiom, FormulaReader Reader, IdiomUse Told);
}
