using Rostrum.Play.Formulas.Nodes;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Connected parts, ways, pairs and partitions.</content>
internal sealed partial class FormulaCompiler
{
    private GroupsNode Groups(Term.Apply apply, FrameMap frame)
    {
        ManyNode through = Through(apply.Pick!, frame);
        int letter = frame.Letter(apply.Pick!.Slot, apply.Pick.Element);
        JoinTest join = Joining(apply.Arguments[0] as Term.Joining, apply.Pick.Element, frame);
        Term? value = apply.Arguments[1];
        Node? alike = value is null ? null : Compile(value, frame);
        return new GroupsNode(through, join, letter, alike, LikenessOf(value?.Sort), layout.Spots);
    }

    private Node LongestWay(Term.Apply apply, FrameMap frame)
    {
        string measure = ((Term.Text)apply.Argument(1)).Words;
        ManyNode through = Through(apply.Pick!, frame);
        JoinTest join = Joining((Term.Joining)apply.Argument(0), apply.Pick!.Element, frame);
        return measure == "group"
            ? new LargestGroupNode(new GroupsNode(through, join, 0, null, Likeness.Plain, layout.Spots))
            : new LongestWayNode(through, join, measure, apply.Origin.Shown);
    }

    private MostPairsNode MostPairs(Term.Apply apply, FrameMap frame)
    {
        var joining = (Term.Joining)apply.Argument(1);
        ManyNode through = Through(apply.Pick!, frame);
        return new MostPairsNode(through, ManyAt(apply, 0, frame), Joining(joining, apply.Pick!.Element, frame, isAsked: true), apply.Origin.Shown);
    }

    private JoinedDistance DistanceBy(Term.Apply apply, Term.Joining near, FrameMap frame) =>
        new(At(apply, 0, frame), At(apply, 1, frame), Joining(near, Sort.Space, frame), layout, apply.Origin.Shown);

    // A word that is asked as it stands is never left out, even where it holds for all neighbours.
    private JoinTest Joining(Term.Joining? joining, Sort element, FrameMap frame, bool isAsked = false)
    {
        if (joining is null)
        {
            return new JoinTest(0, 0, null, _boards.Neighbours);
        }

        (int first, int second) = (frame.Letter(joining.First, element), frame.Letter(joining.Second, element));
        Term? body = joining.Holds is Term.Call call ? Sheet.Meanings[call.Word.Index].Body : null;
        bool isForNeighbours = !isAsked && body is not null && NeedsNeighbours(body);
        bool isNeighboursOnly = isForNeighbours && body is Term.Apply { Operation.Id: Op.NextTo };
        return new JoinTest(first, second, isNeighboursOnly ? null : Compile(joining.Holds, frame), isForNeighbours ? _boards.Neighbours : null);
    }

    // True for a truth about two subjects that can hold of neighbours only.
    private static bool NeedsNeighbours(Term term) => term switch
    {
        Term.Apply { Operation.Id: Op.NextTo, Arguments: [Term.Variable { Slot: 0 or 1 } one, Term.Variable { Slot: 0 or 1 } other] } => one.Slot != other.Slot,
        Term.Apply { Operation.Id: Op.And } both => both.Arguments.Any(a => NeedsNeighbours(a!)),
        _ => false,
    };

    private SplitNode BestSplit(Term.Apply apply, FrameMap frame)
    {
        ManyNode through = Through(apply.Pick!, frame);
        var worth = (Term.Call)apply.Argument(0);
        int letter = frame.Letter(((Term.Variable)worth.Subjects[0]).Slot, Sort.SetOf(apply.Pick!.Element));
        var reads = new WorthReads(Sheet, worth);
        return new SplitNode(through, letter, Number(worth, frame), SortsOf(reads, apply.Pick.Element), apply.Origin.Shown);
    }

    // What a worth looks at, as numbers by thing; null where things cannot stand for each other.
    private Node[]? SortsOf(WorthReads reads, Sort element)
    {
        if (!reads.IsOfElements || element.Kind != SortKind.Thing)
        {
            return null;
        }

        int it = letters.Next();
        var thing = new LetterNode(it);
        IEnumerable<Rostrum.Sheets.Model.Attribute> attributes = reads.LooksAtOwners ? Sheet.Kinds.SelectMany(k => k.Attributes).Select(a => a.Attribute) : reads.Attributes;
        return
        [
            thing,
            new ClassNode(thing, [.. layout.Classes.Select(c => (2 * Sheet.Kinds.IndexOf(c.Kind)) + (c.Card is null ? 0 : 1))]),
            .. reads.LooksAtOwners ? [new ClassNode(thing, [.. layout.Classes.Select(c => c.Owner)])] : Array.Empty<Node>(),
            .. reads.LooksAtFaces ? [new LookNode(thing, TraitTest(new Trait(Adjective.FaceUp, null), Sort.Thing))] : Array.Empty<Node>(),
            .. attributes.Select(a => (Node)new PropertyNode(thing, TableOf(a))),
            .. reads.Columns.Select(c => ColumnOf(thing, c)),
        ];
    }

    private Node ColumnOf(Node thing, Column column)
    {
        Node?[] byClass = [.. layout.Classes.Select(c => c.Card is { } card && ReferenceEquals(card.Kind, column.Kind) ? CellOf(card, column) : null)];
        return column.Sort.IsMany ? thing : new CellNode(thing, byClass);
    }
}
