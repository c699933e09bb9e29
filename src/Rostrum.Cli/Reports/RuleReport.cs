using Rostrum.Rulings.Verdicts;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>rule --json</c> writes.</summary>
/// <param name="Format">Always 1.</param>
/// <param name="Game">The game.</param>
/// <param name="Position">The position's name.</param>
/// <param name="Words">The question as it was asked.</param>
/// <param name="Verdict"><c>legal</c>, <c>illegal</c> or <c>unsettled</c>; for a truth <c>yes</c>, <c>no</c> or <c>unsettled</c>.</param>
/// <param name="Because">Why, for <c>legal</c>, <c>yes</c> and <c>no</c>; null otherwise.</param>
/// <param name="Spaces">The spaces that <paramref name="Because"/> points at.</param>
/// <param name="Price">What a power costs that makes the action legal; null where none is needed.</param>
/// <param name="Kept">The laws that bind the action and are kept; empty unless <c>legal</c>.</param>
/// <param name="Breaches">Every law that is broken; empty unless <c>illegal</c>.</param>
/// <param name="Readings">The verdict by each alternative of each open choice that matters.</param>
/// <param name="NotModelled">What the sheet does not say and the ruling would need.</param>
/// <param name="NotGiven">What the position does not say and the ruling would need.</param>
/// <param name="Assumed">What was taken for granted.</param>
internal sealed record RuleReport(
    int Format,
    string Game,
    string Position,
    string Words,
    string Verdict,
    string? Because,
    IReadOnlyList<string> Spaces,
    string? Price,
    IReadOnlyList<KeptItem> Kept,
    IReadOnlyList<BreachItem> Breaches,
    IReadOnlyList<RulingReadingItem> Readings,
    IReadOnlyList<string> NotModelled,
    IReadOnlyList<string> NotGiven,
    IReadOnlyList<string> Assumed)
{
    /// <summary>A ruling as it is reported.</summary>
    public static RuleReport Of(string game, string position, string words, Ruling ruling)
    {
        var none = new RuleReport(ReportJson.Format, game, position, words, ruling.Verdict, null, [], null, [], [], [], [], [], ruling.Assumed);
        return ruling switch
        {
            Ruling.Legal legal => none with { Because = legal.Because, Price = legal.Price, Kept = [.. legal.Kept.Select(l => new KeptItem(l.Clause, l.Says, l.CiteInWords))] },
            Ruling.Illegal illegal => none with { Breaches = [.. illegal.Breaches.Select(BreachItem.Of)] },
            Ruling.Yes yes => none with { Because = yes.Because, Spaces = yes.Spaces },
            Ruling.No no => none with { Because = no.Because, Spaces = no.Spaces },
            Ruling.Unsettled open => none with
            {
                Readings = [.. open.Readings.Select(r => new RulingReadingItem(r.Clause, r.Name, r.Verdict))],
                NotModelled = open.NotModelled,
                NotGiven = open.NotGiven,
            },
            _ => none,
        };
    }
}

/// <summary>A law that is kept.</summary>
internal sealed record KeptItem(string Clause, string Says, string Cite);

/// <summary>A law that is broken.</summary>
internal sealed record BreachItem(string Clause, string Says, string Cite, string Because, IReadOnlyList<string> Spaces)
{
    /// <summary>A breach as it is reported.</summary>
    public static BreachItem Of(Breach breach) => new(breach.Clause, breach.Says, breach.CiteInWords, breach.Because, breach.Spaces);
}

/// <summary>The verdict by one alternative.</summary>
internal sealed record RulingReadingItem(string Clause, string Name, string Verdict);
