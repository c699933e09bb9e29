using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Whether two are the same, and whether an element belongs to a set or lies in a place.</content>
internal sealed partial class FormulaCompiler
{
    private readonly int[] _alike = Alike(layout.Values);

    // Values of attributes that are all numerals are the same where their numbers are, whatever the attribute.
    private static int[] Alike(ValueTable values) =>
        [.. values.All.Select((v, i) => values.IsNumeric(v.Attribute) ? values.All.Select((o, j) => (o, j)).First(p => values.IsNumeric(p.o.Attribute) && p.o.Number == v.Number).j : i)];

    private Likeness LikenessOf(Sort? sort) => sort switch
    {
        { Kind: SortKind.Value or SortKind.Any } when _alike.Where((a, i) => a != i).Any() => new Likeness(_alike, null, false),
        { IsMany: true } => new Likeness(null, LikenessOf(sort.Element), sort.Kind == SortKind.List),
        _ => Likeness.Plain,
    };

    private Node Same(Term one, Term other, FrameMap frame)
    {
        if (one is Term.CardNamed || other is Term.CardNamed)
        {
            return IsCard(one is Term.CardNamed ? one : other, one is Term.CardNamed ? other : one, frame);
        }

        if (one.Sort.IsMany || other.Sort.IsMany)
        {
            return new SameManyNode(Many(one, frame), Many(other, frame), one.Sort.Kind == SortKind.List && other.Sort.Kind == SortKind.List, LikenessOf(one.Sort.Element));
        }

        (Node a, Node b) = (Compile(one, frame), Compile(other, frame));
        if (one.Sort.Kind != other.Sort.Kind && (one.Sort.Kind == SortKind.Number || other.Sort.Kind == SortKind.Number))
        {
            (a, b) = (AsNumber(a, one.Sort), AsNumber(b, other.Sort));
        }
        else if (one.Sort.Kind == SortKind.Value && other.Sort.Kind == SortKind.Value && !ReferenceEquals(one.Sort.Of, other.Sort.Of))
        {
            (a, b) = (Looked(a, _alike), Looked(b, _alike));
        }

        return b is Constant wanted ? new IsNode(a, wanted.Amount) : a is Constant known ? new IsNode(b, known.Amount) : new SameNode(a, b);
    }

    // A card that is named is every copy of it.
    private Node IsCard(Term card, Term subject, FrameMap frame)
    {
        Card named = ((Term.CardNamed)card).Card;
        return new ClassNode(Compile(subject, frame), [.. layout.Classes.Select(c => ReferenceEquals(c.Card, named) ? 1 : 0)]);
    }

    private Node In(Term element, Term container, FrameMap frame)
    {
        Node of = Compile(element, frame);
        if (container.Sort.IsMany)
        {
            return IsAmong(of, element, container, frame);
        }

        Node where = element.Sort.Kind == SortKind.Thing || element is Term.CardNamed ? new SpotNode(of) : of;
        bool isThing = !ReferenceEquals(where, of);
        ManyNode spots = isThing ? Spots(container, frame) : Spaces(container, frame);
        return container.Sort.Kind switch
        {
            SortKind.Thing when isThing => new SameNode(of, Compile(container, frame)),
            SortKind.Place when isThing => new SameNode(new LookedUp(where, _holderOfSpot), Compile(container, frame)),
            not SortKind.Place when isThing && layout.HasLarge => new LiesInNode(of, spots),
            SortKind.Space or SortKind.Slot when isThing => new SameNode(where, Compile(container, frame)),
            _ => new InNode(where, spots, Likeness.Plain),
        };
    }

    private Node IsAmong(Node of, Term element, Term container, FrameMap frame)
    {
        if (element is Term.CardNamed { Card: var card })
        {
            int letter = letters.Next();
            Node isIt = new ClassNode(new LetterNode(letter), [.. layout.Classes.Select(c => ReferenceEquals(c.Card, card) ? 1 : 0)]);
            return new AnyNode(new FilteredNode(Many(container, frame), letter, isIt), true);
        }

        return container switch
        {
            Term.Apply { Operation.Id: Op.NeighboursOf } near => new NextToNode(of, At(near, 0, frame), _boards.Neighbours),
            _ => new InNode(of, Many(container, frame), LikenessOf(container.Sort.Element)),
        };
    }

    private readonly int[] _holderOfSpot = [.. layout.SpotHolder.Select(h => h.Number)];
}
