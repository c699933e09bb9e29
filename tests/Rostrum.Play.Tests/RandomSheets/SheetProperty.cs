using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Play.Telling;
using Rostrum.Play.Tests.Agreement;
using Rostrum.Play.Tests.Whole;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Something that holds of every sheet and every game of it.</summary>
/// <param name="Name">What holds, as a sentence.</param>
/// <param name="Problems">Where it does not hold, in words with what was done; empty where it holds.</param>
internal sealed record SheetProperty(string Name, Func<RandomSheet, GameTable, IEnumerable<string>> Problems)
{
    private const int MostOptions = 25;
    private const int MostRulings = 5;
    private const int MostTables = 2;

    /// <summary>Every property.</summary>
    public static ImmutableArray<SheetProperty> All { get; } =
    [
        new("nothing is made or lost", NothingIsMadeOrLost),
        new("what play offers is legal by ruling", EachDecision(OffersTheLegal)),
        new("what play refuses is not legal by ruling", EachDecision(RefusesTheIllegal)),
        new("formulas mean the same in play and in rulings", FormulasAgree),
        new("a transcript plays to the same table", TranscriptsPlayAgain),
        new("a state is read back from its key", EachDecision(KeysAreReadBack)),
        new("a table is read back from its position", EachDecision(PositionsAreReadBack)),
        new("a sheet in another order is the same sheet", OrderOfSectionsIsFree),
        new("what a player cannot see changes nothing", EachDecision(HiddenThingsDoNotMatter)),
        new("every phrase is read back as its option", EachDecision(PhrasesAreReadBack)),
        new("what is not given is never taken for a number", BlankProperty.TalliesHold),
        new("what is not given is never taken for a yes", BlankProperty.VerdictsHold),
        new("lines are counted as by hand", CountProperty.CountsAgree),
    ];

    private static Func<RandomSheet, GameTable, IEnumerable<string>> EachDecision(Func<SheetGame, Moment.Decision, Draws, IEnumerable<string>> problems) => (sheet, table) => AtDecisions(sheet, table, problems);

    private static IEnumerable<string> AtDecisions(RandomSheet sheet, GameTable table, Func<SheetGame, Moment.Decision, Draws, IEnumerable<string>> problems)
    {
        var game = new SheetGame(table, (ulong)sheet.Number);
        var draws = new Draws(sheet.Seed, (ulong)sheet.Number, 9);
        foreach (Moment.Decision decision in game.Decisions())
        {
            foreach (string problem in problems(game, decision, draws))
            {
                yield return $"{problem}\n{game.Told}";
            }
        }
    }

    private static IEnumerable<string> NothingIsMadeOrLost(RandomSheet sheet, GameTable table)
    {
        var game = new SheetGame(table, (ulong)sheet.Number);
        string start = TableChecks.Things(game.Machine.State);
        foreach (Moment.Decision _ in game.Decisions())
        {
            if (TableChecks.Things(game.Machine.State) is var now && now != start)
            {
                yield return $"there were {start}, now {now}\n{game.Told}";
            }
        }
    }

    private static IEnumerable<string> OffersTheLegal(SheetGame game, Moment.Decision decision, Draws draws) =>
        RulingChecks.NotLegal(game.Machine, decision, MostRulings, draws, (option, ruling) => ruling is Ruling.Unsettled ? MayBeUnsettled(option) : IsNotAsked(option, game.Machine.State) && BlankProperty.TakesForGranted(game.Plan.Sheet, ruling));

    // What lies in the box no position tells: a ruling takes it to lie in the supply. And play asks actions without choices for their laws only.
    private static bool IsNotAsked(Option option, TableState state) =>
        option.Chosen.IsEmpty || state.Layout.Holders.Where(h => h.Form == PlaceForm.Box).Any(h => state.Count(h.First) > 0);

    // What was done before, how often a power was used, and what a step leaves that hangs on chance or on a later choice.
    private static bool MayBeUnsettled(Option option)
    {
        ActionPlan action = ((CallAlternative)option.Alternative).Action;
        return RulingChecks.AskedOf(option).Any(c => c is "law memory" or "Favour") || (action.IsTried && action.Facts.Steps.Any(s => !s.IsCarriedOut));
    }

    private static IEnumerable<string> RefusesTheIllegal(SheetGame game, Moment.Decision decision, Draws draws) =>
        RulingChecks.LegalAfterAll(game.Machine, decision, [.. RulingChecks.Refused(game.Machine, draws).Where(c => !decision.Options.Any(o => IsSame(o, c.Option))).Take(MostRulings)]);

    // What a power makes legal is an option, too.
    private static bool IsSame(Option one, Option other) => ReferenceEquals(one.Alternative, other.Alternative) && one.Chosen.SequenceEqual(other.Chosen)
        && one.Sets.Zip(other.Sets).All(p => (p.First ?? []).SequenceEqual(p.Second ?? []));

    private static IEnumerable<string> FormulasAgree(RandomSheet sheet, GameTable table)
    {
        // Only a game as it goes on says which turn it is and what was done before.
        var agreement = new Agreement.Agreement(table.Sheet, table.Seats, Question.All(table.Sheet).Where(q => q.Name is not ("end late" or "law law memory")));
        return Enumerable.Range(0, MostTables).SelectMany(i => agreement.On(((uint)sheet.Number * MostTables) + (uint)i));
    }

