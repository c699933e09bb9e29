namespace Rostrum.Text;

/// <summary>The files of one game, read by name and fenced to its folder.</summary>
/// <remarks>Libraries see files through this value only. A head supplies the two functions; the fence is here, so that it holds
/// for every head. It binds names that are written inside files; what a user types on a command line may lie anywhere.</remarks>
public sealed class GameFolder
{
    /// <summary>The largest file that is read, in bytes: 4 MB.</summary>
    public const int LargestFileBytes = 4 * 1024 * 1024;

    private readonly Func<string, FolderFile?> _open;
    private readonly Func<string, IReadOnlyList<string>> _list;

    /// <summary>A folder behind two functions.</summary>
    /// <param name="name">The folder's own name, for messages.</param>
    /// <param name="open">Gives a file by its name relative to the folder (with <c>/</c>), or null where there is none.</param>
    /// <param name="list">Gives the names of the files in a sub-folder (<c>""</c> for the folder itself), in ordinal order.</param>
    public GameFolder(string name, Func<string, FolderFile?> open, Func<string, IReadOnlyList<string>> list)
    {
        Name = name;
        _open = open;
        _list = list;
    }

    /// <summary>The folder's own name.</summary>
    public string Name { get; }

    /// <summary>A folder that exists only in memory, for tests and for text that is pasted.</summary>
    public static GameFolder InMemory(string name, params (string Name, string Content)[] files)
    {
        var byName = files.ToDictionary(f => f.Name, f => f.Content, StringComparer.Ordinal);
        return new GameFolder(
            name,
            file => byName.TryGetValue(file, out string? content) ? FolderFile.Of(content) : null,
            sub => [.. byName.Keys.Where(n => FolderOf(n) == sub).Order(StringComparer.Ordinal)]);
    }

    /// <summary>The same folder with other content in one file.</summary>
    /// <param name="file">The file; its name is relative to the folder.</param>
    public GameFolder With(SourceText file) => new(Name, name => name == file.Name ? FolderFile.Of(file.Content) : _open(name), _list);

    /// <summary>Reads a file.</summary>
    /// <param name="name">Relative to the folder, with <c>/</c> between parts.</param>
    /// <returns>The text, or the one reason why there is none.</returns>
    public FolderReading Read(string name)
    {
        if (!StaysInside(name))
        {
            return new FolderReading(null, FolderRefusal.LeavesFolder);
        }

        FolderFile? file = name.Length == 0 ? null : _open(name);
        return file switch
        {
            null => new FolderReading(null, FolderRefusal.Missing),
            { Refusal: not FolderRefusal.None } => new FolderReading(null, file.Refusal),
            { SizeBytes: > LargestFileBytes } => new FolderReading(null, FolderRefusal.TooLarge),
            _ => ReadingOf(name, file.Read()),
        };
    }

    // The size was told before the file was read; it may have grown since.
    private static FolderReading ReadingOf(string name, string? content) => content switch
    {
        null => new FolderReading(null, FolderRefusal.NotText),
        { Length: > LargestFileBytes } => new FolderReading(null, FolderRefusal.TooLarge),
        _ => new FolderReading(new SourceText(name, content), FolderRefusal.None),
    };

    /// <summary>The names of the files in a sub-folder, in ordinal order; empty where there is no such sub-folder.</summary>
    public IReadOnlyList<string> FilesIn(string subFolder) => StaysInside(subFolder) ? _list(subFolder) : [];

    /// <summary>True for a plain relative name that cannot leave the folder on any system: no root, no drive, no backslash, no control
    /// character, and no part that is empty or made of dots and blanks only (one system takes <c>".. "</c> for <c>".."</c>). The empty name
    /// is the folder itself.</summary>
    /// <remarks>Whether a file inside the folder is a link that leads outside cannot be seen from its name: the head looks at that.</remarks>
    public static bool StaysInside(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.Length == 0 || !(name.Any(c => c is '\\' or ':' || char.IsControl(c)) || name.Split('/').Any(p => p.Trim('.', ' ').Length == 0));
    }

    private static string FolderOf(string name) => name.LastIndexOf('/') is var at and >= 0 ? name[..at] : "";
}

/// <summary>A file before it is read, so that a large one is refused unread.</summary>
/// <param name="SizeBytes">Bytes on disk.</param>
/// <param name="Read">Gives the text, or null where the bytes are not UTF-8 text.</param>
public sealed record FolderFile(long SizeBytes, Func<string?> Read)
{
    /// <summary>Why it must not be read at all, where the head sees that before: permission, a pipe. None for other files.</summary>
    public FolderRefusal Refusal { get; init; }

    /// <summary>A file whose text is already at hand.</summary>
    public static FolderFile Of(string content) => new(System.Text.Encoding.UTF8.GetByteCount(content), () => content);
}

/// <summary>Why a file was not read.</summary>
public enum FolderRefusal
{
    /// <summary>It was read.</summary>
    None,

    /// <summary>There is no such file.</summary>
    Missing,

    /// <summary>The name leads out of the game's folder.</summary>
    LeavesFolder,

    /// <summary>It is larger than <see cref="GameFolder.LargestFileBytes"/>.</summary>
    TooLarge,

    /// <summary>It is not UTF-8 text.</summary>
    NotText,

    /// <summary>The user may not read it.</summary>
    NotPermitted,

    /// <summary>It is a pipe or a device, from which nothing may ever come.</summary>
    NotPlain,
}

/// <summary>What came of reading a file.</summary>
/// <param name="Text">The text; null exactly when <paramref name="Refusal"/> is not <see cref="FolderRefusal.None"/>.</param>
/// <param name="Refusal">The reason why there is no text.</param>
public readonly record struct FolderReading(SourceText? Text, FolderRefusal Refusal);
