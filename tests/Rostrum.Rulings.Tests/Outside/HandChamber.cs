using System.Text;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>A ware of Kiln Night as letters of page 11 of its rulebook.</summary>
/// <param name="Form">b, j, p or l.</param>
/// <param name="Glaze">a, i or c.</param>
/// <param name="IsCracked">True where it counts for nothing.</param>
internal readonly record struct HandWare(char Form, char Glaze, bool IsCracked);

/// <summary>A chamber of Kiln Night, written by hand from its rulebook: the oracle for what the sheet answers. It shares no code with the tool.</summary>
internal sealed class HandChamber
{
    private static readonly int[] RoundTiers = [4, 4, 4, 4, 4];
    private static readonly int[] ClimbingTiers = [2, 3, 4, 5, 6];

    private readonly HandWare?[][] _shelves;

    /// <summary>An empty chamber (page 2).</summary>
    public HandChamber(bool isClimbing)
    {
        IsClimbing = isClimbing;
        _shelves = [.. (isClimbing ? ClimbingTiers : RoundTiers).Select(tiers => new HandWare?[tiers])];
    }

    public bool IsClimbing { get; }

    public int Bays => _shelves.Length;

    public int Tiers => _shelves.Max(b => b.Length);

    /// <summary>Every shelf: bay and tier, 0-based, lowest tier first in each bay.</summary>
    public IEnumerable<(int Bay, int Tier)> Shelves => Enumerable.Range(0, Bays).SelectMany(b => Enumerable.Range(0, _shelves[b].Length).Select(t => (b, t)));

    /// <summary>What stands on a shelf; null where it is free or where there is no such shelf.</summary>
    public HandWare? this[int bay, int tier]
    {
        get => Has(bay, tier) ? _shelves[bay][tier] : null;
        set => _shelves[bay][tier] = value;
    }

    /// <summary>The name of a shelf (page 2).</summary>
    public static string Name((int Bay, int Tier) shelf) => $"{(char)('A' + shelf.Bay)}{shelf.Tier + 1}";

    public bool Has(int bay, int tier) => bay >= 0 && bay < Bays && tier >= 0 && tier < _shelves[bay].Length;

    /// <summary>The ware on a shelf where it is whole; null otherwise.</summary>
    public HandWare? Whole(int bay, int tier) => this[bay, tier] is { IsCracked: false } ware ? ware : null;

    /// <summary>Shelves that are neighbours (page 4).</summary>
    public IEnumerable<(int Bay, int Tier)> Neighbours(int bay, int tier) =>
        new[] { (bay - 1, tier), (bay + 1, tier), (bay, tier - 1), (bay, tier + 1) }.Where(s => Has(s.Item1, s.Item2));

    /// <summary>The laws that placing a ware on a shelf would break (page 5), by their names in the sheet.</summary>
    public List<string> PlacingBreaks(HandWare ware, int bay, int tier)
    {
        bool isOnFloor = tier == 0;
        HandWare? under = this[bay, tier - 1];
        List<string> broken = [];
        Note(broken, "lowest free shelf", this[bay, tier] is not null || !(isOnFloor || under is not null));
        Note(broken, "nothing on a lamp", under is { Form: 'l' });
        Note(broken, "jugs", ware.Form == 'j' && !(isOnFloor || under is { Form: 'p' or 'j' }));
        Note(broken, "copper and ash", Clashes(ware, this[bay - 1, tier]) || Clashes(ware, this[bay + 1, tier]));
        return broken;
    }

    /// <summary>The laws that burning sticks to swap two ware would break (page 4).</summary>
    public List<string> SwapBreaks((int Bay, int Tier) one, (int Bay, int Tier) other, int sticks)
    {
        List<string> broken = [];
        Note(broken, "two sticks", sticks < 2);
        Note(broken, "neighbours only", !Neighbours(one.Bay, one.Tier).Contains(other));
        Exchange(one, other);
        Note(broken, "still lawful", !Shelves.All(s => StandsLawfully(s.Bay, s.Tier)));
        Exchange(one, other);
        return broken;
    }

    /// <summary>The chamber as a drawing of a position file, highest tier first, so much further in.</summary>
    public string Draw(string margin)
    {
        var text = new StringBuilder();
        for (int tier = Tiers - 1; tier >= 0; tier--)
        {
            text.Append(margin).Append(tier + 1);
            for (int bay = 0; bay < Bays; bay++)
            {
                text.Append(' ').Append(!Has(bay, tier) ? "-" : this[bay, tier] is { } ware ? $"{ware.Form}{ware.Glaze}{(ware.IsCracked ? "!" : "")}" : ".");
            }

            text.Append('\n');
        }

        return text.Append(margin).Append("/ A B C D E\n").ToString();
    }

    private static bool Clashes(HandWare ware, HandWare? beside) => (ware.Glaze, beside?.Glaze) is ('c', 'a') or ('a', 'c');

    private static void Note(List<string> broken, string law, bool isBroken)
    {
        if (isBroken)
        {
            broken.Add(law);
        }
    }

    private bool StandsLawfully(int bay, int tier)
    {
        if (this[bay, tier] is not { } ware)
        {
            return true;
        }

        bool isCarried = tier == 0 || this[bay, tier - 1] is { Form: not 'l' };
        bool isJugRight = ware.Form != 'j' || tier == 0 || this[bay, tier - 1] is { Form: 'p' or 'j' };
        return isCarried && isJugRight && !Clashes(ware, this[bay - 1, tier]) && !Clashes(ware, this[bay + 1, tier]);
    }

    private void Exchange((int Bay, int Tier) one, (int Bay, int Tier) other) =>
        (this[one.Bay, one.Tier], this[other.Bay, other.Tier]) = (this[other.Bay, other.Tier], this[one.Bay, one.Tier]);
}
