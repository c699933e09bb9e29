using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Play.Tests.Whole;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Positions of random games with facts taken away: what is answered holds for the table as it is.</summary>
internal static class BlankProperty
{
    private const int MostTallies = 3;
    private const int MostOptions = 3;

    /// <summary>Tallies whose bounds leave out the true points.</summary>
    public static IEnumerable<string> TalliesHold(RandomSheet sheet, GameTable table)
    {
        foreach ((SheetGame game, Moment.Decision decision, Position full, Position blank) in Blanks(sheet, table))
        {
            Tally truth = Tally.Of(full, decision.Seat);
            Tally told = Tally.Of(blank, decision.Seat);
            foreach ((TallyLine line, TallyLine of) in told.Lines.Zip(truth.Lines).Where(l => !Holds(l.First.Points, l.Second.Points)))
            {
                yield return $"'{line.Clause}' is {of.Points.InWords}, told as {line.Points.InWords} of\n{PositionPrinter.Print(blank)}\n{game.Told}";
            }

            if (told.Without.IsEmpty && !Holds(told.Total, truth.Total))
            {
                yield return $"the total is {truth.Total.InWords}, told as {told.Total.InWords} of\n{PositionPrinter.Print(blank)}\n{game.Told}";
            }
        }
    }

    /// <summary>Verdicts that are not those of the table as it is, though nothing was taken for granted.</summary>
    public static IEnumerable<string> VerdictsHold(RandomSheet sheet, GameTable table)
    {
        var draws = new Draws(sheet.Seed, (ulong)sheet.Number, 12);
        foreach ((SheetGame game, Moment.Decision decision, Position full, Position blank) in Blanks(sheet, table))
        {
            Option[] options = [.. decision.Options.Where(o => o.Alternative is CallAlternative), .. RulingChecks.Refused(game.Machine, draws).Take(MostOptions).Select(c => c.Option)];
            var phrases = new DecisionPhrases(game.Plan, game.Machine.State, [.. options]);
            foreach (string phrase in RandomGames.Some(options, MostOptions, draws).Select(o => phrases.Of(o with { Powers = [] })))
            {
                Ruling? truth = Ruling.On(full, phrase).Ruling;
                Ruling? told = Ruling.On(blank, phrase).Ruling;
                if (truth is not null && told is { Assumed.IsEmpty: true } and not Ruling.Unsettled && truth is not Ruling.Unsettled && told.Verdict != truth.Verdict && !TakesForGranted(table.Sheet, told))
                {
                    yield return $"'{phrase}' is {truth.Verdict}, told as {told.Verdict} ({told.Reason(b => b.Because)}) of\n{PositionPrinter.Print(blank)}\n{game.Told}";
                }
            }
        }
    }

    /// <summary>True for a refusal by what a place holds: a ruling takes a piece of the supply to be at hand, and so for too many where it is laid.</summary>
    public static bool TakesForGranted(Sheet table, Ruling told) => told is Ruling.Illegal illegal
        && illegal.Breaches.Any(b => table.Boards.Any(h => h.Place.Name == b.Clause) || table.Places.Any(h => h.Place.Name == b.Clause));

    private static bool Holds(Points bounds, Points points) => !(bounds.Low > points.Low) && !(bounds.High < points.High);

    private static IEnumerable<(SheetGame Game, Moment.Decision Decision, Position Full, Position Blank)> Blanks(RandomSheet sheet, GameTable table)
    {
        var game = new SheetGame(table, (ulong)sheet.Number);
        var draws = new Draws(sheet.Seed, (ulong)sheet.Number, 11);
        int left = MostTallies;
        foreach (Moment.Decision decision in game.Decisions())
        {
            if (left > 0 && draws.Below(4) == 0)
            {
                left--;
                Position full = StateWriter.Write(game.Plan, game.Machine.State, "random", decision.Seat);
                yield return (game, decision, full, Blank(full, draws));
            }
        }
    }

    // A few facts only: each blank multiplies the ways to fill the table.
    private static Position Blank(Position full, Draws draws) => full with
    {
        Boards = [.. full.Boards.Select(b => Layers(b, draws))],
        Places = [.. full.Places.Select(p => Layers(p, draws))],
        Marks = [.. full.Marks.Select(m => m.Select(v => draws.Below(8) == 0 ? null : v).ToImmutableArray())],
    };

    private static ImmutableArray<ImmutableArray<Stack>> Layers(ImmutableArray<ImmutableArray<Stack>> layers, Draws draws) =>
        [.. layers.Select(l => l.Select(s => Less(s, draws)).ToImmutableArray())];

    private static Stack Less(Stack stack, Draws draws) => draws.Below(10) switch
    {
        0 => Stack.NotGiven,
        1 => stack with { Things = [.. stack.Things.Select(t => Less(t, draws))] },
        _ => stack,
    };

    private static Thing Less(Thing thing, Draws draws) =>
        thing.Card is null && thing.Values.Length > 0 && draws.Below(2) == 0 ? thing with { Values = thing.Values.SetItem((int)draws.Below((uint)thing.Values.Length), null) } : thing;
}
