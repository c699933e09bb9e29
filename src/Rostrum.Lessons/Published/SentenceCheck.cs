using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>A value that a video says, with what the sheet answers now.</summary>
/// <param name="Checked">The value.</param>
/// <param name="Clause">What it asks: a rule where it is one rule's value.</param>
/// <param name="Now">What would have to be said now; null where the sheet does not say.</param>
/// <param name="Cite">Where the rules say so; null where nobody knows.</param>
internal sealed record AskedAgain(CheckedClaim Checked, string Clause, string? Now, Citation? Cite);

/// <summary>Asks the values of published sentences again.</summary>
internal sealed class SentenceCheck(Game game)
{
    // What has to be said in place of a ruling, in the presenter's own way of saying it.
    private static readonly Dictionary<string, string> Opposite = new(StringComparer.OrdinalIgnoreCase)
    {
        ["allowed"] = "not allowed", ["not allowed"] = "allowed", ["legal"] = "illegal", ["illegal"] = "legal", ["not legal"] = "legal", ["may"] = "may not", ["may not"] = "may",
        ["yes"] = "no", ["no"] = "yes", ["true"] = "false", ["false"] = "true", ["met"] = "not met", ["not met"] = "met", ["forbidden"] = "allowed",
    };

    private readonly ClaimCheck _claims = new(game);

    /// <summary>A value with what the sheet answers now.</summary>
    public AskedAgain Of(LessonRun.Claim claim)
    {
        CheckedClaim asked = _claims.Of(claim);
        (string? clause, string? now, Citation? cite) = asked.Answer switch
        {
            ClaimAnswer.OfTally tally => (tally.Line is { } line ? $"score/{line.Clause}" : "total", Number(tally.Points.Certain), tally.Line?.Cite),
            ClaimAnswer.OfFact { Fact: var fact } => ($"facts/{fact.Name}", fact.Number is { } number ? CorrectionWords.InWords(number) : fact.Words, fact.Cite),
            ClaimAnswer.OfValue value => (value.Table is { } table ? $"tables/{table}" : value.Formula, CorrectionWords.InWords(value.Number), value.Cite),
            ClaimAnswer.OfRuling { Ruling: Ruling.Illegal illegal } => ($"laws/{illegal.Breaches[0].Clause}", InPlaceOf(claim, "not allowed"), illegal.Breaches[0].Cite),
            ClaimAnswer.OfRuling ruling => (Words(claim), InPlaceOf(claim, ruling.Ruling.Verdict), null),
            _ => ((string?)null, (string?)null, (Citation?)null),
        };
        return new AskedAgain(asked, clause ?? claim.Target, asked.Status == ClaimStatus.Wrong ? now : null, cite);
    }

    /// <summary>What the sheet says where readings or absences keep it from one answer.</summary>
    public static string Unsettled(AskedAgain value) => value.Checked.Answer switch
    {
        ClaimAnswer.OfTally { Whole: var whole } tally => Prose.Or(whole.Readings.Where(r => tally.Line is null || r.Clause == tally.Line.Clause).Select(r => $"{(tally.Line is null ? r.Total : r.Points).InWords} if {r.Name}")),
        _ => "",
    };

    private static string InPlaceOf(LessonRun.Claim claim, string verdict) => Opposite.GetValueOrDefault(Film.OneLine.Of(claim.Words).TrimEnd('.', ','), verdict);

    private static string? Number(long? points) => points is { } number ? CorrectionWords.InWords(number) : null;

    private static string Words(LessonRun.Claim claim) => ClaimTarget.Read(claim.Target) is ClaimTarget.Rule rule ? rule.Words : claim.Target;
}
