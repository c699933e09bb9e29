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
            byte[] bytes = new byte[Math.Min(stream.CanSeek ? stream.Length : 0, GameFolder.LargestFileBytes) + 1];
            int length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);

            // Some files are longer than they say.
            while (length == bytes.Length && length <= GameFolder.LargestFileBytes)
            {
                Array.Resize(ref bytes, Math.Min(2 * length, GameFolder.LargestFileBytes + 1));
                length += stream.ReadAtLeast(bytes.AsSpan(length), bytes.Length - length, throwOnEndOfStream: false);
            }

            return length <= GameFolder.LargestFileBytes ? Strict.GetString(bytes, 0, length) : null;
        }
        catch (Exception problem) when (problem is DecoderFallbackException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
