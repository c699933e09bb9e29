using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Walks the typed tree on a position: the reference meaning of every formula, over three truths and over bounds.</summary>
/// <remarks>Written to be obviously right. What the position does not give, and what the sheet does not say, becomes an unknown that
/// bears its causes; nothing is ever guessed.</remarks>
/// <param name="position">What lies where.</param>
/// <param name="me">The 0-based seat that <c>me</c> is.</param>
/// <param name="setting">Which reading is meant.</param>
/// <param name="touched">Gathers the ids of the open choices that an answer depended on.</param>
internal sealed partial class Evaluator(Position position, int me, Setting setting, ISet<int> touched)
{
    /// <summary>How many nodes of the tree one evaluator visits at the most; a formula beyond that has no answer.</summary>
    private const long MostSteps = 20_000_000;

    private readonly SheetIndex _index = SheetIndex.Of(position.Sheet);
    private long _steps;

    /// <summary>The position that is asked.</summary>
    public Position Position => position;

    /// <summary>The seat that <c>me</c> is, 0-based.</summary>
    public int Me => me;

    /// <summary>Which reading is meant.</summary>
    public Setting Setting => setting;

    private Sheet Sheet => position.Sheet;

    /// <summary>An empty frame for a formula that stands alone.</summary>
    public static Value[] Frame(int size)
    {
        var frame = new Value[Math.Max(size, 1)];
        Array.Fill(frame, Value.None);
        return frame;
    }

    /// <summary>What a formula gives.</summary>
    /// <param name="term">The formula.</param>
    /// <param name="frame">The values of letters, choices and subjects, by slot; slots of inner elements are written.</param>
    public Value Evaluate(Term term, Value[] frame)
    {
        if (++_steps > MostSteps)
        {
            return new Value.Unknown(Blame.Of(GapKind.Limit, "a formula that takes more than 20,000,000 steps is not worked out"));
        }

        return term switch
        {
            Term.Number number => Value.Of(number.Amount),
            Term.Constant constant => Value.Of(constant.Which.Amount),
            Term.Truth truth => Value.Of(truth.IsYes),
            Term.Nothing => Value.None,
            Term.Variable variable => frame[variable.Slot],
            Term.Apply apply => Operate(apply, frame),
            Term.Matches matches => Matches(matches, frame),
            Term.Call call => CallWord(call.Word, [.. call.Subjects.Select(s => Evaluate(s, frame))]),
            Term.If condition => Branch(condition, frame),
            Term.Filtered filtered => Through(filtered.Through, frame),
            Term.Property property => PropertyOf(property, frame),
            Term.CardCell cell => CellOf(cell, frame),
            Term.LookUp lookUp => LookUp(lookUp, frame),
            Term.Within within => Within(within, frame),
            Term.TheOnly only => TheOnly(only, frame),
            Term.Listed listed => Value.Certain(listed.Items.Select(i => Evaluate(i, frame)), isList: true),
            Term.Fork fork => Evaluate(fork.Alternatives[Pick(fork.Choice)], frame),
            Term.Idiomatic idiom => Evaluate(idiom.Inner, Frame(idiom.FrameSize)),
            Term.NotModelled gap => Missing(gap),
            Term.NotYet gap => new Value.Unknown(Blame.Of(GapKind.NotYet, gap.What)),
            Term.Joining => throw new InvalidOperationException("A joining word stands inside an operation only."),
            Term.AllOf all => AllOf(all),
            Term.Done done => Done(done, frame),
            Term.LastChoice last => Last(last),
            Term.CanDo can => CanDo(can, frame),
            _ => Single(term, frame),
        };
    }

    /// <summary>A formula as a truth; nothing is no.</summary>
    public Value.Truth Ask(Term term, Value[] frame) => AsTruth(Evaluate(term, frame));

    /// <summary>The alternative of a choice that is meant; an open one is remembered as touched.</summary>
    public int Pick(Choice choice)
    {
        if (choice.IsOpen)
        {
            touched.Add(choice.Id);
        }

        return setting.Of(choice);
    }

    /// <summary>A word of the sheet, said of its subjects.</summary>
    public Value CallWord(Word word, ImmutableArray<Value> subjects)
    {
        WordMeaning meaning = Sheet.Meanings[word.Index];
        return Evaluate(meaning.Body, FrameOf(meaning, subjects));
    }

    /// <summary>The frame in which a word's meaning is asked.</summary>
    public static Value[] FrameOf(WordMeaning meaning, ImmutableArray<Value> subjects)
    {
        Value[] frame = Frame(Math.Max(meaning.FrameSize, subjects.Length));
        subjects.CopyTo(frame);
        return frame;
    }

    /// <summary>A value as a number with bounds; null for nothing.</summary>
    public static Value.Number? AsNumber(Value value) => value switch
    {
        Value.Number number => number,
        Value.AttributeIs { Which.Number: { } number } => Value.Of(number),
        Value.Unknown unknown => new Value.Number(null, null, true, unknown.Blame),
        _ => null,
    };

