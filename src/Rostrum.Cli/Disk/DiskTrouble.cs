namespace Rostrum.Cli.Disk;

/// <summary>Says in plain words why the machine does not take what is written.</summary>
internal static class DiskTrouble
{
    // Numbers of errors as Linux and macOS give them, then as Windows does.
    private static readonly int[] Full = [28, 122, 69, unchecked((int)0x80070070), unchecked((int)0x80070027)];
    private static readonly int[] ReadOnly = [30, unchecked((int)0x80070013)];
    private static readonly int[] NobodyReads = [32, unchecked((int)0x8007006D)];

    /// <summary>Why a file cannot be written, as the end of a sentence.</summary>
    /// <param name="problem">What was thrown.</param>
    /// <param name="path">The file, absolute.</param>
    public static string Of(Exception problem, string path) => problem switch
    {
        _ when Directory.Exists(path) => "it is a folder. Name a file in it.",
        _ when FileOnTheWay(path) is { } file => $"'{file}' is a file and no folder.",
        PathTooLongException => "its name is too long.",
        UnauthorizedAccessException => "you have no permission to write there.",
        FileNotFoundException or DirectoryNotFoundException => "no file can be made in that folder.",
        _ => Of(problem),
    };

    /// <summary>Why something cannot be written, as the end of a sentence.</summary>
    public static string Of(Exception problem) => problem.HResult switch
    {
        var code when Full.Contains(code) => "the disk is full.",
        var code when ReadOnly.Contains(code) => "the disk may only be read.",
        var code when NobodyReads.Contains(code) => "nobody reads it any more.",
        _ => $"the system says '{problem.Message.ReplaceLineEndings(" ").TrimEnd('.')}'.",
    };

    private static string? FileOnTheWay(string path)
    {
        string? folder = Path.GetDirectoryName(path);
        while (folder is not null && !Directory.Exists(folder))
        {
            if (File.Exists(folder))
            {
                return folder;
            }

            folder = Path.GetDirectoryName(folder);
        }

        return null;
    }
}
