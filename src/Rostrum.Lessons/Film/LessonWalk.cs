using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;

namespace Rostrum.Lessons.Film;

/// <summary>Goes through a lesson from top to bottom and notes when each thing comes. Used once.</summary>
/// <param name="wordsAMinute">The pace, 1 or more.</param>
internal sealed class LessonWalk(int wordsAMinute)
{
    private const long MillisecondsAMinute = 60_000;

    private readonly ImmutableArray<Stretch<LessonBlock.Shot>>.Builder _shots = ImmutableArray.CreateBuilder<Stretch<LessonBlock.Shot>>();
    private readonly ImmutableArray<Stretch<LessonRun.Claim>>.Builder _claims = ImmutableArray.CreateBuilder<Stretch<LessonRun.Claim>>();
    private long _words;
    private long _holds;

    private TimeSpan Now => TimeSpan.FromMilliseconds((_words * MillisecondsAMinute / wordsAMinute) + (_holds * LessonClock.HoldSeconds * 1000));

    public LessonClock Along(Lesson lesson)
    {
        var topics = ImmutableArray.CreateBuilder<Stretch<LessonTopic>>();
        foreach (LessonTopic topic in lesson.Topics)
        {
            TimeSpan start = Now;
            Through(topic);
            topics.Add(new Stretch<LessonTopic>(topic, start, Now));
        }

        return new LessonClock(topics.ToImmutable(), _shots.ToImmutable(), _claims.ToImmutable());
    }

    private void Through(LessonTopic topic)
    {
        (LessonBlock.Shot Shot, TimeSpan Start, long Words)? seen = null;
        foreach (LessonBlock block in topic.Blocks)
        {
            if (block is LessonBlock.Shot shot)
            {
                Close(seen);
                seen = (shot, Now, _words);
            }

            foreach (LessonRun run in block.Runs)
            {
                Say(run);
            }
        }

        Close(seen);
    }

    private void Say(LessonRun run)
    {
        TimeSpan start = Now;
        _words += run.Count;
        if (run is LessonRun.Claim claim)
        {
            _claims.Add(new Stretch<LessonRun.Claim>(claim, start, Now));
        }
    }

    private void Close((LessonBlock.Shot Shot, TimeSpan Start, long Words)? seen)
    {
        if (seen is { } shown)
        {
            _holds += shown.Words == _words ? 1 : 0;
            _shots.Add(new Stretch<LessonBlock.Shot>(shown.Shot, shown.Start, Now));
        }
    }
}
