using Rostrum.Lessons.Captions;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Finds and reads the caption file that a user names on the command line.</summary>
internal static class CaptionFinder
{
    private static readonly string[] Kinds = [".vtt", ".srt"];

    /// <summary>The captions.</summary>
    /// <param name="game">The game, for a hint at captions in its folder.</param>
    /// <param name="path">The file; may lie anywhere.</param>
    public static Found<CaptionFile> Open(Game game, string path)
    {
        if (TextFile.At(path) is not { } file)
        {
            return Found<CaptionFile>.None(Directory.Exists(path) ? $"'{path}' is a folder. Name the caption file in it." : $"There is no file '{path}'. {WayOut(game)}");
        }

        if (file.Refusal != FolderRefusal.None)
        {
            return Found<CaptionFile>.None(file.Refusal is FolderRefusal.NotPermitted or FolderRefusal.NotPlain ? RefusalWords.Told(file.Refusal, path) : $"'{path}' cannot be read.");
        }

        try
        {
            CaptionFile captions = CaptionReader.Read(Path.GetFileName(path), file.SizeBytes, () => Bytes(path));
            return captions.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } problem
                ? Found<CaptionFile>.None($"'{path}' is not held against the rules. {problem.Message} {problem.Hint}")
                : Found<CaptionFile>.Of(captions);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Found<CaptionFile>.None($"'{path}' cannot be read: {DiskTrouble.Of(problem)}");
        }
    }

    // One byte more than is read tells that the file has grown beyond the limit.
    private static ReadOnlyMemory<byte> Bytes(string path)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[Math.Min(stream.Length, CaptionReader.LargestFileBytes) + 1];
        int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return bytes.AsMemory(0, length);
    }

    private static string WayOut(Game game)
    {
        string[] there = [.. game.Folder.FilesIn("").Where(f => Kinds.Contains(Path.GetExtension(f).ToLowerInvariant()))];
        return there.Length == 0
            ? "Name the captions of the recording, a file '.vtt' or '.srt'."
            : $"The game's folder holds {Prose.And(there.Take(3).Select(t => $"'{t}'"))}.";
    }
}
