using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>Gives a formula its meaning: every name its symbol, every part its sort. What it returns is part of the typed tree.</summary>
/// <param name="declared">What the sheet declares.</param>
/// <param name="scope">The letters at hand.</param>
/// <param name="problems">Where messages go.</param>
/// <param name="through">The places that brought the words in, for the meaning of an idiom; empty for words of the sheet.</param>
internal sealed partial class Binder(Declarations declared, Scope scope, DiagnosticBag problems, ImmutableArray<SourceSpan> through)
{
    /// <summary>Binds a formula of any sort.</summary>
    public Term Bind(Syntax syntax) => syntax switch
    {
        Syntax.Number n => new Term.Number(n.Amount, From(n)),
        Syntax.Name n => BindName(n),
        Syntax.It i => BindIt(i),
        Syntax.Me m => new Term.Me(From(m)),
        Syntax.Nothing n => new Term.Nothing(From(n)),
        Syntax.YesNo y => new Term.Truth(y.IsYes, From(y)),
        Syntax.Looks l => BindLookTerm(l),
        Syntax.PartOf p => BindPartOf(p),
        Syntax.Of o => BindOf(o),
        Syntax.Owned o => BindOwned(o),
        Syntax.Call c => BindCall(c),
        Syntax.Filtered f => BindFiltered(f),
        Syntax.Listed l => BindListed(l),
        Syntax.Range r => Operation(Op.Range, Sort.ListOf(Sort.Number), r, BindNumber(r.Low), BindNumber(r.High)),
        Syntax.Binary b => BindBinary(b),
        Syntax.Negative n => Operation(Op.Negative, Sort.Number, n, BindNumber(n.Operand)),
        Syntax.Test t => BindTest(t),
        Syntax.Shows s => BindShows(s),
        Syntax.Can c => BindCan(c),
        Syntax.Done d => BindDone(d),
        Syntax.OfLast o => BindOfLast(o),
        Syntax.Logic l => BindLogic(l),
        Syntax.Not n => Operation(Op.Not, Sort.Truth, n, BindTruth(n.Operand)),
        Syntax.If i => BindIf(i),
        _ => Broken(syntax),
    };

    /// <summary>Binds a formula that must be yes or no.</summary>
    public Term BindTruth(Syntax syntax)
    {
        Term term = Bind(syntax);
        if (!term.Sort.Fits(Sort.Truth) || term.Sort.Kind == SortKind.Nothing)
        {
            problems.Add(Placed(FormulaProblems.WantedTruth(syntax.Span, term.Sort)));
            return Broken(syntax, Sort.Truth);
        }

        return term;
    }

    /// <summary>Binds a formula that must be a number.</summary>
    public Term BindNumber(Syntax syntax) => Expect(syntax, Sort.Number);

    /// <summary>Binds a formula that must be of a sort.</summary>
    public Term Expect(Syntax syntax, Sort wanted)
    {
        if (wanted.IsMany)
        {
            return BindMany(syntax, wanted);
        }

        if (wanted.Kind == SortKind.Direction && syntax is Syntax.Name name && name.Senses.Select(s => s.Symbol).OfType<StepName>().FirstOrDefault() is { } step)
        {
            return Towards(step.Direction, name);
        }

        Term term = Bind(syntax);
        if (term.Sort.Fits(wanted) || (wanted.Kind == SortKind.Number && term.Sort.Kind == SortKind.Value && declared.HasNumbers(term.Sort.Of)))
        {
            return term;
        }

        Look? placeless = wanted.Kind is SortKind.Number or SortKind.Place ? LookOf(term) : null;
        problems.Add(Placed(placeless is not null ? WithoutPlace(placeless, syntax) : FormulaProblems.WrongSort(syntax.Span, term.Sort, wanted)));
        return Broken(syntax, wanted);
    }

    /// <summary>Binds something to go through, as a set or a list.</summary>
    public Term BindMany(Syntax syntax, Sort wanted)
    {
        Term many = AsMany(Bind(syntax), syntax);
        if (!many.Sort.Fits(wanted))
        {
            problems.Add(Placed(FormulaProblems.WrongSort(syntax.Span, many.Sort, wanted)));
            return Broken(syntax, wanted);
        }

        return many;
    }

    /// <summary>Binds a pick and leaves its element in scope; the caller ends it with <see cref="EndPick"/>.</summary>
    /// <param name="syntax">What is gone through.</param>
    /// <param name="learn">Told the sort of an element before its condition is bound, which may speak of it.</param>
    public Pick BeginPick(PickSyntax syntax, Action<Sort>? learn = null)
    {
        Term domain = AsMany(Bind(syntax.Domain), syntax.Domain);
        Sort element = domain.Sort.Element ?? Sort.Any;
        learn?.Invoke(element);
        Scope.Entry entry = scope.Push(syntax.Letter, element);
        Term? where = syntax.Where is null ? null : BindTruth(syntax.Where);
        return new Pick(entry.Slot, syntax.Letter?.Name ?? "it", domain, where, element);
    }

    /// <summary>Ends the pick begun last; a letter that nobody used is an error.</summary>
    public void EndPick(PickSyntax syntax)
    {
        if (syntax.Letter is { DeclaredAt: { } at } letter && scope.Find(letter) is { IsUsed: false })
        {
            problems.Add(Placed(FormulaProblems.UnusedLetter(at, letter.Name, NameHelp.NearLook(declared.Names, letter.Name))));
        }

        scope.Pop();
    }

