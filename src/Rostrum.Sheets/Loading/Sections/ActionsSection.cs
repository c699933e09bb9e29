using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>actions</c>, <c>powers</c> and the blocks of steps: names and phrases first, so that steps may call any action.</summary>
internal sealed class ActionsSection(LoadContext context)
{
    /// <summary>Keys of the sheet whose value is steps.</summary>
    public static readonly ImmutableArray<string> BlockKeys = ["set-up", "turn", "course", "closing"];

    private readonly List<(ActionName Name, OutlineMapping Text)> _texts = [];
    private readonly Dictionary<ActionName, ChosenFirst> _chosen = [];

    /// <summary>The names of the actions, in the order of the sheet.</summary>
    public IReadOnlyCollection<ActionName> Names => [.. _texts.Select(t => t.Name)];

    public void Declare(OutlineNode section)
    {
        context.Declared.ChoicesOf = action => Choose(action).Known;
        OutlineEntry[] entries = [.. OutlineAsk.Entries(context, section, "the actions")];
        string[] named = [.. entries.Select(e => Prose.Fold(e.Key.Text))];
        foreach (OutlineEntry entry in entries)
        {
            string name = Prose.Fold(entry.Key.Text);
            OutlineMapping mapping = entry.Value switch
            {
                OutlineMapping m => m,
                OutlineSequence or OutlineScalar when !OutlineAsk.IsLeftOut(entry.Value) =>
                    new OutlineMapping(entry.Value.Span, [new OutlineEntry(new OutlineScalar(entry.Key.Span, "do", OutlineStyle.Plain, entry.Key.TextStart), entry.Value)]),
                _ => new OutlineMapping(entry.Value.Span, []),
            };
            if (OutlineAsk.IsLeftOut(entry.Value))
            {
                context.LeaveOut($"'{name}'");
            }

            OutlineAsk.CheckKeys(context, mapping, "actions");
            ActionPhrase phrase = mapping.Find("phrase")?.Value is OutlineScalar words
                ? new PhraseReader(context.Problems, name).Read(words)
                : PhraseReader.OfName(name);
            var action = new ActionName(name, phrase, _texts.Count, entry.Key.Span);
            Name(action, phrase, named);
            _texts.Add((action, mapping));
        }
    }

    public ImmutableArray<ActionFacts> Bind() => [.. _texts.Select(Bind)];

    /// <summary>The blocks of the sheet itself.</summary>
    public ImmutableArray<Block> Blocks(OutlineMapping sheet)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        foreach (OutlineEntry entry in sheet.Entries.Where(e => BlockKeys.Contains(e.Key.Text)))
        {
            if (ReadBlock(entry, context.Formulas(new Scope())) is var (steps, cite, size))
            {
                blocks.Add(new Block(entry.Key.Text, steps, cite, size));
            }
        }

