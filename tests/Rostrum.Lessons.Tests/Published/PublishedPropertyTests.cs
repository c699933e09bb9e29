using CsCheck;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Published;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Tests.Film;
using Rostrum.Lessons.Tests.Script;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>Laws of what is remembered, over strange words and over every lesson that is right.</summary>
public sealed class PublishedPropertyTests
{
    public static TheoryData<string> Lessons => [.. RightLessons.Games];

    [Fact]
    public void Whatever_a_video_is_called_and_says_is_read_as_it_was_written() =>
        Gen.Select(FilmGen.Title, FilmGen.Title, FilmGen.Title).Where(t => Written(t.Item1).Length > 0 && Written(t.Item2).Length > 0).Hold((title, says, address) =>
        {
            var video = new PublishedVideo(title, "2026-01-02")
            {
                Address = address,
                Rules = [new PublishedRule("score/x", [VideoTime.Of(TimeSpan.Zero, true)], says, address, "", title)],
                Sentences = [new PublishedSentence(VideoTime.Of(TimeSpan.FromHours(2), false), says)],
                Sources = [("book", title)],
            };

            string content = PublishedWriter.With(null, PublishedBench.Named with { Rules = [], Title = "Before" })!;
            string? with = PublishedWriter.With(new SourceText(PublishedFile.FileName, content), video with { Title = Written(title) });

            Assert.NotNull(with);
            PublishedVideo read = PublishedFile.Read(new SourceText(PublishedFile.FileName, with)).Videos[1];
            Assert.Equal((Written(title), Written(address)), (read.Title, read.Address));
            Assert.Equal((Written(says), Written(address), Written(title)), (read.Rules[0].Says, read.Rules[0].Means, read.Rules[0].Cite));
            Assert.Equal(Written(says), read.Sentences[0].Said);
            Assert.Equal(("book", Written(title)), read.Sources[0]);
        });

    [Theory]
    [MemberData(nameof(Lessons))]
    public void What_a_right_lesson_says_is_not_wrong_on_the_same_day(string name)
    {
        Game game = ShippedGames.Open(name);
        LessonReport report = RightLessons.Check(name);

        PublishedVideo video = VideoMaker.Of(game, report, null, PublishedBench.Named).Video!;
        PublishedFile file = PublishedFile.Read(new SourceText(PublishedFile.FileName, PublishedWriter.With(null, video)!));
        PublishedReport check = PublishedCheck.Of(game, file, TestContext.Current.CancellationToken);

        Assert.Empty(check.Findings);
        Assert.Empty(check.Notes);
        Assert.NotEmpty(file.Videos[0].Rules);
        Assert.Equal(report.Claims.Count(c => c.Status is ClaimStatus.Right or ClaimStatus.Wrong), file.Videos[0].Sentences.Sum(s => SaidSentence.Read(s.Said).OfType<LessonRun.Claim>().Count()));
        Assert.All(file.Videos[0].Rules.SelectMany(r => r.Times), t => Assert.InRange(t.At, TimeSpan.Zero, LessonClock.Of(report.Lesson).Length));
    }

    private static string Written(string words) => PublishedWriter.Plain(words);
}
