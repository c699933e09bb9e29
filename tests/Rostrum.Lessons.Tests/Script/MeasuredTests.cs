using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Findings;
using Rostrum.Rulings.Games;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Script;

/// <summary>How often the check of a script is wrong, measured: on lessons that are right, and on the same lessons with the saying of one rule taken out.</summary>
public sealed class MeasuredTests(ITestOutputHelper output)
{
    // Many of the others are said a second time: the lesson of Kiln Night says three times that copper never stands beside ash.
    private const double LeastFound = 0.1;
    private const double LeastListed = 0.2;

    [Fact]
    public void Rules_are_missed_when_the_sentences_that_say_them_best_are_taken_out()
    {
        (int all, int found, int listed) = (0, 0, 0);
        foreach (string name in RightLessons.Games)
        {
            Game game = ShippedGames.Open(name);
            string text = RightLessons.Text(name);
            LessonReport report = RightLessons.Check(game, text);
            foreach (ClauseCover cover in report.Script.Clauses.Where(c => c.Status == CoverStatus.Said && c.Sentence >= 0))
            {
                ScriptReport without = RightLessons.Check(game, RightLessons.Without(report, text, cover)).Script;
                bool isFound = without.Findings.Any(f => f.Clause == cover.Clause.Key);
                bool isListed = without.Clauses.Any(c => c.Clause.LongName == cover.Clause.LongName && c.Status == CoverStatus.PerhapsNeverSaid);
                (all, found, listed) = (all + 1, found + (isFound ? 1 : 0), listed + (isFound || isListed ? 1 : 0));
            }
        }

        output.WriteLine($"{found} of {all} rules are missed, {listed} with those that are perhaps never said.");
        Assert.True(found >= LeastFound * all && listed >= LeastListed * all, $"{found} and {listed} of {all}");
    }
}
