using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tallies;

/// <content>How each form of number is taken apart.</content>
internal sealed partial class Explainer
{
    // Every branch returns pieces that add up to the term's number times the factor; nothing is 0.
    private IEnumerable<Piece> Derive(Term term, Value[] frame, long factor)
    {
        long number = Number(term, frame);
        Piece[] pieces = [.. Split(term, frame, factor)];
        return pieces.Sum(p => p.Points) == number * factor ? pieces : [Whole(term, frame, factor)];
    }

    private IEnumerable<Piece> Split(Term term, Value[] frame, long factor) => term switch
    {
        Term.Apply { Operation.Id: Op.Plus } plus => [.. Derive(plus.Argument(0), frame, factor), .. Derive(plus.Argument(1), frame, factor)],
        Term.Apply { Operation.Id: Op.Minus } minus => [.. Derive(minus.Argument(0), frame, factor), .. Derive(minus.Argument(1), frame, -factor)],
        Term.Apply { Operation.Id: Op.Negative } negative => Derive(negative.Argument(0), frame, -factor),
        Term.Apply { Operation.Id: Op.Times } times => SplitTimes(times, frame, factor),
        Term.Apply { Operation.Id: Op.Sum } sum => SplitSum(sum, frame, factor),
        Term.Apply { Operation.Id: Op.Largest or Op.Smallest } extreme => SplitExtreme(extreme, frame, factor),
        Term.Apply { Operation.Id: Op.BestSplit } split => SplitSets(split, frame, factor),
        Term.If choice => SplitIf(choice, frame, factor),
        Term.Fork fork => Derive(fork.Alternatives[evaluator.Pick(fork.Choice)], frame, factor),
        Term.Idiomatic idiom => Derive(idiom.Inner, Evaluator.Frame(idiom.FrameSize), factor),
        Term.Call call => SplitCall(call, frame, factor),
        _ => [Whole(term, frame, factor)],
    };

    private long Number(Term term, Value[] frame) => ClausePoints.Number(evaluator.Evaluate(term, frame)).Low ?? 0;

    // Each set of the best split is a piece of its own.
    private IEnumerable<Piece> SplitSets(Term.Apply split, Value[] frame, long factor) =>
        [.. evaluator.SplitOf(split, frame).Where(s => s.Worth != 0).Select(s =>
            new Piece($"the set {_teller.SetInWords(s.Elements)}", [.. s.Elements.SelectMany(e => naming.SpacesOf(e)).Distinct()], s.Worth * factor))];

    private IEnumerable<Piece> SplitTimes(Term.Apply times, Value[] frame, long factor)
    {
        (Term plain, Term other) = IsPlain(times.Argument(0)) ? (times.Argument(0), times.Argument(1)) : (times.Argument(1), times.Argument(0));
        return Derive(other, frame, factor * Number(plain, frame));
    }

    private static bool IsPlain(Term term) =>
        term is Term.Number or Term.Constant || (term is Term.Apply { Operation.Id: Op.Negative } negative && IsPlain(negative.Argument(0)));

    private static Piece Together(Piece[] pieces) => new(
        string.Join("; ", pieces.Select(p => p.Text).Where(t => t.Length > 0).Distinct()),
        [.. pieces.SelectMany(p => p.Spaces).Distinct()],
        pieces.Sum(p => p.Points));

    private IEnumerable<Piece> SplitSum(Term.Apply sum, Value[] frame, long factor)
    {
        foreach (Member member in evaluator.Through(sum.Pick!, frame).Members)
        {
            frame[sum.Pick!.Slot] = member.Value;
            yield return Named(member.Value, Together([.. Derive(sum.Argument(0), frame, factor)]));
        }
    }

    private IEnumerable<Piece> SplitExtreme(Term.Apply extreme, Value[] frame, long factor)
    {
        long best = Number(extreme, frame);
        foreach (Member member in evaluator.Through(extreme.Pick!, frame).Members)
        {
            frame[extreme.Pick!.Slot] = member.Value;
            if (Evaluator.AsNumber(evaluator.Evaluate(extreme.Argument(0), frame)) is { IsKnown: true } number && number.Low == best)
            {
                return extreme is { Pick.Domain: Term.Listed listed } && extreme.Argument(0) is Term.Variable
                    ? [Picked(listed.Items.First(i => Number(i, frame) == best), extreme.Operation.Name, frame, factor)]
                    : Derive(extreme.Argument(0), frame, factor).Select(p => Named(member.Value, p));
            }
        }

        return [new Piece("there is none that counts", [], 0)];
    }

    // One of several numbers that stand in the formula: told as what it counts.
    private Piece Picked(Term item, string which, Value[] frame, long factor)
    {
        Piece piece = Together([.. Derive(item, frame, factor)]);
        return piece with { Text = piece.Text.Length == 0 ? $"the {which} of them" : $"{piece.Text}, the {which} of them" };
    }

    // The element first, then what it gives; spaces that the element names are not named twice.
    private Piece Named(Value element, Piece piece)
    {
        string name = naming.Of(element);
        ImmutableArray<string> own = naming.SpacesOf(element is Value.LineAt ? evaluator.SpacesOf(element) : element);
        bool isNarrower = element is Value.LineAt && !piece.Spaces.IsEmpty;
        string reason = piece.Text.EndsWith($" ({name})", StringComparison.Ordinal) ? piece.Text[..^(name.Length + 3)] : piece.Text;
        string text = reason.Length == 0 ? name : reason.StartsWith(name, StringComparison.Ordinal) ? reason : $"{name}: {reason}";
        return piece with { Text = text, Spaces = isNarrower ? piece.Spaces : [.. own.Concat(piece.Spaces).Distinct()] };
    }

