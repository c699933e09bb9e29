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
    private readonly Option<bool> _perhaps;

    /// <summary>The command at a desk.</summary>
    public LessonCommand(Desk desk)
        : this(desk, new Option<int?>("--pace")
        {
            HelpName = "WORDS",
            Description = $"How many words you speak a minute, {Pace.Slowest} to {Pace.Fastest}; if not given, the 'pace' at the head of the lesson, else {Pace.Usual}.",
            CustomParser = Paced,
        },
        new Option<bool>("--perhaps") { Description = "Lists rules as well that are perhaps never said: their name is, and they may be told in other words." })
    {
    }

    private LessonCommand(Desk desk, Option<int?> pace, Option<bool> perhaps)
        : base(desk, "lesson", "Holds the lesson against the sheet: every number and ruling that is said, every shot; whether every rule is said, in an order that builds up; how long each topic lasts.", "rostrum lesson games/kiln-night", pace, perhaps) => (_pace, _perhaps) = (pace, perhaps);

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
            Desk.Write(ProblemScreen.Of([.. report.Problems, .. report.Script.Findings.Select(f => f.Problem)]) + LessonScreen.Of(item, parse.GetValue(_perhaps)));
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
