using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Review;
using Rostrum.Testing;
using Rostrum.Testing.Speech;

namespace Rostrum.Benchmarks;

/// <summary>Fits the weights with which the review judges whether a rule was said: over the spoken lessons for tuning, and over the same with the places taken out at which a rule is said.</summary>
internal static class RuleFit
{
    private const int TakenOut = 34;
    private const double OfTakenOut = 0.2;

    /// <summary>Prints the weights and what they do on the same lessons.</summary>
    public static int Run(TextWriter to)
    {
        ReviewFit.Row[] rows = [.. ReviewFit.Lessons().SelectMany(Rows)];
        ReviewFit.Report(to, rows);
        return 0;
    }

    /// <summary>The rules that a lesson leaves out, by the names in its head: with their sections, without variants.</summary>
    public static bool LeavesOut(SpokenLesson lesson, HeardRule rule)
    {
        string part = rule.Rule.IsTie ? "tie" : rule.Rule.Clause.Section switch { "Laws" => "law", "Scoring" => "score", _ => "end" };
        return lesson.LeavesOut.Contains($"{part} {rule.Rule.Clause.Name}");
    }

    private static IEnumerable<ReviewFit.Row> Rows(SpokenLesson lesson)
    {
        Statements statements = Statements.Of(ShippedGames.Open(lesson.Game));
        foreach (ulong seed in new ulong[] { 7, 8 })
        {
            ImmutableArray<SpokenToken> tokens = ReviewFit.Heard(lesson, seed).Tokens;
            foreach (HeardRule rule in new CoverageReview(statements, tokens).All())
            {
                bool isLeft = LeavesOut(lesson, rule);
                string about = string.Create(CultureInfo.InvariantCulture, $"{rule.Rule.Clause.Section} {rule.Rule.Clause.Name}: {rule.Said:0.00} '{string.Join(' ', tokens.Skip(Math.Max(0, rule.At)).Take(20).Select(t => t.Text))}'");
                yield return new ReviewFit.Row(rule.Features, isLeft, 1, lesson.Name, about, isLeft, rule.Rule.Clause.Name.GetHashCode(StringComparison.Ordinal));
                if (!isLeft && rule.Said > 0.65 && seed == 7)
                {
                    // The place at which it is told is taken out.
                    ImmutableArray<SpokenToken> without = [.. tokens.Take(Math.Max(0, rule.At - 3)), .. tokens.Skip(rule.At + TakenOut)];
                    HeardRule again = new CoverageReview(statements, without).All().First(r => r.Rule.Clause.Name == rule.Rule.Clause.Name && r.Rule.Clause.Section == rule.Rule.Clause.Section && r.Rule.IsTie == rule.Rule.IsTie);
                    yield return new ReviewFit.Row(again.Features, true, OfTakenOut, lesson.Name, about, false, 0);
                }
            }
        }
    }
}
