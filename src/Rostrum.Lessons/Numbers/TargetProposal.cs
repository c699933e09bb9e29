using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Shots;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Numbers;

/// <summary>Proposes what a number would have to equal: the one fact of the sheet, or line of the position on show, that has its value and its words.</summary>
/// <param name="facts">The facts of the sheet.</param>
/// <param name="check">Counts the positions.</param>
internal sealed class TargetProposal(ImmutableArray<Fact> facts, ClaimCheck check)
{
    // A fact must be named behind the number or twice before it, and one of a single word right behind it: 'two to four shelves with a form' says
    // nothing of how many forms there are. A line of the position on show may be named anywhere near, but right behind the number only where
    // points are spoken of: 'two hens' counts hens.
    private const double LeastForWord = 3;
    private const double LeastForFact = 2;
    private const double LeastForLine = 1;

    private static readonly string[] OfATotal = ["total", "altogether", "worth"];

    /// <summary>The target; null unless exactly one fits best.</summary>
    /// <param name="text">The passage.</param>
    /// <param name="start">Where the number stands in it.</param>
    /// <param name="said">The number.</param>
    /// <param name="seen">The shot on show; null before the first.</param>
    public string? For(string text, int start, string said, CheckedShot? seen)
    {
        if (SpokenNumber.Read(said) is not { } number)
        {
            return null;
        }

        var near = new WordsAround(text, start, start + said.Length);
        (string Target, double Fit)[] fits =
        [
            .. facts.Where(f => f.Number == number).Select(f => ($"fact:{f.Name}", near.Fit(f.Name, f.Name.Contains(' ', StringComparison.Ordinal) ? LeastForFact : LeastForWord))),
            .. Lines(number, seen).Select(l => ($"tally:{seen!.PositionName}/{l}", l == Expectation.Total ? OfATotal.Max(w => near.Fit(w, LeastForLine)) : near.Counts(l) ? 0 : near.Fit(l, LeastForLine))),
        ];
        double best = fits.Select(f => f.Fit).DefaultIfEmpty(0).Max();
        return best > 0 && fits.Count(f => f.Fit == best) == 1 ? fits.First(f => f.Fit == best).Target : null;
    }

    private IEnumerable<string> Lines(long number, CheckedShot? seen)
    {
        if (seen?.Position is not { } position)
        {
            return [];
        }

        Tally tally = check.TallyOf(position, position.Me);
        IEnumerable<string> lines = tally.Lines.Where(l => l.Points.Certain == number && tally.Readings.All(r => r.Clause != l.Clause)).Select(l => l.Clause);
        return tally.Total.Certain == number && tally.Readings.IsEmpty && tally.Without.IsEmpty ? lines.Append(Expectation.Total) : lines;
    }
}
