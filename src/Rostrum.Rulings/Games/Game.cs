using System.Collections.Concurrent;
using System.Collections.Immutable;
using Rostrum.Rulings.Pasted;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Rulings.Games;

/// <summary>A game's folder at work: its sheet, read once for each set of variants, and its positions by name, each read once.</summary>
/// <remarks>May be asked from several threads at once.</remarks>
/// <param name="folder">The game's files.</param>
/// <param name="idioms">The idiom library.</param>
public sealed class Game(GameFolder folder, IdiomLibrary idioms)
{
    private const string PositionFolder = "positions";
    private const string Ending = ".yaml";

    private readonly ConcurrentDictionary<string, Lazy<SheetReading>> _sheets = new(StringComparer.Ordinal);

    // The check of positions and the lesson ask for the same ones.
    private readonly ConcurrentDictionary<(string File, string Content, string AlsoOn), Lazy<OpenedPosition>> _positions = [];

    /// <summary>The game's files.</summary>
    public GameFolder Folder => folder;

    /// <summary>The game with other content in one file.</summary>
    /// <param name="file">The file; its name is relative to the folder.</param>
    public Game With(SourceText file) => new(folder.With(file), idioms);

    /// <summary>The names of the positions, in ordinal order.</summary>
    public ImmutableArray<string> PositionNames =>
        [.. folder.FilesIn(PositionFolder).Where(f => f.EndsWith(Ending, StringComparison.Ordinal)).Select(f => f[(PositionFolder.Length + 1)..^Ending.Length])];

    /// <summary>The sheet with some variants on.</summary>
    /// <param name="variants">Their names, in any order.</param>
    public SheetReading Sheet(params IEnumerable<string> variants)
    {
        ImmutableArray<string> wanted = [.. variants.Distinct().Order(StringComparer.Ordinal)];
        return _sheets.GetOrAdd(string.Join('\n', wanted), _ => new Lazy<SheetReading>(() => SheetReader.Read(folder, idioms, wanted))).Value;
    }

    /// <summary>The file of a position.</summary>
    /// <param name="name">Its name.</param>
    public FolderReading PositionText(string name) => folder.Read($"{PositionFolder}/{name}{Ending}");

    /// <summary>Reads a position with the sheet that its variants ask for.</summary>
    /// <param name="file">Its text.</param>
    /// <param name="alsoOn">Variants that the caller wants on as well.</param>
    public OpenedPosition Open(SourceText file, params IEnumerable<string> alsoOn)
    {
        ArgumentNullException.ThrowIfNull(file);
        string[] also = [.. alsoOn];
        return _positions.GetOrAdd((file.Name, file.Content, string.Join('\n', also)), _ => new Lazy<OpenedPosition>(() => Read(file, also))).Value;
    }

    private OpenedPosition Read(SourceText file, string[] alsoOn)
    {
        var problems = new DiagnosticBag();
        ImmutableArray<string> variants = PositionReader.VariantsOf(file, problems);
        SheetReading reading = Sheet(variants.Concat(alsoOn));
        // Held against a sheet with holes, a position would be told what is wrong with the sheet.
        PositionFile? position = reading.Sheet is { } sheet ? PositionReader.Read(sheet, file, reading.IsSound ? problems : new DiagnosticBag()) : null;
        return new OpenedPosition(reading, position, problems.InOrder());
    }

    /// <summary>Reads a pasted position.</summary>
    /// <param name="pasted">The text, taken apart with the sheet that rules it.</param>
    /// <param name="sheet">That sheet.</param>
    /// <param name="seat">The seat of what is pasted without one; from 1.</param>
    /// <param name="board">The board of drawings without a name; null where the text says enough.</param>
    public static OpenedPosition Open(PastedPosition pasted, SheetReading sheet, int seat, string? board)
    {
        ArgumentNullException.ThrowIfNull(pasted);
        var problems = new DiagnosticBag();
        PositionFile position = pasted.Read(seat, board, problems);
        return new OpenedPosition(sheet, position, problems.InOrder());
    }
}

/// <summary>A position with the sheet that rules it.</summary>
/// <param name="Sheet">The sheet with the position's variants on.</param>
/// <param name="File">The position; null where the sheet could not be read at all.</param>
/// <param name="Problems">What is wrong with the position's own file.</param>
public sealed record OpenedPosition(SheetReading Sheet, PositionFile? File, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>The position, where both it and its sheet are sound; null otherwise.</summary>
    public Position? Position => Sheet.IsSound ? File?.Position : null;
}
