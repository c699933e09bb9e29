using System.Collections.Immutable;
using Rostrum.Rulings.Boards;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>The shape of boards.</content>
internal sealed partial class Evaluator
{
    private Value Geometry(Term.Apply apply, Value[] frame)
    {
        if (apply.Operation.Id == Op.Run)
        {
            return Run(apply, frame);
        }

        Value first = Evaluate(apply.Argument(0), frame);
        return apply.Operation.Id switch
        {
            Op.NeighboursOf or Op.SidesOf or Op.CornersOf => Near(apply.Operation.Id, first),
            Op.EdgeOf => EdgeOf(AsMany(first)),
            Op.RimOf => first is Value.PlaceAt place && _index.BoardOf(place.Place) is var board && board >= 0
                ? Spaces(_index.Geometry[board].Rim(), board, place.Seat, isList: false) : AsMany(first),
            Op.Step => StepFrom(first, Evaluate(apply.Argument(1), frame)),
            Op.AdvanceOf => first is Value.SpaceAt space ? Value.Of(Sheet.Boards[space.Board].Spaces[space.Index].Row + 1) : Absent(first),
            Op.Straights => Straights(first, Evaluate(apply.Argument(1), frame)),
            Op.BeyondRun => Beyond(first, Many(apply.Argument(1), frame), Evaluate(apply.Argument(2), frame)),
            Op.Distance when apply.Arguments[2] is Term.Joining near => StepsBetween(first, Evaluate(apply.Argument(1), frame), near, frame),
            Op.Following => Following(first, Evaluate(apply.Argument(1), frame), apply.Arguments[2] is { } out1 ? Evaluate(out1, frame) : Value.None),
            _ => Pair(apply.Operation.Id, first, Evaluate(apply.Argument(1), frame)),
        };
    }

    private Value Near(Op id, Value of)
    {
        if (of is not Value.SpaceAt space)
        {
            return AsMany(of);
        }

        BoardGeometry geometry = _index.Geometry[space.Board];
        ReadOnlySpan<int> near = id switch
        {
            Op.NeighboursOf => geometry.Neighbours(space.Index),
            Op.SidesOf => geometry.Sides(space.Index),
            _ => geometry.Corners(space.Index),
        };
        return Spaces(near.ToArray(), space.Board, space.Seat, isList: false);
    }

    private Value.Many EdgeOf(Value.Many set) =>
        Except(Union(set.Members.Select(m => m.IsCertain ? AsMany(Near(Op.NeighboursOf, m.Value)) : Doubted(AsMany(Near(Op.NeighboursOf, m.Value)), m.Blame))
            .Append(set with { Members = [] })), set);

    private Value StepFrom(Value from, Value going)
    {
        if (from is not Value.SpaceAt space || going is not Value.DirectionIs direction)
        {
            return from is Value.SpaceAt ? Absent(going) : Absent(from);
        }

        return _index.Geometry[space.Board].Step(space.Index, direction.Direction) is { } next ? space with { Index = next } : Value.None;
    }

    private Value Straights(Value board, Value length)
    {
        if (board is not Value.PlaceAt place || AsNumber(length) is not { IsKnown: true } n || _index.BoardOf(place.Place) is not (>= 0 and var at))
        {
            return Value.Open(board.WhyUnknown + length.WhyUnknown, isList: false);
        }

        int count = (int)Math.Clamp(n.Low!.Value, 0, int.MaxValue);
        return count == 0 ? Value.Certain([], isList: false) : Value.Certain(_index.Geometry[at].Straights(count).Select(l => Spaces(l, at, place.Seat, isList: true)), isList: false);
    }

    private Value Run(Term.Apply apply, Value[] frame)
    {
        Value from = Evaluate(apply.Argument(0), frame);
        Value going = Evaluate(apply.Argument(1), frame);
        if (from is not Value.SpaceAt start || going is not Value.DirectionIs)
        {
            return from is Value.Unknown || going is Value.Unknown ? Value.Open(from.WhyUnknown + going.WhyUnknown, isList: true) : Value.Certain([], isList: true);
        }

        var members = ImmutableArray.CreateBuilder<Member>();
        Value.Truth all = Value.Yes;
        Value at = StepFrom(start, going);
        while (at is Value.SpaceAt && !at.Equals(start) && !members.Any(m => m.Value.Equals(at)))
        {
            all = And(all, With(apply.Pick!, at, frame, apply.Argument(2), Ask));
            if (all.Is == Kleene.No)
            {
                break;
            }

            members.Add(new Member(at, all.Is, all.Blame));
            at = StepFrom(at, going);
        }

        return new Value.Many(members.ToImmutable(), 0, true, Blame.None);
    }

