using System.CommandLine;
using Rostrum.Play;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary>A command that plays a game, or asks what can be played.</summary>
internal abstract class TableCommand(Desk desk, string name, string description, string example, params IReadOnlyList<Symbol> more)
    : GameCommand(desk, name, description, example, more)
{
    /// <summary>Answers for a game that is made ready.</summary>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next.</exception>
    protected abstract int Answer(GameRequest request, GameTable table, ParseResult parse);

    /// <summary>How many play; null for the fewest that the sheet allows.</summary>
    protected abstract int? SeatsOf(ParseResult parse);

    /// <inheritdoc />
    protected sealed override int Answer(GameRequest request, ParseResult parse)
    {
        SheetReading reading = request.Game.Sheet(request.Variants);
        if (!reading.IsSound)
        {
            return Report(reading.Problems, request.Json);
        }

        Sheet sheet = reading.Sheet!;
        int? seats = SeatsOf(parse);
        if (seats is { } wanted && (wanted < (sheet.FewestPlayers ?? 1) || wanted > (sheet.MostPlayers ?? int.MaxValue)))
        {
            return Desk.Refuse($"{sheet.Game} is not for {Prose.Count(wanted, "player", "players")}: the sheet says {Players(sheet)}.");
        }

        try
        {
            return Answer(request, GameTable.Of(sheet, seats), parse);
        }
        catch (NotPlayableException why)
        {
            return Report([GameTable.Problem(why, sheet)], request.Json);
        }
    }

    private static string Players(Sheet sheet) => sheet.FewestPlayers == sheet.MostPlayers ? $"{sheet.FewestPlayers ?? 1}" : $"{sheet.FewestPlayers ?? 1} to {sheet.MostPlayers}";
}
