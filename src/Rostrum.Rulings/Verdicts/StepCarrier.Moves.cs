using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <content>Things that go from one place to another.</content>
internal sealed partial class StepCarrier
{
    // Terms: amount or nothing for all, things or a look, from or nothing, to, perhaps face up.
    private bool Move(Step step)
    {
        Value to = Evaluator.Evaluate(step.Terms[3], frame);
        if (to is Value.FitAt fit)
        {
            return PieceOf(step) is Value.ThingAt piece && ShapeOf(piece.Thing)?.Drawing == fit.Drawing
                ? Lay(piece, fit) : Unknown(Blame.Of(GapKind.NotYet, "which piece of that shape is laid on several spaces"));
        }

        Spot goal = Evaluator.SpotOf(to);
        if (goal.Kind == SpotKind.Nowhere)
        {
            return to is Value.Unknown unknown && Unknown(unknown.Blame);
        }

        bool? face = step.Terms.Length > 4 && step.Terms[4] is Term.Truth up ? up.IsYes : null;
        return step.Terms[1] is Term.LookOf look ? MoveLook(step, look.Look, goal, face) : MoveThings(Evaluator.Evaluate(step.Terms[1], frame), goal, face);
    }

    // The piece that is laid on several spaces: as it is named, or one of the look; which one matters only where they are not alike.
    private Value? PieceOf(Step step)
    {
        if (step.Terms[1] is not Term.LookOf { Look: var look })
        {
            return Evaluator.Evaluate(step.Terms[1], frame);
        }

        Value from = Evaluator.Evaluate(step.Terms[2], frame);
        if (from is Value.PlaceAt { Place.Form: PlaceForm.Supply or PlaceForm.Box })
        {
            return look.Kind is null ? null : new Value.ThingAt(Things.Fresh(_position.Sheet, look.Kind, look.Values, me), Evaluator.SpotOf(from), 0);
        }

        Value.Many held = Evaluation.Evaluator.AsMany(Evaluator.ThingsOf(from));
        Value.ThingAt[] fitting = [.. held.Members.Where(m => Evaluator.HasLook(m.Value, look).Is != Kleene.No).Select(m => m.Value).OfType<Value.ThingAt>()];
        return held.IsCertain && fitting.Select(f => f.Thing).Distinct().Count() == 1 && Evaluator.HasLook(fitting[0], look).Is == Kleene.Yes ? fitting[^1] : null;
    }

    private bool MoveThings(Value what, Spot goal, bool? face)
    {
        what = what is Value.CardIs card ? Evaluator.CardOnTable(card.Card) : what;
        switch (what)
        {
            case Value.Nothing:
                return true;
            case Value.ThingAt thing:
                return ShiftAll([thing], goal, face);
            case Value.Many { IsCertain: true } many:
                return ShiftAll(many.Members.Select(m => m.Value).OfType<Value.ThingAt>(), goal, face);
            default:
                return Unknown(what.WhyUnknown);
        }
    }

    private bool MoveLook(Step step, Look look, Spot goal, bool? face)
    {
        Value from = Evaluator.Evaluate(step.Terms[2], frame);
        if (from is Value.PlaceAt { Place.Form: PlaceForm.Supply or PlaceForm.Box })
        {
            return FromSupply(step, look, goal);
        }

        Value.Many held = Evaluation.Evaluator.AsMany(Evaluator.ThingsOf(from));
        Value.ThingAt[] fitting = [.. held.Members.Where(m => m.IsCertain && Evaluator.HasLook(m.Value, look).Is == Kleene.Yes).Select(m => m.Value).OfType<Value.ThingAt>()];
        bool isClear = held.IsCertain && held.Members.All(m => Evaluator.HasLook(m.Value, look).Is != Kleene.Unknown);
        if (!isClear)
        {
            return MoveUnknown(from, goal, held.WhyUnknown);
        }

        Value amount = Evaluator.Evaluate(step.Terms[0], frame);
        if (amount is Value.Nothing)
        {
            return ShiftAll(fitting, goal, face);
        }

        // Fewer than there are: which ones is a choice, unless they are all alike. Verbs move what is there.
        if (amount is not Value.Number { IsKnown: true, Low: { } number } || (number < fitting.Length && fitting.Select(f => f.Thing).Distinct().Count() > 1))
        {
            return Unknown(amount.WhyUnknown);
        }

        return ShiftAll(fitting.Take((int)Math.Clamp(number, 0, int.MaxValue)), goal, face);
    }

    // What goes is not known, so neither is what is left behind nor what lies at the goal. Heaps only: a board would be told by its spaces.
    private bool MoveUnknown(Value from, Spot goal, Blame why)
    {
        Spot source = Evaluator.SpotOf(from);
        if (source.Kind != SpotKind.Slot || goal.Kind == SpotKind.Space)
        {
            return Unknown(why);
        }

        _position = source.Put(_position, Stack.NotGiven);
        _position = goal.Put(_position, Stack.NotGiven);
        return true;
    }

    private bool FromSupply(Step step, Look look, Spot goal)
    {
        Value amount = Evaluator.Evaluate(step.Terms[0], frame);
        if (look.Kind is null || amount is not Value.Number { IsKnown: true, Low: >= 0 and <= 1_000 and { } number })
        {
            return Unknown(amount.WhyUnknown);
        }

        Thing thing = Things.Fresh(_position.Sheet, look.Kind, look.Values, me);
        if (goal.Kind == SpotKind.Space && ShapeOf(thing) is not null)
        {
            return NamesOneSpace(thing);
        }

        // No more than the components hold: what lies elsewhere is not in the supply.
        long there = new SupplyLooks(_position.Sheet.KindOf(look.Kind)).Left(thing, [.. _position.Things]) ?? number;
        Stack stack = goal.In(_position);
        _position = goal.Put(_position, stack with { Things = stack.Things.AddRange(Enumerable.Repeat(thing, (int)Math.Clamp(there, 0, number))) });
        return true;
    }

