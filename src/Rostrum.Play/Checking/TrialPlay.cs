using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Players;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Plays a few games by chance, and tells which duties could not be done, and which moves found less than they say.</summary>
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
        var shortMoves = new ShortMoves(table.Sheet);
        for (ulong seed = 1; seed <= MostGames && work < MostWork; seed++)
        {
            List<Diagnostic> found = Played(table, seed, told, shortMoves, ref work);
            foreach (Diagnostic problem in found)
            {
                yield return problem;
            }
        }
    }

    private static List<Diagnostic> Played(GameTable table, ulong seed, HashSet<Instruction> told, ShortMoves shortMoves, ref int work)
    {
        var found = new List<Diagnostic>();
        var game = new PlayedGame(table, [.. Enumerable.Repeat(PlayerKind.Random, table.Seats)], seed) { Most = MostMoves, IsTold = false };
        game.Short = (step, there, player) => found.AddRange(shortMoves.Tell(step, there, player, game.Turns, seed) is { } problem ? [problem] : []);
        List<(Instruction Step, int Turn, string Player)> missed = Missed(game, ref work);
        found.AddRange(missed.Where(m => m.Step.At is not null && told.Add(m.Step)).Select(m => CourseProblems.Impossible(m.Step.At!.Value, m.Player, m.Turn, seed)));
        return found;
    }

    // Duties that could not be done, in turns that passed without any other decision and after which the game went on.
    private static List<(Instruction Step, int Turn, string Player)> Missed(PlayedGame game, ref int work)
    {
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
