using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Asks whether an action keeps a law, on any completion of its position.</summary>
internal sealed partial class LawJudge(Proposal proposal, Setting setting, ISet<int> touched)
{
    private int Me => proposal.Position.Me;

    /// <summary>The laws that bind the action, in the order of the sheet.</summary>
    public IEnumerable<Law> Laws => proposal.Position.Sheet.Laws.Where(l => l.Binds.Contains(proposal.Action.Action));

    /// <summary>True where a law asks what the action leaves.</summary>
    public bool AskAfterwards => Laws.Any(l => l.Bodies.Any(b => b[l.Binds.IndexOf(proposal.Action.Action)].Demands.Any(d => d.Kind is DemandKind.MustLeave or DemandKind.MustNotLeave)));

    /// <summary>Whether a law is kept: yes, no, or unknown with its causes.</summary>
    public Value.Truth Keeps(Position position, Law law)
    {
        Evaluator evaluator = On(position);
        LawBody body = Body(evaluator, law);
        Value.Truth kept = Value.Yes;
        foreach (LawDemand demand in body.Demands)
        {
            kept = kept.Is == Kleene.No ? kept : Evaluator.And(kept, Met(evaluator, law, demand));
        }

        return body.Unless is null || kept.Is == Kleene.Yes
            ? kept
            : Evaluator.Or(kept, evaluator.Ask(body.Unless, proposal.Frame(evaluator, law.FrameSize)));
    }

    /// <summary>Whether what was chosen is among what may be chosen.</summary>
    public Value.Truth MayChoose(Position position, int choice)
    {
        if (proposal.Impossible.ContainsKey(choice))
        {
            return Value.No;
        }

        Evaluator evaluator = On(position);
        ActionChoice of = proposal.Action.Choices[choice];
        Value[] frame = proposal.Frame(evaluator, 0);
        Value chosen = frame[of.Slot];
        if (proposal.Granted.Contains(choice))
        {
            IEnumerable<Value> things = chosen is Value.Many many ? many.Members.Select(m => m.Value) : [chosen];
            return things.Aggregate(Value.Yes, (sum, t) => Evaluator.And(sum, Fits(evaluator, of.From, t, frame)));
        }

        Value.Many domain = Evaluator.AsMany(evaluator.Evaluate(of.From, frame));
        if (of.Amount == ChoiceAmount.One)
        {
            return Evaluator.Belongs(chosen, domain);
        }

        Value[] all = [.. Evaluator.AsMany(chosen).Members.Select(m => m.Value)];
        bool isFitting = all.Distinct().Count() == all.Length && (of.Amount != ChoiceAmount.UpTo || all.Length <= of.Number);
        return all.Aggregate(Value.Of(isFitting), (sum, v) => Evaluator.And(sum, Evaluator.Belongs(v, domain)));
    }

    // Whether a thing that is there has what the choice asks of it.
    private static Value.Truth Fits(Evaluator evaluator, Term from, Value thing, Value[] frame) => from switch
    {
        Term.Filtered { Through: { Where: { } where } pick } => Evaluator.And(Fits(evaluator, pick.Domain, thing, frame), Evaluator.With(pick, thing, frame, where, evaluator.Ask)),
        Term.Within within => evaluator.HasLook(thing, within.Look),
        _ => Value.Yes,
    };

    /// <summary>Why a law is broken on a position where it is for certain.</summary>
    public Tale Why(Position position, Law law)
    {
        Evaluator evaluator = On(position);
        LawDemand? broken = Body(evaluator, law).Demands.FirstOrDefault(d => Met(evaluator, law, d).Is == Kleene.No);
        if (broken is null)
        {
            return Tale.Of("it is broken, whatever is not given");
        }

        Value[] frame = proposal.Frame(evaluator, law.FrameSize);
        if (broken.Kind is DemandKind.Needs or DemandKind.Forbids)
        {
            return new Teller(evaluator, Naming).Tell(broken.Truth, frame);
        }

        (Position? after, _) = new StepCarrier(position, Me, setting, touched, frame).Carry(proposal.Action.Steps);
        Tale tale = new Teller(On(after!), Naming).Tell(broken.Truth, frame);
        return new Tale($"afterwards {tale.Text}", tale.Spaces);
    }

    /// <summary>Speaks to the player who acts.</summary>
    public Naming Naming => new(proposal.Position.Sheet, Me);

    private Evaluator On(Position position) => new(position, Me, setting, touched);

    private LawBody Body(Evaluator evaluator, Law law) =>
        law.Bodies[law.Choice is null ? 0 : evaluator.Pick(law.Choice)][law.Binds.IndexOf(proposal.Action.Action)];

    private Value.Truth Met(Evaluator evaluator, Law law, LawDemand demand)
    {
        Value[] frame = proposal.Frame(evaluator, law.FrameSize);
        if (demand.Kind is DemandKind.Needs or DemandKind.Forbids)
        {
            Value.Truth asked = evaluator.Ask(demand.Truth, frame);
            return demand.Kind == DemandKind.Needs ? asked : Evaluator.Not(asked);
        }

        var carrier = new StepCarrier(evaluator.Position, Me, setting, touched, frame);
        (Position? after, Blame why) = carrier.Carry(proposal.Action.Steps);
        if (after is null)
        {
            return Value.Maybe(why);
        }

        Value.Truth left = On(after).Ask(demand.Truth, frame);
        left = left with { Blame = left.Blame.Map(carrier.Before) };
        return demand.Kind == DemandKind.MustLeave ? left : Evaluator.Not(left);
    }
}
