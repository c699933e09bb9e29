using System.Text;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Finds the position that a user names on the command line.</summary>
internal static class PositionFinder
{
    /// <summary>The word for standard input.</summary>
    public const string StandardInput = "-";

    /// <summary>What a text is called that comes in there.</summary>
    public const string Pasted = "pasted position";

    private const string HowToPaste = "Pipe a position or its drawing in, such as 'cat drawing.txt | rostrum tally GAME -', or paste it here.";

    /// <summary>The text of a position.</summary>
    /// <param name="game">The game.</param>
    /// <param name="named">A name in its <c>positions</c>, a path, or <c>-</c>; a name wins over a path.</param>
    /// <param name="desk">Has the standard input.</param>
    public static Found<SourceText> Find(Game game, string named, Desk desk)
    {
        if (named == StandardInput)
        {
            return FromInput(desk);
        }

        FolderReading reading = game.PositionText(named);
        if (reading.Refusal is FolderRefusal.Missing or FolderRefusal.LeavesFolder)
        {
            reading = FromPath(named);
        }

        return reading.Text is { } text ? Found<SourceText>.Of(text) : Found<SourceText>.None(Complaint(game, named, reading.Refusal));
    }

    private static FolderReading FromPath(string path) => TextFile.At(path) switch
    {
        null => new FolderReading(null, FolderRefusal.Missing),
        { Refusal: not FolderRefusal.None and var refusal } => new FolderReading(null, refusal),
        { SizeBytes: > GameFolder.LargestFileBytes } => new FolderReading(null, FolderRefusal.TooLarge),
        var file => file.Read() is { } content ? new FolderReading(new SourceText(path, content), FolderRefusal.None) : new FolderReading(null, FolderRefusal.NotText),
    };

    private static Found<SourceText> FromInput(Desk desk)
    {
        if (desk.IsTerminal)
        {
            desk.Say("paste the position or its drawing, then press Enter and Ctrl-D (on Windows Ctrl-Z and Enter).");
        }

        char[] content = new char[GameFolder.LargestFileBytes + 1];
        try
        {
            int length = desk.Input.ReadBlock(content, 0, content.Length);
            return length == content.Length ? Found<SourceText>.None("What comes in is larger than 4 MB, so it is not read.")
                : content.AsSpan(0, length).IsWhiteSpace() ? Found<SourceText>.None($"Nothing comes in, and '-' reads the position from there. {HowToPaste}")
                : Found<SourceText>.Of(new SourceText(Pasted, new string(content, 0, length)));
        }
        catch (DecoderFallbackException)
        {
            return Found<SourceText>.None("What comes in is not a text in UTF-8.");
        }
    }

    private static string Complaint(Game game, string named, FolderRefusal refusal) => refusal switch
    {
        FolderRefusal.NotPermitted or FolderRefusal.NotPlain => RefusalWords.Told(refusal, named),
        FolderRefusal.TooLarge => $"The position '{named}' is larger than 4 MB, so it is not read.",
        FolderRefusal.NotText => $"The position '{named}' cannot be read as a text in UTF-8.",
        _ when NearSpelling.Find(named, game.PositionNames) is { } near => $"There is no position '{named}'. Did you mean '{near}'?",
        _ when game.PositionNames.IsEmpty => $"There is no position '{named}', and the game's folder has none in 'positions'.",
        _ => $"There is no position '{named}'. There are {Prose.And(game.PositionNames.Take(8))}{(game.PositionNames.Length > 8 ? $" and {game.PositionNames.Length - 8} more" : "")}.",
    };
}
