using System.CommandLine;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Play;
using Rostrum.Play.Ending;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum threats</c>: who can end the game with the next turn, and how.</summary>
internal sealed class ThreatsCommand : PositionCommand
{
    /// <summary>The command at a desk.</summary>
    public ThreatsCommand(Desk desk)
        : base(desk, "threats", "Finds who can end the game with the next turn, and how many turns everybody has after that.", "rostrum threats games/plank-road nine-planks", "Ask one seat only, from 1; else every seat as if it were to move.")
    {
    }

    /// <inheritdoc />
    protected override int Answer(PositionRequest request, ParseResult parse)
    {
        Position position = request.Position;
        try
        {
            GameTable table = GameTable.Of(position.Sheet, position.Seats);
            Threats threats = table.Threats(position);
            threats = threats with { Seats = [.. threats.Seats.Where(t => request.Seat == 0 || t.Seat == request.Seat - 1)] };
            if (request.Json)
            {
                Desk.Write(ThreatsReport.Of(table, position.Name, threats), r => r.ThreatsReport);
            }
            else
            {
                Desk.Write(ThreatsScreen.Of(request.Heading, table, threats));
            }

            return ExitCode.Fine;
        }
        catch (NotPlayableException why)
        {
            return Report([GameTable.Problem(why, position.Sheet, request.File)], request.Json);
        }
    }
}
