using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Steps;

/// <summary>Reads what an action chooses. Each choice becomes a letter, so that later choices, steps and laws may speak of it.</summary>
/// <param name="declared">What the sheet declares.</param>
/// <param name="names">Receives the names of the choices; an inner vocabulary of the action's own.</param>
/// <param name="scope">Receives their sorts; the action's own.</param>
/// <param name="problems">Where messages go.</param>
internal sealed class ChoiceReader(Declarations declared, Vocabulary names, Scope scope, DiagnosticBag problems)
{
    private readonly Binder _formulas = new(declared, scope, problems, []);

    /// <summary>Learns what each choice stands for, as soon as that is known.</summary>
    public KnownChoices? Known { get; init; }

    /// <summary>The choices of <c>choose:</c> in order; one with a mistake stands for anything, so that it is told once.</summary>
    public ImmutableArray<ActionChoice> Read(OutlineNode choose)
    {
        if (choose is not OutlineMapping mapping)
        {
            problems.Add(StepProblems.WantedChoices(choose.Span));
            return [];
        }

        var choices = ImmutableArray.CreateBuilder<ActionChoice>();
        foreach (OutlineEntry entry in mapping.Entries)
        {
            choices.Add(ReadChoice(entry, choices.Count));
        }

        return choices.ToImmutable();
    }

    private ActionChoice ReadChoice(OutlineEntry entry, int index)
    {
        string name = Prose.Fold(entry.Key.Text);
        if (Prose.WordsOf(name).FirstOrDefault(Vocabulary.GrammarWords.Contains) is { } word)
        {
            problems.Add(StepProblems.ChoiceName(entry.Key.Span, name, word));
        }

        DomainSyntax? syntax = null;
        if (entry.Value is OutlineScalar scalar)
        {
            syntax = new FormulaParser(FormulaText.Of(scalar), names, problems).ReadAllAsDomain();
        }
        else
        {
            problems.Add(StepProblems.WantedChoices(entry.Value.Span));
        }

        Origin at = Origin.Of(entry.Value.Span);
        Term from = syntax is null ? new Term.NotYet("a part with a mistake in it", Sort.Any, at) : Domain(syntax, at, element => Known?.Learn(index, SortOf(syntax, Sort.SetOf(element))));
        Sort sort = SortOf(syntax, from.Sort);
        Known?.Learn(index, sort);
        var letter = new LetterName(name, entry.Key.Span);
        names.Add(name, letter);
        int slot = scope.Declare(letter, sort).Slot;
        string words = syntax is null ? entry.Value.Span.Text : StepPrinter.Print(syntax);
        return new ActionChoice(name, slot, syntax?.Amount ?? ChoiceAmount.Given, syntax?.Number ?? 0, from, sort, words, entry.Key.Span);
    }

    private static Sort SortOf(DomainSyntax? syntax, Sort from)
    {
        if (syntax is null || syntax.Amount == ChoiceAmount.Given)
        {
            return from;
        }

        Sort element = from.Element ?? Sort.Any;
        return syntax.Amount == ChoiceAmount.One ? element : Sort.ListOf(element);
    }

    private Term Domain(DomainSyntax syntax, Origin at, Action<Sort> learn) => syntax.Form switch
    {
        DomainForm.Value => _formulas.Bind(syntax.From!),
        DomainForm.Numbers => new Term.Apply(Model.Operations.Of(Op.Range), null, [_formulas.BindNumber(syntax.From!), _formulas.BindNumber(syntax.Highest!)], Sort.ListOf(Sort.Number), at),
        DomainForm.YesOrNo => new Term.Listed([new Term.Truth(true, at), new Term.Truth(false, at)], Sort.ListOf(Sort.Truth), at),
        DomainForm.Players => Filtered(new Term.Apply(Model.Operations.Of(Op.Players), null, [], Sort.ListOf(Sort.Player), at), syntax.Where, at, learn),
        DomainForm.Directions => Filtered(new Term.Listed([.. Directions().Select(d => new Term.DirectionNamed(d, at))], Sort.ListOf(Sort.Direction), at), syntax.Where, at, learn),
        _ => Elements(syntax, at, learn),
    };

    private Term Elements(DomainSyntax syntax, Origin at, Action<Sort> learn)
    {
        var pick = new PickSyntax(null, syntax.From!, syntax.Where);
        Pick bound = _formulas.BeginPick(pick, learn);
        _formulas.EndPick(pick);
        return syntax.Where is null ? bound.Domain : new Term.Filtered(bound, bound.Domain.Sort, at);
    }

    private Term Filtered(Term domain, Syntax? where, Origin at, Action<Sort> learn)
    {
        if (where is null)
        {
            return domain;
        }

        Sort element = domain.Sort.Element!;
        learn(element);
        Scope.Entry entry = scope.Push(null, element);
        Term truth = _formulas.BindTruth(where);
        scope.Pop();
        return new Term.Filtered(new Pick(entry.Slot, "it", domain, truth, element), domain.Sort, at);
    }

    // Upright boards are spoken of by above and below, flat ones by the compass.
    private IEnumerable<Direction> Directions() =>
        declared.Boards.Values.Any(b => b.IsUpright) ? Direction.All.Take(4) : Direction.All.Skip(4);
}
