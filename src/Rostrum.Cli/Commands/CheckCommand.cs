using System.CommandLine;
using Rostrum.Cli.Checking;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum check</c>: every problem in the sheet, the positions and the lesson of a game.</summary>
internal sealed class CheckCommand(Desk desk) : GameCommand(
    desk, "check", "Finds every problem in a game: its sheet, alone and with each variant, its positions and what they expect, the numbers of its lesson.", "rostrum check games/kiln-night")
{
    /// <inheritdoc />
    protected override int Answer(GameRequest request, ParseResult parse)
    {
        CheckResult result = new GameCheck(request.Game, Desk.Stop).Check(request.IdiomProblems, request.Variants);
        if (request.Json)
        {
            Desk.Write(CheckReport.Of(result), r => r.CheckReport);
        }
        else
        {
            Desk.Write(ProblemScreen.Of(result.Problems));
            Desk.Tell(result.Summary);
        }

        return result.Errors > 0 ? ExitCode.Findings : ExitCode.Fine;
    }
}
