using System.CommandLine;
using System.CommandLine.Parsing;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Lessons;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum lesson</c>: the script held against the sheet before filming.</summary>
internal sealed class LessonCommand : ScriptCommand
{
    private readonly Option<int?> _pace;

    /// <summary>The command at a desk.</summary>
    public LessonCommand(Desk desk)
        : this(desk, new Option<int?>("--pace")
        {
            HelpName = "WORDS",
            Description = $"How many words you speak a minute, {Pace.Slowest} to {Pace.Fastest}; that at the head of the lesson, else {Pace.Usual}, if not given.",
            CustomParser = Paced,
        })
    {
    }

    private LessonCommand(Desk desk, Option<int?> pace)
        : base(desk, "lesson", "Holds the lesson against the sheet: every number and ruling that is said, every shot; and how long each topic lasts.", "rostrum lesson games/kiln-night", pace) => _pace = pace;

    /// <inheritdoc />
    protected override int Answer(GameRequest request, LessonReport report, ParseResult parse)
    {
        var item = LessonItem.Of(request.Game.Sheet().Sheet!.Game, report, parse.GetValue(_pace) ?? report.Lesson.WordsAMinute);
        if (request.Json)
        {
            Desk.Write(item, r => r.LessonItem);
        }
        else
        {
            Desk.Write(ProblemScreen.Of(report.Problems) + LessonScreen.Of(item));
            foreach (string line in LessonScreen.Summary(item))
            {
                Desk.Tell(line);
            }
        }

        return report.Problems.Any(p => p.Severity == Severity.Error) ? ExitCode.Findings : ExitCode.Fine;
    }

    private static int? Paced(ArgumentResult result)
    {
        string written = result.Tokens[0].Value;
        if (Pace.Read(written) is { } pace)
        {
            return pace;
        }

        result.AddError($"'{Prose.Clip(written)}' is no pace: write the words of a minute, {Pace.Slowest} to {Pace.Fastest}.");
        return null;
    }
}
