using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Steps;

/// <summary>Gives the formulas of a step their meaning, in the order that the executors rely on.</summary>
/// <remarks>
/// Terms by kind. Move: amount (or nothing for all), what, from (or nothing), to, and face up (a truth) where said. Deal: amount, from, to, and face up where said.
/// Change: thing, then a value, or a truth for face up, or nothing for turning it over. Shuffle, Do: one. Roll: dice. Swap: two. Push: line, direction, place (or nothing
/// for round). Show: what, to whom. Set, Add, Take: mark, value. Let: value. EndGame: its name as words. If: condition. May: most times (or nothing for any number).
/// Does: player. ForEach: domain, where (or nothing), order number (or nothing; negative of it for highest first), and whether the player chooses the order.
/// EachPlayer: from (or nothing), where (or nothing), order number (or nothing), whether the player chooses the order, whether only the others.
/// Repeat: times, until, while (each or nothing). TakeTurns: from, among, until (each or nothing). Call: the first gaps.
/// </remarks>
/// <param name="declared">What the sheet declares.</param>
/// <param name="scope">The letters at hand.</param>
/// <param name="problems">Where messages go.</param>
internal sealed class StepBinder(Declarations declared, Scope scope, DiagnosticBag problems)
{
    private readonly Binder _formulas = new(declared, scope, problems, []);

    /// <summary>The terms of a step that gives no letter.</summary>
    public ImmutableArray<Term> Terms(StepSyntax step) => step.Kind switch
    {
        StepKind.Move => Move(step),
        StepKind.Deal => Deal(step),
        StepKind.Change => Change(step),
        StepKind.Call when step.Block is not null => BlockCalled(step),
        StepKind.Do => [CellOfSteps(step.Parts[0]!)],
        StepKind.Call or StepKind.Let => [.. step.Parts.Select(p => _formulas.Bind(p!))],
        StepKind.Shuffle => [_formulas.Expect(step.Parts[0]!, Sort.Place)],
        StepKind.Roll => [Dice(step.Parts[0]!)],
        StepKind.Swap => Swap(step),
        StepKind.Push => [_formulas.Bind(step.Parts[0]!), _formulas.Expect(step.Parts[1]!, Sort.Direction), Holder(step.Parts[2], step)],
        StepKind.Show => [_formulas.Bind(step.Parts[0]!), _formulas.Bind(step.Parts[1]!)],
        StepKind.Set or StepKind.Add or StepKind.Take => Mark(step),
        StepKind.EndGame => [EndCalled(step)],
        StepKind.If when step.Parts[0] is not null => [_formulas.BindTruth(step.Parts[0]!)],
        StepKind.May => [step.IsOther ? Nothing(step) : step.Parts[0] is null ? new Term.Number(1, At(step)) : _formulas.BindNumber(step.Parts[0]!)],
        StepKind.Does => [_formulas.Expect(step.Parts[0]!, Sort.Player)],
        StepKind.EachPlayer => EachPlayer(step),
        StepKind.Repeat => [Number(step.Parts[0], step), Truth(step.Parts[1], step), Truth(step.Parts[2], step)],
        StepKind.TakeTurns => [Player(step.Parts[0], step), Truth(step.Parts[1], step), Truth(step.Parts[2], step)],
        _ => [],
    };

    /// <summary>The terms of <c>for each</c>; its letter stays in scope until <see cref="EndForEach"/>.</summary>
    public (Pick Pick, ImmutableArray<Term> Terms) BeginForEach(StepSyntax step)
    {
        Pick pick = _formulas.BeginPick(step.Pick!);
        Term element = new Term.Variable(pick.Slot, pick.Letter, pick.Element, At(step));
        return (pick, [pick.Domain, pick.Where ?? Nothing(step), Order(step, element), Chosen(step)]);
    }

    /// <summary>Takes the letter of <c>for each</c> out of scope; one that nobody used is an error.</summary>
    public void EndForEach(StepSyntax step) => _formulas.EndPick(step.Pick!);

    private ImmutableArray<Term> BlockCalled(StepSyntax step)
    {
        if (declared.Blocks is { } known && !known.Contains(step.Block!))
        {
            problems.Add(StepProblems.NoSuchBlock(step.Span, step.Block!));
        }

        return [];
    }

