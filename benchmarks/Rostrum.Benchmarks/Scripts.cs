using System.Diagnostics;
using System.Globalization;
using Rostrum.Lessons;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>How long the check of a script of 5,000 words takes: the lesson of Kiln Night, its topics again and again under other headings.</summary>
internal static class Scripts
{
    private const int Words = 5000;
    private const int Rounds = 11;

    /// <summary>Measures and writes a line for each figure; the first check, in which the sheet and its variants are read, stands apart.</summary>
    public static void Run(TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(output);
        var game = new Game(Table.Folder, Table.Idioms);
        SourceText text = Script(game);
        TimeSpan first = Timed(game, text);
        TimeSpan[] rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Timed(game, text)).Order()];
        int words = LessonCheck.Of(game, text).Lesson.Topics.Sum(t => t.Words);
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"check of a script of {words} words: first {first.TotalMilliseconds:0} ms, then median {rounds[Rounds / 2].TotalMilliseconds:0} ms, least {rounds[0].TotalMilliseconds:0} ms"));
    }

    private static TimeSpan Timed(Game game, SourceText text)
    {
        long start = Stopwatch.GetTimestamp();
        LessonCheck.Of(game, text);
        return Stopwatch.GetElapsedTime(start);
    }

    private static SourceText Script(Game game)
    {
        string lesson = game.Folder.Read(LessonCheck.FileName).Text!.Content;
        string body = lesson[lesson.IndexOf("## ", StringComparison.Ordinal)..];
        string all = "";
        for (int part = 1; LessonCheck.Of(game, new SourceText(LessonCheck.FileName, all)).Lesson.Topics.Sum(t => t.Words) < Words; part++)
        {
            all += body.Replace("\n## ", $"\n## Part {part}: ", StringComparison.Ordinal) + "\n";
        }

        return new SourceText(LessonCheck.FileName, all);
    }
}
