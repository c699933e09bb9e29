using System.Runtime.CompilerServices;

namespace Rostrum.Testing;

/// <summary>Compares what a test made with a file that a person has read and approved.</summary>
/// <remarks>
/// <para>The approved text stands beside the test as <c>TestClass.name.approved.txt</c>. Where it differs or is missing, what was received is
/// written beside it as <c>TestClass.name.received.txt</c> (not committed) and the test fails with the first line that differs.</para>
/// <para>To accept everything that is received, run the tests with the environment variable <see cref="AcceptVariable"/> set to anything;
/// then read the difference before it is committed.</para>
/// </remarks>
public static class Snapshots
{
    /// <summary>The environment variable that makes received texts the approved ones.</summary>
    public const string AcceptVariable = "ROSTRUM_ACCEPT";

    /// <summary>Passes where the text is the approved one, line ends of any kind and one line end at the end aside.</summary>
    /// <param name="received">What the test made.</param>
    /// <param name="name">Tells the snapshots of one test class apart, in words: <c>long-line</c>.</param>
    /// <param name="testFile">The file of the test; left to the compiler.</param>
    /// <exception cref="SnapshotException">It differs, or nothing is approved yet.</exception>
    public static void Match(string received, string name, [CallerFilePath] string testFile = "")
    {
        ArgumentNullException.ThrowIfNull(received);
        Check(received, Path.Combine(Path.GetDirectoryName(testFile)!, $"{Path.GetFileNameWithoutExtension(testFile)}.{name}"), TestFiles.IsSet(AcceptVariable));
    }

    /// <summary>The first line in which two texts differ, in a sentence; null where they are equal.</summary>
    public static string? Difference(string approved, string received)
    {
        string[] old = Normal(approved).Split('\n');
        string[] now = Normal(received).Split('\n');
        for (int i = 0; i < Math.Max(old.Length, now.Length); i++)
        {
            (string? was, string? isNow) = (old.ElementAtOrDefault(i), now.ElementAtOrDefault(i));
            if (was != isNow)
            {
                return $"Line {i + 1} was approved as\n  {was ?? "(no line)"}\nand is now\n  {isNow ?? "(no line)"}";
            }
        }

        return null;
    }

    internal static void Check(string received, string stem, bool accept)
    {
        (string approvedPath, string receivedPath) = ($"{stem}.approved.txt", $"{stem}.received.txt");
        if (accept)
        {
            TestFiles.WriteAt(approvedPath, $"{Normal(received)}\n");
        }

        string? approved = TestFiles.ReadAt(approvedPath);
        if (approved is not null && Difference(approved, received) is null)
        {
            TestFiles.DeleteAt(receivedPath);
            return;
        }

        TestFiles.WriteAt(receivedPath, $"{Normal(received)}\n");
        throw new SnapshotException($"{(approved is null ? "Nothing is approved yet." : Difference(approved, received))}\nReceived: {receivedPath}");
    }

    private static string Normal(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n');
}

/// <summary>What a test received is not what was approved.</summary>
/// <param name="message">The first difference, and where the received text was written.</param>
public sealed class SnapshotException(string message) : Exception(message);