    private Term.Text EndCalled(StepSyntax step)
    {
        if (declared.Ends is { } known && !known.Contains(step.End!))
        {
            problems.Add(Loading.SheetProblems.UnknownWord(step.EndAt ?? step.Span, step.End!, "an end of this sheet", known));
        }

        return new Term.Text(step.End!, At(step));
    }

    private ImmutableArray<Term> Move(StepSyntax step)
    {
        Term what = step.Parts[1] is Syntax.Looks looks && step.Parts[2] is not null ? new Term.LookOf(_formulas.BindLook(looks), At(step)) : Movables(step.Parts[1]!);
        ImmutableArray<Term> terms = [Number(step.Parts[0], step), what, Source(step.Parts[2], step), Holder(step.Parts[3], step)];
        return step.FaceUp is { } up ? terms.Add(new Term.Truth(up, At(step))) : terms;
    }

    private ImmutableArray<Term> Deal(StepSyntax step)
    {
        Term from = _formulas.Expect(step.Parts[1]!, Sort.Place);
        if (from is Term.PlaceOf { Place: { Form: not (PlaceForm.Bag or PlaceForm.Deck or PlaceForm.Hand) } open })
        {
            problems.Add(StepProblems.NotUnseen(step.Parts[1]!.Span, open));
        }

        ImmutableArray<Term> terms = [_formulas.BindNumber(step.Parts[0]!), from, Holder(step.Parts[2], step)];
        return step.FaceUp is { } up ? terms.Add(new Term.Truth(up, At(step))) : terms;
    }

    private ImmutableArray<Term> Change(StepSyntax step)
    {
        Term thing = Movables(step.Parts[0]!);
        if (step.Parts[1] is not { } becomes)
        {
            CheckFlip(step, thing);
            return [thing, step.FaceUp is { } up ? new Term.Truth(up, At(step)) : Nothing(step)];
        }

        Term value = _formulas.Bind(Preferred(becomes));
        if (value is Term.Value { Which.Attribute: { IsState: false, Kind.Family: not KindFamily.Die } fixedOne } never)
        {
            problems.Add(StepProblems.NeverChanges(becomes.Span, fixedOne, never.Which.Name));
        }
        else if (value.Sort.Kind is not (SortKind.Value or SortKind.Number or SortKind.Player or SortKind.Any))
        {
            problems.Add(FormulaProblems.WrongSort(becomes.Span, value.Sort, Sort.ValueOf(null)));
        }

        return [thing, value];
    }

    // A card shows its face or its back; a piece is turned from one value of its state to the other.
    private void CheckFlip(StepSyntax step, Term thing)
    {
        if ((thing.Sort.Element ?? thing.Sort).Of is Kind { Family: KindFamily.Piece } piece && declared.Kinds.TryGetValue(piece, out KindFacts? facts)
            && (step.FaceUp is not null || facts.FlipState is null))
        {
            problems.Add(StepProblems.NothingToFlip(step.Span, piece));
        }
    }

    // A word that is a value and something else is meant as the value.
    private static Syntax Preferred(Syntax syntax) => syntax is Syntax.Name { Senses: var senses } name && senses.Any(s => s.Symbol is AttributeValue)
        ? name with { Senses = [.. senses.OrderByDescending(s => s.Symbol is AttributeValue { Attribute.IsState: true }).ThenByDescending(s => s.Symbol is AttributeValue)] }
        : syntax;

    private ImmutableArray<Term> Mark(StepSyntax step)
    {
        Term mark = _formulas.Bind(step.Parts[0]!);
        if (mark is Term.StartPlayer && step.Kind == StepKind.Set)
        {
            return [mark, _formulas.Expect(step.Parts[1]!, Sort.Player)];
        }

        if (mark is not Term.MarkOf)
        {
            if (mark.Sort.Kind != SortKind.Any)
            {
                problems.Add(StepProblems.NotAMark(step.Parts[0]!.Span, mark.Sort));
            }

            return [mark, _formulas.Bind(step.Parts[1]!)];
        }

        return [mark, _formulas.Expect(step.Parts[1]!, step.Kind == StepKind.Set ? mark.Sort : Sort.Number)];
    }

    private ImmutableArray<Term> EachPlayer(StepSyntax step)
    {
        Term it = scope.It is { } entry ? new Term.Variable(entry.Slot, "it", Sort.Player, At(step)) : Nothing(step);
        return [Player(step.Parts[0], step), Truth(step.Parts[1], step), Order(step, it), Chosen(step), new Term.Truth(step.IsOther, At(step))];
    }

