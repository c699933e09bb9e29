using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>Every answer that the positions of the demo game expect; its author worked them out from the rulebook by hand.</summary>
public sealed class KilnNightExpectationsTests
{
    private static readonly ImmutableArray<(string File, Expectation Expected)> All =
        [.. TestFiles.In("games/kiln-night/positions", "*.yaml").SelectMany(f => Game.File(f).Expectations.Select(e => (f, e)))];

    public static TheoryData<string, string> Tallies => [.. All.Where(a => a.Expected is Expectation.Tally).Select(a => (a.File, a.Expected.Subject))];

    public static TheoryData<string, string> Rulings => [.. All.Where(a => a.Expected is Expectation.Rule).Select(a => (a.File, a.Expected.Subject))];

    [Theory]
    [MemberData(nameof(Tallies))]
    public void A_line_scores_what_the_author_expects(string file, string clause)
    {
        Tally tally = Tally.Of(Game.File(file).Position!, 0);

        ExpectedPoints expected = All.Where(a => a.File == file).Select(a => a.Expected).OfType<Expectation.Tally>().Single(e => e.Clause == clause).Points;

        Assert.Equal(Say(expected), Say(tally, clause, expected));
    }

    [Theory]
    [MemberData(nameof(Rulings))]
    public void A_ruling_says_what_the_author_expects(string file, string words)
    {
        Expectation.Rule expected = All.Where(a => a.File == file).Select(a => a.Expected).OfType<Expectation.Rule>().Single(e => e.Phrase == words);

        RulingAnswer answer = Ruling.On(Game.File(file).Position!, words);

        Assert.Empty(answer.Problems.Select(p => p.Message));
        Assert.Equal(expected.Verdict.ToString().ToLowerInvariant(), answer.Ruling!.Verdict);
        Assert.Equal(expected.Breaches.Select(b => b.Name).Order(), Broken(answer.Ruling).Order());
    }

    private static IEnumerable<string> Broken(Ruling ruling) => ruling is Ruling.Illegal illegal ? illegal.Breaches.Select(b => b.Clause) : [];

    private static string Say(ExpectedPoints expected) => expected switch
    {
        ExpectedPoints.Exactly exactly => $"{exactly.Points}",
        ExpectedPoints.ByReading by => string.Join(", ", by.Readings.Select(r => $"{r.Reading} {r.Points}")),
        ExpectedPoints.AtLeast least => $"at least {least.Points}",
        _ => "unsettled",
    };

    private static string Say(Tally tally, string clause, ExpectedPoints expected)
    {
        Points points = clause == Expectation.Total ? tally.Total : tally.Lines.Single(l => l.Clause == clause).Points;
        return expected switch
        {
            ExpectedPoints.ByReading by => string.Join(", ", by.Readings.Select(r => tally.Readings.First(t => t.Name == r.Reading && (clause == Expectation.Total || t.Clause == clause)))
                .Select(r => $"{r.Name} {(clause == Expectation.Total ? r.Total : r.Points).Certain}")),
            ExpectedPoints.AtLeast => $"at least {points.Low}",
            ExpectedPoints.Unsettled => points.IsCertain ? $"{points.Certain}" : "unsettled",
            _ => $"{points.Certain}",
        };
    }
}
