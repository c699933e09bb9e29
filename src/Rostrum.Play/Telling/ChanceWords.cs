using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>Says how chance came out: <c>rolled 3, 4</c>, <c>dealt copper jug to drying board 1</c>.</summary>
internal sealed class ChanceWords(CoursePlan plan)
{
    private readonly PlayNames _names = new(plan);

    /// <summary>One outcome in words.</summary>
    /// <param name="state">The state before it.</param>
    /// <param name="chance">What happens by chance.</param>
    /// <param name="outcome">Which outcome, 0-based.</param>
    public string Of(TableState state, ChanceEvent chance, int outcome) => chance switch
    {
        DealEvent deal => $"dealt {_names.Look(state, deal.Things[outcome])} to {_names.Spot(deal.To)}",
        RollEvent roll => $"rolled {Prose.And(roll.Faces(outcome).Select(f => Face(f.Die, f.Face)))}",
        _ => "chance",
    };

    private string Face(int die, int face) => plan.Layout.Class(die).Kind.Attributes[0].Values[face].Name;
}
