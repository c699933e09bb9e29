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
    private const int MostSpacesInWords = 8;

    /// <summary>The slip that a statement leads to; statements that differ by their reading only lead to one.</summary>
    public static string IdOf(CheckedClaim claim)
    {
        string target = Uri.UnescapeDataString(claim.Claim.Target);
        return ClaimTarget.Read(target) is ClaimTarget.Tally { Reading: { } reading } ? target[..target.LastIndexOf($" if {reading}", StringComparison.Ordinal)] : target;
    }

    /// <summary>The slip of a statement; <paramref name="tableOf"/> tells a position's title and draws it; null where the sheet gave no answer to write down.</summary>
    public static PageSlip? Make(CheckedClaim claim, string id, Func<string, SlipTable> tableOf) => (claim.Answer, ClaimTarget.Read(claim.Claim.Target)) switch
    {
        (ClaimAnswer.OfTally tally, ClaimTarget.Tally target) => On(tableOf(target.Position), OfTally(tally, id), tally.Whole.Seat),
        (ClaimAnswer.OfRuling ruling, ClaimTarget.Rule target) => On(tableOf(target.Position), OfRuling(ruling.Ruling, target, id)),
        (ClaimAnswer.OfFact fact, _) => new PageSlip(id, Prose.Sentence(fact.Fact.Name), new SlipAnswer.Fact(fact.Fact.Words), new SlipBasis(fact.Basis)) { Cite = Citation.Tell(fact.Fact.Cite) },
        (ClaimAnswer.OfValue value, _) => new PageSlip(id, Prose.Sentence(value.Formula), new SlipAnswer.Fact(Points.Of(value.Number).InWords), new SlipBasis(value.Basis)) { Cite = Citation.Tell(value.Cite) },
        _ => null,
    };

    // Where the table shows several seats, readers must know whose points these are.
    private static PageSlip On(SlipTable table, PageSlip slip, int? seat = null) =>
        slip with { Where = seat is { } counted && table.SeatNames.Length > 1 ? $"{table.Title}, {table.SeatNames[counted]}" : table.Title, Figure = table.Figure };

    private static PageSlip OfTally(ClaimAnswer.OfTally answer, string id)
    {
        string title = answer.Line is null ? "Total" : Prose.Sentence(answer.Line.Clause);
        TallyReading[] readings = [.. answer.Whole.Readings.Where(r => answer.Line is null || r.Clause == answer.Line.Clause)];
        Points[] byReading = [.. readings.Select(r => answer.Line is null ? r.Total : r.Points).Distinct()];
        var slip = new PageSlip(id, title, byReading.Length > 1 ? Answer(byReading) : Answer(answer.Points), SlipBasis.Exact)
        {
            Cite = answer.Line?.CiteInWords ?? "",
            Readings = [.. readings.Select(r => Reading(r, answer.Line is null))],
            NotModelled = answer.Whole.NotModelled,
            NotGiven = answer.Points.IsCertain ? [] : answer.Whole.NotGiven,
        };
        // Lines that add up to one reading only would speak for it.
        return byReading.Length > 1 ? slip : slip with { Lines = answer.Line is null ? [.. answer.Whole.Lines.Where(l => l.Points.IsCertain).Select(Line)] : Parts(answer.Line) };
    }

    private static SlipAnswer Answer(Points points) =>
        points.Low is { } low ? new SlipAnswer.Total(low, !points.IsCertain) : new SlipAnswer.Verdict("cannot be told", SlipTone.Unsettled);

    // A score that hangs on a reading is told with all of them: `10, 11 or 15 points`.
    private static SlipAnswer.Verdict Answer(IEnumerable<Points> byReading) =>
        new($"{Prose.Or(byReading.OrderBy(p => p.Low ?? long.MinValue).Select(p => p.InWords))} points", SlipTone.Unsettled);

    private static SlipLine Line(TallyLine line) => new(Prose.Sentence(line.Clause), line.Points.Certain!.Value) { Cite = line.CiteInWords, Because = Parts(line) };

    private static ImmutableArray<SlipLine> Parts(TallyLine line) =>
        line.Because.All(b => b.Points.IsCertain) ? [.. line.Because.Select(Part)] : [];

    // A reason that names its spaces itself needs no list of them, and its points stand beside it already.
    private static SlipLine Part(TallyPart part)
    {
        long points = part.Points.Certain!.Value;
        string words = Cut(Cut(Prose.Sentence(part.Text), $" give {points}"), $" gives {points}");
        bool isTold = part.Spaces.Length > MostSpacesInWords || part.Spaces.All(s => words.Contains(s, StringComparison.Ordinal));
        return new SlipLine(isTold ? words : $"{words} ({Prose.And(part.Spaces)})", points);
    }

    private static string Cut(string words, string tail) => words.EndsWith(tail, StringComparison.Ordinal) ? words[..^tail.Length] : words;

    private static SlipReading Reading(TallyReading reading, bool isTotal) =>
        new(reading.Name, (isTotal ? reading.Total : reading.Points).InWords, reading.Choice.Says[reading.Choice.Names.IndexOf(reading.Name)]);

    private static PageSlip OfRuling(Ruling ruling, ClaimTarget.Rule target, string id)
    {
        var slip = new PageSlip(id, Prose.Sentence(target.Words), Verdict(ruling), SlipBasis.Exact);
        return ruling switch
        {
            Ruling.Illegal illegal => slip with { Reasons = [.. illegal.Breaches.Select(b => new SlipReason(Prose.Sentence(b.Clause), b.Says, b.CiteInWords, b.Because))] },
            Ruling.Legal legal => slip with { Reasons = [new SlipReason("", Sentence(legal.Because), "", legal.Price is null ? "" : $"at the price: {legal.Price}")] },
            Ruling.Yes yes => slip with { Reasons = [new SlipReason("", Sentence(yes.Because), "")] },
            Ruling.No no => slip with { Reasons = [new SlipReason("", Sentence(no.Because), "")] },
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

/// <summary>The table that a slip speaks of.</summary>
/// <param name="Title">What readers call it.</param>
/// <param name="Figure">Its drawing; null where the page shows it already.</param>
/// <param name="SeatNames">Every seat of the game by name where several are shown; else empty.</param>
internal sealed record SlipTable(string Title, PageBlock.Figure? Figure, ImmutableArray<string> SeatNames);