    private Term Order(StepSyntax step, Term element)
    {
        Term? by = step.Order.By is null ? null : _formulas.BindNumber(step.Order.By);
        return step.Order.Kind switch
        {
            StepOrderKind.LowestFirst => by ?? element,
            StepOrderKind.HighestFirst => new Term.Apply(Model.Operations.Of(Op.Negative), null, [by ?? element], Sort.Number, At(step)),
            _ => by ?? Nothing(step),
        };
    }

    private static Term.Truth Chosen(StepSyntax step) => new(step.Order.Kind == StepOrderKind.AsChosen, At(step));

    // Only a column of cards holds steps.
    private Term CellOfSteps(Syntax syntax)
    {
        Term steps = _formulas.Bind(syntax);
        return steps is Term.CardCell { Sort.Kind: SortKind.Text } || steps.Sort.Kind == SortKind.Any ? steps : Wrong(syntax, steps, Sort.Text);
    }

    private Term Dice(Syntax syntax)
    {
        Term dice = _formulas.Bind(syntax);
        return dice.Sort.Kind == SortKind.Thing ? dice : _formulas.BindMany(syntax, Sort.SetOf(Sort.Thing));
    }

    private Term Movable(Syntax syntax) => OneOf(syntax, SortKind.Thing, SortKind.Space, SortKind.Slot, SortKind.Place, SortKind.Player);

    // Two things, two players, or two that hold things.
    private ImmutableArray<Term> Swap(StepSyntax step)
    {
        (Term one, Term other) = (Movable(step.Parts[0]!), Movable(step.Parts[1]!));
        bool isKnown = one.Sort.Kind != SortKind.Any && other.Sort.Kind != SortKind.Any;
        bool areAlike = (one.Sort.Kind == SortKind.Thing) == (other.Sort.Kind == SortKind.Thing) && (one.Sort.Kind == SortKind.Player) == (other.Sort.Kind == SortKind.Player);
        return isKnown && !areAlike ? [one, Wrong(step.Parts[1]!, other, one.Sort)] : [one, other];
    }

    private Term Movables(Syntax syntax)
    {
        Term what = _formulas.Bind(syntax);
        return what.Sort.Fits(Sort.Thing) || what.Sort.Fits(Sort.SetOf(Sort.Thing)) ? what : Wrong(syntax, what, Sort.Thing);
    }

    private Term Holder(Syntax? syntax, StepSyntax step) => syntax is null ? Nothing(step) : OneOf(syntax, SortKind.Place, SortKind.Space, SortKind.Slot, SortKind.Fit);

    private Term Source(Syntax? syntax, StepSyntax step)
    {
        if (syntax is null)
        {
            return Nothing(step);
        }

        Term source = _formulas.Bind(syntax);
        bool holds = source.Sort.Kind is SortKind.Place or SortKind.Space or SortKind.Slot or SortKind.Line or SortKind.Any
            || (source.Sort.IsMany && source.Sort.Element!.Kind is SortKind.Space or SortKind.Slot or SortKind.Any);
        return holds ? source : Wrong(syntax, source, Sort.Place);
    }

    private Term OneOf(Syntax syntax, params ReadOnlySpan<SortKind> kinds)
    {
        Term term = _formulas.Bind(syntax);
        return term.Sort.Kind == SortKind.Any || kinds.Contains(term.Sort.Kind) ? term : Wrong(syntax, term, new Sort(kinds[0]));
    }

    private Term Wrong(Syntax syntax, Term found, Sort wanted)
    {
        problems.Add(FormulaProblems.WrongSort(syntax.Span, found.Sort, wanted));
        return found;
    }

    private Term Number(Syntax? syntax, StepSyntax step) => syntax is null ? Nothing(step) : _formulas.BindNumber(syntax);

    private Term Truth(Syntax? syntax, StepSyntax step) => syntax is null ? Nothing(step) : _formulas.BindTruth(syntax);

    private Term Player(Syntax? syntax, StepSyntax step) => syntax is null ? Nothing(step) : _formulas.Expect(syntax, Sort.Player);

    private static Term.Nothing Nothing(StepSyntax step) => new(At(step));

    private static Origin At(StepSyntax step) => Origin.Of(step.Span);
}
