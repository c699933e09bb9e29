using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum tally</c>: what a position scores, and why.</summary>
internal sealed class TallyCommand : PositionCommand
{
    /// <summary>The command at a desk.</summary>
    public TallyCommand(Desk desk)
        : base(desk, "tally", "Counts a position line by line, with the reason and the page of each line.", "rostrum tally games/kiln-night E1", "Count one seat only, from 1; else every seat that the position gives.")
    {
    }

    /// <inheritdoc />
    protected override int Answer(PositionRequest request, ParseResult parse)
    {
        Position position = request.Position;
        ImmutableArray<int> seats = request.Seat > 0 ? [request.Seat - 1] : GivenSeats.Of(position);
        Tell(request, [.. seats.Select(s => Tally.Of(position, s))]);
        return ExitCode.Fine;
    }

    private void Tell(PositionRequest request, ImmutableArray<Tally> tallies)
    {
        if (request.Json)
        {
            Desk.Write(
                new TallyReport(ReportJson.Format, request.Position.Sheet.Game, request.Position.Name, request.Position.Sheet.VariantsOn, [.. tallies.Select(SeatItem.Of)]),
                r => r.TallyReport);
            return;
        }

        Desk.Write(string.Join('\n', tallies.Select(t => TallyScreen.Of($"{request.Heading}, seat {t.Seat + 1}", t))));
    }
}