    private static IEnumerable<string> TranscriptsPlayAgain(RandomSheet sheet, GameTable table)
    {
        var game = new SheetGame(table, (ulong)sheet.Number);
        int decisions = game.Decisions().Count();
        var again = new TranscriptPlayer(table.Plan, null);
        for (int line = 0; line < game.Lines.Count; line++)
        {
            if (again.Read(game.Lines[line], line) is { } refusal)
            {
                yield return $"line {line + 1} '{game.Lines[line]}' is refused: {refusal.Because}\n{game.Told}";
                yield break;
            }
        }

        if (again.Finish() is { } left)
        {
            yield return $"line {left.Line + 1} '{left.Words}' is left: {left.Why.Because}\n{game.Told}";
        }
        else if (!Looks(game.Machine.State).SequenceEqual(Looks(again.State)))
        {
            yield return $"another table of {decisions} decisions\n{game.Told}";
        }
    }

    private static IEnumerable<string> KeysAreReadBack(SheetGame game, Moment.Decision decision, Draws draws)
    {
        var keys = new StateKey(game.Plan);
        byte[] key = keys.Write(game.Machine.State).ToArray();
        var again = new Machine(game.Plan) { State = keys.Read(key) };
        if (!keys.Write(again.State).SequenceEqual(key))
        {
            yield return "the key of what was read is another";
        }

        if (again.Advance() is not Moment.Decision same || same.Seat != decision.Seat || !Phrases(game.Plan, again.State, same).SequenceEqual(Phrases(game.Plan, game.Machine.State, decision)))
        {
            yield return "the state that was read offers something else";
        }
    }

    private static IEnumerable<string> Phrases(CoursePlan plan, TableState state, Moment.Decision decision) => new PhraseWriter(plan).All(state, decision.Options).Order(StringComparer.Ordinal);

    private static IEnumerable<string> PositionsAreReadBack(SheetGame game, Moment.Decision decision, Draws draws)
    {
        Position position = StateWriter.Write(game.Plan, game.Machine.State, "random", decision.Seat);
        string text = PositionPrinter.Print(position);
        var problems = new Rostrum.Text.DiagnosticBag();
        Position? read = PositionReader.Read(game.Plan.Sheet, new Rostrum.Text.SourceText("random.yaml", text), problems).Position;
        string[] errors = [.. problems.InOrder().Where(p => p.Severity == Rostrum.Text.Severity.Error).Select(p => p.Message)];
        if (read is null || errors.Length > 0)
        {
            return [$"the position is refused: {string.Join(' ', errors)}\n{text}"];
        }

        var state = new TableState(game.Plan.Layout, game.Plan.Numbers, game.Plan.Sets);
        StateReader.Read(game.Plan.Layout, read, state, game.Plan.MarkBase);
        return Looks(state).Zip(Looks(game.Machine.State)).Where(p => p.First != p.Second).Take(1).Select(p => $"there was {p.Second}, and {p.First} is read of\n{text}");
    }

    /// <summary>What lies in each spot of boards and places, from below, and what the marks hold.</summary>
    private static IEnumerable<string> Looks(TableState state)
    {
        TableLayout layout = state.Layout;
        IEnumerable<string> spots = from spot in Enumerable.Range(0, layout.SupplyOf(-1).First)
                                    let things = Chain(state, spot)
                                    select $"{layout.SpotHolder[spot].Place.Name} {spot}: {string.Join(' ', layout.SpotHolder[spot].IsOrdered ? things : things.Order())}";
        return [.. spots];
    }

    private static IEnumerable<int> Chain(TableState state, int spot)
    {
        for (int thing = state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
        {
            yield return state.LookCode(thing);
        }
    }

    private static IEnumerable<string> OrderOfSectionsIsFree(RandomSheet sheet, GameTable table)
    {
        var reading = (sheet with { Sections = [.. sheet.Sections.Reverse()] }).Read();
        if (!reading.IsSound)
        {
            return [$"refused in another order: {RandomSheet.Errors(reading)}"];
        }

        return Rostrum.Sheets.ReadBack.SheetReadBack.Differences(table.Sheet, reading.Sheet!).Select(d => d.ToString());
    }

    private static IEnumerable<string> HiddenThingsDoNotMatter(SheetGame game, Moment.Decision decision, Draws draws)
    {
        var other = new Machine(game.Plan) { State = game.Machine.State.Copy() };
        if (!TableChecks.Mix(other.State, decision.Seat, draws))
        {
            yield break;
        }

        if (other.Advance() is not Moment.Decision same || !Phrases(game.Plan, other.State, same).SequenceEqual(Phrases(game.Plan, game.Machine.State, decision)))
        {
            yield return "with other things hidden, other things may be done";
        }
    }

    private static IEnumerable<string> PhrasesAreReadBack(SheetGame game, Moment.Decision decision, Draws draws)
    {
        var reader = new PhraseReader(game.Plan);
        var phrases = new DecisionPhrases(game.Plan, game.Machine.State, decision.Options);
        return RandomGames.Some(decision.Options, MostOptions, draws)
            .Where(o => !ReferenceEquals(reader.Read(game.Machine, decision.Options, phrases.Of(o)).Option, o))
            .Select(o => $"'{phrases.Of(o)}' is read as another option");
    }
}
