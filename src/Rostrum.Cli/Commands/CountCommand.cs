using System.CommandLine;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Play;
using Rostrum.Play.Counting;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum count</c>: how many lines of play and positions there are at each ply, exactly.</summary>
internal sealed class CountCommand : TableCommand
{
    /// <summary>More plies than this are not asked for by mistake.</summary>
    private const int MostPlies = 10_000;

    private readonly Option<int> _plies;
    private readonly Option<bool> _distinct;
    private readonly Option<int?> _seats;

    /// <summary>The command at a desk.</summary>
    public CountCommand(Desk desk)
        : this(
            desk,
            new Option<int>("--plies") { HelpName = "N", Description = "How many turns are played; all that is decided in one turn is one ply.", Required = true },
            new Option<bool>("--distinct") { Description = "Count the positions that can be told apart, too." },
            new Option<int?>("--seats") { HelpName = "N", Description = "How many play; else the fewest that the sheet allows." })
    {
    }

    private CountCommand(Desk desk, Option<int> plies, Option<bool> distinct, Option<int?> seats)
        : base(desk, "count", "Counts how many lines of play there are after each turn, exactly, and where they end.", "rostrum count games/traditional/tic-tac-toe --plies 9 --distinct", plies, distinct, seats) =>
        (_plies, _distinct, _seats) = (plies, distinct, seats);

    /// <inheritdoc />
    protected override int? SeatsOf(ParseResult parse) => parse.GetValue(_seats);

    /// <inheritdoc />
    protected override int Answer(GameRequest request, GameTable table, ParseResult parse)
    {
        int plies = parse.GetValue(_plies);
        if (plies is < 0 or > MostPlies)
        {
            return Desk.Refuse($"'--plies' wants a number from 0 to {MostPlies}.");
        }

        var counts = new List<PlyCount>();
        foreach (PlyCount count in table.Count(plies, parse.GetValue(_distinct)))
        {
            Desk.Stop.ThrowIfCancellationRequested();
            counts.Add(count);
        }

        if (request.Json)
        {
            Desk.Write(CountReport.Of(table, counts), r => r.CountReport);
        }
        else
        {
            Desk.Write(CountScreen.Of(table, counts));
        }

        return ExitCode.Fine;
    }
}
