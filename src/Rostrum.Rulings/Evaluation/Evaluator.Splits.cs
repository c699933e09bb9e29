using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>The best way to part elements into sets.</content>
internal sealed partial class Evaluator
{
    private const int MostSplit = 24;

    private Value.Number BestSplit(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        return many.IsCertain ? Split(apply, Elements(many), frame).Worth : Value.Between(null, null, many.WhyUnknown);
    }

    /// <summary>The sets of a best split, those worth most first; empty where it is not certain.</summary>
    internal ImmutableArray<(ImmutableArray<Value> Elements, long Worth)> SplitOf(Term.Apply apply, Value[] frame)
    {
        Value.Many many = Through(apply.Pick!, frame);
        return many.IsCertain ? Split(apply, Elements(many), frame).Sets : [];
    }

    private SplitFound Split(Term.Apply apply, Value[] elements, Value[] frame)
    {
        WorthReads reads = _index.ReadsOf(apply.Argument(0)!);
        int asker = reads.IsOfElements && !reads.LooksAtMe ? SplitMemory.Anybody : me;
        SplitMemory.Answer answer = SplitMemory.Of(position).Ask(apply.Argument(0), asker, setting, elements, () =>
        {
            var own = new SortedSet<int>();
            var asked = new Evaluator(position, me, setting, own);
            SplitFound found = asked.Search(apply, elements, [.. frame]);
            _steps += asked._steps;
            return new SplitMemory.Answer(found, [.. own]);
        });
        touched.UnionWith(answer.Touched);
        return answer.Found;
    }

    private SplitFound Search(Term.Apply apply, Value[] elements, Value[] frame)
    {
        if (elements.Length > MostSplit)
        {
            return SplitFound.Refused($"the best split is not worked out above {MostSplit} things");
        }

        SplitWorths worths = WorthsOf(apply, elements, frame);
        return worths.Ask() ? BestOf(worths) : SplitFound.Refused($"the best split is not worked out above {SplitWorths.MostSets:N0} different sets");
    }

    private static SplitFound BestOf(SplitWorths worths)
    {
        Partition low = PartitionSearch.Best(worths.Task(isHigh: false));
        Partition high = worths.AreKnown ? low : PartitionSearch.Best(worths.Task(isHigh: true));
        Blame limit = low.IsBest && high.IsBest ? Blame.None : Blame.Of(GapKind.Limit, $"the best split is not worked out above {PartitionSearch.MostSteps:N0} steps");
        Value.Number worth = Value.Between(low.Worth, worths.HasNoTop ? null : high.Most, worths.Blame + limit);
        return new SplitFound(worth, worths.AreKnown && low.IsBest ? worths.Told(low) : []);
    }

    private SplitWorths WorthsOf(Term.Apply apply, Value[] elements, Value[] frame)
    {
        var worth = (Term.Call)apply.Argument(0);
        int slot = ((Term.Variable)worth.Subjects[0]).Slot;
        return new SplitWorths(this, _index.ReadsOf(worth), elements, set =>
        {
            frame[slot] = set;
            Value.Number number = AsNumber(Evaluate(worth, frame)) ?? Value.Of(0);
            return number.MayBeNothing ? Bounds.OrZero(number, Blame.None) : number;
        });
    }

    /// <summary>True where two elements agree in everything that a worth depends on.</summary>
    internal bool AreAlike(Value a, Value b, WorthReads reads)
    {
        if (!reads.IsOfElements || a is not Value.ThingAt { Thing: var one } || b is not Value.ThingAt { Thing: var other })
        {
            return false;
        }

        bool areSame = one.Kind is not null && ReferenceEquals(one.Kind, other.Kind) && (one.Card is null) == (other.Card is null);
        return areSame
            && (!reads.LooksAtOwners || one.Owner == other.Owner)
            && (!reads.LooksAtFaces || one.IsFaceUp == other.IsFaceUp)
            && Sheet.KindOf(one.Kind!).Attributes.All(f => (!reads.LooksAtOwners && !reads.Attributes.Contains(f.Attribute)) || IndexOf(one, f.Attribute) == IndexOf(other, f.Attribute))
            && reads.Columns.All(c => CellOf(c, a) is var cell && cell.IsSettled && cell.Equals(CellOf(c, b)));
    }
}