    private Origin From(Syntax syntax) => new(syntax.Span, through);

    private Term.NotYet Broken(Syntax syntax, Sort? sort = null) => new("a part with a mistake in it", sort ?? Sort.Any, From(syntax));

    private Term.Apply Operation(Op id, Sort sort, Syntax syntax, params ImmutableArray<Term?> arguments) =>
        new(Model.Operations.Of(id), null, arguments, sort, From(syntax));

    // A mistake inside an idiom is shown where it stands, and the clause that uses it beside it.
    private Diagnostic Placed(Diagnostic problem) =>
        through.IsDefaultOrEmpty ? problem : problem with { Related = problem.Related.Add(new RelatedPlace(through[^1], "used here")) };

    /// <summary>What stands for several: a place for its things, a board for its spaces, a row for its slots, a line for its spaces.</summary>
    private Term AsMany(Term term, Syntax syntax)
    {
        switch (term)
        {
            case { Sort.IsMany: true } or { Sort.Kind: SortKind.Any }:
                return term.Sort.IsMany ? term : Broken(syntax, Sort.SetOf(Sort.Any));
            case Term.PlaceOf { Place.Form: PlaceForm.Board }:
                return Operation(Op.SpacesOf, Sort.ListOf(Sort.Space), syntax, term);
            case Term.PlaceOf { Place.Form: PlaceForm.Row }:
                return Operation(Op.SlotsOf, Sort.ListOf(Sort.Slot), syntax, term);
            case Term.PlaceOf place:
                return Operation(Op.ThingsIn, Sort.ListOf(Sort.ThingOf(declared.OnlyKindIn(place.Place))), syntax, term);
            case { Sort.Kind: SortKind.Line or SortKind.Fit }:
                return Operation(Op.SpacesOf, Sort.ListOf(Sort.Space), syntax, term);
            case { Sort.Kind: SortKind.Space or SortKind.Slot }:
                return Operation(Op.ThingsIn, Sort.ListOf(Sort.Thing), syntax, term);
            case Term.LookOf { Look: { Kind.Family: KindFamily.Die } } dice:
                return new Term.AllOf(dice.Look, Sort.SetOf(Sort.ThingOf(dice.Look.Kind)), From(syntax));
            case var thing when LookOf(thing) is { } look:
                problems.Add(Placed(WithoutPlace(look, syntax)));
                return Broken(syntax, Sort.SetOf(Sort.Any));
            default:
                problems.Add(Placed(FormulaProblems.WrongSort(syntax.Span, term.Sort, Sort.SetOf(Sort.Any))));
                return Broken(syntax, Sort.SetOf(Sort.Any));
        }
    }

    private Term BindIt(Syntax.It it)
    {
        if (scope.It is not { } entry)
        {
            problems.Add(Placed(FormulaProblems.NoIt(it.Span)));
            return Broken(it);
        }

        if (scope.ItIsDoubtful)
        {
            problems.Add(Placed(FormulaProblems.DoubtfulIt(it.Span)));
        }

        entry.IsUsed = true;
        return new Term.Variable(entry.Slot, entry.Letter?.Name ?? "it", entry.Sort, From(it));
    }

    private Term BindFiltered(Syntax.Filtered filtered)
    {
        var syntax = new PickSyntax(null, filtered.Domain, filtered.Where);
        Pick pick = BeginPick(syntax);
        EndPick(syntax);
        return new Term.Filtered(pick, pick.Domain.Sort, From(filtered));
    }

    private Term BindListed(Syntax.Listed listed)
    {
        ImmutableArray<Term> items = [.. listed.Items.Select(Bind)];
        Sort? element = items[0].Sort;
        for (int i = 1; i < items.Length && element is not null; i++)
        {
            Sort? joined = element.Join(items[i].Sort);
            if (joined is null)
            {
                problems.Add(Placed(FormulaProblems.BranchesDiffer(listed.Items[i].Span, element, items[i].Sort)));
            }

            element = joined;
        }

        return new Term.Listed(items, Sort.ListOf(element ?? Sort.Any), From(listed));
    }

    private Term BindBinary(Syntax.Binary binary)
    {
        if (binary.Sign is "except" or "together with")
        {
            Term left = BindMany(binary.Left, Sort.SetOf(Sort.Any));
            Term right = BindMany(binary.Right, Sort.SetOf(left.Sort.Element ?? Sort.Any));
            Op id = binary.Sign == "except" ? Op.Except : Op.TogetherWith;
            Sort sort = binary.Sign == "except" ? left.Sort : Sort.SetOf(left.Sort.Element!);
            return Operation(id, sort, binary, left, right);
        }

        Op op = binary.Sign switch
        {
            "+" => Op.Plus,
            "-" => Op.Minus,
            _ => Op.Times,
        };
        return Operation(op, Sort.Number, binary, BindNumber(binary.Left), BindNumber(binary.Right));
    }

    private Term BindIf(Syntax.If syntax)
    {
        Term then = Bind(syntax.Then);
        Term condition = BindTruth(syntax.Condition);
        Term otherwise = Bind(syntax.Otherwise);
        Sort? sort = then.Sort.Join(otherwise.Sort);
        if (sort is null)
        {
            problems.Add(Placed(FormulaProblems.BranchesDiffer(syntax.Otherwise.Span, then.Sort, otherwise.Sort)));
        }

        return Settled(condition) switch
        {
            true => then,
            false => otherwise,
            _ => new Term.If(condition, then, otherwise, sort ?? Sort.Any, From(syntax)),
        };
    }
}
