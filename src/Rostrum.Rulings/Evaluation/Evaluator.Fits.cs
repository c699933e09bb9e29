using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>Where drawings lie on boards.</content>
internal sealed partial class Evaluator
{
    private Value Fits(Term.Apply apply, Value[] frame)
    {
        Value drawing = Evaluate(apply.Argument(0), frame);
        PieceShape? shape = drawing is Value.ThingAt { Thing.Kind: { } kind } ? Sheet.KindOf(kind).Shape : null;
        drawing = shape is null ? drawing : new Value.DrawingIs(shape.Drawing);
        Value board = Evaluate(apply.Argument(1), frame);
        if (drawing is not Value.DrawingIs drawn || board is not Value.PlaceAt place || _index.BoardOf(place.Place) is not (>= 0 and var at))
        {
            bool isUnknown = drawing is Value.Unknown or Value.ThingAt { Thing.Kind: null } || board is Value.Unknown;
            return isUnknown ? Value.Open(drawing.WhyUnknown + KindBlame(drawing) + board.WhyUnknown, isList: false) : Value.Certain([], isList: false);
        }

        bool isRotated = shape?.Rotated ?? apply.Arguments[2] is Term.Truth { IsYes: true };
        bool isMirrored = shape?.Mirrored ?? apply.Arguments[3] is Term.Truth { IsYes: true };
        Look? with = (apply.Arguments[4] as Term.LookOf)?.Look;
        var members = ImmutableArray.CreateBuilder<Member>();
        foreach (DrawingPlacement placement in _index.Geometry[at].Placements(drawn.Drawing, isRotated, isMirrored))
        {
            Value.Truth fits = IsShown(drawn.Drawing, placement, at, place.Seat, with);
            if (fits.Is != Kleene.No)
            {
                members.Add(new Member(new Value.FitAt(at, place.Seat, placement, drawn.Drawing), fits.Is, fits.Blame));
            }
        }

        return new Value.Many(members.ToImmutable(), 0, false, Blame.None);
    }

    private Value.Truth IsShown(Drawing drawing, DrawingPlacement placement, int board, int seat, Look? with)
    {
        Value.Truth all = Value.Yes;
        for (int i = 0; i < drawing.Cells.Length && all.Is != Kleene.No; i++)
        {
            all = And(all, CellIsShown(drawing.Cells[i], new Value.SpaceAt(board, seat, placement.Spaces[i]), with));
        }

        foreach (IGrouping<char, int> alike in Enumerable.Range(0, drawing.Cells.Length).Where(i => drawing.Cells[i].Alike is not null).GroupBy(i => drawing.Cells[i].Alike!.Value))
        {
            Value[] tops = [.. alike.Select(i => TopOf(new Value.SpaceAt(board, seat, placement.Spaces[i])))];
            for (int i = 1; i < tops.Length && all.Is != Kleene.No; i++)
            {
                all = And(all, AreAlike(tops[0], tops[i]));
            }
        }

        return all;
    }

    private Value.Truth CellIsShown(DrawingCell cell, Value.SpaceAt space, Look? with)
    {
        if (cell.IsEmpty)
        {
            return IsEmpty(space);
        }

        Value.Truth shown = Value.Yes;
        if (cell.Height is { } height)
        {
            Value.Number heightThere = HeightOf(SpotOf(space));
            shown = cell.OrMore ? NotBelow(heightThere, Value.Of(height)) : Same(heightThere, Value.Of(height));
        }

        if (shown.Is != Kleene.No && cell.Asks is not null)
        {
            shown = And(shown, Shows(space, cell.Asks));
        }

        bool isSeen = cell.Asks is not null || cell.Alike is not null || cell.Height > 0;
        return shown.Is != Kleene.No && isSeen && with is not null ? And(shown, Shows(space, with)) : shown;
    }

    // Alike are things of one kind with the same attributes; their states may differ.
    private Value.Truth AreAlike(Value a, Value b)
    {
        if (a is Value.Nothing || b is Value.Nothing)
        {
            return Value.No;
        }

        if (a is not Value.ThingAt { Thing: { Kind: { } kind } one } || b is not Value.ThingAt { Thing: { Kind: not null } other })
        {
            Blame why = a.WhyUnknown + b.WhyUnknown;
            return Value.Maybe(why + KindBlame(a) + KindBlame(b));
        }

        if (!ReferenceEquals(kind, other.Kind))
        {
            return Value.No;
        }

        Value.Truth all = one.Card is null && other.Card is null ? Value.Yes : Same(CardValue(a), CardValue(b));
        foreach (AttributeFacts facts in Sheet.KindOf(kind).Attributes.Where(f => !f.Attribute.IsState))
        {
            all = all.Is == Kleene.No ? all : And(all, Same(ValueOf(a, facts.Attribute), ValueOf(b, facts.Attribute)));
        }

        return all;
    }

    private static Blame KindBlame(Value value) =>
        value is Value.ThingAt { Thing.Kind: null } at ? Blame.Of(BlankOf(at, Aspect.Kind)) : Blame.None;

    private static Value CardValue(Value value) => value is Value.ThingAt { Thing.Card: { } card } ? new Value.CardIs(card) : value;

    private static Value AnchorOf(Value fit) =>
        fit is Value.FitAt at ? at.Placement.Anchor is { } anchor ? new Value.SpaceAt(at.Board, at.Seat, anchor) : Value.None : Absent(fit);
}
