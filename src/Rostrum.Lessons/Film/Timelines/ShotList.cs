using System.Globalization;
using Rostrum.Lessons.Pack;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Shots;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>The shots of a lesson as a timeline that an editor opens.</summary>
/// <remarks>All times are estimates from the words (<see cref="LessonClock"/>). Between shots, where the presenter speaks to the camera, are gaps with the name of the
/// topic. Call-outs are green markers, pick-ups red ones, both on the track, in its times.</remarks>
public static class ShotList
{
    /// <summary>Frames a second where nobody says otherwise: 25, the usual rate of European video.</summary>
    public const double UsualRate = 25;

    /// <summary>The name under which our metadata stands.</summary>
    public const string MetadataName = "rostrum";

    private const double FastestRate = 1000;

    /// <summary>The timeline.</summary>
    /// <param name="report">The checked lesson.</param>
    /// <param name="framesPerSecond">Above 0, at most 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="framesPerSecond"/> is outside of its range.</exception>
    public static Timeline Of(LessonReport report, double framesPerSecond = UsualRate)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(framesPerSecond);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(framesPerSecond, FastestRate);
        LessonClock clock = LessonClock.Of(report.Lesson);
        var markers = new CallOutMarkers(framesPerSecond);
        var track = new Track("shots", "Video", [.. Items(report, clock, framesPerSecond)], [.. CallOutList.Of(report, clock).Select(markers.Of)], OtioValue.Record.Empty);
        OtioValue.Record about = OtioValue.Record.Empty
            .With("times", "estimated from the words")
            .With("words_a_minute", new OtioValue.Number(report.Lesson.WordsAMinute.ToString(CultureInfo.InvariantCulture)))
            .With("correct_as_of", report.Lesson.CorrectAsOf);
        return new Timeline(OneLine.Of(report.Lesson.Title), [track], Ours(about));
    }

    /// <summary>Metadata under our name.</summary>
    internal static OtioValue.Record Ours(OtioValue.Record about) => OtioValue.Record.Empty.With(MetadataName, about);

    private static IEnumerable<TrackItem> Items(LessonReport report, LessonClock clock, double rate)
    {
        var shots = new Queue<(CheckedShot Shot, Stretch<LessonBlock.Shot> Shown)>(report.Shots.Zip(clock.Shots));
        foreach (Stretch<LessonTopic> topic in clock.Topics)
        {
            TimeSpan at = topic.Start;
            // Every topic has as many shots as blocks that are one; times alone would not part two of length zero.
            for (int left = topic.Of.Blocks.OfType<LessonBlock.Shot>().Count(); left > 0; left--)
            {
                (CheckedShot shot, Stretch<LessonBlock.Shot> shown) = shots.Dequeue();
                foreach (TrackItem gap in Gap(topic.Of.Title, at, shown.Start, rate))
                {
                    yield return gap;
                }

                yield return Clip(shot, Length(shown.Start, shown.End, rate));
                at = shown.End;
            }

            foreach (TrackItem gap in Gap(topic.Of.Title, at, topic.End, rate))
            {
                yield return gap;
            }
        }
    }

    private static IEnumerable<TrackItem> Gap(string topic, TimeSpan start, TimeSpan end, double rate)
    {
        TimeRange range = Length(start, end, rate);
        if (range.Duration.Value > 0)
        {
            yield return new TrackItem.Gap(OneLine.Of(topic), range);
        }
    }

    private static TrackItem.Clip Clip(CheckedShot shot, TimeRange range)
    {
        string caption = OneLine.Of(shot.Shot.Caption);
        string? picture = shot.Position is null ? null : $"{string.Join('/', PictureNames.NameOf(shot).Split('/').Select(Uri.EscapeDataString))}.png";
        OtioValue.Record about = OtioValue.Record.Empty
            .With("caption", caption)
            .With("position", OneLine.Of(shot.PositionName))
            .With("clause", shot.Clause ?? "")
            .With("space", shot.Space ?? "")
            .With("line", new OtioValue.Number(shot.Shot.At.StartPosition.Line.ToString(CultureInfo.InvariantCulture)));
        return new TrackItem.Clip(caption.Length > 0 ? caption : OneLine.Of(shot.PositionName), range, picture, [], Ours(about));
    }

    // Both ends are rounded to frames, and the length lies between: clips follow each other without a frame too many.
    private static TimeRange Length(TimeSpan start, TimeSpan end, double rate) =>
        new(new RationalTime(0, rate), new RationalTime(RationalTime.Of(end, rate).Value - RationalTime.Of(start, rate).Value, rate));
}
