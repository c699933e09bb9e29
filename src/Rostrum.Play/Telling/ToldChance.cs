using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>How chance comes out as the lines of a transcript tell it.</summary>
/// <remarks>What dice show is told roll by roll. A shuffle is told as an order of which names are taken as cards are dealt, until the next shuffle of that deck.</remarks>
internal sealed class ToldChance
{
    private const string Rolled = "rolled";
    private const string Shuffled = "shuffled ";
    private const string Dealt = "dealt from ";

    private readonly CoursePlan _plan;
    private readonly Machine _machine;
    private readonly PlayNames _names;
    private readonly Queue<ToldLine> _rolls = [];
    private readonly Dictionary<int, Queue<ToldLine>> _shuffles = [];
    private readonly Dictionary<int, ToldLine> _orders = [];
    private readonly Dictionary<int, Queue<ToldLine>> _deals = [];

    public ToldChance(CoursePlan plan, Machine machine)
    {
        (_plan, _machine, _names) = (plan, machine, new PlayNames(plan));
        machine.Shuffled = spot => _orders.Remove(spot);
    }

    /// <summary>A line of chance with the names that are still to come.</summary>
    internal sealed record ToldLine(int Number, string Line, Queue<string> Names);

    /// <summary>The line that was needed last.</summary>
    public ToldLine Last { get; private set; } = new(0, "", []);

    /// <summary>The first line that nothing has needed yet; null where there is none.</summary>
    public (int, string, Refusal)? Unused => _rolls.Concat(_shuffles.Values.SelectMany(q => q)).Concat(_deals.Values.SelectMany(q => q)).MinBy(l => l.Number) is { } line
        ? (line.Number, line.Line, new Refusal("Nothing happens by chance here that this could tell.", []))
        : null;

    /// <summary>True for the beginning of a line of chance.</summary>
    public static bool IsChance(string who) => who == Rolled || who.StartsWith(Shuffled, StringComparison.Ordinal) || who.StartsWith(Dealt, StringComparison.Ordinal);

    /// <summary>Takes a line for what comes.</summary>
    public Refusal? Hear(string who, string words, int number, string line)
    {
        var told = new ToldLine(number, line, new Queue<string>(words.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)));
        if (who == Rolled)
        {
            _rolls.Enqueue(told);
            return null;
        }

        bool isShuffle = who.StartsWith(Shuffled, StringComparison.Ordinal);
        string place = who[(isShuffle ? Shuffled : Dealt).Length..];
        if (_plan.Layout.Holders.FirstOrDefault(h => h.Length == 1 && NamesOf(h).Contains(place, StringComparer.OrdinalIgnoreCase)) is not { } holder)
        {
            return new Refusal($"No place of the sheet is called '{place}'.", []);
        }

        Dictionary<int, Queue<ToldLine>> lines = isShuffle ? _shuffles : _deals;
        lines.TryAdd(holder.First, []);
        lines[holder.First].Enqueue(told);
        return null;
    }

    private IEnumerable<string> NamesOf(Holder holder) => holder.Seat < 0 ? [holder.Place.Name]
        : [$"{_names.Seat(holder.Seat)}'s {holder.Place.Name}", $"{holder.Place.Name} of {_names.Seat(holder.Seat)}"];

    /// <summary>The outcome that the lines tell; the first where none does.</summary>
    /// <returns>Why it cannot come out as told; null where it can.</returns>
    public Refusal? Outcome(ChanceEvent chance, out int outcome)
    {
        outcome = 0;
        return chance switch
        {
            RollEvent roll when _rolls.TryDequeue(out ToldLine? line) => Roll(roll, line, out outcome),
            DealEvent deal => Deal(deal, out outcome),
            _ => null,
        };
    }

    private Refusal? Roll(RollEvent roll, ToldLine line, out int outcome)
    {
        Last = line;
        outcome = -1;
        string[] names = [.. line.Names];
        if (names.Length != roll.Dice.Length)
        {
            return new Refusal($"{Prose.Count(roll.Dice.Length, "die is", "dice are")} rolled here, not {names.Length}.", []);
        }

        int[] faces = [.. names.Select((n, i) => FaceOf(roll.Dice[i], n))];
        outcome = faces.Contains(-1) ? -1 : roll.Showing(faces);
        return outcome >= 0 ? null : new Refusal($"The dice that are rolled here cannot show {Prose.And(names)}.", []);
    }

    private int FaceOf(int die, string name) =>
        _plan.Layout.Class(die).Kind.Attributes[0].Values.ToList().FindIndex(v => string.Equals(v.Name, name, StringComparison.OrdinalIgnoreCase));

    private Refusal? Deal(DealEvent deal, out int outcome)
    {
        outcome = 0;
        if (NextName(deal.From) is not { } name)
        {
            return null;
        }

        string[] said = SaidWords.Of(name);
        TableState state = _machine.State;
        outcome = deal.Things.ToList().FindIndex(t => _names.Every(state, t, SortKind.Thing).Any(n => SaidWords.Of(n).AsSpan().SequenceEqual(said)));
        return outcome >= 0 ? null : new Refusal($"No {name} can be dealt from {_names.Spot(deal.From)} here.", []);
    }

    private string? NextName(int spot)
    {
        if (_deals.TryGetValue(spot, out Queue<ToldLine>? deals) && deals.TryPeek(out ToldLine? deal))
        {
            return Taken(deal, () => deals.Dequeue());
        }

        if (!_orders.ContainsKey(spot) && _shuffles.TryGetValue(spot, out Queue<ToldLine>? shuffles) && shuffles.TryDequeue(out ToldLine? shuffle))
        {
            _orders[spot] = shuffle;
        }

        return _orders.TryGetValue(spot, out ToldLine? order) ? Taken(order, () => { }) : null;
    }

    private string? Taken(ToldLine line, Action whenDone)
    {
        Last = line;
        string? name = line.Names.TryDequeue(out string? next) ? next : null;
        if (line.Names.Count == 0)
        {
            whenDone();
        }

        return name;
    }
}
