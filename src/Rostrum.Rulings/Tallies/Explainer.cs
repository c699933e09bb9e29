using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tallies;

/// <summary>Takes the points of a clause apart again: parts that add up, each with its reason and its spaces.</summary>
/// <remarks>Made only when somebody asks why, by evaluating once more. Points that hang on missing facts are one part.</remarks>
internal sealed partial class Explainer(Evaluator evaluator, Naming naming)
{
    private Teller _teller = new(evaluator, naming);

    /// <summary>The parts of a line; never empty.</summary>
    /// <param name="clause">The clause.</param>
    /// <param name="points">What it gives over all completions of the position.</param>
    public ImmutableArray<TallyPart> Explain(ScoreClause clause, Value.Number points)
    {
        if (!points.IsKnown)
        {
            return [new TallyPart(Missing(points), [], new Points(points.Low, points.High))];
        }

        ScoreBody body = ClausePoints.Body(evaluator, clause);
        Value[] frame = Evaluator.Frame(clause.FrameSize);
        _teller = new Teller(evaluator, naming) { Counted = body.Each is null ? null : Nouns.Of(body.Each) };
        if (!ClausePoints.Raw(evaluator, body, frame).IsKnown)
        {
            return [new TallyPart("the same, whatever is not given", [], Points.Of(points.Low!.Value))];
        }

        ImmutableArray<TallyPart> parts = Limited(Parts(body, frame), body, frame, points.Low!.Value);
        ImmutableArray<TallyPart> counting = [.. parts.Where(p => p.Points.Certain != 0)];
        return counting.IsEmpty ? [parts.IsEmpty ? Empty(body, frame) : parts[0]] : counting;
    }

    private string Missing(Value.Number points)
    {
        ImmutableArray<string> facts = naming.Facts(points.Blame.Blanks);
        IEnumerable<string> gaps = points.Blame.Gaps.Select(g => g.Told).Distinct();
        string[] missing = [.. gaps];
        string given = Prose.And(facts);
        string[] all = given.Length == 0 ? missing : [$"not given: {given}", .. missing];
        return all.Length == 0 ? "nobody can say" : string.Join("; ", all);
    }

    private ImmutableArray<TallyPart> Parts(ScoreBody body, Value[] frame)
    {
        if (body.Each is null)
        {
            return [.. Derive(body.Points, frame, 1).Select(p => p.Told)];
        }

        var parts = ImmutableArray.CreateBuilder<TallyPart>();
        foreach (Member element in evaluator.Through(body.Each, frame).Members)
        {
            frame[body.Each.Slot] = element.Value;
            Piece[] pieces = [.. Derive(body.Points, frame, 1)];
            Piece whole = Named(element.Value, Together(pieces));
            bool isBare = whole.Text == naming.Of(element.Value) && body.Each.Where is Term.Matches && element.Value is Value.LineAt or Value.PlayerAt;
            parts.Add((isBare ? whole with { Text = _teller.Tell(body.Each.Where!, frame).Text } : whole).Told);
        }

        return parts.ToImmutable();
    }

    // A limit is a part of its own, so that the parts add up to what the clause gives.
    private ImmutableArray<TallyPart> Limited(ImmutableArray<TallyPart> parts, ScoreBody body, Value[] frame, long points)
    {
        long sum = parts.Sum(p => p.Points.Low!.Value);
        if (sum == points)
        {
            return parts;
        }

        Term? limit = sum > points ? body.AtMost : body.AtLeast;
        string text = limit is null ? "together" : $"{(sum > points ? "at most" : "at least")} {naming.Of(evaluator.Evaluate(limit, frame))} for this";
        return parts.Add(new TallyPart(text, [], Points.Of(points - sum)));
    }

    private TallyPart Empty(ScoreBody body, Value[] frame)
    {
        Look? look = body.Each is { } each ? Nouns.Of(each) : null;
        string text = look is not null ? $"there is no {Nouns.One(look)} that counts" : body.Each is null ? Reason(body.Points, frame) : "there is none that counts";
        return new TallyPart(text, [], Points.Of(0));
    }

    private string Reason(Term term, Value[] frame) => Derive(term, frame, 1).Select(p => p.Text).FirstOrDefault(t => t.Length > 0) ?? "there is none that counts";

    /// <summary>A share of the points with its reason; an empty text where the number speaks for itself.</summary>
    private sealed record Piece(string Text, ImmutableArray<string> Spaces, long Points)
    {
        public TallyPart Told => new(Text.Length == 0 ? "as the rule says" : Text, Spaces, Tallies.Points.Of(Points));
    }
}
