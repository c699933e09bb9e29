using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>Every game of the repository: its sheet is sound, and every answer is the one that the author of a position worked out by hand.</summary>
public sealed class ShippedGamesTests
{
    private static readonly Dictionary<string, Rostrum.Rulings.Games.Game> Games = ShippedGames.Names.ToDictionary(n => n, ShippedGames.Open);

    /// <summary>The laws of an action of which one asks what was done in an earlier turn: a position cannot say it, so the action is never settled as legal.</summary>
    private static readonly string[] OfEarlierTurns = ["resting line", "along the line"];

    public static TheoryData<string> Names => [.. ShippedGames.Names];

    /// <summary>Games in which something scores; in the others whoever is first to do something wins.</summary>
    public static TheoryData<string> WithScore => [.. ShippedGames.Names.Where(n => Games[n].Sheet().Sheet!.Score.Any())];

    public static TheoryData<string, string> Positions => [.. ShippedGames.Names.SelectMany(g => Games[g].PositionNames.Select(p => (g, p)))];

    [Fact]
    public void Games_in_folders_of_folders_are_found() =>
        Assert.Equal(
            [
                "kiln-night", "plank-road", "saltern-steps", "signal-terrace", "sluicekeepers", "third-bell-market",
                "traditional/cassino", "traditional/dominoes", "traditional/four-in-a-row", "traditional/gin-rummy", "traditional/go",
                "traditional/peg-solitaire", "traditional/pig", "traditional/reversi", "traditional/sowing", "traditional/tic-tac-toe", "traditional/tricks",
            ],
            ShippedGames.Names);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sheet_has_no_problems(string game)
    {
        SheetReading basis = Games[game].Sheet();
        IEnumerable<SheetReading> readings = basis.Sheet!.Variants.Select(v => Games[game].Sheet(v.Name)).Prepend(basis);

        Assert.Empty(readings.SelectMany(r => r.Problems).Select(Told));
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void A_position_is_sound_and_gives_what_its_author_expects(string game, string position)
    {
        OpenedPosition opened = Open(game, position);

        Assert.Empty(opened.Problems.Where(p => p.Severity == Severity.Error).Select(Told));
        Assert.Empty(ExpectationCheck.Of(opened.Position!, opened.File!.Expectations).Select(Told));
        Assert.NotEmpty(opened.File.Expectations);
    }

    [Theory]
    [MemberData(nameof(Positions))]
    public void Every_expectation_has_a_reason(string game, string position) =>
        Assert.Empty(Open(game, position).File!.Expectations.Where(e => string.IsNullOrWhiteSpace(e.Because)).Select(e => e.Subject));

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_law_is_seen_broken_and_seen_kept(string game)
    {
        Ruling[] rulings = [.. Games[game].PositionNames.SelectMany(p => Rulings(game, p))];
        string[] laws = [.. Games[game].Sheet().Sheet!.Laws.Select(l => l.Name).Except(OfEarlierTurns)];

        Assert.Empty(laws.Except(rulings.OfType<Ruling.Illegal>().SelectMany(r => r.Breaches.Select(b => b.Clause))));
        Assert.Empty(laws.Except(rulings.OfType<Ruling.Legal>().SelectMany(r => r.Kept.Select(k => k.Clause))));
    }

    [Theory]
    [MemberData(nameof(WithScore))]
    public void Every_scoring_clause_scores_somewhere_and_nowhere(string game)
    {
        Expectation.Tally[] tallies = [.. Games[game].PositionNames.SelectMany(p => Open(game, p).File!.Expectations).OfType<Expectation.Tally>()];

        Assert.True(tallies.Length >= 4, $"{game} expects too few points");
        Assert.Contains(tallies, t => t.Points is ExpectedPoints.Exactly { Points: 0 });
        Assert.Contains(tallies, t => t.Points is ExpectedPoints.Exactly { Points: > 0 });
    }

    private static OpenedPosition Open(string game, string position) => Games[game].Open(Games[game].PositionText(position).Text!);

    private static IEnumerable<Ruling> Rulings(string game, string position)
    {
        OpenedPosition opened = Open(game, position);
        return opened.File!.Expectations.OfType<Expectation.Rule>().Select(e => Ruling.On(opened.Position!, e.Phrase).Ruling).OfType<Ruling>();
    }

    private static string Told(Diagnostic problem) => $"{problem.At}: {problem.Message} {problem.Hint}";
}
