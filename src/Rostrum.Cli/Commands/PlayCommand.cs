using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Play;
using Rostrum.Play.Players;
using Rostrum.Rulings.Tallies;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum play</c>: one game told move by move.</summary>
internal sealed class PlayCommand : TableCommand
{
    private readonly Option<string?> _players;
    private readonly Option<ulong> _seed;
    private readonly Option<bool> _tally;

    /// <summary>The command at a desk.</summary>
    public PlayCommand(Desk desk)
        : this(
            desk,
            new Option<string?>("--players") { HelpName = "A,B", Description = "How each seat plays, in order; so far 'random': each legal option is equally likely. Else as many as the sheet needs." },
            new Option<ulong>("--seed") { HelpName = "S", Description = "Equal seeds give equal games; else 1.", DefaultValueFactory = _ => 1 },
            new Option<bool>("--tally") { Description = "After the game, show the tally of each seat line by line." })
    {
    }

    private PlayCommand(Desk desk, Option<string?> players, Option<ulong> seed, Option<bool> tally)
        : base(desk, "play", "Plays one game and tells it move by move, with pages.", "rostrum play games/traditional/pig --players random,random --seed 7", players, seed, tally) =>
        (_players, _seed, _tally) = (players, seed, tally);

    /// <inheritdoc />
    protected override int? SeatsOf(ParseResult parse) => parse.GetValue(_players) is { } players ? Names(players).Length : null;

    /// <inheritdoc />
    protected override int Answer(GameRequest request, GameTable table, ParseResult parse)
    {
        string[] names = parse.GetValue(_players) is { } players ? Names(players) : [.. Enumerable.Repeat("random", table.Seats)];
        if (names.FirstOrDefault(n => !Enum.TryParse<PlayerKind>(n, ignoreCase: true, out _) || n.Any(char.IsDigit)) is { } unknown)
        {
            return Desk.Refuse($"There is no player '{Prose.Clip(unknown)}'. So far there is 'random'.");
        }

        var game = new PlayedGame(table, [.. names.Select(n => Enum.Parse<PlayerKind>(n, ignoreCase: true))], parse.GetValue(_seed));
        List<PlayedMove> moves = [];
        foreach (PlayedMove move in game.Moves())
        {
            Desk.Stop.ThrowIfCancellationRequested();
            moves.Add(move);
        }

        Tell(request, parse, table, moves, game);
        return ExitCode.Fine;
    }

    private void Tell(GameRequest request, ParseResult parse, GameTable table, List<PlayedMove> moves, PlayedGame game)
    {
        ulong seed = parse.GetValue(_seed);
        ImmutableArray<Tally> tallies = parse.GetValue(_tally) ? [.. Enumerable.Range(0, table.Seats).Select(s => Tally.Of(game.Position, s))] : [];
        if (request.Json)
        {
            Desk.Write(PlayReport.Of(table, seed, moves, game.Result!, tallies), r => r.PlayReport);
            return;
        }

        Desk.Write(PlayScreen.Of(table, seed, moves, game.Result!));
        foreach (Tally tally in tallies)
        {
            Desk.Write("\n" + TallyScreen.Of($"{table.Sheet.Game}, tally of {table.NameOf(tally.Seat)}", tally));
        }
    }

    private static string[] Names(string players) => players.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
