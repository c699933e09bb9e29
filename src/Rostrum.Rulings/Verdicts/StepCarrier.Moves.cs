using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <content>Things that go from one place to another.</content>
internal sealed partial class StepCarrier
{
    // Terms: amount or nothing for all, things or a look, from or nothing, to, perhaps face up.
    private bool Move(Step step)
    {
        Value to = Evaluator.Evaluate(step.Terms[3], frame);
        Spot goal = Evaluator.SpotOf(to);
        if (goal.Kind == SpotKind.Nowhere)
        {
            return to is Value.Unknown unknown && Unknown(unknown.Blame);
        }

        bool? face = step.Terms.Length > 4 && step.Terms[4] is Term.Truth up ? up.IsYes : null;
        return step.Terms[1] is Term.LookOf look ? MoveLook(step, look.Look, goal, face) : MoveThings(Evaluator.Evaluate(step.Terms[1], frame), goal, face);
    }

    private bool MoveThings(Value what, Spot goal, bool? face)
    {
        what = what is Value.CardIs card ? Evaluator.CardOnTable(card.Card) : what;
        switch (what)
        {
            case Value.Nothing:
                return true;
            case Value.ThingAt thing:
                Shift(thing, goal, face);
                return true;
            case Value.Many { IsCertain: true } many:
                ShiftAll(many.Members.Select(m => m.Value).OfType<Value.ThingAt>(), goal, face);
                return true;
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
            ShiftAll(fitting, goal, face);
            return true;
        }

        // Fewer than there are: which ones is a choice, unless they are all alike. Verbs move what is there.
        if (amount is not Value.Number { IsKnown: true, Low: { } number } || (number < fitting.Length && fitting.Select(f => f.Thing).Distinct().Count() > 1))
        {
            return Unknown(amount.WhyUnknown);
        }

        ShiftAll(fitting.Take((int)Math.Clamp(number, 0, int.MaxValue)), goal, face);
        return true;
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
        Stack stack = goal.In(_position);
        _position = goal.Put(_position, stack with { Things = stack.Things.AddRange(Enumerable.Repeat(thing, (int)number)) });
        return true;
    }

    private void ShiftAll(IEnumerable<Value.ThingAt> things, Spot goal, bool? face)
    {
        // Highest first within a spot, so that the numbers of the others stay true.
        foreach (Value.ThingAt thing in things.OrderByDescending(t => t.Index))
        {
            Shift(thing, goal, face);
        }
    }

    private void Shift(Value.ThingAt at, Spot goal, bool? face)
    {
        Thing thing = face is null ? at.Thing : at.Thing with { IsFaceUp = face };
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
