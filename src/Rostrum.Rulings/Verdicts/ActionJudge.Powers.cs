using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <content>Powers that lift the laws that are broken: one, or several together.</content>
internal sealed partial class ActionJudge
{
    private Judgement WithPowers()
    {
        Judgement judged = Illegal();
        foreach (ImmutableArray<Power> powers in Together())
        {
            Value.Truth ready = AreReady(powers);
            if (ready.Is != Kleene.No && powers.FirstOrDefault(p => p.LimitTimes is not null) is { } limited)
            {
                judged = Unsettled(ready.Blame + _why + Blame.Of(GapKind.NotGiven, $"how often '{limited.Name}' was used before"));
                continue;
            }

            if (ready.Is == Kleene.Yes && _open.TrueForAll(l => powers.Any(p => p.Lifts.Contains(l.Name))))
            {
                return LegalBy(powers);
            }

            if (ready.Is != Kleene.No)
            {
                judged = Unsettled(ready.Blame + _why);
            }
        }

        return judged;
    }

    // Powers that lift all that is broken, none of them needlessly; fewer ones first, then in the order of the sheet.
    private IEnumerable<ImmutableArray<Power>> Together()
    {
        Power[] all = [.. Position.Sheet.Powers.Where(p => p.For is null || ReferenceEquals(p.For, proposal.Action.Action))];
        List<ImmutableArray<Power>> sets = [[]];
        for (int size = 1; size <= Math.Min(all.Length, _broken.Count); size++)
        {
            sets = [.. sets.SelectMany(s => all.Where(p => s.IsEmpty || Array.IndexOf(all, p) > Array.IndexOf(all, s[^1])).Select(s.Add))];
            foreach (ImmutableArray<Power> set in sets.Where(s => Lifting.IsJustEnough(_broken, s)))
            {
                yield return set;
            }
        }
    }

    // Each must be at hand once the prices before it are paid.
    private Value.Truth AreReady(ImmutableArray<Power> powers)
    {
        Position left = Position;
        Value.Truth all = Value.Yes;
        for (int i = 0; i < powers.Length && all.Is != Kleene.No; i++)
        {
            Power power = powers[i];
            Value.Truth ready = power.If is null ? Value.Yes : new Splitter().Decide(left, p => IsReady(p, power));
            all = Evaluator.And(all, ready);
            if (i < powers.Length - 1)
            {
                Value[] frame = proposal.Frame(new Evaluator(left, left.Me, setting, touched), power.FrameSize);
                (Position? after, Blame why) = new StepCarrier(left, left.Me, setting, touched, frame).Carry(power.Price);
                if (after is null)
                {
                    return Evaluator.And(all, Value.Maybe(why));
                }

                left = after;
            }
        }

        return all;
    }

    private Judgement LegalBy(ImmutableArray<Power> powers)
    {
        string price = string.Join("; ", powers.SelectMany(p => p.Price).Select(s => s.Sentence.TrimEnd('.')));
        return new Judgement(Kleene.Yes, [], Blame.None, $"because of {Prose.And(Lifted(powers))}", price.Length == 0 ? "nothing" : price) { Kept = Kept() };
    }

    // A power for any one law lifts what no other does.
    private IEnumerable<string> Lifted(ImmutableArray<Power> powers)
    {
        var rest = new Queue<Law>(_broken.Where(l => !powers.Any(p => p.Lifts.Contains(l.Name))));
        foreach (Power power in powers)
        {
            IEnumerable<Law> lifted = power.Lifts.IsEmpty ? [rest.Dequeue()] : _broken.Where(l => power.Lifts.Contains(l.Name));
            yield return $"{power.Name}, which lifts {Prose.And(lifted.Select(l => $"'{l.Name}'"))}";
        }
    }

    private Value.Truth IsReady(Position position, Power power)
    {
        var evaluator = new Evaluator(position, position.Me, setting, touched);
        return evaluator.Ask(power.If!, proposal.Frame(evaluator, power.FrameSize));
    }
}
