using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Writes an answer on a slip: verdict or total, reasons with pages, lines that add up.</summary>
internal static class SlipMaker
{
    /// <summary>The slip of a statement; positions are called as <paramref name="nameOf"/> says; null where the sheet gave no answer to write down.</summary>
    public static PageSlip? Make(CheckedClaim claim, string id, Func<string, string> nameOf) => (claim.Answer, ClaimTarget.Read(claim.Claim.Target)) switch
    {
        (ClaimAnswer.OfTally tally, ClaimTarget.Tally target) => OfTally(tally, target, id, nameOf(target.Position)),
        (ClaimAnswer.OfRuling ruling, ClaimTarget.Rule target) => OfRuling(ruling.Ruling, target, id, nameOf(target.Position)),
        (ClaimAnswer.OfFact fact, _) => new PageSlip(id, Prose.Sentence(fact.Fact.Name), new SlipAnswer.Fact(fact.Fact.Words), SlipBasis.Stated) { Cite = Citation.Tell(fact.Fact.Cite) },
        (ClaimAnswer.OfValue value, _) => new PageSlip(id, Prose.Sentence(value.Formula), new SlipAnswer.Fact(Points.Of(value.Number).InWords), SlipBasis.Exact) { Cite = Citation.Tell(value.Cite) },
        _ => null,
    };

    private static PageSlip OfTally(ClaimAnswer.OfTally answer, ClaimTarget.Tally target, string id, string name)
    {
        string title = answer.Line is null ? $"{name}: the whole" : $"{name}: {answer.Line.Clause}";
        title = target.Reading is null ? title : $"{title}, {target.Reading}";
        var slip = new PageSlip(id, title, Answer(answer.Points), SlipBasis.Exact)
        {
            Cite = answer.Line?.CiteInWords ?? "",
            Readings = [.. answer.Whole.Readings.Where(r => answer.Line is null || r.Clause == answer.Line.Clause).Select(r => Reading(r, answer.Line is null, target.Reading))],
            NotModelled = answer.Whole.NotModelled,
            NotGiven = answer.Points.IsCertain ? [] : answer.Whole.NotGiven,
        };
        if (answer.IsReading)
        {
            return slip;
        }

        return slip with { Lines = answer.Line is null ? [.. answer.Whole.Lines.Where(l => l.Points.IsCertain).Select(Line)] : Parts(answer.Line) };
    }

    private static SlipAnswer Answer(Points points) =>
        points.Low is { } low ? new SlipAnswer.Total(low, !points.IsCertain) : new SlipAnswer.Verdict("cannot be told", SlipTone.Unsettled);

    private static SlipLine Line(TallyLine line) => new(line.Clause, line.Points.Certain!.Value) { Cite = line.CiteInWords, Because = Parts(line) };

    private static ImmutableArray<SlipLine> Parts(TallyLine line) =>
        line.Because.All(b => b.Points.IsCertain) ? [.. line.Because.Select(Part)] : [];

    // A reason that names its spaces itself needs no list of them before it.
    private static SlipLine Part(TallyPart part) =>
        new(part.Text, part.Points.Certain!.Value) { Spaces = part.Spaces.All(s => part.Text.Contains(s, StringComparison.Ordinal)) ? [] : part.Spaces };

    private static SlipReading Reading(TallyReading reading, bool isTotal, string? followed) =>
        new(reading.Name, (isTotal ? reading.Total : reading.Points).InWords, reading.Name == followed);

    private static PageSlip OfRuling(Ruling ruling, ClaimTarget.Rule target, string id, string name)
    {
        var slip = new PageSlip(id, $"{name}: {target.Words}", Verdict(ruling), SlipBasis.Exact);
        return ruling switch
        {
            Ruling.Illegal illegal => slip with { Reasons = [.. illegal.Breaches.Select(b => new SlipReason(b.Clause, b.Says, b.CiteInWords, b.Because))] },
            Ruling.Legal legal => slip with { Reasons = [new SlipReason("why", Sentence(legal.Because), "", legal.Price is null ? "" : $"at the price: {legal.Price}")] },
            Ruling.Yes yes => slip with { Reasons = [new SlipReason("why", Sentence(yes.Because), "")] },
            Ruling.No no => slip with { Reasons = [new SlipReason("why", Sentence(no.Because), "")] },
            Ruling.Unsettled open => slip with
            {
                Readings = [.. open.Readings.Select(r => new SlipReading(r.Name, r.Verdict))],
                NotGiven = open.NotGiven,
                NotModelled = open.NotModelled,
            },
            _ => slip,
        };
    }

    private static SlipAnswer.Verdict Verdict(Ruling ruling) => ruling.Verdict switch
    {
        "legal" => new("allowed", SlipTone.Yes),
        "illegal" => new("not allowed", SlipTone.No),
        "yes" => new("yes", SlipTone.Yes),
        "no" => new("no", SlipTone.No),
        _ => new("the sheet does not say", SlipTone.Unsettled),
    };

    private static string Sentence(string words) => words.Length == 0 ? "No law speaks against it." : Prose.Sentence(words).TrimEnd('.') + ".";
}
