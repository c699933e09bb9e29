using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Steps;

/// <summary>Reads steps from the outline into the typed tree; every problem is told, and a step with one is left out.</summary>
/// <remarks>The actions that steps may call are those that the vocabulary knows.</remarks>
internal sealed class StepReader
{
    private readonly Scope _scope;
    private readonly DiagnosticBag _problems;
    private readonly StepBinder _binder;
    private readonly ActionName[] _actions;
    private Vocabulary _names;

    /// <summary>A reader for the steps of one action or block.</summary>
    /// <param name="declared">What the sheet declares.</param>
    /// <param name="names">The names at hand, choices of the action included.</param>
    /// <param name="scope">The letters at hand; afterwards its frame size covers the steps.</param>
    /// <param name="problems">Where messages go.</param>
    public StepReader(Declarations declared, Vocabulary names, Scope scope, DiagnosticBag problems)
    {
        _names = names;
        _scope = scope;
        _problems = problems;
        _binder = new StepBinder(declared, scope, problems);
        _actions = [.. names.Actions];
    }

    /// <summary>The steps of a value: one step, a list, a head with steps below it, or <c>{cite: …, do: …}</c>.</summary>
    public ImmutableArray<Step> Read(OutlineNode node) => Read(Pieces(node), ReadPiece);

    /// <summary>The steps of one line, such as a cell of a table file: each alone, with <c>;</c> between them.</summary>
    public ImmutableArray<Step> Read(FormulaText line) => Read(Parts(line), ReadAlone);

    private static IEnumerable<FormulaText> Parts(FormulaText line)
    {
        int at = 0;
        foreach (string part in line.Text.Split(';'))
        {
            if (part.Trim().Length > 0)
            {
                yield return line.Part(at + part.Length - part.TrimStart().Length, part.Trim().Length);
            }

            at += part.Length + 1;
        }
    }

    private ImmutableArray<Step> Read<T>(IEnumerable<T> pieces, Action<T, List<Step>, List<LetterName>> read)
    {
        Vocabulary outer = _names;
        var named = new List<LetterName>();
        var steps = new List<Step>();
        foreach (T piece in pieces)
        {
            read(piece, steps, named);
        }

        foreach (LetterName name in Enumerable.Reverse(named))
        {
            Forget(name);
        }

        _names = outer;
        return [.. steps];
    }

    private IEnumerable<OutlineNode> Pieces(OutlineNode node)
    {
        switch (node)
        {
            case OutlineSequence list:
                return list.Items.SelectMany(Pieces);
            case OutlineMapping mapping when mapping.Find("do") is { } steps:
                return Pieces(steps.Value);
            case OutlineEmpty:
                _problems.Add(StepProblems.NoSteps(node.Span, ""));
                return [];
            default:
                return [node];
        }
    }

    private void ReadPiece(OutlineNode piece, List<Step> steps, List<LetterName> named)
    {
        if (piece is OutlineScalar scalar)
        {
            ReadAlone(FormulaText.Of(scalar), steps, named);
            return;
        }

        foreach (OutlineEntry entry in ((OutlineMapping)piece).Entries)
        {
            if (new FormulaParser(FormulaText.Of(entry.Key), _names, _problems).ReadAllAsHead(_actions) is { } head)
            {
                AddHead(head, entry, steps);
            }
            else if (entry.Value is OutlineMapping or OutlineSequence)
            {
                Read(entry.Value); // Only for its own problems.
            }
        }
    }

    private void ReadAlone(FormulaText words, List<Step> steps, List<LetterName> named)
    {
        if (new FormulaParser(words, _names, _problems).ReadAllAsStep(_actions) is not { } syntax)
        {
            return;
        }

        Step step = Make(syntax, _binder.Terms(syntax));
        if (syntax.Named is { } name)
        {
            CheckName(name);
            Scope.Entry entry = _scope.Push(name, step.Terms[0].Sort, isElement: false);
            named.Add(name);
            Remember(name);
            step = step with { Slot = entry.Slot };
        }

        steps.Add(step);
    }

