using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Scripts;

namespace Rostrum.Lessons.Prompter;

/// <summary>Turns a checked lesson into what the presenter reads in front of the camera.</summary>
internal sealed class PrompterMaker(LessonReport report)
{
    private readonly Dictionary<LessonRun, CheckedClaim> _claims = report.Claims.ToDictionary<CheckedClaim, LessonRun>(c => c.Claim, ReferenceEqualityComparer.Instance);

    /// <summary>The script of the prompter.</summary>
    public static PrompterScript Make(LessonReport report) => new PrompterMaker(report).Make();

    private PrompterScript Make()
    {
        Lesson lesson = report.Lesson;
        LessonClock clock = LessonClock.Of(lesson);
        return new PrompterScript(lesson.Title, lesson.Presenter, lesson.WordsAMinute, [.. clock.Topics.Select(t => new PrompterTopic(t.Of.Title, t.Start, [.. Blocks(t.Of)]))]);
    }

    private IEnumerable<PrompterBlock> Blocks(LessonTopic topic)
    {
        for (int i = 0; i < topic.Blocks.Length; i++)
        {
            switch (topic.Blocks[i])
            {
                case LessonBlock.Paragraph paragraph when paragraph.SpokenWords > 0:
                    yield return new PrompterBlock.Spoken(Passage(paragraph.Said));
                    break;
                case LessonBlock.Quote quote when quote.SpokenWords > 0:
                    yield return new PrompterBlock.Spoken(Passage(quote.Said));
                    break;
                case LessonBlock.List list when list.SpokenWords > 0:
                    yield return new PrompterBlock.List(list.IsNumbered, [.. list.Items.Select(Passage)]);
                    break;
                case LessonBlock.Subheading heading:
                    yield return new PrompterBlock.Heading(heading.Words);
                    break;
                case LessonBlock.Shot shot:
                    yield return new PrompterBlock.Direction("Shot", shot.Caption.Length > 0 ? shot.Caption : shot.Target, IsHeld(topic.Blocks, i) ? LessonClock.HoldSeconds : 0);
                    break;
            }
        }
    }

    // As the clock reckons: a shot to which nothing is said before the next one, or before the topic ends.
    private static bool IsHeld(ImmutableArray<LessonBlock> blocks, int shot) =>
        blocks.Skip(shot + 1).TakeWhile(b => b is not LessonBlock.Shot).All(b => b.SpokenWords == 0);

    private PrompterPassage Passage(ImmutableArray<LessonRun> runs) => new([.. runs.Select(Run)], LessonBlock.WordsIn(runs));

    private PrompterRun Run(LessonRun run) => run switch
    {
        LessonRun.Stressed stressed => new PrompterRun(stressed.Words, true, "", false),
        LessonRun.Marked marked => new PrompterRun(marked.Words, false, $"{LessonMark.WordOf(marked.Kind)}: {string.Join(", ", marked.Names)}", false),
        LessonRun.Claim when _claims[run].Problem is { } problem => new PrompterRun(run.Words, false, $"check first: {problem.Message}", true),
        _ => new PrompterRun(run.Words, false, "", false),
    };
}
