using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>The word for one space of a board, such as <c>shelf</c>.</summary>
public sealed class SpaceNoun(string name, string plural, Place board, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <inheritdoc />
    public override string Role => $"a space of {Board.Name}";
}

/// <summary>What sort of lines a family holds.</summary>
public enum LineForm
{
    /// <summary>From below upwards; on squares only.</summary>
    Columns,

    /// <summary>From the left to the right.</summary>
    Rows,

    /// <summary>Slanting lines that rise to the right.</summary>
    Rising,

    /// <summary>Slanting lines that fall to the right.</summary>
    Falling,

    /// <summary>Spaces that the sheet lists: no lines, but labelled parts of the board.</summary>
    Areas,
}

/// <summary>A named family of lines or areas of a board, such as its bays (columns), its tiers (rows) or its fields (areas).</summary>
public sealed class LineFamily(string name, string plural, Place board, LineForm form, ImmutableArray<BoardLine> lines, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    private readonly ImmutableDictionary<int, int> _lineOf =
        lines.SelectMany((l, i) => l.Spaces.Select(s => (Space: s, Line: i))).DistinctBy(p => p.Space).ToImmutableDictionary(p => p.Space, p => p.Line);

    /// <summary>How many are called.</summary>
    public string Plural { get; } = plural;

    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>What sort of lines they are.</summary>
    public LineForm Form { get; } = form;

    /// <summary>The lines in order: columns and slanting lines from the left, rows from the lowest on squares and from the top on hexes, areas as
    /// the sheet lists them. No space is in two of them.</summary>
    public ImmutableArray<BoardLine> Lines { get; } = lines;

    /// <inheritdoc />
    public override string Role => $"{(Form == LineForm.Areas ? "an area" : "a line")} of {Board.Name}";

    /// <summary>The 0-based line in which a space lies; null where it lies in none.</summary>
    public int? LineOf(int space) => _lineOf.TryGetValue(space, out int line) ? line : null;

    /// <summary>The 0-based line with this label; -1 where there is none.</summary>
    public int IndexOf(string label)
    {
        int index = Lines.ToList().FindIndex(l => l.Label == label);
        return index >= 0 || label.Length < 2 ? index : Lines.ToList().FindIndex(l => l.Label.Equals(label, StringComparison.OrdinalIgnoreCase));
    }
}

/// <summary>A line or an area of a board.</summary>
/// <param name="Label">What tells it from the others.</param>
/// <param name="Spaces">Their indices, in the order of the line.</param>
public sealed record BoardLine(string Label, ImmutableArray<int> Spaces);

/// <summary>A space of a board by its name, such as <c>B2</c>.</summary>
public sealed class SpaceName(string name, Place board, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>0-based among the spaces of the board.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => $"a space of {Board.Name}";
}

/// <summary>A part of a board that belongs to a player, such as the store of South.</summary>
/// <param name="name">What it is called.</param>
/// <param name="board">The board, one of the table.</param>
/// <param name="ofSeat">By seat, the indices of its spaces.</param>
/// <param name="declaredAt">Where it is declared.</param>
public sealed class Region(string name, Place board, ImmutableArray<ImmutableArray<int>> ofSeat, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>By seat, the indices of its spaces in reading order.</summary>
    public ImmutableArray<ImmutableArray<int>> OfSeat { get; } = ofSeat;

    /// <summary>True where everybody's is a single space.</summary>
    public bool IsSpace => OfSeat.All(s => s.Length == 1);

    /// <inheritdoc />
    public override string Role => $"a region of {Board.Name}";
}

/// <summary>A link from space to space that the sheet lists, such as the pit opposite.</summary>
/// <param name="name">What it is called.</param>
/// <param name="board">The board.</param>
/// <param name="to">By space, the space that it leads to; null for none.</param>
/// <param name="declaredAt">Where it is declared.</param>
public sealed class Link(string name, Place board, ImmutableArray<int?> to, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>By space, the space that it leads to; null for none.</summary>
    public ImmutableArray<int?> To { get; } = to;

    /// <inheritdoc />
    public override string Role => $"a link of {Board.Name}";
}

/// <summary>A number that is printed on spaces, such as the reward of a space.</summary>
/// <param name="name">What it is called.</param>
/// <param name="board">The board.</param>
/// <param name="on">By space, the number; null for none.</param>
/// <param name="declaredAt">Where it is declared.</param>
public sealed class PrintedValue(string name, Place board, ImmutableArray<long?> on, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>By space, the number; null for none.</summary>
    public ImmutableArray<long?> On { get; } = on;

    /// <inheritdoc />
    public override string Role => $"a value of {Board.Name}";
}

