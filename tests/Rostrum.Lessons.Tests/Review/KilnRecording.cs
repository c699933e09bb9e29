using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Review;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Testing.Speech;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Review;

/// <summary>A recording of Kiln Night that is shipped: the speech, the captions that are made of it, and what the review says of them.</summary>
internal sealed class KilnRecording
{
    private const double WordsAMinute = 176;
    private const ulong Seed = 7;

    private static readonly Game Kiln = ShippedGames.Open("kiln-night");

    private readonly string _name;

    private KilnRecording(string name)
    {
        _name = name;
        Speech = SpokenLesson.Read("kiln-night", TestFiles.Read($"games/kiln-night/{name}.txt"));
        (Text, Times) = Spoken(Speech);
        Captions = Read(Text);
        Report = Of(Text);
    }

    /// <summary>The lesson that is filmed. It stands first: the recordings are held against it.</summary>
    public static Lesson Lesson { get; } = LessonReader.Read(Kiln.Folder.Read("lesson.md").Text!, new DiagnosticBag());

    /// <summary>Along the lesson.</summary>
    public static KilnRecording AlongTheScript { get; } = new("recording");

    /// <summary>In any words that come.</summary>
    public static KilnRecording Free { get; } = new("recording-free");

    public SpokenLesson Speech { get; }

    public string Text { get; }

    public ImmutableArray<TimeSpan> Times { get; }

    public CaptionFile Captions { get; }

    public RecordingReport Report { get; }

    /// <summary>The captions of a speech, and when each of its words is said.</summary>
    public static (string Text, ImmutableArray<TimeSpan> Times) Spoken(SpokenLesson speech) => PlatformCaptions.Of(speech, CaptionNoise.Usual, WordsAMinute, Seed);

    /// <summary>The review of captions, with the lesson beside them.</summary>
    public static RecordingReport Of(string captions) => RecordingReview.Of(Kiln, Read(captions), Lesson);

    /// <summary>The captions as they are shipped; made anew where that is asked for.</summary>
    public string Shipped() => TestFiles.Made($"games/kiln-night/{_name}.vtt", Text);

    private static CaptionFile Read(string captions) => CaptionReader.Read("recording.vtt", Encoding.UTF8.GetBytes(captions));
}
