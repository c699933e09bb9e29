using Rostrum.Lessons.Captions;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Finds and reads the caption file of a recording that a user names on the command line.</summary>
internal static class CaptionFinder
{
    private static readonly string[] Kinds = [".vtt", ".srt"];

    /// <summary>The captions; refused where they cannot be read as captions.</summary>
    /// <param name="game">The game, for a hint at captions in its folder.</param>
    /// <param name="path">The file; may lie anywhere.</param>
    public static Found<CaptionFile> Open(Game game, string path)
    {
        Found<CaptionFile> given = GivenFile.Read(path, (_, length, bytes) => CaptionReader.Read(Path.GetFileName(path), length, bytes));
        if (given.Value is not { } captions)
        {
            bool isMissing = path.Length > 0 && !Directory.Exists(path) && !File.Exists(path);
            return isMissing ? Found<CaptionFile>.None($"{given.Complaint} {WayOut(game)}") : given;
        }

        return captions.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } problem
            ? Found<CaptionFile>.None($"'{path}' is not held against the rules. {problem.Message} {problem.Hint}")
            : given;
    }

    private static string WayOut(Game game)
    {
        string[] there = [.. game.Folder.FilesIn("").Where(f => Kinds.Contains(Path.GetExtension(f).ToLowerInvariant()))];
        return there.Length == 0
            ? "Name the captions of the recording, a file '.vtt' or '.srt'."
            : $"The game's folder holds {Prose.And(there.Take(3).Select(t => $"'{t}'"))}.";
    }
}
