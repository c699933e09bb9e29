using Rostrum.Text;

namespace Rostrum.Cli.Checking;

/// <summary>Messages about files of a game that cannot be read (ROS0815), and about where a problem comes up.</summary>
internal static class CheckProblems
{
    public static Diagnostic Unreadable(string file, FolderRefusal refusal) => new(
        "ROS0815", Severity.Error, new SourceText(file, "").Whole, RefusalWords.Told(refusal, file), RefusalWords.WayOut(refusal));

    /// <summary>The problem, with the variants that bring it out.</summary>
    public static Diagnostic With(IEnumerable<string> variants, Diagnostic problem) => problem with { Message = $"With {Prose.And(variants)}: {problem.Message}" };
}
