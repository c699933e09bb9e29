using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Loading.Sections;
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
        if (Begin(context, clause, owner, SheetDialect.EntryKeys["score"], IdiomUseKind.Score) is not { } use)
        {
            return null;
        }

        OutlineMapping body = use.Idiom.Body;
        (Pick Pick, PickSyntax Syntax)? each = body.Find("each")?.Value is OutlineScalar domain ? use.Reader.BeginPick(FormulaText.Of(domain)) : null;
        Term worth = use.Reader.Value(body.Find("points")!.Value, Sort.Number, owner);
        if (each is { } open)
        {
            use.Reader.EndPick(open.Syntax);
        }

        FormulaReader own = context.Formulas(new Scope());
        Term? Limit(string key) => use.Idiom.Find(key) is not null ? null
            : clause.Find(key) is { } given ? own.Value(given.Value, Sort.Number, owner)
            : body.Find(key) is { } usual ? use.Reader.Value(usual.Value, Sort.Number, owner) : null;
        var score = new ScoreBody(each?.Pick, worth, Limit("at least"), Limit("at most"), use.Told, use.Told.Sentence);
        return (score, Math.Max(use.Reader.Scope.FrameSize, own.Scope.FrameSize));
    }

    /// <summary>A value or condition that an idiom says; null where something is wrong, which was reported.</summary>
    public static Term? Value(LoadContext context, OutlineMapping clause, Sort wanted, string owner)
    {
        if (Begin(context, clause, owner, ["means"], IdiomUseKind.Condition) is not { } use)
        {
            return null;
        }

        Term inner = use.Reader.Value(use.Idiom.Body.Find("means")!.Value, wanted, owner);
        return new Term.Idiomatic(inner, use.Told, inner.Sort, new Origin(clause.Span, [])) { FrameSize = use.Reader.Scope.FrameSize };
    }

    /// <summary>A law that uses an idiom, for one of the actions that it binds; null where something is wrong, which was reported.</summary>
    /// <param name="context">The sheet that is being read.</param>
    /// <param name="clause">The law.</param>
    /// <param name="owner">Its name.</param>
    /// <param name="action">The action.</param>
    /// <param name="demands">The keys under which a meaning may stand.</param>
    public static (LawBody Body, int FrameSize)? Law(
        LoadContext context, OutlineMapping clause, string owner, ActionFacts action, IReadOnlyList<(string Key, DemandKind Kind)> demands)
    {
        if (Begin(context, clause, owner, [.. demands.Select(d => d.Key)], IdiomUseKind.Law, action) is not { } use)
        {
            return null;
        }

        ImmutableArray<LawDemand> said =
            [.. from d in demands from truth in LawsSection.Truths(use.Idiom.Body.Find(d.Key)?.Value) select new LawDemand(d.Kind, use.Reader.Value(truth, Sort.Truth, owner))];
        FormulaReader own = ActionScope.Open(context, action);
        Term? unless = clause.Find("unless") is { } given ? own.Value(given.Value, Sort.Truth, owner) : null;
        string sentence = unless is null ? use.Told.Sentence : $"{use.Told.Sentence.TrimEnd('.')}, unless {ClauseParts.Words(clause.Find("unless")!.Value)}.";
        return (new LawBody(said, unless, sentence) { Idiom = use.Told }, Math.Max(use.Reader.Scope.FrameSize, own.Scope.FrameSize));
    }

    // Somebody asks for `majority` or `different things`, and an idiom answers that under another name.
    private static string? Answering(IdiomLibrary idioms, string wanted) => idioms.All
        .FirstOrDefault(i => OutlineAsk.Prose(i.Body, "group") is { } group && group.Contains(Prose.Fold(wanted), StringComparison.OrdinalIgnoreCase))?.Name;

    private static Use? Begin(LoadContext context, OutlineMapping clause, string owner, ImmutableArray<string> ownKeys, IdiomUseKind kind, ActionFacts? action = null)
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

        if (idiom.Kind != kind)
        {
            context.Problems.Add(OfAnotherKind(name.Span, idiom, kind));
            return null;
        }

        ReportStrangers(context, clause, idiom, ownKeys);
        return new IdiomArgumentReader(context, idiom, clause, owner, action).Read() is { } arguments ? Bind(context, idiom, arguments, name, action) : null;
    }

    private static Diagnostic OfAnotherKind(SourceSpan at, Idiom idiom, IdiomUseKind wanted) => wanted switch
    {
        IdiomUseKind.Score => SheetProblems.IdiomDoesNotScore(at, idiom.Name, idiom.Kind == IdiomUseKind.Law),
        IdiomUseKind.Condition => SheetProblems.IdiomGivesNoValue(at, idiom.Name, idiom.Kind == IdiomUseKind.Law),
        _ => SheetProblems.IdiomIsNoLaw(at, idiom.Name, idiom.Kind == IdiomUseKind.Score),
    };

    private static Use Bind(LoadContext context, Idiom idiom, ImmutableArray<IdiomArgument> arguments, OutlineScalar name, ActionFacts? action)
    {
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
        return new Use(idiom, new FormulaReader(context, ScopeOf(action), names, through), told);
    }

    // The choices of an action stand in front of what the meaning goes through.
    private static Scope ScopeOf(ActionFacts? action)
    {
        var scope = new Scope { Action = action?.Action };
        foreach (ActionChoice choice in action?.Choices ?? [])
        {
            scope.Declare(new LetterName(choice.Name, choice.At), choice.Sort);
        }

        return scope;
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

    // What a clause may say beside its idiom.
    private static string[] OwnLimits(IdiomUseKind kind) => kind switch
    {
        IdiomUseKind.Score => ["at least", "at most"],
        IdiomUseKind.Law => ["binds", "unless"],
        _ => [],
    };

    private static void ReportStrangers(LoadContext context, OutlineMapping clause, Idiom idiom, ImmutableArray<string> ownKeys)
    {
        foreach (OutlineEntry entry in clause.Entries)
        {
            string key = entry.Key.Text;
            bool isOwn = key is "idiom" || SheetDialect.ClauseKeys.Contains(key) || OwnLimits(idiom.Kind).Contains(key);
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
