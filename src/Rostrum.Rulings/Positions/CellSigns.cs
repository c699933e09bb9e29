using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>The signs that stand in the cells of a drawn board.</summary>
/// <remarks>A cell is <c>.</c> (free), <c>-</c> or <c>#</c> (no space), <c>?</c> (not given) or things from the lowest up, joined with <c>+</c>. A thing is
/// <c>how many</c> <c>signs of the legend</c> <c>seat of its owner</c> <c>? where states without a sign are not given</c>, each of which may be
/// left out but not all: <c>ja!</c>, <c>3</c>, <c>2s1</c>, <c>j?</c>.</remarks>
/// <param name="sheet">Gives the legend.</param>
internal sealed class CellSigns(Sheet sheet)
{
    public const string Free = ".";
    public const string NoSpace = "-";
    public const string Hole = "#";
    public const string NotGiven = "?";
    public const char Join = '+';
    public const char StatesNotGiven = '?';

    private static readonly char[] Reserved = ['.', '-', '#', '+', '?'];

    /// <summary>True for a cell that says that there is no space.</summary>
    public static bool IsNoSpace(string cell) => cell is NoSpace or Hole;

    /// <summary>The kind of a thing without any sign: the only one that the legend speaks of, or the only kind of piece; null where there are several.</summary>
    public Kind? OnlyKind { get; } = Only(sheet);

    /// <summary>The legend.</summary>
    public ImmutableArray<DrawingSign> Legend => sheet.Signs;

    /// <summary>What a sign stands for, or null.</summary>
    public Named? Meaning(char sign) => sheet.Signs.FirstOrDefault(s => s.Sign == sign && !Reserved.Contains(sign))?.Stands;

    /// <summary>The sign of a kind, value or card, or null where it has none.</summary>
    public char? SignOf(Named named) => sheet.Signs.FirstOrDefault(s => ReferenceEquals(s.Stands, named) && !Reserved.Contains(s.Sign))?.Sign;

    /// <summary>True for a digit that is no sign of the legend, so that it counts.</summary>
    public bool Counts(char c) => char.IsAsciiDigit(c) && Meaning(c) is null;

    private static Kind? Only(Sheet sheet)
    {
        Kind[] drawn = [.. sheet.Signs.Select(s => KindOf(s.Stands)).OfType<Kind>().Distinct()];
        Kind[] pieces = [.. sheet.Kinds.Select(k => k.Kind).Where(k => k.Family == KindFamily.Piece)];
        return drawn.Length > 0 ? drawn.Length == 1 ? drawn[0] : null : pieces.Length == 1 ? pieces[0] : null;
    }

    private static Kind? KindOf(Named named) => named switch
    {
        Kind kind => kind,
        AttributeValue value => value.Attribute.Kind,
        Card card => card.Kind,
        _ => null,
    };
}
