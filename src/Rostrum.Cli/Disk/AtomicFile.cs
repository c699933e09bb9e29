namespace Rostrum.Cli.Disk;

/// <summary>Writes a file so that nobody ever sees half of it: beside its place, flushed, then renamed over it.</summary>
internal static class AtomicFile
{
    /// <summary>Writes a file; folders on the way are made.</summary>
    /// <param name="path">Where it shall lie; an older file there is replaced in one step, or left as it was.</param>
    /// <param name="content">All of it.</param>
    /// <exception cref="UnwritableOutputException">The machine does not take it; nothing has changed then.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content) => Write(path, content, overwrite: true);

    /// <summary>Writes a file that is not there yet; as <see cref="Write(string, ReadOnlySpan{byte})"/>, but an older file there is left as it is, and told.</summary>
    public static void Create(string path, ReadOnlySpan<byte> content) => Write(path, content, overwrite: false);

    private static void Write(string path, ReadOnlySpan<byte> content, bool overwrite)
    {
        string full = Path.GetFullPath(path);
        string beside = Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.{Environment.ProcessId}.part");
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            Put(beside, content);
            File.Move(beside, full, overwrite);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Forget(beside);
            throw new UnwritableOutputException($"'{path}' cannot be written: {DiskTrouble.Of(problem, full)}", problem);
        }
    }

    private static void Put(string beside, ReadOnlySpan<byte> content)
    {
        using var stream = new FileStream(beside, FileMode.Create, FileAccess.Write);
        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }

    private static void Forget(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first problem is the one to tell.
        }
    }
}
