using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Boards;

/// <summary>Tells whether two placements of one drawing ask the same of the same spaces.</summary>
internal sealed class CellDemands
{
    private readonly ImmutableArray<DrawingCell> _cells;
    private readonly int[] _classes;

    /// <summary>Sorts the cells into classes that ask the same.</summary>
    public CellDemands(ImmutableArray<DrawingCell> cells)
    {
        _cells = cells;
        _classes = [.. cells.Select(c => cells.TakeWhile(other => !AskSame(other, c)).Count())];
    }

    /// <summary>Equal for placements that ask the same of the same spaces.</summary>
    /// <param name="spaces">By cell.</param>
    public string KeyOf(ImmutableArray<int> spaces)
    {
        var letters = new Dictionary<char, int>();
        return string.Join(' ', Enumerable.Range(0, spaces.Length).OrderBy(i => spaces[i]).Select(i => PartOf(i, spaces[i], letters)));
    }

    // Which letter marks cells that must be alike means nothing, so letters are numbered as they are met.
    private string PartOf(int cell, int space, Dictionary<char, int> letters)
    {
        int alike = -1;
        if (_cells[cell].Alike is { } letter && !letters.TryGetValue(letter, out alike))
        {
            alike = letters[letter] = letters.Count;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{space}:{_classes[cell]}:{alike}");
    }

    private static bool AskSame(DrawingCell one, DrawingCell other) =>
        one.IsEmpty == other.IsEmpty && one.Height == other.Height && one.OrMore == other.OrMore && one.IsAnchor == other.IsAnchor
        && one.Alike is null == other.Alike is null && AskSame(one.Asks, other.Asks);

    private static bool AskSame(Look? one, Look? other) => one is null || other is null
        ? one is null && other is null
        : ReferenceEquals(one.Kind, other.Kind) && ReferenceEquals(one.Card, other.Card) && one.Owner == other.Owner
            && ReferenceEquals(one.SpotNoun, other.SpotNoun)
            && one.Values.ToHashSet().SetEquals(other.Values) && one.Traits.ToHashSet().SetEquals(other.Traits);
}
