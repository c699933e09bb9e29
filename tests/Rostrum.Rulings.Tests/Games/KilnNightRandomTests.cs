using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Telling;
using Rostrum.Rulings.Tests.Outside;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>Laws of tallies and verdicts that hold on every table, on both sides of the chamber and under every reading.</summary>
public sealed class KilnNightRandomTests
{
    [Fact]
    public void Parts_add_up_to_their_line_and_lines_to_the_total_under_any_reading() =>
        Gen.Select(KilnNightCases.Tables, Gen.Int[0, 100].Array[16]).Hold(
            (table, picks) =>
            {
                Position position = KilnNightCases.Position(table);
                Setting setting = position.Sheet.Choices.Aggregate(Setting.First, (s, c) => s.With(c, picks[c.Id % picks.Length] % c.Names.Length));
                var reckoner = new Reckoner(position, 0, setting);
                var explainer = new Explainer(new Evaluator(position, 0, setting, new SortedSet<int>()), new Naming(position.Sheet, 0));
                (ScoreClause Clause, Value.Number Points)[] lines = [.. position.Sheet.Score.Select(c => (c, reckoner.Points(c)))];

                Assert.All(lines, l => Assert.Equal(l.Points.Low, explainer.Explain(l.Clause, l.Points).Sum(p => p.Points.Certain)));
                Assert.Equal(lines.Sum(l => l.Points.Low), reckoner.Total([.. lines]).Low);
            },
            cases: 300);

    [Fact]
    public void Lines_and_parts_add_up_in_the_tally_that_people_see() =>
        KilnNightCases.Tables.Hold(
            table =>
            {
                Tally tally = Tally.Of(KilnNightCases.Position(table), 0);

                Assert.Equal(tally.Total.Certain, tally.Lines.Sum(l => l.Points.Certain));
                Assert.All(tally.Lines, l => Assert.Equal(l.Points.Certain, l.Because.Sum(p => p.Points.Certain)));
                Assert.All(tally.Readings, r => Assert.Equal(r.Total.Certain - tally.Total.Certain, r.Points.Certain - tally.Lines.Single(l => l.Clause == r.Clause).Points.Certain));
            },
            cases: 300);

    [Fact]
    public void A_position_that_is_printed_and_read_again_is_answered_alike() =>
        KilnNightCases.Tables.Hold(
            table =>
            {
                Position position = KilnNightCases.Position(table);
                Position again = Game.Position(position.Sheet, PositionPrinter.Print(position));
                string[] questions = [.. Enumerable.Range(1, HandCommissions.Count).Select(n => $"Commission {n} is met"), "place copper jug on B2", "place ash lamp on C1", "burn to swap A1 and B1", "accept Commission 5"];

                Assert.Equal(Told(position), Told(again));
                Assert.All(questions, q => Assert.Equal(Ruling.On(position, q).Ruling!.Verdict, Ruling.On(again, q).Ruling!.Verdict));
            },
            cases: 100);

    private static IEnumerable<string> Told(Position position) =>
        Tally.Of(position, 0) is var tally ? [tally.TotalInWords, .. tally.Lines.SelectMany(l => l.Because).Select(b => $"{b.Text} {b.Points.InWords}"), .. tally.Readings.Select(r => $"{r.Name} {r.Points.InWords}")] : [];
}