    private void AddHead(StepSyntax head, OutlineEntry entry, List<Step> steps)
    {
        if (entry.Value is OutlineEmpty)
        {
            _problems.Add(StepProblems.NoSteps(head.Span, entry.Key.Text));
        }

        if (head is { Kind: StepKind.If, IsOther: true })
        {
            AddOtherwise(head, entry.Value, steps);
            return;
        }

        steps.Add(head.Kind switch
        {
            StepKind.ForEach => ReadForEach(head, entry.Value),
            StepKind.EachPlayer or StepKind.TakeTurns => ReadPlayers(head, entry.Value),
            _ => Make(head, _binder.Terms(head)) with { Inner = Below(entry.Value) },
        });
    }

    private ImmutableArray<Step> Below(OutlineNode node) => node is OutlineEmpty ? [] : Read(node);

    private Step ReadForEach(StepSyntax head, OutlineNode below)
    {
        Vocabulary outer = _names;
        (Pick pick, ImmutableArray<Term> terms) = _binder.BeginForEach(head);
        Remember(head.Pick!.Letter!);
        Step step = Make(head, terms) with { Slot = pick.Slot, Inner = Below(below) };
        _binder.EndForEach(head);
        _names = outer;
        return step;
    }

    // `it` is the player who is asked; the steps below speak of `me`.
    private Step ReadPlayers(StepSyntax head, OutlineNode below)
    {
        Scope.Entry entry = _scope.Push(null, Sort.Player);
        ImmutableArray<Term> terms = _binder.Terms(head);
        _scope.Pop();
        Scope.Entry held = _scope.Push(null, Sort.Player, isElement: false);
        Step step = Make(head, terms) with { Slot = entry.Slot, Inner = Below(below) };
        _scope.Pop();
        return held.Slot == entry.Slot ? step : step with { Slot = held.Slot };
    }

    // `otherwise if` becomes an `if` inside the `otherwise` of the one before it.
    private void AddOtherwise(StepSyntax head, OutlineNode below, List<Step> steps)
    {
        ImmutableArray<Step> inner = Below(below);
        Step? added = head.Parts[0] is null ? null : Make(head, _binder.Terms(head)) with { Inner = inner };
        if (steps.Count == 0 || Attach(steps[^1], added is null ? inner : [added]) is not { } attached)
        {
            _problems.Add(StepProblems.OtherwiseAlone(head.Span));
            return;
        }

        steps[^1] = attached;
    }

    private static Step? Attach(Step step, ImmutableArray<Step> otherwise)
    {
        if (step.Kind != StepKind.If)
        {
            return null;
        }

        if (step.Otherwise.IsEmpty)
        {
            return step with { Otherwise = otherwise };
        }

        Step? inner = step.Otherwise is [{ Kind: StepKind.If } only] && only.Sentence.StartsWith("Otherwise", StringComparison.Ordinal) ? Attach(only, otherwise) : null;
        return inner is null ? null : step with { Otherwise = [inner] };
    }

    private static Step Make(StepSyntax syntax, ImmutableArray<Term> terms) =>
        new(syntax.Kind, StepSentence.Of(syntax), terms, [], [], syntax.Span) { Action = syntax.Action, Block = syntax.Block };

    private void Remember(LetterName name)
    {
        _names = _names.Inner();
        _names.Add(name.Name, name);
    }

    private void CheckName(LetterName name)
    {
        Named? other = _names.Find(name.Name).Select(s => s.Symbol).FirstOrDefault(s => s is not LetterName);
        if (other is not null)
        {
            _problems.Add(StepProblems.NameInUse(name.DeclaredAt!.Value, name.Name, other));
        }
    }

    private void Forget(LetterName name)
    {
        if (_scope.Find(name) is { IsUsed: false })
        {
            _problems.Add(StepProblems.UnusedName(name.DeclaredAt!.Value, name.Name));
        }

        _scope.Pop();
    }
}