    private IEnumerable<Piece> SplitIf(Term.If choice, Value[] frame, long factor)
    {
        Kleene holds = evaluator.Ask(choice.Condition, frame).Is;
        Tale tale = _teller.Tell(choice.Condition, frame);
        Piece[] pieces = [.. Derive(holds == Kleene.Yes ? choice.Then : choice.Otherwise, frame, factor)];
        bool isFormality = choice.Condition is Term.Apply { Operation.Id: Op.IsNothing } && holds == Kleene.No;
        return pieces is [var only] && !isFormality ? [new Piece(tale.Text, [.. tale.Spaces.Concat(only.Spaces).Distinct()], only.Points)] : pieces;
    }

    private IEnumerable<Piece> SplitCall(Term.Call call, Value[] frame, long factor)
    {
        WordMeaning meaning = evaluator.Position.Sheet.Meanings[call.Word.Index];
        return Derive(meaning.Body, Evaluator.FrameOf(meaning, [.. call.Subjects.Select(s => evaluator.Evaluate(s, frame))]), factor);
    }

    private Piece Whole(Term term, Value[] frame, long factor)
    {
        Tale tale = term switch
        {
            Term.Number or Term.Constant or Term.CardCell => Tale.Of(""),
            Term.LookUp lookUp => TellLookUp(lookUp, frame),
            Term.Apply { Operation.Id: Op.Count } count => TellCount(count, frame),
            Term.Apply { Operation.Id: Op.Different } different => TellDifferent(different, frame),
            Term.Apply { Operation.Id: Op.Down or Op.Up or Op.Nearest } rounded => TellRounded(rounded, frame, factor),
            _ when _teller.Found(term, frame) is { } found => found,
            _ => Tale.Of($"{_teller.Phrase(term, frame)} is {naming.Of(evaluator.Evaluate(term, frame))}"),
        };
        return new Piece(tale.Text, tale.Spaces, Number(term, frame) * factor);
    }

    private Tale TellLookUp(Term.LookUp lookUp, Value[] frame)
    {
        Value key = evaluator.Evaluate(lookUp.Key, frame);
        Value points = evaluator.Evaluate(lookUp, frame);
        if (_teller.Found(lookUp.Key, frame) is { } found)
        {
            return new Tale($"{found.Text}, which gives {naming.Of(points)}", found.Spaces);
        }

        if (key is Value.Number && lookUp.Key is Term.Call or Term.CardCell or Term.Property or Term.PrintedOn or Term.MarkOf)
        {
            return Tale.Of($"{_teller.Phrase(lookUp.Key, frame)} is {naming.Of(key)}, which gives {naming.Of(points)}");
        }

        string amount = key is Value.Number ? _teller.Amount(lookUp.Key, key, frame) : naming.Of(key);
        string verb = key is Value.Number { Low: 1 } || !amount.Contains(' ', StringComparison.Ordinal) ? "gives" : "give";
        return Tale.Of($"{amount} {verb} {naming.Of(points)}");
    }

    private Tale TellCount(Term.Apply count, Value[] frame)
    {
        Value.Many elements = evaluator.Through(count.Pick!, frame);
        ImmutableArray<string> spaces = naming.SpacesOf(elements);
        string amount = _teller.Amount(count, Value.Of(elements.Members.Length), frame);
        return new Tale(spaces.Length is > 0 and <= 8 ? $"{amount} ({Prose.And(spaces)})" : amount, spaces);
    }

    private Tale TellDifferent(Term.Apply different, Value[] frame)
    {
        var found = new List<Value>();
        var at = new List<string>();
        foreach (Member member in evaluator.Through(different.Pick!, frame).Members)
        {
            frame[different.Pick!.Slot] = member.Value;
            Value value = evaluator.Evaluate(different.Argument(0), frame);
            if (value is not Value.Nothing && !found.Contains(value))
            {
                found.Add(value);
                at.AddRange(naming.SpacesOf(member.Value));
            }
        }

        return new Tale(found.Count == 0 ? "none" : Prose.And(found.Select((v, i) => at.Count == found.Count ? $"{naming.Of(v)} at {at[i]}" : naming.Of(v))), [.. at.Distinct()]);
    }

    private Tale TellRounded(Term.Apply rounded, Value[] frame, long factor)
    {
        long by = Number(rounded.Argument(1), frame);
        long number = Number(rounded.Argument(0), frame);
        string amount = _teller.Amount(rounded.Argument(0), evaluator.Evaluate(rounded.Argument(0), frame), frame);
        string exact = by > 0 && number % by == 0 ? "" : $", rounded {(rounded.Operation.Id == Op.Nearest ? "to the nearest" : rounded.Operation.Name)}";
        string each = factor == 0 ? "nothing" : $"{(factor < 0 ? "minus " : "")}{Prose.Word(Math.Abs(factor))}";
        Tale? found = _teller.Found(rounded.Argument(0), frame);
        return new Tale($"{found?.Text ?? amount}, {each} for every {naming.Of(Value.Of(by))}{exact}", found?.Spaces ?? []);
    }
}
