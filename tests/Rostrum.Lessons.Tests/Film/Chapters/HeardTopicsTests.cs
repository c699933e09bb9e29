using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Scripts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>The lesson of Kiln Night is spoken into captions whose times are known, and its chapters are found there again.</summary>
public sealed class HeardTopicsTests
{
    private static readonly Lesson Kiln = LessonReader.Read(new SourceText("lesson.md", TestFiles.Read("games/kiln-night/lesson.md")), new DiagnosticBag());

    [Fact]
    public void Chapters_of_captions_word_for_word_begin_when_their_first_word_is_said()
    {
        Take take = Take.Of(Kiln);

        FilmChapters found = FilmChapters.Of(Kiln, take.Film);

        Assert.Equal(ChapterTimes.Heard, found.Times);
        Assert.Equal(take.Starts.Skip(1), found.List.Chapters.Skip(1).Select(c => c.Start));
        Assert.Equal((TimeSpan.Zero, take.Film.Length), (found.List.Chapters[0].Start, found.List.Length));
        Assert.DoesNotContain(found.Problems, p => p.Id is "ROS0664" or "ROS0665");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Words_that_a_machine_mishears_move_no_chapter_by_more_than_three_seconds(int seed)
    {
        Take take = Take.Of(Kiln, misheard: 8, seed);

        FilmChapters found = FilmChapters.Of(Kiln, take.Film);

        Assert.All(found.List.Chapters.Zip(take.Starts).Skip(1), c => Assert.InRange((c.First.Start - c.Second).Duration(), TimeSpan.Zero, TimeSpan.FromSeconds(3)));
        Assert.DoesNotContain(found.Problems, p => p.Id is "ROS0664" or "ROS0665");
    }

    [Fact]
    public void A_topic_that_is_cut_from_the_film_is_told_and_the_others_are_found()
    {
        Take take = Take.Of(Kiln, without: 5);

        FilmChapters found = FilmChapters.Of(Kiln, take.Film);

        Diagnostic told = Assert.Single(found.Problems, p => p.Id == "ROS0664");
        Assert.Contains($"'{Kiln.Topics[5].Title}'", told.Message, StringComparison.Ordinal);
        Assert.Equal(take.Starts[6], found.List.Chapters[6].Start);
        Assert.Equal(take.Starts[^1], found.List.Chapters[^1].Start);
    }

    [Fact]
    public void Captions_of_another_lesson_leave_the_estimate_and_say_so()
    {
        Lesson other = LessonReader.Read(new SourceText("lesson.md", $"## Ferries\n\n{string.Join(' ', Enumerable.Range(1, 900).Select(i => $"river{i} crate{i % 7} bank{i % 11}"))}\n"), new DiagnosticBag());

        FilmChapters found = FilmChapters.Of(Kiln, Take.Of(other).Film);

        Assert.Equal(ChapterTimes.Estimated, found.Times);
        Assert.Equal("ROS0665", found.Problems[0].Id);
        Assert.Equal(LessonChapters.Estimate(Kiln).List, found.List);
    }

    [Fact]
    public void Captions_without_a_word_leave_the_estimate() =>
        Assert.Equal(ChapterTimes.Estimated, FilmChapters.Of(Kiln, new FinishedFilm { Captions = CaptionFile.Of(CaptionFormat.WebVtt, [new Cue("", TimeSpan.Zero, TimeSpan.FromSeconds(9), CueSettings.None, "…")]) }).Times);

    /// <summary>A film of a lesson: captions of a few words each, and when each topic begins.</summary>
    private sealed record Take(ImmutableArray<TimeSpan> Starts, FinishedFilm Film)
    {
        private const int WordsACue = 6;
        private static readonly TimeSpan Word = TimeSpan.FromMilliseconds(420);

        /// <summary>Speaks a lesson.</summary>
        /// <param name="lesson">The lesson.</param>
        /// <param name="misheard">One word of so many is another; 0 for none.</param>
        /// <param name="seed">Of the words that are misheard.</param>
        /// <param name="without">The topic that is left out, from 0; -1 for none.</param>
        public static Take Of(Lesson lesson, int misheard = 0, int seed = 0, int without = -1)
        {
            var random = new Random(seed);
            var starts = ImmutableArray.CreateBuilder<TimeSpan>();
            var cues = new List<Cue>();
            TimeSpan now = TimeSpan.FromSeconds(4);
            for (int topic = 0; topic < lesson.Topics.Length; topic++)
            {
                starts.Add(now);
                string[] words = topic == without ? [] : [.. lesson.Topics[topic].Blocks.SelectMany(b => b.Passages).SelectMany(p => Prose.WordsOf(string.Concat(p.Select(r => r.Words))))];
                foreach (string[] few in words.Select(w => misheard > 0 && random.Next(misheard) == 0 ? "mumble" : w).Chunk(WordsACue))
                {
                    TimeSpan end = now + (Word * few.Length);
                    cues.Add(new Cue("", now, end, CueSettings.None, string.Join(' ', few)));
                    now = end;
                }
            }

            return new Take(starts.ToImmutable(), new FinishedFilm { Captions = CaptionFile.Of(CaptionFormat.WebVtt, cues), CaptionsName = "film.vtt" });
        }
    }
}
