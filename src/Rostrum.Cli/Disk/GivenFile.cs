using Rostrum.Text;

namespace Rostrum.Cli.Disk;

/// <summary>Opens a file that the user names behind an option: captions or a list of chapters, in whatever letters they are written.</summary>
internal static class GivenFile
{
    /// <summary>Reads a file by a reader that refuses what is too long before it is read.</summary>
    /// <typeparam name="T">What the reader makes of it.</typeparam>
    /// <param name="path">As the user wrote it.</param>
    /// <param name="read">Takes the name for messages, the length, and what gives the bytes.</param>
    /// <returns>The answer of the reader, or why there is no such file to read.</returns>
    public static Found<T> Read<T>(string path, Func<string, long, Func<ReadOnlyMemory<byte>>, T> read)
        where T : class
    {
        if (path.Length == 0 || Directory.Exists(path))
        {
            return Found<T>.None(path.Length == 0 ? "A file is wanted, and none is named." : $"'{path}' is a folder. Name a file in it.");
        }

        if (TextFile.At(path) is not { } file)
        {
            return Found<T>.None($"There is no file '{path}'.");
        }

        return file.Refusal switch
        {
            FolderRefusal.None => Opened(path, file.SizeBytes, read),
            FolderRefusal.NotPermitted => Found<T>.None($"'{path}' cannot be read: you have no permission."),
            _ => Found<T>.None($"'{path}' is no file that can be read."),
        };
    }

    private static Found<T> Opened<T>(string path, long length, Func<string, long, Func<ReadOnlyMemory<byte>>, T> read)
        where T : class
    {
        try
        {
            return Found<T>.Of(read(path, length, () => Bytes(path, length)));
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Found<T>.None($"'{path}' cannot be read: {DiskTrouble.Of(problem)}");
        }
    }

    // As many bytes as were measured, and one more that tells of a file which has grown since: what is too long is not read to its end.
    private static ReadOnlyMemory<byte> Bytes(string path, long length)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[length + 1];
        return bytes.AsMemory(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
    }
}
