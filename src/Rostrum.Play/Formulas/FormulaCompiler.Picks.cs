using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Operations that go through elements.</content>
internal sealed partial class FormulaCompiler
{
    // The elements of a pick; what the truth asks of them is asked one by one.
    private ManyNode Through(Pick pick, FrameMap frame)
    {
        ManyNode domain = Many(pick.Domain, frame);
        int letter = frame.Letter(pick.Slot, pick.Element);
        return pick.Where is null ? domain : new FilteredNode(domain, letter, Compile(pick.Where, frame));
    }

    private Node GoThrough(Term.Apply apply, FrameMap frame)
    {
        Pick pick = apply.Pick!;
        switch (apply.Operation.Id)
        {
            case Op.Count:
                return new CountNode(Through(pick, frame));
            case Op.Any or Op.No:
                return new AnyNode(Through(pick, frame), apply.Operation.Id == Op.Any);
            case Op.Most or Op.Least or Op.Ranked:
                return Chosen(apply, pick, frame);
        }

        ManyNode domain = Many(pick.Domain, frame);
        int letter = frame.Letter(pick.Slot, pick.Element);
        Node? where = pick.Where is null ? null : Compile(pick.Where, frame);
        Term each = apply.Argument(0);
        return apply.Operation.Id switch
        {
            Op.All => AllOf(domain, letter, where, Compile(each, frame)),
            Op.Sum => new SumNode(domain, letter, where, Number(each, frame)),
            Op.Largest => new ExtremeNode(domain, letter, where, Number(each, frame), isLargest: true),
            Op.Smallest => new ExtremeNode(domain, letter, where, Number(each, frame), isLargest: false),
            Op.Different => new DifferentNode(domain, letter, where, Compile(each, frame), LikenessOf(each.Sort)),
            _ => new TogetherNode(domain, letter, where, Many(each, frame), LikenessOf(each.Sort.Element)),
        };
    }

    // It holds for all where there is none for which it does not.
    private static AnyNode AllOf(ManyNode domain, int letter, Node? where, Node each)
    {
        Node fails = new NotNode(each);
        return new AnyNode(new FilteredNode(domain, letter, where is null ? fails : new BothNode(where, fails)), false);
    }

    private ManyNode Chosen(Term.Apply apply, Pick pick, FrameMap frame)
    {
        ManyNode through = Through(pick, frame);
        int letter = frame.Letter(pick.Slot, pick.Element);
        Node each = Number(apply.Argument(0), frame);
        return apply.Operation.Id == Op.Ranked ? new RankedNode(through, letter, each) : new ChosenNode(through, letter, each, apply.Operation.Id == Op.Most);
    }
}
