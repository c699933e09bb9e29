using System.Text;
using Rostrum.Lessons.Captions;

using Rostrum.Lessons.Published;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>When each thing is said in the finished video.</summary>
public sealed class VideoMakerTests
{
    // Our own pace for these tests: two words a second, and half a minute of greeting before them.
    private const int MillisecondsAWord = 500;
    private const int GreetingSeconds = 30;
    private const int WordsACaption = 7;

    [Fact]
    public void Captions_of_the_script_give_the_times_themselves()
    {
        PublishedVideo video = PublishedBench.Video(Spoken(Words()));
        string[] words = Words();

        PublishedSentence plates = video.Sentences.Single(s => s.Said.StartsWith("Plates score", StringComparison.Ordinal));
        int at = Enumerable.Range(0, words.Length).Single(i => words[i] == "Plates" && words[i + 1] == "score");
        // A caption of several words says when it begins; a word in it is known to the second or two.
        Assert.InRange(plates.Time.At.TotalSeconds - (GreetingSeconds + (at * MillisecondsAWord / 1000.0)), -2, 2);
        Assert.False(plates.Time.IsEstimated);
        Assert.True(video.Sentences.Count(s => !s.Time.IsEstimated) > video.Sentences.Length * 9 / 10);
        Assert.Equal(video.Sentences.Select(s => s.Time.At).Order(), video.Sentences.Select(s => s.Time.At));
    }

    [Fact]
    public void Words_that_the_editor_cut_or_added_move_only_what_stands_behind_them()
    {
        string[] words = Words();
        int cut = Array.IndexOf(words, "Commissions") is >= 0 and var found ? found : words.Length / 2;
        string[] other = [.. words[..cut], .. Enumerable.Repeat("hm", 120), .. words[cut..]];

        PublishedVideo before = PublishedBench.Video(Spoken(words));
        PublishedVideo after = PublishedBench.Video(Spoken(other));

        Assert.InRange((after.Sentences[^1].Time.At - before.Sentences[^1].Time.At).TotalSeconds, 58, 62);
        Assert.InRange((after.Sentences[0].Time.At - before.Sentences[0].Time.At).TotalSeconds, -1, 1);
    }

    [Fact]
    public void A_free_speech_says_no_sentence_of_the_script_and_gives_estimates_of_its_rules()
    {
        string[] rules = [.. Enumerable.Repeat("in this game a jug and a bowl and a plate and a lamp stand on a shelf of your chamber and copper and ash and iron are glazes and ware lies on drying boards with sticks and commissions".Split(' '), 12).SelectMany(w => w)];

        PublishedVideo video = PublishedBench.Video(Spoken(rules));

        Assert.Empty(video.Sentences);
        Assert.Contains(video.Rules, r => r.Times.All(t => t.IsEstimated));
        Assert.All(video.Rules.SelectMany(r => r.Times), t => Assert.InRange(t.At, TimeSpan.Zero, video.Length!.Value.At));
        Assert.False(video.Length!.Value.IsEstimated);
    }

    [Fact]
    public void A_sentence_that_was_not_said_is_not_remembered()
    {
        string script = string.Join(' ', Words());
        const string Left = "Plates score three each, in the tier that shows most.";
        Assert.Contains(Left, script, StringComparison.Ordinal);

        PublishedVideo video = PublishedBench.Video(Spoken(script.Replace(Left, "", StringComparison.Ordinal).Split(' ')));

        Assert.DoesNotContain(video.Sentences, s => s.Said.StartsWith("Plates score", StringComparison.Ordinal));
        Assert.Equal(PublishedBench.Video().Sentences.Length - 1, video.Sentences.Length);
        Assert.Equal(1, video.Unheard);
    }

    [Fact]
    public void Captions_of_another_matter_are_refused_in_a_sentence()
    {
        string[] baking = [.. Enumerable.Repeat("warm the water feed the starter mix flour and salt fold the dough every half hour and then leave it overnight".Split(' '), 10).SelectMany(w => w)];

        (PublishedVideo? video, string? refused) = PublishedBench.Made(Spoken(baking));

        Assert.Null(video);
        Assert.EndsWith(".", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_captions_times_are_those_of_the_lesson_and_marked()
    {
        PublishedVideo video = PublishedBench.Video();

        Assert.All(video.Sentences.Select(s => s.Time).Concat(video.Rules.SelectMany(r => r.Times)), t => Assert.True(t.IsEstimated));
        Assert.Equal("about 0:13", video.Sentences[0].Time.InWords);
    }

    [Fact]
    public void What_the_lesson_leaves_out_is_remembered_as_not_said()
    {
        PublishedVideo video = PublishedBench.Video();

        Assert.Contains("solo/end/no bay takes ware", video.NotSaid);
        Assert.DoesNotContain(video.Rules, r => r.Clause.StartsWith("guild marks/", StringComparison.Ordinal));
        Assert.Contains(video.Rules, r => r.Clause == "Climbing Chamber/score/full");
        Assert.Empty(video.NotSaid.Intersect(video.Rules.Select(r => r.Clause)));
    }

    [Theory]
    [InlineData("0:00", "0:00")]
    [InlineData("about 6:33", "about 6:33")]
    [InlineData("About 1:02:03", "about 1:02:03")]
    [InlineData("6:75", null)]
    [InlineData("soon", null)]
    public void Times_are_read_as_they_are_written(string written, string? read) => Assert.Equal(read, VideoTime.Read(written)?.InWords);

    [Fact]
    public void Places_in_common_rise_in_both()
    {
        string[] script = "a b c d e f g h i j k l m".Split(' ');
        string[] heard = "x a b c y i j k d e f z l m".Split(' ');

        (int Script, int Heard)[] anchors = [.. WordAnchors.Between(script, heard)];

        Assert.Equal(2, anchors.Length);
        Assert.Equal((0, 1), anchors[0]);
        Assert.All(anchors.Zip(anchors.Skip(1)), p => Assert.True(p.First.Script < p.Second.Script && p.First.Heard < p.Second.Heard));
    }

    private static string[] Words()
    {
        Lesson lesson = LessonReader.Read(new SourceText("lesson.md", Testing.TestFiles.Read("games/kiln-night/lesson.md")), new DiagnosticBag());
        return [.. lesson.Topics.SelectMany(t => t.Blocks).SelectMany(b => b.Passages).SelectMany(p => Prose.WordsOf(string.Concat(p.Select(r => r.Words))))];
    }

    private static CaptionFile Spoken(string[] words)
    {
        var text = new StringBuilder("WEBVTT\n");
        for (int i = 0; i < words.Length; i += WordsACaption)
        {
            string[] said = [.. words.Skip(i).Take(WordsACaption)];
            text.Append('\n').Append(Time(i)).Append(" --> ").Append(Time(i + said.Length)).Append('\n').AppendJoin(' ', said).Append('\n');
        }

        CaptionFile file = CaptionReader.Read(new SourceText("film.vtt", text.ToString()));
        Assert.False(file.IsRefused);
        return file;
    }

    private static string Time(int word)
    {
        TimeSpan at = TimeSpan.FromMilliseconds((GreetingSeconds * 1000) + (word * MillisecondsAWord));
        return $"{at:hh\\:mm\\:ss\\.fff}";
    }
}
