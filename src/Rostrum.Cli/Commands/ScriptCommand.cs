using System.CommandLine;
using Rostrum.Lessons;
using Rostrum.Sheets.Loading;

namespace Rostrum.Cli.Commands;

/// <summary>A command that asks something of a game's lesson.</summary>
/// <inheritdoc cref="GameCommand(Desk, string, string, string, IReadOnlyList{Symbol})"/>
internal abstract class ScriptCommand(Desk desk, string name, string description, string example, params IReadOnlyList<Symbol> more)
    : GameCommand(desk, name, description, example, more)
{
    /// <summary>Answers for a lesson whose sheet is sound.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Answer(GameRequest request, LessonReport report, ParseResult parse);

    /// <inheritdoc />
    protected sealed override int Answer(GameRequest request, ParseResult parse)
    {
        SheetReading sheet = request.Game.Sheet();
        if (!sheet.IsSound)
        {
            return Report(sheet.Problems, request.Json);
        }

        return LessonCheck.Of(request.Game) is { } report
            ? Answer(request, report, parse)
            : Desk.Refuse($"The game has no {LessonCheck.FileName} that can be read.");
    }
}
