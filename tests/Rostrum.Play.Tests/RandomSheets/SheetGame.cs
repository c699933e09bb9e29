using System.Collections.Immutable;
using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Telling;
using Rostrum.Text;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>A game of a random sheet, played by chance, with the transcript of what was done.</summary>
internal sealed class SheetGame
{
    private const int MostDecisions = 30;
    private const int MostMoments = 1_000;

    private readonly Draws _draws;
    private readonly ChanceWords _chance;
    private readonly PlayNames _names;
    private readonly List<string> _lines = [];

    /// <summary>A game that is about to begin.</summary>
    /// <param name="table">The game.</param>
    /// <param name="seed">Of the same seed it is the same game.</param>
    public SheetGame(GameTable table, ulong seed)
    {
        Plan = table.Plan;
        _draws = new Draws(seed, 7, 0);
        Machine = new Machine(Plan) { State = Plan.Start(), StopsAfterTurns = true, StopsAtEveryDeal = true };
        (_chance, _names) = (new ChanceWords(Plan), new PlayNames(Plan));
    }

    /// <summary>The game as code.</summary>
    public CoursePlan Plan { get; }

    /// <summary>Plays the game.</summary>
    public Machine Machine { get; }

    /// <summary>How many turns were over.</summary>
    public int Turns { get; private set; }

    /// <summary>What was done so far, in the lines of a transcript.</summary>
    public IReadOnlyList<string> Lines => _lines;

    /// <summary>The decisions as they come; once the caller goes on, one of the options is taken by chance.</summary>
    public IEnumerable<Moment.Decision> Decisions()
    {
        int decisions = 0;
        for (int moments = 0; moments < MostMoments; moments++)
        {
            switch (Machine.Advance())
            {
                case Moment.Decision when ++decisions > MostDecisions:
                    yield break;
                case Moment.Decision decision:
                    yield return decision;
                    Take(decision);
                    break;
                case Moment.Chance chance:
                    Take(chance.Event);
                    break;
                case Moment.TurnOver:
                    Turns++;
                    break;
                default:
                    yield break;
            }
        }
    }

    private void Take(Moment.Decision decision)
    {
        Option option = decision.Options[(int)_draws.Below((uint)decision.Options.Length)];
        _lines.Add($"{_names.Seat(decision.Seat)}: {new DecisionPhrases(Plan, Machine.State, decision.Options).Of(option)}");
        Machine.Choose(option);
    }

    private void Take(ChanceEvent chance)
    {
        int outcome = _draws.Weighted(chance.Weights);
        _lines.Add(chance switch
        {
            DealEvent deal => $"dealt from {PlaceOf(deal.From)}: {_names.Look(Machine.State, deal.Things[outcome])}",
            RollEvent roll => $"rolled: {string.Join(", ", roll.Dice.Select(d => Plan.Layout.Class(d).Kind.Attributes[0].Values[roll.Faces(outcome).First(f => f.Die == d).Face].Name))}",
            _ => _chance.Of(Machine.State, chance, outcome),
        });
        Machine.Choose(chance, outcome);
    }

    private string PlaceOf(int spot) => Plan.Layout.SpotHolder[spot] is { Seat: >= 0 } holder ? $"{holder.Place.Name} of {_names.Seat(holder.Seat)}" : Plan.Layout.SpotHolder[spot].Place.Name;

    /// <summary>The last lines, for a message.</summary>
    public string Told => _lines.Count == 0 ? "at the beginning" : $"after\n{string.Join('\n', _lines.Select(l => $"  - {l}"))}";
}
