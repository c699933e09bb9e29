using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Properties of things and spots.</content>
internal sealed partial class FormulaCompiler
{
    // By spot: true for spaces and slots, which have a top and a height.
    private readonly bool[] _isPart = [.. layout.SpotHolder.Select(h => h.Form is PlaceForm.Board or PlaceForm.Row)];
    private readonly int[] _ownerOfSpot = [.. layout.SpotHolder.Select(h => h.Seat < 0 ? Node.Nothing : h.Seat)];
    private readonly int[] _ownerOfHolder = [.. layout.Holders.Select(h => h.Seat < 0 ? Node.Nothing : h.Seat)];
    private PropertyTable? _owners;

    private Node Property(Term.Apply apply, FrameMap frame)
    {
        Node subject = At(apply, 0, frame);
        return apply.Operation.Id switch
        {
            Op.TopOf => new TopNode(subject, _isPart),
            Op.HeightOf => new HeightNode(subject, _isPart),
            Op.OwnerOf => OwnerOf(subject, apply.Argument(0).Sort),
            Op.PlaceOfThing => new SpotNode(subject),
            _ => Shown(new PropertyNode(subject, Faces()), apply.Sort),
        };
    }

    private Node OwnerOf(Node subject, Sort sort) => sort.Kind switch
    {
        SortKind.Thing => new PropertyNode(subject, Owners),
        SortKind.Space or SortKind.Slot => Looked(subject, _ownerOfSpot),
        SortKind.Place => Looked(subject, _ownerOfHolder),
        SortKind.Line => Looked(subject, [.. _lines.Owners.Select(o => o < 0 ? Node.Nothing : o)]),
        _ => Constant.None,
    };

    /// <summary>Whose things are: as their state says, else whose they are from the start.</summary>
    private PropertyTable Owners => _owners ??= PropertyOf(
        c => c.Kind.Attributes.FirstOrDefault(a => a.HoldsPlayer && a.Attribute.Name == "owner"), c => c.Owner < 0 ? Node.Nothing : c.Owner);

    private PropertyTable TableOf(Rostrum.Sheets.Model.Attribute attribute) =>
        PropertyOf(c => ReferenceEquals(c.Kind.Kind, attribute.Kind) ? layout.Values.Facts(attribute) : null, _ => Node.Nothing);

    private PropertyTable Faces() => PropertyOf(c => c.Kind.Attributes.FirstOrDefault(), _ => Node.Nothing);

    private PropertyTable PropertyOf(Func<ThingClass, AttributeFacts?> which, Func<ThingClass, int> otherwise)
    {
        int[] fixedOnes = [.. layout.Classes.Select(c => which(c) is { } facts ? FixedValue(c, facts) : otherwise(c))];
        int[] states = [.. layout.Classes.Select(c => which(c) is { } facts ? StateIndex(c, facts.Attribute.Index) : -1)];
        int[] first = [.. layout.Classes.Select(c => which(c) is { HoldsPlayer: false } facts ? layout.Values.First(facts.Attribute) : 0)];
        return new PropertyTable(fixedOnes, states, first);
    }

    private int FixedValue(ThingClass of, AttributeFacts facts) =>
        facts.Attribute.Index < of.Values.Length && of.Values[facts.Attribute.Index] is >= 0 and var value
            ? facts.HoldsPlayer ? value : layout.Values.First(facts.Attribute) + value
            : Node.Nothing;

    /// <summary>Which changing value of a class an attribute is; -1 where it does not change. The face of a card is attribute -1.</summary>
    private static int StateIndex(ThingClass of, int attribute)
    {
        for (int i = 0; i < of.States.Length; i++)
        {
            if (of.States[i].Attribute == attribute)
            {
                return i;
            }
        }

        return -1;
    }
}
