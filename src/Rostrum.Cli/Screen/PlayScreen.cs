using System.Globalization;
using Rostrum.Play;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows a played game: a line for each move with its page, then how it came out.</summary>
internal static class PlayScreen
{
    private const int Indent = 2;

    /// <summary>The game.</summary>
    public static string Of(GameTable table, ulong seed, IReadOnlyList<PlayedMove> moves, GameResult result)
    {
        var paper = new Paper();
        paper.Wrapped($"{string.Join(", ", [table.Sheet.Game, .. table.Sheet.VariantsOn])}, {Prose.Count(table.Seats, "player", "players")}, seed {seed.ToString(CultureInfo.InvariantCulture)}", 0);
        int turn = -1;
        foreach (PlayedMove move in moves)
        {
            if (move.Turn != turn)
            {
                turn = move.Turn;
                paper.Line();
                paper.Line(turn == 0 ? "before the first turn" : $"turn {turn.ToString(CultureInfo.InvariantCulture)}");
            }

            string words = move.End is { } end ? $"the end comes: {end.Name}" : $"{move.Player ?? "chance"}: {move.Words}{About(move)}";
            paper.Edges(words, move.Cite is null ? "" : Citation.Tell(move.Cite), Indent);
            if (move.End?.Says is { } says)
            {
                paper.Wrapped(says, 2 * Indent);
            }
        }

        Result(paper, result);
        return paper.ToString();
    }

    // 'no' and 'done' alone would leave open what was left undone.
    private static string About(PlayedMove move) => move.About is null ? "" : move.Words == "no" ? $" (to {move.About})" : $" (with {move.About})";

    private static void Result(Paper paper, GameResult result)
    {
        paper.Line();
        paper.Edges(result.End is { } end ? $"The game is over: {end}." : "The game is over.", result.Cite is null ? "" : Citation.Tell(result.Cite));
        if (result.Says is { } says)
        {
            paper.Wrapped(says, Indent);
        }

        foreach (SeatResult seat in result.Seats)
        {
            string total = seat.Total is { } points ? points.ToString(CultureInfo.InvariantCulture) : "";
            paper.Edges($"{seat.Player}{(seat.Wins ? ", wins" : "")}", total, Indent);
        }

        if (result.TieBreak is { } tie)
        {
            paper.Wrapped($"The tie was broken: {tie}.", Indent);
        }

        if (result.Seats.All(s => !s.Wins))
        {
            paper.Line($"{new string(' ', Indent)}Nobody wins.");
        }
    }
}