    /// <summary>A value as a truth; nothing is no.</summary>
    public static Value.Truth AsTruth(Value value) => value switch
    {
        Value.Truth truth => truth,
        Value.Unknown unknown => Value.Maybe(unknown.Blame),
        _ => Value.No,
    };

    private Value Single(Term term, Value[] frame) => term switch
    {
        Term.Value value => new Value.AttributeIs(value.Which),
        Term.LookOf look => new Value.LookIs(look.Look),
        Term.Text text => new Value.TextIs(text.Words),
        Term.Drawn drawn => new Value.DrawingIs(drawn.Drawing),
        Term.CardNamed card => new Value.CardIs(card.Card),
        Term.DirectionNamed direction => new Value.DirectionIs(direction.Direction),
        Term.Me => new Value.PlayerAt(me),
        Term.Seat seat => new Value.PlayerAt(seat.Index),
        Term.StartPlayer => _index.SetsStartPlayer ? new Value.Unknown(Blame.Of(GapKind.NotGiven, "who the start player is")) : new Value.PlayerAt(0),
        Term.Counter counter => Value.Between(1, null, Blame.Of(GapKind.NotGiven, $"the number of the {counter.Kind.ToString().ToLowerInvariant()}")),
        Term.SpaceNamed space => OfOwner(space.Owner, frame, seat => new Value.SpaceAt(_index.BoardOf(space.Space.Board), seat, space.Space.Index)),
        Term.PlaceOf { Place.Form: PlaceForm.Supply, Owner: null } place => new Value.PlaceAt(place.Place, Thing.Nobody),
        Term.PlaceOf place => OfOwner(place.Owner, frame, seat => new Value.PlaceAt(place.Place, place.Place.EachPlayer || place.Place.Form == PlaceForm.Supply ? seat : 0)),
        Term.MarkOf { Mark.EachSpaceOf: { } board } mark => OfSpace(mark, board, frame),
        Term.MarkOf mark => OfOwner(mark.Owner, frame, seat => MarkOf(mark.Mark, mark.Mark.EachPlayer ? seat : 0)),
        Term.LineOf line => LineOf(line, frame),
        Term.LinesOf lines => LinesOf(lines, frame),
        Term.RegionOf region => RegionOf(region, frame),
        Term.LinkOf link => LinkOf(link, frame),
        Term.PrintedOn printed => PrintedOn(printed, frame),
        _ => throw new InvalidOperationException($"A formula of an unknown form: {term.GetType().Name}."),
    };

    private Value OfOwner(Term? owner, Value[] frame, Func<int, Value> ofSeat)
    {
        if (owner is null)
        {
            return ofSeat(0);
        }

        return Evaluate(owner, frame) switch
        {
            Value.PlayerAt player when player.Seat < position.Seats => ofSeat(player.Seat),
            Value.Unknown unknown => unknown,
            _ => Value.None,
        };
    }

    private Value OfSpace(Term.MarkOf mark, Place board, Value[] frame) => Evaluate(mark.Owner!, frame) switch
    {
        Value.SpaceAt space when space.Board == _index.BoardOf(board) => MarkOf(mark.Mark, MarkLayout.Of(Sheet, mark.Mark, space.Seat, space.Index)),
        Value.Unknown unknown => unknown,
        _ => Value.None,
    };

    private Value Branch(Term.If term, Value[] frame)
    {
        Value.Truth condition = Ask(term.Condition, frame);
        return condition.Is switch
        {
            Kleene.Yes => Evaluate(term.Then, frame),
            Kleene.No => Evaluate(term.Otherwise, frame),
            _ => Either(Evaluate(term.Then, frame), Evaluate(term.Otherwise, frame), condition.Blame),
        };
    }

    /// <summary>One of two values, nobody can say which.</summary>
    private static Value Either(Value a, Value b, Blame why)
    {
        if (a.IsSettled && a.Equals(b))
        {
            return a;
        }

        if (a is Value.Truth or Value.Unknown && b is Value.Truth or Value.Unknown)
        {
            return new Value.Unknown(why + a.WhyUnknown + b.WhyUnknown);
        }

        return AsNumber(a) is { } first && AsNumber(b) is { } second
            ? Bounds.Hull(first with { Blame = first.Blame + why }, second)
            : EitherOther(a, b, why);
    }

    private static Value EitherOther(Value a, Value b, Blame why)
    {
        Value.Number? number = a is Value.Number && b is Value.Nothing ? AsNumber(a) : b is Value.Number && a is Value.Nothing ? AsNumber(b) : null;
        return number is null
            ? new Value.Unknown(why + a.WhyUnknown + b.WhyUnknown)
            : Value.Between(number.Low, number.High, number.Blame + why, mayBeNothing: true);
    }

    private static Value Missing(Term.NotModelled gap)
    {
        Blame blame = Blame.Of(GapKind.NotModelled, gap.What);
        return gap.Sort.Kind == SortKind.Number || gap.Low is not null || gap.High is not null
            ? new Value.Number(gap.Low, gap.High, false, blame)
            : new Value.Unknown(blame);
    }
}
