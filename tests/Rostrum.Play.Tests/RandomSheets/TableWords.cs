using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>A kind of thing of a random sheet, as formulas speak of it.</summary>
/// <param name="Name">One of them.</param>
/// <param name="Plural">Several.</param>
/// <param name="IsOwned">True where every player has some.</param>
internal sealed record KindWords(string Name, string Plural, bool IsOwned)
{
    /// <summary>The attribute by which they differ; null where they are alike.</summary>
    public string? Attribute { get; init; }

    /// <summary>Its values.</summary>
    public IReadOnlyList<string> Values { get; init; } = [];

    /// <summary>The state that may change; null for none.</summary>
    public string? State { get; init; }

    /// <summary>Its values.</summary>
    public IReadOnlyList<string> StateValues { get; init; } = [];

    /// <summary>Where they lie before the set-up; null for the supply.</summary>
    public string? Home { get; init; }

    /// <summary>The supply that a player reaches for.</summary>
    public string Supply => IsOwned ? "my supply" : "supply";
}

/// <summary>A board of a random sheet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Space">What a space is called.</param>
/// <param name="IsEach">True where every player has one.</param>
/// <param name="Spaces">How many spaces there are.</param>
internal sealed record BoardWords(string Name, string Space, bool IsEach, int Spaces)
{
    /// <summary>True where rows and columns have names, and directions lead along them.</summary>
    public bool HasRows { get; init; }

    /// <summary>The name of numbers that are printed on spaces; null for none.</summary>
    public string? Values { get; init; }

    /// <summary>The board as its player says it.</summary>
    public string Mine => IsEach ? $"my {Name}" : Name;
}

/// <summary>A place of a random sheet that is no board.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Form">What sort of place.</param>
/// <param name="Holds">What lies there.</param>
/// <param name="IsEach">True where every player has one.</param>
internal sealed record PlaceWords(string Name, PlaceForm Form, KindWords Holds, bool IsEach)
{
    /// <summary>The place as its player says it.</summary>
    public string Mine => IsEach ? $"my {Name}" : Name;

    /// <summary>True where a player sees every thing of it.</summary>
    public bool IsSeen => Form is PlaceForm.Heap or PlaceForm.Row or PlaceForm.Hand;
}

/// <summary>A mark of a random sheet.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Sort">Number, truth or player.</param>
/// <param name="IsEach">True where every player has one.</param>
/// <param name="Of">The board of each of whose spaces it is; null for none.</param>
internal sealed record MarkWords(string Name, SortKind Sort, bool IsEach, BoardWords? Of);

/// <summary>A name that a formula may use.</summary>
/// <param name="Name">How it is written.</param>
/// <param name="Sort">What it is.</param>
/// <param name="Board">The board of a space; null for others.</param>
/// <param name="Kind">The kind of a thing; null for others.</param>
internal sealed record Known(string Name, SortKind Sort, BoardWords? Board = null, KindWords? Kind = null);

/// <summary>Everything of a random sheet of which formulas and steps may speak.</summary>
internal sealed class TableWords
{
    /// <summary>How many play.</summary>
    public int Seats { get; set; }

    /// <summary>The kinds of pieces, cards and dice.</summary>
    public List<KindWords> Kinds { get; } = [];

    /// <summary>The boards.</summary>
    public List<BoardWords> Boards { get; } = [];

    /// <summary>The other places.</summary>
    public List<PlaceWords> Places { get; } = [];

    /// <summary>The marks.</summary>
    public List<MarkWords> Marks { get; } = [];

    /// <summary>Words of one space that are yes or no, numbers of a space, numbers of a player.</summary>
    public List<(string Name, SortKind Of, SortKind Gives, BoardWords? Board)> Words { get; } = [];

    /// <summary>Names of tables from 0 upwards.</summary>
    public List<string> Tables { get; } = [];

    /// <summary>Kinds that lie on boards.</summary>
    public IEnumerable<KindWords> OnBoards => Kinds.Where(k => k.Name is not ("die" or "card"));
}
