using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>A word that the sheet defines, with its subjects: <c>clash (ware v, ware w)</c>.</summary>
public sealed class Word(string name, ImmutableArray<Subject> subjects, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>What it is said of; empty for a word that stands alone.</summary>
    public ImmutableArray<Subject> Subjects { get; } = subjects;

    /// <summary>0-based among the words of the sheet: the position of its meaning in <see cref="Sheet.Meanings"/>.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => "a word";
}

/// <summary>A subject of a word.</summary>
/// <param name="Name">Its letter.</param>
/// <param name="Sort">What may stand there.</param>
public sealed record Subject(string Name, Sort Sort);

/// <summary>What a word means.</summary>
/// <param name="Word">The word.</param>
/// <param name="Body">Its meaning; a fork where it has readings.</param>
/// <param name="FrameSize">How many frame positions its meaning needs, subjects included.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record WordMeaning(Word Word, Term Body, int FrameSize, string? Says, Citation? Cite);

/// <summary>A constant that a variant may set.</summary>
public sealed class NumberConstant(string name, long amount, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>Its number.</summary>
    public long Amount { get; } = amount;

    /// <inheritdoc />
    public override string Role => "a number";
}

/// <summary>A number, truth, player, space or value that the game remembers for the table, each player or each space.</summary>
public sealed class Mark(string name, Sort sort, bool eachPlayer, long? lowest, long? highest, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>What it holds.</summary>
    public Sort Sort { get; } = sort;

    /// <summary>True where every player has one.</summary>
    public bool EachPlayer { get; } = eachPlayer;

    /// <summary>The board each space of which has one; null for a mark of the table or of each player.</summary>
    public Place? EachSpaceOf { get; init; }

    /// <summary>The lowest number; null where it holds no number.</summary>
    public long? Lowest { get; } = lowest;

    /// <summary>The highest number; null where it holds no number or has no limit.</summary>
    public long? Highest { get; } = highest;

    /// <summary>0-based among the marks of the sheet.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => "a mark";
}

/// <summary>What a sheet says of a mark beside what it holds.</summary>
/// <param name="Mark">The mark.</param>
/// <param name="Lasts">How long a value stays: <c>turn</c>, <c>round</c>, or the name of an action or block, at whose end the mark has its first value again;
/// null for the whole game.</param>
/// <param name="Starts">The first value; null for the lowest number or 0, for no, or for nothing.</param>
/// <param name="FrameSize">How many frame positions <paramref name="Starts"/> needs.</param>
public sealed record MarkFacts(Mark Mark, string? Lasts, Term? Starts, int FrameSize);

/// <summary>A table of the sheet: keys to values.</summary>
public sealed class Table(string name, int index, SourceSpan? declaredAt) : Named(name, declaredAt)
{
    /// <summary>0-based among the tables of the sheet: the position in <see cref="Sheet.Tables"/>.</summary>
    public int Index { get; } = index;

    /// <inheritdoc />
    public override string Role => "a table";
}

/// <summary>What a table says.</summary>
/// <param name="Table">The table.</param>
/// <param name="Versions">One, or one for each alternative of <paramref name="Choice"/>.</param>
/// <param name="Choice">Readings or a conflict about the whole table; null where there is none.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
public sealed record TableFacts(Table Table, ImmutableArray<TableVersion> Versions, Choice? Choice, string? Says, Citation? Cite);

/// <summary>One version of a table.</summary>
/// <param name="Rows">In the order of the sheet.</param>
/// <param name="Beyond">What holds for a number above every key.</param>
/// <param name="BeyondTerm">The value or gap that <see cref="TableBeyond.Given"/> stands for; null otherwise.</param>
public sealed record TableVersion(ImmutableArray<TableRow> Rows, TableBeyond Beyond, Term? BeyondTerm);

/// <summary>A row of a table.</summary>
/// <param name="Low">The lowest number key; null for a key that is a value.</param>
/// <param name="High">The highest number key; null for no limit, or for a key that is a value.</param>
/// <param name="Key">A key that is a value of an attribute; null for numbers.</param>
/// <param name="Entry">What stands there.</param>
public sealed record TableRow(long? Low, long? High, AttributeValue? Key, Term Entry);

/// <summary>What a table says above its highest key.</summary>
public enum TableBeyond
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>The same as its last row.</summary>
    Last,

    /// <summary>The term that stands there, such as a gap.</summary>
    Given,
}

/// <summary>A drawing: cells with what each asks for.</summary>
/// <param name="Width">Columns.</param>
/// <param name="Height">Rows.</param>
/// <param name="Cells">What is asked where; in reading order, top row first.</param>
/// <param name="At">Where it was drawn.</param>
public sealed record Drawing(int Width, int Height, ImmutableArray<DrawingCell> Cells, SourceSpan At);

/// <summary>A cell of a drawing that asks for something.</summary>
/// <param name="Column">0-based from the left.</param>
/// <param name="Row">0-based from the lowest row.</param>
/// <param name="Asks">What the top thing there must be; null for a plain space, which must be there but may hold anything.</param>
/// <param name="IsEmpty">True where the space must hold nothing.</param>
/// <param name="Height">How many things must lie there; null where that is not asked.</param>
/// <param name="OrMore">True where more things than <paramref name="Height"/> will do.</param>
/// <param name="Alike">The letter of cells that must show alike; null otherwise.</param>
/// <param name="IsAnchor">True for the space in brackets, which <c>anchor of</c> gives.</param>
public sealed record DrawingCell(int Column, int Row, Look? Asks, bool IsEmpty, int? Height, bool OrMore, char? Alike, bool IsAnchor)
{
    /// <summary>How many half steps its row is set off to the right; only hexes know half steps.</summary>
    public int HalfSteps { get; init; }
}
