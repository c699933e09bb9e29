using System.Globalization;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Testing.Speech;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>How many planted slips of spoken lessons the review finds, and how many of its certain findings are right.</summary>
internal static class ReviewBench
{
    private static readonly TimeSpan Near = TimeSpan.FromSeconds(2.5);

    /// <summary>Runs over a folder of spoken lessons below <c>Spoken</c>.</summary>
    public static int Run(TextWriter to, string[] wishes)
    {
        bool all = wishes.Contains("--each");
        string set = wishes.FirstOrDefault(w => !w.StartsWith('-')) ?? "measured";
        string folder = $"benchmarks/Rostrum.Benchmarks/Spoken/{set}";
        string[] files = [.. TestFiles.In(folder, "*.txt")];
        if (files.Length == 0)
        {
            Console.Error.WriteLine($"There are no spoken lessons in {folder}.");
            return 2;
        }

        var sum = new Score();
        foreach (string file in files)
        {
            sum.Add(Of(SpokenLesson.Read(Path.GetFileNameWithoutExtension(file), TestFiles.Read(file)), null, all ? to : null));
        }

        Tell(to, $"{set}: {files.Length} lessons", sum);
        return 0;
    }

    /// <summary>Runs over a folder of lessons below <c>Spoken/along</c>: each with a script and with bullets, spoken along the script by one person and freely by another who has the bullets.</summary>
    public static int Along(TextWriter to, string[] wishes)
    {
        string set = wishes.FirstOrDefault(w => !w.StartsWith('-')) ?? "measured";
        string folder = $"benchmarks/Rostrum.Benchmarks/Spoken/along/{set}";
        foreach ((string about, string talk, string? beside) in new[]
        {
            ("along the script", "close", "script.md"), ("the same by the sheet alone", "close", null),
            ("freely from bullets", "free", "outline.md"), ("the same by the sheet alone", "free", (string?)null),
        })
        {
            var sum = new Score();
            TextWriter? each = wishes.Contains("--each") ? to : null;
            each?.WriteLine($"# {about}");
            string[] talks = [.. TestFiles.In(folder, $"{talk}*.txt")];
            foreach (string file in talks)
            {
                string lesson = file[..file.LastIndexOf('/')];
                Lesson? written = beside is null ? null : LessonReader.Read(new SourceText(beside, TestFiles.Read($"{lesson}/{beside}")), new DiagnosticBag());
                sum.Add(Of(ReviewFit.Along(file), written, each));
            }

            Tell(to, $"{set}, {about}: {talks.Length} lessons", sum);
        }

        return 0;
    }

