using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Plays a few games by chance, and tells which duties could not be done.</summary>
internal static class TrialPlay
{
    /// <summary>So many options and outcomes are looked at, one for each decision included; then no other move is made.</summary>
    public const int MostWork = 1_000;

    private const ulong MostGames = 20;

    // So many duties missed in one game are enough to tell of it.
    private const int Enough = 50;

    // A game by chance may go on and on; what it brings out comes early.
    private const int MostMoves = 1_000;

    /// <summary>What came up, each step once.</summary>
    /// <exception cref="NotPlayableException">Play came to something that the sheet leaves out.</exception>
    public static IEnumerable<Diagnostic> Of(GameTable table)
    {
        int work = 0;
        var told = new HashSet<Instruction>();
        for (ulong seed = 1; seed <= MostGames && work < MostWork; seed++)
        {
            foreach ((Instruction step, int turn, string player) in Missed(table, seed, ref work))
            {
                if (step.At is { } at && told.Add(step))
                {
                    yield return CourseProblems.Impossible(at, player, turn, seed);
                }
            }
        }
    }

    // Duties that could not be done, in turns that passed without any other decision and after which the game went on.
    private static List<(Instruction Step, int Turn, string Player)> Missed(GameTable table, ulong seed, ref int work)
    {
        var game = new PlayedGame(table, [.. Enumerable.Repeat(PlayerKind.Random, table.Seats)], seed) { Most = MostMoves, IsTold = false };
        var missed = new List<(Instruction Step, int Turn, string Player)>();
        game.Impossible = (step, player) => missed.Add((step, game.Turns, player));
        HashSet<int> decided = [];
        try
        {
            foreach (PlayedMove move in game.Moves().TakeWhile(_ => missed.Count < Enough))
            {
                work += 1 + move.Options;
                if (move.Seat is not null)
                {
                    decided.Add(move.Turn);
                }

                if (work >= MostWork)
                {
                    break;
                }
            }
        }
        catch (NotPlayableException why) when (why.At is null)
        {
            // The game was only too long for a trial.
        }

        missed.RemoveAll(m => m.Turn == 0 || m.Turn >= game.Turns || decided.Contains(m.Turn));
        return missed;
    }
}