    private Value Beyond(Value from, Value.Many run, Value going)
    {
        if (!run.IsCertain)
        {
            return new Value.Unknown(run.WhyUnknown);
        }

        Value at = from;
        for (int i = 0; i <= run.Members.Length; i++)
        {
            at = StepFrom(at, going);
        }

        return at;
    }

    private Value Following(Value from, Value number, Value leftOut)
    {
        const long mostSpaces = 10_000;
        Value.Many without = leftOut is Value.SpaceAt ? Value.Certain([leftOut], isList: false) : AsMany(SpacesOf(leftOut));
        if (from is not Value.SpaceAt space || AsNumber(number) is not { IsKnown: true } n || !without.IsCertain)
        {
            return Value.Open(from.WhyUnknown + number.WhyUnknown + without.WhyUnknown, isList: true);
        }

        if (n.Low > mostSpaces)
        {
            return Value.Open(Blame.Of(GapKind.Limit, "a way of more than 10,000 spaces is not followed"), isList: true);
        }

        int count = Sheet.Boards[space.Board].Spaces.Length;
        Value[] round = [.. Enumerable.Range(1, count).Select(i => space with { Index = (space.Index + i) % count }).Where(s => !without.Members.Any(m => m.Value.Equals(s)))];
        return round.Length == 0
            ? Value.Certain([], isList: true)
            : Value.Certain(Enumerable.Range(0, (int)Math.Max(0, n.Low!.Value)).Select(i => round[i % round.Length]), isList: true);
    }

    private Value Pair(Op id, Value first, Value second)
    {
        bool isMany = id == Op.BetweenSpaces;
        if (first is not Value.SpaceAt a || second is not Value.SpaceAt b)
        {
            bool isUnknown = first is Value.Unknown || second is Value.Unknown;
            return isUnknown ? new Value.Unknown(first.WhyUnknown + second.WhyUnknown) : isMany ? Value.Certain([], isList: true) : Value.None;
        }

        if (a.Board != b.Board || a.Seat != b.Seat)
        {
            return isMany ? Value.Certain([], isList: true) : Value.None;
        }

        BoardGeometry geometry = _index.Geometry[a.Board];
        return id switch
        {
            Op.Across => geometry.Across(a.Index, b.Index) is { } across ? a with { Index = across } : Value.None,
            Op.Distance => geometry.Distance(a.Index, b.Index) is { } distance ? Value.Of(distance) : Value.None,
            _ => Spaces(geometry.Between(a.Index, b.Index), a.Board, a.Seat, isList: true),
        };
    }

    private Value LineOf(Term.LineOf term, Value[] frame)
    {
        Value subject = Evaluate(term.Subject, frame);
        int board = _index.BoardOf(term.Family.Board);
        return subject switch
        {
            Value.SpaceAt space when space.Board == board =>
                term.Family.LineOf(space.Index) is { } line ? new Value.LineAt(board, space.Seat, term.Family, line) : Value.None,
            Value.PlaceAt place when term.Label is { } label => new Value.LineAt(board, place.Seat, term.Family, label),
            _ => Absent(subject),
        };
    }

    private Value LinesOf(Term.LinesOf term, Value[] frame)
    {
        Value subject = Evaluate(term.Board, frame);
        int board = _index.BoardOf(term.Family.Board);
        if (subject is not Value.PlaceAt place)
        {
            return AsMany(subject);
        }

        return Value.Certain(Enumerable.Range(0, term.Family.Lines.Length).Select(i => new Value.LineAt(board, place.Seat, term.Family, i)), isList: true);
    }

    private Value RegionOf(Term.RegionOf term, Value[] frame) => OfOwner(term.Player, frame, seat =>
    {
        int board = _index.BoardOf(term.Region.Board);
        ImmutableArray<int> spaces = seat < term.Region.OfSeat.Length ? term.Region.OfSeat[seat] : [];
        return term.Region.IsSpace && spaces.Length == 1 ? new Value.SpaceAt(board, 0, spaces[0]) : Spaces(spaces, board, 0, isList: false);
    });

    private Value LinkOf(Term.LinkOf term, Value[] frame)
    {
        Value from = Evaluate(term.Space, frame);
        return from is Value.SpaceAt space && space.Board == _index.BoardOf(term.Link.Board)
            ? term.Link.To[space.Index] is { } to ? space with { Index = to } : Value.None
            : Absent(from);
    }

    private Value PrintedOn(Term.PrintedOn term, Value[] frame)
    {
        Value on = Evaluate(term.Space, frame);
        return on is Value.SpaceAt space && space.Board == _index.BoardOf(term.Which.Board)
            ? term.Which.On[space.Index] is { } number ? Value.Of(number) : Value.None
            : Absent(on);
    }
}