/// <summary>A hole of a board that the sheet names, such as a pool: nothing lies there, but spaces lie round it.</summary>
/// <param name="name">What it is called.</param>
/// <param name="board">The board.</param>
/// <param name="round">The indices of the spaces that touch it, in reading order.</param>
/// <param name="declaredAt">Where it is declared.</param>
public sealed class HoleName(string name, Place board, ImmutableArray<int> round, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>The board.</summary>
    public Place Board { get; } = board;

    /// <summary>The indices of the spaces that touch it, in reading order.</summary>
    public ImmutableArray<int> Round { get; } = round;

    /// <inheritdoc />
    public override string Role => $"a hole of {Board.Name}";
}

/// <summary>How the spaces of a board lie.</summary>
public enum BoardLayout
{
    /// <summary>Squares in rows and columns; rings and tracks are one row of them.</summary>
    Squares,

    /// <summary>Hexes in rows, each set off by half a step from the next.</summary>
    Hexes,

    /// <summary>Points joined by lines, or any map: only what the sheet lists touches.</summary>
    Points,
}

/// <summary>What a board looks like.</summary>
/// <param name="Place">The board as a place.</param>
/// <param name="Spaces">In reading order: top row first, left to right. <see cref="SpaceName.Index"/> is the position here.</param>
/// <param name="Columns">The labels of the columns, left to right; empty for a board that has none.</param>
/// <param name="Rows">The labels of the rows, lowest first; empty for points.</param>
/// <param name="Families">Lines and areas that have names.</param>
/// <param name="Noun">The word for a space.</param>
public sealed record BoardFacts(
    Place Place,
    ImmutableArray<BoardSpace> Spaces,
    ImmutableArray<string> Columns,
    ImmutableArray<string> Rows,
    ImmutableArray<LineFamily> Families,
    SpaceNoun Noun)
{
    /// <summary>How its spaces lie.</summary>
    public BoardLayout Layout { get; init; }

    /// <summary>The named holes of a board of hexes; they take nothing and count in the names of a row.</summary>
    public ImmutableArray<BoardHole> Holes { get; init; } = [];

    /// <summary>The holes to which the sheet gives names of their own.</summary>
    public ImmutableArray<HoleName> HoleNames { get; init; } = [];

    /// <summary>For points, the lines in which they stand: neighbours in a line touch. A line that ends where it began is closed.</summary>
    public ImmutableArray<ImmutableArray<int>> Ways { get; init; } = [];

    /// <summary>For points, where a picture draws each, to the right and upwards; empty where the sheet does not say.</summary>
    public ImmutableArray<MapSpot> Spots { get; init; } = [];

    /// <summary>Parts that belong to players.</summary>
    public ImmutableArray<Region> Regions { get; init; } = [];

    /// <summary>Links from space to space.</summary>
    public ImmutableArray<Link> Links { get; init; } = [];

    /// <summary>Numbers printed on spaces.</summary>
    public ImmutableArray<PrintedValue> Values { get; init; } = [];

    /// <summary>True where it is seen from the front, so that things rest on what is below.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Which spaces touch.</summary>
    public Touching Neighbours { get; init; } = Touching.Sides;

    /// <summary>The most things that a space holds; null where the sheet does not say.</summary>
    public int? MostInSpace { get; init; }

    /// <summary>The kinds that may lie on its spaces; empty where any may.</summary>
    public ImmutableArray<Kind> Holds { get; init; } = [];

    /// <summary>True where the last column touches the first, and the last row the first.</summary>
    public bool Wraps { get; init; }

    /// <summary>Where the rules say so.</summary>
    public Citation? Cite { get; init; }

    /// <summary>The first family of a form, or null.</summary>
    public LineFamily? Family(LineForm form) => Families.FirstOrDefault(f => f.Form == form);
}

/// <summary>A space with its coordinates.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Column">0-based from the left. On hexes it counts half steps: a neighbour in the row lies two on, one in the next row lies one on
/// ("doubled coordinates"). For points it is the index.</param>
/// <param name="Row">0-based from the lowest row; 0 for points.</param>
public sealed record BoardSpace(SpaceName Name, int Column, int Row);

/// <summary>A place in a board of hexes that has a name but is no space.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Column">As <see cref="BoardSpace.Column"/>.</param>
/// <param name="Row">As <see cref="BoardSpace.Row"/>.</param>
public sealed record BoardHole(string Name, int Column, int Row);

/// <summary>Where a picture draws a point.</summary>
/// <param name="Across">To the right.</param>
/// <param name="Up">Upwards, in the same unit.</param>
public readonly record struct MapSpot(double Across, double Up);

/// <summary>Which spaces of a square board count as neighbours.</summary>
public enum Touching
{
    /// <summary>Those that share a side.</summary>
    Sides,

    /// <summary>Those that share a corner only.</summary>
    Corners,

    /// <summary>Both.</summary>
    SidesAndCorners,
}