    // Terms: amount, from, to. Which things come hangs on chance, so nothing behind it is carried out; how many lie where they go is known all the same.
    private bool Deal(Step step)
    {
        Spot from = Evaluator.SpotOf(Evaluator.Evaluate(step.Terms[1], frame));
        Spot goal = Evaluator.SpotOf(Evaluator.Evaluate(step.Terms[2], frame));
        Value amount = Evaluator.Evaluate(step.Terms[0], frame);
        if (from.Kind != SpotKind.Slot || MostOn(goal) is null)
        {
            return false;
        }

        if (!from.In(_position).IsGiven || amount is not Value.Number { IsKnown: true, Low: { } number })
        {
            return Unknown(from.In(_position).IsGiven ? amount.WhyUnknown : Blame.Of(new Blank(from, 0, Aspect.Content)));
        }

        int dealt = (int)Math.Clamp(number, 0, from.In(_position).Things.Length);
        Stack stack = goal.In(_position);
        _position = goal.Put(_position, stack with { Things = stack.Things.AddRange(Enumerable.Repeat(new Thing(null, [], null, null, null), dealt)) });
        return false;
    }

    private int? MostOn(Spot spot) => spot.Kind switch
    {
        SpotKind.Space => _position.Sheet.Boards[spot.Place].MostInSpace,
        SpotKind.Slot => _position.Sheet.Places[spot.Place].Most,
        _ => null,
    };

    private PieceShape? ShapeOf(Thing thing) => thing.Kind is { } kind ? _position.Sheet.KindOf(kind).Shape : null;

    private bool NamesOneSpace(Thing thing) => Unknown(Blame.Of(GapKind.Limit, $"{Prose.A(thing.Kind!.Name)} lies on several spaces, and the step names one"));

    private bool ShiftAll(IEnumerable<Value.ThingAt> things, Spot goal, bool? face)
    {
        // Highest first within a spot; each is followed while the others go, for a piece on several spaces leaves more than one.
        Value[] all = [.. things.OrderByDescending(t => t.Index)];
        if (goal.Kind == SpotKind.Space && all.OfType<Value.ThingAt>().FirstOrDefault(t => ShapeOf(t.Thing) is not null) is { } large)
        {
            return NamesOneSpace(large.Thing);
        }

        _elements.Push(all);
        for (int i = 0; i < all.Length; i++)
        {
            Shift((Value.ThingAt)all[i], goal, face);
        }

        _elements.Pop();
        return true;
    }

    // A piece that is larger than a space goes to the top of every space of the fit.
    private bool Lay(Value.ThingAt piece, Value.FitAt fit)
    {
        ImmutableArray<int> covers = [.. fit.Placement.Spaces.Order()];
        var first = new Spot(SpotKind.Space, fit.Board, fit.Seat, covers[0]);
        Shift(piece, first, null, covers);
        Spread(covers[1..], first);
        return true;
    }

    private void Spread(IEnumerable<int> spaces, Spot first)
    {
        Thing thing = first.In(_position).Things[^1];
        foreach (Spot spot in spaces.Select(s => first with { Part = s }))
        {
            Stack stack = spot.In(_position);
            _position = spot.Put(_position, stack with { Things = stack.Things.Add(thing) });
        }
    }

    // A piece that lies on several spaces leaves all of them; the first is left by the move itself.
    private void Lift(Value.ThingAt at)
    {
        foreach (Spot spot in at.Thing.Covers.Skip(1).Select(c => at.Spot with { Part = c }))
        {
            Stack stack = spot.In(_position);
            int index = Enumerable.Range(0, stack.Things.Length).Last(i => stack.Things[i].Covers.AsSpan().SequenceEqual(at.Thing.Covers.AsSpan()));
            _position = spot.Put(_position, stack with { Things = stack.Things.RemoveAt(index) });
            _back.Push((s, i) => s == spot && i >= index ? (s, i + 1) : (s, i));
            Follow(t => t.Spot == spot && t.Index > index ? t with { Index = t.Index - 1 } : t);
        }
    }

    private void Shift(Value.ThingAt at, Spot goal, bool? face, ImmutableArray<int>? covers = null)
    {
        Thing thing = at.Thing with { IsFaceUp = face ?? at.Thing.IsFaceUp, Covers = covers ?? [] };
        Lift(at);
        if (at.Spot.Kind is SpotKind.Space or SpotKind.Slot && at.Index >= 0)
        {
            Stack left = at.Spot.In(_position);
            _position = at.Spot.Put(_position, left with { Things = left.Things.RemoveAt(at.Index) });
        }

        Stack stack = goal.In(_position);
        _position = goal.Put(_position, stack with { Things = stack.Things.Add(thing) });
        var now = new Value.ThingAt(thing, goal, stack.Things.Length);
        _back.Push((s, i) => s == now.Spot && i == now.Index ? (at.Spot, at.Index) : s == at.Spot && i >= at.Index ? (s, i + 1) : (s, i));
        Follow(t => t.Spot == at.Spot && t.Index == at.Index ? now : t.Spot == at.Spot && t.Index > at.Index && at.Spot.Kind is SpotKind.Space or SpotKind.Slot ? t with { Index = t.Index - 1 } : t);
    }
}
