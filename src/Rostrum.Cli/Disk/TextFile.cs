using System.Text;
using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Reads text files of people: UTF-8, and never more than <see cref="GameFolder.LargestFileBytes"/>.</summary>
internal static class TextFile
{
    private static readonly TimeSpan LongestOpening = TimeSpan.FromSeconds(2);

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The file before it is read.</summary>
    /// <param name="path">Where it lies.</param>
    /// <returns>Null where there is no such file.</returns>
    public static FolderFile? At(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? new FolderFile(file.Length, () => Read(path)) { Refusal = Trouble(file) } : null;
    }

    // Opening a pipe waits until somebody writes into it, perhaps for ever; pipes and devices have no length.
    private static FolderRefusal Trouble(FileInfo file)
    {
        try
        {
            if (file.Length > 0)
            {
                using FileStream opened = file.OpenRead();
                return FolderRefusal.None;
            }

            Task<FileStream> opening = Task.Run(file.OpenRead);
            if (!((IAsyncResult)opening).AsyncWaitHandle.WaitOne(LongestOpening))
            {
                return FolderRefusal.NotPlain;
            }

            using FileStream stream = opening.GetAwaiter().GetResult();
            return stream.CanSeek ? FolderRefusal.None : FolderRefusal.NotPlain;
        }
        catch (UnauthorizedAccessException)
        {
            return FolderRefusal.NotPermitted;
        }
        catch (IOException)
        {
            return FolderRefusal.Missing;
        }
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
