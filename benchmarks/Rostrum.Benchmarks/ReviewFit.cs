using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Review;
using Rostrum.Testing;
using Rostrum.Testing.Speech;

namespace Rostrum.Benchmarks;

/// <summary>Fits the weights with which the review judges numbers: logistic regression over the spoken lessons for tuning, right and with slips.</summary>
internal static class ReviewFit
{
    private const double Ridge = 0.5;

    private static readonly TimeSpan Near = TimeSpan.FromSeconds(1.2);

    /// <summary>Something that is known, with whether it is wrong.</summary>
    internal sealed record Row(double[] Features, bool IsWrong, double Weight, string Lesson, string About, bool IsPlanted, int Token);

    /// <summary>Prints the weights and what they do on the same lessons.</summary>
    public static int Run(TextWriter to)
    {
        Report(to, [.. Lessons().SelectMany(Rows)]);
        return 0;
    }

    /// <summary>The spoken lessons for tuning, those along a script or from bullets among them.</summary>
    public static SpokenLesson[] Lessons() =>
    [
        .. TestFiles.In("benchmarks/Rostrum.Benchmarks/Spoken/tuning", "*.txt").Select(f => SpokenLesson.Read(Path.GetFileNameWithoutExtension(f), TestFiles.Read(f))),
        .. TestFiles.In("benchmarks/Rostrum.Benchmarks/Spoken/along/tuning", "*.txt").Select(Along),
    ];

    /// <summary>A talk that stands in the folder of its lesson.</summary>
    public static SpokenLesson Along(string file) => SpokenLesson.Read(string.Join(' ', file.Split('/')[^2..]), TestFiles.Read(file));

    /// <summary>Fits and tells.</summary>
    public static void Report(TextWriter to, Row[] rows)
    {
        SpokenLesson[] lessons = Lessons();
        double[] weights = Fit(rows);
        to.WriteLine("weights " + string.Join(", ", weights.Select(w => w.ToString("0.00", CultureInfo.InvariantCulture))));
        Curve(to, [.. rows.Select(r => (r, P(r.Features, weights)))], "all, fitted on themselves");

        // Each lesson judged by weights that have not seen its game.
        var fresh = new List<(Row Row, double P)>();
        foreach (IGrouping<string, SpokenLesson> game in lessons.GroupBy(l => l.Game))
        {
            HashSet<string> names = [.. game.Select(l => l.Name)];
            double[] without = Fit([.. rows.Where(r => !names.Contains(r.Lesson))]);
            fresh.AddRange(rows.Where(r => names.Contains(r.Lesson)).Select(r => (r, P(r.Features, without))));
        }

        Tell(to, fresh, "each game by the weights of the others");
    }

    private static IEnumerable<Row> Rows(SpokenLesson lesson)
    {
        Statements statements = Statements.Of(ShippedGames.Open(lesson.Game));
        foreach (ulong seed in new ulong[] { 7, 8, 9 })
        {
            foreach (Row row in Planted(lesson, statements, seed))
            {
                yield return row;
            }

            (ImmutableArray<SpokenToken> tokens, _) = Heard(lesson.Mended(), seed);
            var review = new ValueReview(statements, tokens);
            for (int i = 0; i < tokens.Length; i++)
            {
                if (tokens[i].Number is not { } amount || !review.IsJudged(i, amount))
                {
                    continue;
                }

                string around = string.Join(' ', tokens.Skip(i - 6).Take(13).Select(t => t.Text));
                foreach ((NumberLink link, double[] features) in review.Weighed(i, Math.Abs(amount)))
                {
                    yield return new Row(features, false, 1, lesson.Name, $"{around} -> {link.Slot.Value} {link.Statement.Clause.Name}: {link.Statement.Clause.Says}", false, i + (1000000 * (int)seed));
                }

                foreach (long other in new[] { amount - 1, amount + 1 })
                {
                    if (other > 0 && review.IsJudged(i, other) && review.Weighed(i, other).FirstOrDefault(w => w.Link.Slot.Value == amount) is { Link: { Score: > 0.5 } } changed)
                    {
                        yield return new Row(changed.Features, true, 0.15, lesson.Name, $"[{other}] {around}", false, i);
                    }
                }
            }
        }
    }

    private static IEnumerable<Row> Planted(SpokenLesson lesson, Statements statements, ulong seed)
    {
        (ImmutableArray<SpokenToken> tokens, ImmutableArray<TimeSpan> times) = Heard(lesson, seed);
        var review = new ValueReview(statements, tokens);
        foreach (PlantedSlip slip in lesson.Slips.Where(s => !s.IsTerm))
        {
            int at = Enumerable.Range(0, tokens.Length).Where(i => tokens[i].Number is not null && (tokens[i].Start - times[slip.Word]).Duration() < Near).OrderBy(i => (tokens[i].Start - times[slip.Word]).Duration()).FirstOrDefault(-1);
            string about = $"{slip.Said}|{slip.Right}|{slip.About}";
            bool isNumber = at >= 0 && Read(slip.Right) is not null;
            (NumberLink Link, double[] Features)[] all = isNumber && review.IsJudged(at, tokens[at].Number) ? [.. review.Weighed(at, tokens[at].Size!.Value)] : [];
            long? right = Read(slip.Right);
            (NumberLink Link, double[] Features)[] meant = [.. all.Where(w => w.Link.Slot.Value == right).Take(1)];
            foreach ((NumberLink link, double[] features) in meant)
            {
                yield return new Row(features, true, 1, lesson.Name, $"{about} -> {link.Slot.Value} {link.Statement.Clause.Name}: {link.Statement.Clause.Says}", true, at);
            }

            if (meant.Length == 0)
            {
                string linked = string.Join(" ; ", all.Take(3).Select(w => $"{w.Link.Slot.Value} {w.Link.Statement.Clause.Name} {w.Link.Score:0.00}"));
                yield return new Row([], true, 0, lesson.Name, $"{about} '{string.Join(' ', tokens.Skip(at - 6).Take(13).Select(t => t.Text))}' (not linked: {linked})", true, at);
            }
        }
    }

