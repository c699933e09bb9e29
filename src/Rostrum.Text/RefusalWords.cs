namespace Rostrum.Text;

/// <summary>Tells why a file was not read, and what to do.</summary>
public static class RefusalWords
{
    /// <summary>What is wrong: <c>'sheet.yaml' is larger than 4 MB.</c></summary>
    /// <param name="refusal">The reason; not <see cref="FolderRefusal.None"/>.</param>
    /// <param name="file">The file, as its author names it.</param>
    public static string Told(FolderRefusal refusal, string file) => refusal switch
    {
        FolderRefusal.LeavesFolder => $"'{file}' leads out of the game's folder.",
        FolderRefusal.TooLarge => $"'{file}' is larger than 4 MB.",
        FolderRefusal.NotText => $"'{file}' is not a text in UTF-8.",
        FolderRefusal.NotPermitted => $"'{file}' cannot be read: no permission.",
        FolderRefusal.NotPlain => $"'{file}' is no plain file but a pipe or a device.",
        _ => $"There is no file '{file}' in the game's folder.",
    };

    /// <summary>The way out, as a sentence.</summary>
    /// <param name="refusal">The reason.</param>
    public static string WayOut(FolderRefusal refusal) => refusal switch
    {
        FolderRefusal.LeavesFolder => "Put the file into the game's folder and name it from there.",
        FolderRefusal.TooLarge => "Split it, or leave out what is not needed.",
        FolderRefusal.NotText => "Save the file again as UTF-8 text.",
        FolderRefusal.NotPermitted => "Allow yourself to read it.",
        FolderRefusal.NotPlain => "Put a text file in its place, or take it out of the folder.",
        _ => "Check the name.",
    };
}
