using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Lessons.Claims;

/// <summary>What a statement of a lesson must equal. Closed.</summary>
public abstract record ClaimTarget
{
    private static readonly string[] Kinds = ["tally", "rule", "value", "fact"];

    private ClaimTarget()
    {
    }

    /// <summary>The points of a clause, or of the whole: <c>tally:E1/bowls</c>, <c>tally:E3/total if growing on</c>, <c>tally:E1 seat 2/total</c>.</summary>
    /// <param name="Position">The name of the position.</param>
    /// <param name="Clause">The clause, or <c>total</c>.</param>
    /// <param name="Seat">The 1-based seat; null for the one whose turn it is.</param>
    /// <param name="Reading">The reading that is taken; null for none.</param>
    public sealed record Tally(string Position, string Clause, int? Seat, string? Reading) : ClaimTarget;

    /// <summary>A ruling: <c>rule:copper-ash/place copper jug on B2</c>.</summary>
    /// <param name="Position">The name of the position.</param>
    /// <param name="Words">The action or truth.</param>
    public sealed record Rule(string Position, string Words) : ClaimTarget;

    /// <summary>A formula that needs no position: <c>value:worth of Commission 12</c>.</summary>
    /// <param name="Formula">The formula.</param>
    public sealed record Value(string Formula) : ClaimTarget;

    /// <summary>A fact: <c>fact:ware on a drying board</c>.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record Fact(string Name) : ClaimTarget;

    /// <summary>The name of the position that is asked about; null where none is needed.</summary>
    public string? OnPosition => this switch
    {
        Tally tally => tally.Position,
        Rule rule => rule.Position,
        _ => null,
    };

    /// <summary>True where a link's target is meant to be checked, misspelt or not: <c>fact:bays</c>, <c>Fact:bays</c>, <c>fcat:bays</c>.</summary>
    public static bool Looks(string target)
    {
        ArgumentNullException.ThrowIfNull(target);
        int colon = target.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && NearSpelling.Find(target[..colon], Kinds) is not null;
    }

    /// <summary>The target; null where it lacks a part.</summary>
    /// <param name="target">As written behind the link, <c>%20</c> for blanks allowed.</param>
    public static ClaimTarget? Read(string target)
    {
        string words = Uri.UnescapeDataString(target);
        int colon = words.IndexOf(':', StringComparison.Ordinal);
        (string kind, string rest) = (words[..Math.Max(colon, 0)], words[(colon + 1)..].Trim());
        int slash = rest.IndexOf('/', StringComparison.Ordinal);
        if (rest.Length == 0 || (kind is "tally" or "rule" && (slash <= 0 || slash == rest.Length - 1)))
        {
            return null;
        }

        return kind switch
        {
            "tally" => OfTally(rest[..slash].Trim(), rest[(slash + 1)..].Trim()),
            "rule" => new Rule(rest[..slash].Trim(), rest[(slash + 1)..].Trim()),
            "value" => new Value(rest),
            "fact" => new Fact(rest),
            _ => null,
        };
    }

    private static Tally OfTally(string position, string clause)
    {
        int condition = clause.IndexOf(" if ", StringComparison.Ordinal);
        string? reading = condition < 0 ? null : clause[(condition + 4)..].Trim();
        string name = condition < 0 ? clause : clause[..condition].Trim();
        int seat = position.LastIndexOf(" seat ", StringComparison.Ordinal);
        return seat > 0 && int.TryParse(position[(seat + 6)..], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? new Tally(position[..seat], name, number, reading)
            : new Tally(position, name, null, reading);
    }
}
