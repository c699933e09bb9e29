using Rostrum.Lessons.Captions;

namespace Rostrum.Cli.Disk;

/// <summary>Reads the caption file that a user names on the command line.</summary>
internal static class CaptionFinder
{
    /// <summary>The captions; what is wrong in them stands in <see cref="CaptionFile.Problems"/>.</summary>
    /// <param name="path">May lie anywhere.</param>
    public static Found<CaptionFile> Open(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            return Found<CaptionFile>.None(Directory.Exists(path) ? $"'{path}' is a folder. Name the caption file in it, such as '{Path.Combine(path, "captions.vtt")}'." : $"There is no caption file '{path}'.");
        }

        // A pipe or a device has no length, and may give nothing for ever.
        if (file.Length == 0)
        {
            return Found<CaptionFile>.None($"The caption file '{path}' is empty.");
        }

        try
        {
            return Found<CaptionFile>.Of(CaptionReader.Read(path, file.Length, () => File.ReadAllBytes(path)));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Found<CaptionFile>.None($"The caption file '{path}' cannot be read: {(problem is UnauthorizedAccessException ? "no permission." : DiskTrouble.Of(problem))}");
        }
    }
}