        return blocks.ToImmutable();
    }

    /// <summary>The hooks of the sheet; one on an action knows what the action chose.</summary>
    public ImmutableArray<Hook> Hooks(OutlineMapping sheet, ImmutableArray<ActionFacts> actions)
    {
        var hooks = ImmutableArray.CreateBuilder<Hook>();
        foreach (OutlineEntry entry in sheet.Entries.Where(e => OutlineMerge.IsHook(e.Key.Text)))
        {
            string lead = OutlineMerge.HookOf(entry.Key.Text);
            string name = Prose.Fold(entry.Key.Text[lead.Length..]);
            CheckHook(entry.Key);
            ActionFacts? action = actions.FirstOrDefault(a => a.Action.Name == name);
            if (ReadBlock(entry, ActionScope.Open(context, action)) is var (steps, cite, size) && (action is not null || BlockKeys.Contains(name)))
            {
                HookWhen when = lead switch { "before " => HookWhen.Before, "after " => HookWhen.After, _ => HookWhen.InsteadOf };
                hooks.Add(new Hook(when, name, action?.Action, steps, cite, size));
            }
        }

        return hooks.ToImmutable();
    }

    private (ImmutableArray<Step> Steps, Citation? Cite, int FrameSize)? ReadBlock(OutlineEntry entry, FormulaReader reader)
    {
        (OutlineNode steps, Citation? cite) = entry.Value is OutlineMapping mapping && mapping.Find("do") is { } inner
            ? (inner.Value, context.Cite(mapping))
            : (entry.Value, null);
        if (OutlineAsk.IsLeftOut(steps))
        {
            context.LeaveOut($"'{entry.Key.Text}'");
            return null;
        }

        ImmutableArray<Step> read = Steps(reader, steps);
        return (read, cite, reader.Scope.FrameSize);
    }

    public ImmutableArray<Power> Powers(OutlineNode section, ImmutableArray<ActionFacts> actions, ImmutableArray<Law> laws)
    {
        var powers = ImmutableArray.CreateBuilder<Power>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the powers"))
        {
            if (OutlineAsk.Mapping(context, entry, "what the power lifts and costs") is { } mapping)
            {
                OutlineAsk.CheckKeys(context, mapping, "powers");
                powers.Add(ReadPower(entry.Key, mapping, actions, laws));
            }
        }

        return powers.ToImmutable();
    }

    // `before lay`, `after set-up`: what comes behind the first words is an action or a block.
    private void CheckHook(OutlineScalar key)
    {
        string[] names = [.. _texts.Select(t => t.Name.Name), .. BlockKeys];
        string hook = OutlineMerge.HookOf(key.Text);
        string name = key.Text[hook.Length..].Trim();
        if (hook.Length > 0 && !names.Contains(Prose.Fold(name)))
        {
            context.Problems.Add(SheetProblems.UnknownWord(key.SpanOf(key.Text.Length - key.Text[hook.Length..].TrimStart().Length, name.Length), name, "an action or a block of steps", names));
        }
    }

    private void CheckJoins(OutlineMapping text)
    {
        if (text.Find("joins")?.Value is OutlineScalar joined && !_texts.Exists(t => t.Name.Name == Prose.Fold(joined.Text)))
        {
            context.Problems.Add(SheetProblems.UnknownWord(joined.Span, joined.Text, "an action", _texts.Select(t => t.Name.Name)));
        }
    }

    private void Name(ActionName action, ActionPhrase phrase, string[] named)
    {
        if (StepWords.Named(action.Name) is { } step)
        {
            context.Problems.Add(StepProblems.NameIsStep(action.DeclaredAt!.Value, step, StepWords.Instead(step, named)));
        }

        // An action is only named in steps and after `can`: it may bear a word that formulas use otherwise, such as `place`.
        if (context.Declared.Names.Find(action.Name).Select(s => s.Symbol).FirstOrDefault(s => s is ActionName) is { } other)
        {
            context.Problems.Add(SheetProblems.NameTaken(action.DeclaredAt!.Value, action.Name, action.Role, other));
            return;
        }

        context.Declared.Names.Add(action.Name, action);
        string opening = string.Join(' ', phrase.Parts.TakeWhile(p => !p.IsGap).Select(p => p.Words));
        if (opening.Length > 0 && opening != action.Name)
        {
            context.Declared.Names.Add(opening, action);
        }
    }

    private ActionFacts Bind((ActionName Name, OutlineMapping Text) action)
    {
        OutlineMapping text = action.Text;
        ChosenFirst chosen = Choose(action.Name);
        (Vocabulary names, Scope scope, ImmutableArray<ActionChoice> choices) = (chosen.Names, chosen.Scope, chosen.Choices);
        if (text.Find("phrase") is { } phrase)
        {
            new PhraseReader(context.Problems).CheckGaps(action.Name.Phrase, phrase.Value.Span, choices);
        }

        CheckJoins(text);
        ImmutableArray<Step> steps = text.Find("do") is { } inner ? new StepReader(context.Declared, names, scope, context.Problems).Read(inner.Value) : [];
        Citation? cite = context.Cite(text);
        return new ActionFacts(action.Name, choices, steps, scope.FrameSize, OutlineAsk.Prose(text, "says"), cite) { Joins = OutlineAsk.Prose(text, "joins"), IsFinal = OutlineAsk.OneOf(context, text, "final", "'yes' or 'no'", ["no", "yes"]) == 1 };
    }

    // Formulas may speak of what another action chose, so choices are read when the first of them does; words and steps come later.
    private ChosenFirst Choose(ActionName action)
    {
        if (_chosen.TryGetValue(action, out ChosenFirst? known))
        {
            return known;
        }

        OutlineNode? choose = _texts[action.Index].Text.Find("choose")?.Value;
        var read = new ChosenFirst(
            context.Declared.Names.Inner(), new Scope { Action = action }, new KnownChoices([.. (choose as OutlineMapping)?.Entries.Select(e => Prose.Fold(e.Key.Text)) ?? []]));
        _chosen[action] = read;
        read.Choices = choose is null ? [] : new ChoiceReader(context.Declared, read.Names, read.Scope, context.Problems) { Known = read.Known }.Read(choose);
        return read;
    }

    private Power ReadPower(OutlineScalar key, OutlineMapping mapping, ImmutableArray<ActionFacts> actions, ImmutableArray<Law> laws)
    {
        string name = Prose.Fold(key.Text);
        if (mapping.Find("lifts") is null && !OutlineAsk.HasUnknownKey(mapping, "powers"))
        {
            context.Problems.Add(SheetProblems.Missing(key.Span, name, "lifts", "lifts: any one law"));
        }

        ActionFacts? bound = mapping.Find("for")?.Value is OutlineScalar action ? Find(action, actions) : null;
        FormulaReader reader = ActionScope.Open(context, bound);
        Term? condition = mapping.Find("if") is { } given ? reader.Value(given.Value, Sort.Truth, name) : null;
        ImmutableArray<Step> price = mapping.Find("price") is { } cost ? Steps(reader, cost.Value) : [];
        (int? times, LimitPer per) = mapping.Find("limit") is { } limit ? Limit(context, limit.Value) : (null, LimitPer.Game);
        return new Power(
            name, OutlineAsk.Prose(mapping, "says"), ClauseParts.CiteOrWarn(context, mapping, key, name), Lifted(mapping, laws), bound?.Action, condition, price, key.Span,
            reader.Scope.FrameSize) { LimitTimes = times, LimitPer = per };
    }

    // `once a game`, `twice a round`, `3 times a turn`
    private static (int? Times, LimitPer Per) Limit(LoadContext context, OutlineNode node)
    {
        if (OutlineAsk.Text(context, node, "how often it may be used, such as 'once a game'") is not { } scalar)
        {
            return (null, LimitPer.Game);
        }

        string[] words = Prose.WordsOf(scalar.Text);
        (long? times, int behind) = words switch
        {
            ["once", ..] => (1, 1),
            ["twice", ..] => (2, 1),
            [var number, "times" or "time", ..] => (OutlineAsk.NumberIn(number), 2),
            _ => (null, 0),
        };
        string span = words.Length == behind + 2 && words[behind] is "a" or "each" ? words[^1] : "";
        int per = Array.IndexOf(["game", "round", "turn"], span);
        if (times is not (>= 1 and <= 1000) || per < 0)
        {
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, scalar.Text, "a limit of a power", ["once a game", "once a round", "once a turn", "twice a game", "3 times a game"]));
            return (null, LimitPer.Game);
        }

        return ((int)times, (LimitPer)per);
    }

    private ImmutableArray<string> Lifted(OutlineMapping mapping, ImmutableArray<Law> laws)
    {
        var lifted = ImmutableArray.CreateBuilder<string>();
        foreach (OutlineScalar item in mapping.Find("lifts") is { } lifts ? OutlineAsk.Items(context, lifts.Value, "the laws that the power lifts") : [])
        {
            string law = Prose.Fold(item.Text);
            if (law == "any one law")
            {
                return [];
            }

            if (laws.Any(l => l.Name == law))
            {
                lifted.Add(law);
            }
            else
            {
                context.Problems.Add(SheetProblems.UnknownWord(item.Span, law, "a law of this sheet", laws.Select(l => l.Name)));
            }
        }

        return lifted.ToImmutable();
    }

    private ActionFacts? Find(OutlineScalar name, ImmutableArray<ActionFacts> actions)
    {
        ActionFacts? action = actions.FirstOrDefault(a => a.Action.Name == Prose.Fold(name.Text));
        if (action is null)
        {
            context.Problems.Add(SheetProblems.UnknownWord(name.Span, name.Text, "an action", actions.Select(a => a.Action.Name)));
        }

        return action;
    }

    private ImmutableArray<Step> Steps(FormulaReader reader, OutlineNode node) =>
        new StepReader(context.Declared, reader.Names, reader.Scope, context.Problems).Read(node);

    /// <summary>The choices of an action, with the names and the scope that its steps go on with.</summary>
    private sealed record ChosenFirst(Vocabulary Names, Scope Scope, KnownChoices Known)
    {
        public ImmutableArray<ActionChoice> Choices { get; set; } = [];
    }
}
