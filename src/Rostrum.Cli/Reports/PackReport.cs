using System.Collections.Immutable;
using Rostrum.Lessons.Pack;
using Rostrum.Text;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>pack --json</c> writes.</summary>
internal sealed record PackReport(int Format, string Folder, IReadOnlyList<PackFileItem> Files, IReadOnlyList<ProblemItem> Findings)
{
    /// <summary>A pack as it is reported.</summary>
    /// <param name="folder">As the user wrote it.</param>
    /// <param name="files">The files.</param>
    /// <param name="findings">What is wrong with the lesson.</param>
    public static PackReport Of(string folder, ImmutableArray<PackFile> files, ImmutableArray<Diagnostic> findings) =>
        new(ReportJson.Format, folder, [.. files.Select(f => new PackFileItem(f.Name, f.Says, f.Bytes.Length))], [.. findings.Select(ProblemItem.Of)]);
}

/// <summary>A file: its name in the folder, what it is, its size in bytes.</summary>
internal sealed record PackFileItem(string Name, string Says, int Bytes);

/// <summary>What <c>draw --json</c> writes: the file as the user named it, its size in bytes, what the picture shows in words.</summary>
internal sealed record DrawReport(int Format, string File, int Bytes, string Says);
