using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>The spaces of a board before they are named symbols.</summary>
/// <param name="Layout">How they lie.</param>
/// <param name="Spaces">In reading order: top row first.</param>
internal sealed record BoardShape(BoardLayout Layout, ImmutableArray<ShapeSpace> Spaces)
{
    /// <summary>A board without spaces, where its shape cannot be read.</summary>
    public static BoardShape None { get; } = new(BoardLayout.Squares, []);

    /// <summary>Labels of columns, left to right.</summary>
    public ImmutableArray<string> Columns { get; init; } = [];

    /// <summary>Labels of rows, lowest first.</summary>
    public ImmutableArray<string> Rows { get; init; } = [];

    /// <summary>What the lines of a form are called.</summary>
    public ImmutableDictionary<LineForm, string> LineNames { get; init; } = ImmutableDictionary<LineForm, string>.Empty;

    /// <summary>Named holes.</summary>
    public ImmutableArray<BoardHole> Holes { get; init; } = [];

    /// <summary>For points, the lines in which they stand, by index.</summary>
    public ImmutableArray<ImmutableArray<int>> Ways { get; init; } = [];

    /// <summary>For points, the lines before any were taken out: a hole touches what it was joined with. By <see cref="ShapeSpace.Column"/>.</summary>
    public ImmutableArray<ImmutableArray<int>> WaysBefore { get; init; } = [];

    /// <summary>For points, where a picture draws each.</summary>
    public ImmutableArray<MapSpot> Spots { get; init; } = [];

    /// <summary>Further columns of a map's file: numbers become values, words become areas.</summary>
    public ImmutableArray<MapColumn> Further { get; init; } = [];

    /// <summary>The name of a space from the labels of its lines; a dash keeps two numbers apart.</summary>
    public static string NameOf(string first, string second) =>
        first.Length > 0 && second.Length > 0 && char.IsDigit(first[^1]) && char.IsDigit(second[0]) ? $"{first}-{second}" : first + second;
}

/// <summary>A space by its name and coordinates, as <see cref="BoardSpace"/> counts them.</summary>
internal sealed record ShapeSpace(string Name, int Column, int Row, SourceSpan At);

/// <summary>A further column of a map's file.</summary>
/// <param name="Header">Its name.</param>
/// <param name="Cells">One a space, in order.</param>
internal sealed record MapColumn(CsvCell Header, ImmutableArray<CsvCell> Cells);