    /// <summary>What a machine hears of a lesson, and when each of its words is said.</summary>
    public static (ImmutableArray<SpokenToken> Tokens, ImmutableArray<TimeSpan> Times) Heard(SpokenLesson lesson, ulong seed)
    {
        (string text, ImmutableArray<TimeSpan> times) = MachineCaptions.Of(lesson, CaptionNoise.Usual, 155, seed);
        return (SpeechReader.Read(SpokenWords.Of(CaptionReader.Read("a.vtt", Encoding.UTF8.GetBytes(text)))), times);
    }

    private static long? Read(string said) => SpeechReader.Read([new TimedWord(said, TimeSpan.Zero, TimeSpan.Zero, 0, false)]) is [{ Number: { } number }] ? number : SpokenNumber.Read(said);

    private static double P(double[] features, double[] weights) => features.Length == 0 ? 0 : Logistic.Confidence(features, weights);

    // Newton's steps with a ridge: each solves a small system of equations.
    private static double[] Fit(Row[] rows)
    {
        Row[] used = [.. rows.Where(r => r.Features.Length > 0 && r.Weight > 0)];
        int size = used[0].Features.Length;
        double[] weights = new double[size];
        for (int step = 0; step < 25; step++)
        {
            double[,] bend = new double[size, size + 1];
            for (int k = 0; k < size; k++)
            {
                bend[k, k] = Ridge;
                bend[k, size] = -Ridge * weights[k];
            }

            foreach (Row row in used)
            {
                double p = P(row.Features, weights);
                double off = row.Weight * ((row.IsWrong ? 1 : 0) - p);
                double steep = row.Weight * p * (1 - p);
                for (int k = 0; k < size; k++)
                {
                    bend[k, size] += off * row.Features[k];
                    for (int l = 0; l < size; l++)
                    {
                        bend[k, l] += steep * row.Features[k] * row.Features[l];
                    }
                }
            }

            double[] move = Solved(bend);
            double most = Math.Max(1, move.Max(Math.Abs) / 2);
            for (int k = 0; k < size; k++)
            {
                weights[k] += move[k] / most;
            }
        }

        return weights;
    }

    private static double[] Solved(double[,] rows)
    {
        int size = rows.GetLength(0);
        for (int k = 0; k < size; k++)
        {
            for (int below = k + 1; below < size; below++)
            {
                double times = rows[below, k] / rows[k, k];
                for (int l = k; l <= size; l++)
                {
                    rows[below, l] -= times * rows[k, l];
                }
            }
        }

        double[] found = new double[size];
        for (int k = size - 1; k >= 0; k--)
        {
            found[k] = (rows[k, size] - Enumerable.Range(k + 1, size - k - 1).Sum(l => rows[k, l] * found[l])) / rows[k, k];
        }

        return found;
    }

    private static void Tell(TextWriter to, IReadOnlyCollection<(Row Row, double P)> judged, string about)
    {
        Curve(to, judged, about);
        foreach ((string kind, IEnumerable<(Row Row, double P)> some) in new[]
        {
            ("RIGHT", judged.Where(j => !j.Row.IsWrong).OrderByDescending(j => j.P).DistinctBy(j => (j.Row.Lesson, j.Row.Token % 1000000)).Take(60)),
            ("WRONG", judged.Where(j => j.Row.IsPlanted).OrderBy(j => j.P).DistinctBy(j => (j.Row.Lesson, j.Row.About.Split(" -> ")[0]))),
        })
        {
            foreach ((Row row, double p) in some)
            {
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kind} {p:0.00} {row.Lesson}: {row.About} [{string.Join(' ', row.Features.Skip(1).Select(f => f.ToString("0.##", CultureInfo.InvariantCulture)))}]"));
            }
        }
    }

    private static void Curve(TextWriter to, IReadOnlyCollection<(Row Row, double P)> judged, string about)
    {
        to.WriteLine(about);
        int planted = judged.Count(j => j.Row.IsPlanted);
        foreach (double least in new[] { 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.93, 0.95 })
        {
            int found = judged.Count(j => j.Row.IsPlanted && j.P >= least);
            int falseOnes = judged.Count(j => !j.Row.IsWrong && j.P >= least);
            int changed = judged.Count(j => j.Row.IsWrong && !j.Row.IsPlanted && j.P >= least);
            int alarms = judged.Where(j => !j.Row.IsWrong && j.P >= least).Select(j => (j.Row.Lesson, j.Row.Token)).Distinct().Count();
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  from {least:0.00}: planted {found} of {planted} ({(double)found / planted:0.00}), alarms on right numbers {alarms} ({falseOnes} links of {judged.Count(j => !j.Row.IsWrong)}); changed ones {(double)changed / judged.Count(j => j.Row.IsWrong && !j.Row.IsPlanted):0.00}"));
        }
    }
}
