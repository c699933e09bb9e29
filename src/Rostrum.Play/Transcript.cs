using Rostrum.Play.Layout;
using Rostrum.Play.Telling;
using Rostrum.Rulings.Positions;

namespace Rostrum.Play;

/// <summary>A game told line by line: who does what, how chance came out, and what is true then.</summary>
/// <remarks>
/// The lines are <c>North: put at B2</c>, <c>rolled: 3, 4</c>, <c>shuffled deck: ash, elm</c>, <c>dealt from bag: ash, elm</c>, <c>now: B2 is empty</c> and
/// <c>over: North</c>. A line of chance stands before the next decision line, or before the one that leads to the chance; chance that no line tells comes out
/// in the first of its ways. <c>North: take back</c> undoes North's last decision, as far back as the last chance, something newly seen, another player's
/// decision or a final action.
/// </remarks>
public static class Transcript
{
    /// <summary>Plays a game by its lines, up to the first that is refused.</summary>
    /// <param name="table">The game.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="from">Where play begins, with whose turn it is; what is not given there is as after the set-up, and without a record nothing was done. Null for the set-up itself.</param>
    /// <exception cref="NotPlayableException">The sheet leaves out what comes next, or the position has more things than there are.</exception>
    public static TranscriptResult Play(GameTable table, IEnumerable<string> lines, Position? from = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(lines);
        var player = new TranscriptPlayer(table.Plan, from);
        int read = 0;
        foreach (string line in lines)
        {
            if (player.Read(line, read) is { } refusal)
            {
                return new TranscriptResult(read, new TranscriptRefusal(read, line, refusal), null);
            }

            read++;
        }

        return player.Finish() is var (at, words, left)
            ? new TranscriptResult(at, new TranscriptRefusal(at, words, left), null)
            : new TranscriptResult(read, null, player.Result);
    }
}

/// <summary>How far a transcript could be played.</summary>
/// <param name="Played">How many lines were played.</param>
/// <param name="Refusal">The first line that is refused; null where all were played.</param>
/// <param name="Result">How the game came out; null where it goes on.</param>
public sealed record TranscriptResult(int Played, TranscriptRefusal? Refusal, GameResult? Result);

/// <summary>A line of a transcript that is refused.</summary>
/// <param name="Line">Its 0-based number.</param>
/// <param name="Words">The line.</param>
/// <param name="Why">Why.</param>
public sealed record TranscriptRefusal(int Line, string Words, Refusal Why);
