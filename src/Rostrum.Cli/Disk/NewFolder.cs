using System.Collections.Immutable;
using Rostrum.Sheets.Loading;

namespace Rostrum.Cli.Disk;

/// <summary>Writes the first files of a game into a folder, all of them or none, and never over anything.</summary>
internal static class NewFolder
{
    /// <summary>Why a folder cannot take a new game; null where it can.</summary>
    /// <param name="folder">As the user wrote it.</param>
    /// <param name="files">The names of the files.</param>
    public static string? Complaint(string folder, IEnumerable<string> files) =>
        folder.Trim().Length == 0 || folder.Any(char.IsControl) ? "The folder needs a name that can be seen."
        : File.Exists(folder) ? $"'{folder}' is a file. Name a folder that is to be made."
        : File.Exists(Path.Combine(folder, SheetReader.FileName)) ? $"The folder '{folder}' holds a {SheetReader.FileName} already, and nothing is ever overwritten. Name another folder."
        : files.FirstOrDefault(f => Path.Exists(Path.Combine(folder, f))) is { } there ? $"There is a '{Path.Combine(folder, there)}' already, and nothing is ever overwritten. Name another folder."
        : null;

    /// <summary>Writes the files.</summary>
    /// <param name="folder">Made where it is not there.</param>
    /// <param name="files">Names and contents; the last one is written last.</param>
    /// <exception cref="UnwritableOutputException">The machine does not take it; nothing has changed then.</exception>
    public static void Write(string folder, ImmutableArray<(string Name, byte[] Content)> files)
    {
        var made = new Stack<Action>();
        try
        {
            foreach ((string name, byte[] content) in files)
            {
                string path = Path.Combine(folder, name);
                Make(Path.GetDirectoryName(Path.GetFullPath(path))!, folder, made);
                AtomicFile.Create(path, content);
                made.Push(() => File.Delete(path));
            }
        }
        catch (UnwritableOutputException)
        {
            TakeBack(made);
            throw;
        }
    }

    private static void Make(string path, string folder, Stack<Action> made)
    {
        var missing = new Stack<string>();
        for (string? at = path; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            missing.Push(at);
        }

        foreach (string at in missing)
        {
            try
            {
                Directory.CreateDirectory(at);
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                throw new UnwritableOutputException($"The folder '{folder}' cannot be made: {DiskTrouble.Of(problem, path)}", problem);
            }

            made.Push(() => Directory.Delete(at));
        }
    }

    private static void TakeBack(Stack<Action> made)
    {
        while (made.TryPop(out Action? back))
        {
            try
            {
                back();
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                // What somebody else put there meanwhile stays; the first problem is the one to tell.
            }
        }
    }
}
