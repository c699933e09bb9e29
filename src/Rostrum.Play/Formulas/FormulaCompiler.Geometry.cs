using Rostrum.Play.Formulas.Nodes;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>The shape of boards: everything is looked up in tables made beforehand.</content>
internal sealed partial class FormulaCompiler
{
    private Node Geometry(Term.Apply apply, FrameMap frame) => apply.Operation.Id switch
    {
        Op.NeighboursOf => Tabled(At(apply, 0, frame), _boards.Neighbours),
        Op.SidesOf => Tabled(At(apply, 0, frame), _boards.Sides),
        Op.CornersOf => Tabled(At(apply, 0, frame), _boards.Corners),
        Op.EdgeOf => new EdgeNode(ManyAt(apply, 0, frame), _boards),
        Op.RimOf => Tabled(At(apply, 0, frame), [.. layout.Holders.Select(h => h.Geometry is null ? [] : BoardTables.Spots(h, h.Geometry.Rim()))]),
        Op.Step => StepFrom(apply, frame),
        Op.AdvanceOf => Looked(At(apply, 0, frame), _boards.Advance),
        Op.Across => new AcrossNode(At(apply, 0, frame), At(apply, 1, frame), _boards),
        Op.BetweenSpaces => new BetweenSpacesNode(At(apply, 0, frame), At(apply, 1, frame), _boards),
        Op.Distance when apply.Arguments[2] is Term.Joining near => DistanceBy(apply, near, frame),
        Op.Distance => new DistanceNode(At(apply, 0, frame), At(apply, 1, frame), _boards),
        Op.Straights => new StraightsNode(At(apply, 0, frame), NumberAt(apply, 1, frame), layout),
        Op.Run => RunFrom(apply, frame),
        Op.BeyondRun => new BeyondNode(At(apply, 0, frame), ManyAt(apply, 1, frame), At(apply, 2, frame), _boards),
        _ => new FollowingNode(At(apply, 0, frame), NumberAt(apply, 1, frame), LeftOut(apply.Arguments[2], frame), layout, apply.Origin.Shown),
    };

    private Node StepFrom(Term.Apply apply, FrameMap frame)
    {
        Node from = At(apply, 0, frame);
        return At(apply, 1, frame) is var going && going is Constant { Amount: >= 0 and var direction }
            ? Looked(from, _boards.Steps[direction])
            : new StepNode(from, going, _boards);
    }

    private RunNode RunFrom(Term.Apply apply, FrameMap frame)
    {
        Node from = At(apply, 0, frame);
        Node going = At(apply, 1, frame);
        int letter = frame.Letter(apply.Pick!.Slot, Sort.Space);
        return new RunNode(from, going, letter, At(apply, 2, frame), _boards);
    }

    private ManyNode LeftOut(Term? term, FrameMap frame) => term is null ? ConstantMany.Empty : Spaces(term, frame);
}
