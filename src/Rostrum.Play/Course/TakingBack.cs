using Rostrum.Play.Layout;
using Rostrum.Play.Telling;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>How far decisions may be taken back: to the last chance, to something newly seen, to another player's decision, to a final action.</summary>
internal sealed class TakingBack
{
    /// <summary>How many decisions are kept at the most.</summary>
    public const int Most = 1_000;

    private readonly List<Taken> _taken = [];
    private readonly Machine _machine;
    private readonly PlayNames _names;
    private readonly ChanceWords _chance;
    private Refusal? _barrier;

    /// <summary>Follows the decisions that are made on a machine, from now on.</summary>
    public TakingBack(Machine machine)
    {
        (_machine, _names, _chance) = (machine, new PlayNames(machine.Plan), new ChanceWords(machine.Plan));
        machine.Shuffled += spot => Bar($"{Prose.Sentence(_names.Spot(spot))} was shuffled since.");
        machine.Shown += () => Bar("Something was shown since.");
        machine.Finished += action => BarFinal(action);
    }

    private sealed record Taken(TableState Before, int Seat, int Turns);

    /// <summary>How many of the last decisions, all of one player, may be taken back.</summary>
    public int Count
    {
        get
        {
            Look();
            return _taken.AsEnumerable().Reverse().TakeWhile(t => t.Seat == _taken[^1].Seat).Count();
        }
    }

    /// <summary>A player is about to take an option.</summary>
    /// <param name="seat">Who decides.</param>
    /// <param name="option">The option.</param>
    /// <param name="turns">How many turns have begun.</param>
    public void Decided(int seat, Option option, int turns)
    {
        Look();
        _taken.Add(new Taken(_machine.State.Copy(), seat, turns));
        if (_taken.Count > Most)
        {
            _taken.RemoveAt(0);
            _barrier = new Refusal($"Only the last {Most:N0} decisions can be taken back.", []);
        }

        if (option.Alternative is CallAlternative call)
        {
            BarFinal(call.Action.Facts);
        }
    }

    /// <summary>Chance is about to come out.</summary>
    public void CameOut(ChanceEvent chance, int outcome)
    {
        if (chance.Weights.Length > 1)
        {
            Bar($"Chance has come out since: {_chance.Of(_machine.State, chance, outcome)}.");
        }
    }

    /// <summary>Takes the last decision back, if it was that player's and nothing stands between.</summary>
    /// <param name="seat">Who takes back.</param>
    /// <param name="turns">How many turns had begun then.</param>
    /// <returns>Why not; null where the machine stands before that decision again.</returns>
    public Refusal? TakeBack(int seat, ref int turns)
    {
        Look();
        if (_taken.LastOrDefault() is not { } last || !_taken.Exists(t => t.Seat == seat))
        {
            return _barrier ?? new Refusal($"{Prose.Sentence(_names.Seat(seat))} has decided nothing that could be taken back.", []);
        }

        if (last.Seat != seat)
        {
            return new Refusal($"{Prose.Sentence(_names.Seat(last.Seat))} has chosen since.", []);
        }

        _taken.RemoveAt(_taken.Count - 1);
        (_machine.State, _machine.Moment, turns) = (last.Before, null, last.Turns);
        return null;
    }

    /// <summary>Takes back the last decision, whoever made it.</summary>
    public Refusal? TakeBack(ref int turns) => TakeBack(_taken.LastOrDefault()?.Seat ?? _machine.State.Numbers[Slots.Me], ref turns);

    // Who has seen something new would decide otherwise now.
    private void Look()
    {
        if (_taken.LastOrDefault() is { } last && Seen(last) is { } thing)
        {
            Bar($"{Prose.Sentence(_names.Look(_machine.State, thing))} was seen since.");
        }
    }

    private int? Seen(Taken last) => Enumerable.Range(0, _machine.Plan.Layout.Things)
        .Where(t => Sees(_machine.State, last.Seat, t) && !Sees(last.Before, last.Seat, t)).Select(t => (int?)t).FirstOrDefault();

    // What lies in bags and decks nobody sees, and what is in a hand only its player; a card shows its face or not.
    private static bool Sees(TableState state, int seat, int thing)
    {
        Holder holder = state.Layout.SpotHolder[state.Spot(thing)];
        int face = state.Layout.Class(thing).States.Select(s => s.Attribute).ToList().IndexOf(-1);
        bool isFaceUp = face >= 0 && state.StateOf(thing, face) == ThingClass.FaceUp;
        return holder.Form == PlaceForm.Hand ? isFaceUp || holder.Seat < 0 || holder.Seat == seat
            : holder.IsUnseen ? isFaceUp : face < 0 || isFaceUp;
    }

    private void BarFinal(ActionFacts action)
    {
        if (action.IsFinal)
        {
            Bar(new Refusal($"The sheet says that '{action.Action.Name}' is final.", [new RefusedBy(action.Action.Name, action.Says ?? action.Action.Phrase.InWords, action.Cite)]));
        }
    }

    private void Bar(string because) => Bar(new Refusal(because, []));

    private void Bar(Refusal why)
    {
        _taken.Clear();
        _barrier = why;
    }
}
