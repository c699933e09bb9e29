using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Play.Telling;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Plays a game on by hand, in the words of its phrases.</summary>
internal sealed class Driver
{
    private readonly Machine _machine;
    private readonly PhraseWriter _phrases;
    private int _happened;

    /// <summary>A game that is about to begin.</summary>
    public Driver(GameTable table)
    {
        _machine = new Machine(table.Plan) { State = table.Plan.Start(), StopsAfterTurns = true };
        _phrases = new PhraseWriter(table.Plan);
    }

    /// <summary>The state that play has come to.</summary>
    public TableState State => _machine.State;

    /// <summary>Goes on to the next moment.</summary>
    public Moment Next() => _machine.Advance();

    /// <summary>Goes on to the next decision: chance comes out now in this way, now in that, the same in every run; turns pass by.</summary>
    public Moment.Decision NextDecision()
    {
        while (true)
        {
            switch (_machine.Advance())
            {
                case Moment.Decision decision:
                    return decision;
                case Moment.Chance chance:
                    _machine.Choose(chance.Event, _happened++ % chance.Event.Weights.Length);
                    break;
                case Moment.GameOver:
                    throw new InvalidOperationException("The game is over.");
            }
        }
    }

    /// <summary>Lets chance come out.</summary>
    public void Choose(ChanceEvent chance, int outcome) => _machine.Choose(chance, outcome);

    /// <summary>Takes the option with a phrase.</summary>
    public void Choose(Moment.Decision decision, string phrase)
    {
        int at = Phrases(decision).IndexOf(phrase);
        Assert.True(at >= 0, $"'{phrase}' is not among: {string.Join(", ", Phrases(decision))}");
        _machine.Choose(decision.Options[at]);
    }

    /// <summary>What may be decided, in words.</summary>
    public IReadOnlyList<string> Words(Moment.Decision decision) => Phrases(decision);

    private ImmutableArray<string> Phrases(Moment.Decision decision) => _phrases.All(State, decision.Options);
}

/// <summary>Finds options by the names of their actions.</summary>
internal static class Deciding
{
    /// <summary>The position of the first option of an action, or of an ending with these words (<c>no</c>, <c>done</c>); -1 for none.</summary>
    public static int Find(Moment.Decision decision, string name)
    {
        for (int i = 0; i < decision.Options.Length; i++)
        {
            string words = decision.Options[i].Alternative switch
            {
                CallAlternative call => call.Action.Facts.Action.Name,
                EndingAlternative ending => ending.Words,
                _ => "",
            };
            if (words == name)
            {
                return i;
            }
        }

        return -1;
    }
}