    private static void Tell(TextWriter to, string about, Score sum)
    {
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{about}, {sum.Words} words"));
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"certain findings {sum.Right + sum.False}, of them wrong {sum.False}: precision {Share(sum.Right, sum.Right + sum.False):0.000}"));
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"wrong values   {sum.ValuesFound} of {sum.Values} certain: recall {Share(sum.ValuesFound, sum.Values):0.000}; in the list to listen to as well {sum.ValuesListened}"));
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"never said     {sum.RulesFound} of {sum.Rules} certain: recall {Share(sum.RulesFound, sum.Rules):0.000}; in the list to listen to as well {sum.RulesListened}"));
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"rows missing   {sum.RowsFound} of {sum.Rows}; to listen to {sum.Listen}"));
    }

    private static double Share(int part, int whole) => whole == 0 ? 1 : (double)part / whole;

    private static Score Of(SpokenLesson lesson, Lesson? written, TextWriter? to)
    {
        (string text, var times) = MachineCaptions.Of(lesson, CaptionNoise.Usual, 155, 7);
        CaptionFile captions = CaptionReader.Read($"{lesson.Name}.vtt", Encoding.UTF8.GetBytes(text));
        RecordingReport report = RecordingReview.Of(ShippedGames.Open(lesson.Game), captions, written);
        var score = new Score { Words = lesson.Words.Length, Listen = report.Listen.Length };
        to?.WriteLine($"== {lesson.Name} ({lesson.Game}) {report.Refused}");
        var open = lesson.Slips.Where(s => !s.IsTerm).ToList();
        score.Values = open.Count;
        foreach (Finding finding in report.Certain.Concat(report.Listen))
        {
            bool isCertain = report.Certain.Contains(finding);
            (bool isRight, string about) = Judge(finding, lesson, times, open, score, isCertain);
            score.Right += isCertain && isRight ? 1 : 0;
            score.False += isCertain && !isRight ? 1 : 0;
            to?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(isCertain ? "CERTAIN" : "listen ")} {(isRight ? "ok   " : "FALSE")} {finding.Confidence:0.00} {finding.Kind} {finding.Time:mm\\:ss} '{finding.Said}' -> {finding.Right} [{finding.Clause}: {finding.Sheet}] {about}"));
        }

        foreach (PlantedSlip slip in open)
        {
            to?.WriteLine($"MISSED  {slip.Said}|{slip.Right}|{slip.About} at {times[slip.Word]:mm\\:ss}: {string.Join(' ', lesson.Words.Skip(slip.Word - 8).Take(17))}");
        }

        foreach (RuleHeard rule in report.Coverage.OrderBy(c => c.Said))
        {
            bool isLeft = lesson.LeavesOut.Any(l => l.EndsWith(' ' + rule.Clause, StringComparison.Ordinal));
            to?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"COVER   {rule.Said:0.00} {(isLeft ? "LEFT" : "told")} {rule.Section}: {rule.Clause}"));
        }

        string[] left = [.. lesson.LeavesOut.Where(l => !l.StartsWith("variant", StringComparison.Ordinal))];
        score.Rules = left.Length;
        foreach (string rule in left)
        {
            string name = rule[(rule.IndexOf(' ', StringComparison.Ordinal) + 1)..];
            bool isCertain = report.Certain.Any(f => Names(f, name));
            bool isListened = report.Listen.Any(f => Names(f, name));
            score.RulesFound += isCertain ? 1 : 0;
            score.RulesListened += !isCertain && isListened ? 1 : 0;
            if (!isCertain)
            {
                to?.WriteLine(string.Create(CultureInfo.InvariantCulture, $"UNTOLD  {rule}: {report.Coverage.Where(c => c.Clause == name).Select(c => c.Said).DefaultIfEmpty(-1).First():0.00}"));
            }
        }

        score.Rows = lesson.RowsLeftOut.Length;
        score.RowsFound = Math.Min(score.Rows, report.Certain.Count(f => f.Kind == FindingKind.RowMissing));
        return score;
    }

    private static bool Names(Finding finding, string name) => finding.Kind == FindingKind.NeverSaid && finding.Clause == name;

    private static (bool IsRight, string About) Judge(Finding finding, SpokenLesson lesson, System.Collections.Immutable.ImmutableArray<TimeSpan> times, List<PlantedSlip> open, Score score, bool isCertain)
    {
        switch (finding.Kind)
        {
            case FindingKind.NeverSaid:
                return (lesson.LeavesOut.Any(l => l.EndsWith(' ' + finding.Clause, StringComparison.Ordinal) || (l.StartsWith("variant", StringComparison.Ordinal) && finding.Sheet.Length > 0 && l.Contains(finding.Because, StringComparison.Ordinal))), "");
            case FindingKind.RowMissing:
                return (lesson.RowsLeftOut.Any(r => r.Contains(finding.Clause, StringComparison.Ordinal)), finding.Because);
            default:
                PlantedSlip? slip = open.FirstOrDefault(s => (times[s.Word] - finding.Time!.Value).Duration() < Near && SpokenNumber.Read(s.Said) == finding.Heard)
                    ?? open.FirstOrDefault(s => (times[s.Word] - finding.Time!.Value).Duration() < Near);
                if (slip is null)
                {
                    return (false, "");
                }

                open.Remove(slip);
                score.ValuesFound += isCertain ? 1 : 0;
                score.ValuesListened += isCertain ? 0 : 1;
                return (true, SpokenNumber.Read(slip.Right) == finding.Right ? "" : $"(right would be {slip.Right})");
        }
    }

    private sealed class Score
    {
        public int Words { get; set; }

        public int Right { get; set; }

        public int False { get; set; }

        public int Values { get; set; }

        public int ValuesFound { get; set; }

        public int ValuesListened { get; set; }

        public int Rules { get; set; }

        public int RulesFound { get; set; }

        public int RulesListened { get; set; }

        public int Rows { get; set; }

        public int RowsFound { get; set; }

        public int Listen { get; set; }

        public void Add(Score other)
        {
            (Words, Right, False, Values) = (Words + other.Words, Right + other.Right, False + other.False, Values + other.Values);
            (ValuesFound, ValuesListened, Rules) = (ValuesFound + other.ValuesFound, ValuesListened + other.ValuesListened, Rules + other.Rules);
            (RulesFound, RulesListened, Rows, RowsFound, Listen) = (RulesFound + other.RulesFound, RulesListened + other.RulesListened, Rows + other.Rows, RowsFound + other.RowsFound, Listen + other.Listen);
        }
    }
}
