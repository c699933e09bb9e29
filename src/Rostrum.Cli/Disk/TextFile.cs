using System.Text;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Reads text files of people: UTF-8, and never more than <see cref="GameFolder.LargestFileBytes"/>.</summary>
internal static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file before it is read.</summary>
    /// <param name="path">Where it lies.</param>
    /// <returns>Null where there is no such file.</returns>
    public static FolderFile? At(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? new FolderFile(file.Length, () => Read(path)) : null;
    }

    private static string? Read(string path)
    {
        try
        {
            using FileStream stream = File.OpenRead(path);
            byte[] bytes = new byte[GameFolder.LargestFileBytes + 1];
            int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);

            // Some files are longer than they say.
            return length < bytes.Length ? Strict.GetString(bytes, 0, length) : null;
        }
        catch (Exception problem) when (problem is DecoderFallbackException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
