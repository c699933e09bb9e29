using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Ending;
using Rostrum.Play.Layout;
using Rostrum.Play.Solving;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play;

/// <summary>A game made ready to be played, counted and asked: the door of this room.</summary>
public sealed class GameTable
{
    private GameTable(CoursePlan plan) => Plan = plan;

    /// <summary>The sheet, with its variants on.</summary>
    public Sheet Sheet => Plan.Sheet;

    /// <summary>How many play.</summary>
    public int Seats => Plan.Layout.Seats;

    /// <summary>The game as code.</summary>
    internal CoursePlan Plan { get; }

    /// <summary>Makes a sheet ready.</summary>
    /// <param name="sheet">A sheet without errors.</param>
    /// <param name="seats">How many play; null for the fewest that the sheet allows.</param>
    /// <param name="readings">Which alternative of an open choice is meant, by <see cref="Choice.Id"/>; null for the followed one, else the first.</param>
    /// <exception cref="NotPlayableException">The sheet does not say enough for whole games; the message says what is missing.</exception>
    public static GameTable Of(Sheet sheet, int? seats = null, Func<Choice, int>? readings = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new GameTable(CourseCompiler.Compile(sheet, seats ?? sheet.FewestPlayers ?? 1, readings ?? (c => c.Followed ?? 0)));
    }

    /// <summary>What keeps a game from being played, as a problem at its place in the sheet, or at the game's name where there is no one place.</summary>
    /// <param name="why">The reason.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="position">The file of the position from which play was to go on: what is wrong with the position stands there. Null for none.</param>
    public static Diagnostic Problem(NotPlayableException why, Sheet sheet, PositionFile? position = null)
    {
        ArgumentNullException.ThrowIfNull(why);
        ArgumentNullException.ThrowIfNull(sheet);
        if (why.IsOfPosition && position is not null)
        {
            SourceSpan written = why.Spot is { } spot && position.Spots.TryGetValue(spot, out SourceSpan at) ? at : position.Tree.Entries.FirstOrDefault()?.Key.Span ?? position.Tree.Span;
            return PlayProblems.NotPlayable(written, why.Message);
        }

        return PlayProblems.NotPlayable(why.At ?? sheet.Tree.Find("game")?.Key.Span ?? sheet.Tree.Span, why.Message);
    }

    /// <summary>A seat by its name, or by its number counted from 1.</summary>
    /// <param name="seat">0-based.</param>
    public string NameOf(int seat) => new Telling.PlayNames(Plan).Seat(seat);

    /// <summary>Who can end the game with the next turn, and how: each seat is asked as if it were to move now.</summary>
    /// <param name="position">The table between two turns, of this sheet and this number of players; boards must be given wholly.</param>
    /// <returns>One answer for each seat, in order. What a position does not tell is taken as at the beginning: without a record nothing was done before, the first seat started.</returns>
    /// <exception cref="NotPlayableException">The position or the sheet leaves something out.</exception>
    public Threats Threats(Position position)
    {
        ArgumentNullException.ThrowIfNull(position);
        return new ThreatFinder(Plan).Of(position);
    }

    /// <summary>Counts lines of play and positions, ply by ply; a ply is a turn with all that is decided in it (without turns, a decision).</summary>
    /// <param name="plies">The last ply; at least 0.</param>
    /// <param name="distinct">True to count the positions of the last ply too, which takes more time and memory.</param>
    /// <param name="from">Where ply 0 stands, with whose turn it is; what is not given there is as after the set-up. Null for the set-up itself.</param>
    /// <returns>From ply 0 on; ends early where every game has ended.</returns>
    /// <exception cref="NotPlayableException">The position or the sheet leaves something out.</exception>
    public IEnumerable<PlyCount> Count(int plies, bool distinct = true, Position? from = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(plies);
        return new LineCounter(Plan, from is null ? null : Positions.Beginning.Of(Plan, from)).Count(plies, distinct);
    }

    /// <summary>By how much the total of the first seat is above that of the second where both play as well as can be.</summary>
    /// <remarks>Looks at every position that can come about; for games of some ten thousand to a million positions.</remarks>
    /// <exception cref="NotPlayableException">Not two play, chance or a secret decides somewhere, or a position may come again.</exception>
    public SolvedGame BestDifference() => GameValue.Difference(Plan);

    /// <summary>Whether the first seat wins, draws or loses where both play as well as can be: 1, 0, -1.</summary>
    /// <exception cref="NotPlayableException">Not two play, chance or a secret decides somewhere, or a position may come again.</exception>
    public SolvedGame BestOutcome() => GameValue.Outcome(Plan);

    /// <summary>How likely the first seat wins a game with chance where both play as well as can be.</summary>
    /// <exception cref="NotPlayableException">Not two play, somebody decides in secret, or there are too many positions.</exception>
    public SolvedChances BestChances() => WinProbability.Of(Plan);
}
