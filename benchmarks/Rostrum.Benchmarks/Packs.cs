using System.Diagnostics;
using System.Globalization;
using Rostrum.Lessons;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Benchmarks;

/// <summary>How long the whole pack of Kiln Night takes, from the files of the game to the bytes of every file, captions of the whole lesson included.</summary>
internal static class Packs
{
    private const int Rounds = 7;
    private const int WordsACaption = 11;
    private const int MillisecondsAWord = 400;

    /// <summary>Measures and writes a line; the first pack of the process, in which fonts and the drawing library are loaded, stands apart.</summary>
    public static void Run(TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(output);
        FinishedFilm film = Film();
        (TimeSpan first, MadePack pack) = Timed(film);
        TimeSpan[] rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Timed(film).Took).Order()];
        using Process self = Process.GetCurrentProcess();
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"pack of Kiln Night: {pack.Files.Length} files, {pack.Files.Sum(f => f.Bytes.Length) / 1_000_000.0:0.0} MB: first {first.TotalSeconds:0.00} s, then median {rounds[Rounds / 2].TotalSeconds:0.00} s, least {rounds[0].TotalSeconds:0.00} s; processor time of all {Rounds + 1}: {self.TotalProcessorTime.TotalSeconds:0.0} s"));
    }

    private static (TimeSpan Took, MadePack Pack) Timed(FinishedFilm film)
    {
        long start = Stopwatch.GetTimestamp();
        var game = new Game(Table.Folder, Table.Idioms);
        MadePack pack = LessonPack.Make(game, LessonCheck.Of(game)!, film);
        return (Stopwatch.GetElapsedTime(start), pack);
    }

    // The lesson spoken word for word, as a machine captions it.
    private static FinishedFilm Film()
    {
        var game = new Game(Table.Folder, Table.Idioms);
        string[] words = [.. LessonCheck.Of(game)!.Lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Passages).SelectMany(p => Prose.WordsOf(string.Concat(p.Select(r => r.Words))))];
        IEnumerable<Cue> cues = words.Chunk(WordsACaption).Select((few, i) => new Cue("", Time(i * WordsACaption), Time((i * WordsACaption) + few.Length), CueSettings.None, string.Join(' ', few)));
        return new FinishedFilm { Captions = CaptionFile.Of(CaptionFormat.WebVtt, cues), CaptionsName = "film.vtt" };
    }

    private static TimeSpan Time(int words) => TimeSpan.FromMilliseconds(words * MillisecondsAWord);
}
