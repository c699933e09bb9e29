using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum tally</c>: what a position scores, and why.</summary>
internal sealed class TallyCommand : PositionCommand
{
    private readonly Option<int> _seat;

    /// <summary>The command at a desk.</summary>
    public TallyCommand(Desk desk)
        : this(desk, new Option<int>("--seat") { HelpName = "N", Description = "Count one seat only, from 1; else every seat that the position gives.", CustomParser = Number })
    {
    }

    private TallyCommand(Desk desk, Option<int> seat)
        : base(desk, "tally", "Counts a position line by line, with the reason and the page of each line.", "rostrum tally games/kiln-night E1", seat) => _seat = seat;

    /// <inheritdoc />
    protected override int Answer(PositionRequest request, ParseResult parse)
    {
        Position position = request.Position;
        int seat = parse.GetValue(_seat);
        if (seat > position.Seats)
        {
            return Desk.Refuse($"There is no seat {seat}: the position has {Prose.Count(position.Seats, "seat", "seats")}.");
        }

        ImmutableArray<int> seats = seat > 0 ? [seat - 1] : GivenSeats.Of(position);
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

    private static int Number(ArgumentResult result)
    {
        string written = result.Tokens[0].Value;
        if (int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int seat) && seat > 0)
        {
            return seat;
        }

        result.AddError($"'{Prose.Clip(written)}' is no seat: write a number from 1.");
        return 0;
    }
}
