using System.Runtime.CompilerServices;

namespace Rostrum.Pictures.Tests;

/// <summary>Compares what a person sees with the last version that somebody approved.</summary>
internal static class Snapshot
{
    /// <summary>Fails and writes <c>name.received.ext</c> beside the approved file where they differ.</summary>
    public static void Match(string received, string name, string extension, [CallerFilePath] string testFile = "")
    {
        string folder = Path.Combine(Path.GetDirectoryName(testFile)!, "Snapshots");
        string approvedPath = Path.Combine(folder, $"{name}.approved.{extension}");
        string approved = File.Exists(approvedPath) ? File.ReadAllText(approvedPath).ReplaceLineEndings("\n") : "";
        if (approved != received)
        {
            Directory.CreateDirectory(folder);
            File.WriteAllText(Path.Combine(folder, $"{name}.received.{extension}"), received);
        }

        Assert.Equal(approved, received);
    }
}
