using System.Collections.Immutable;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Pack;
using Rostrum.Text;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>pack --json</c> writes.</summary>
internal sealed record PackReport(int Format, string Folder, IReadOnlyList<PackFileItem> Files, string Times, IReadOnlyList<string> Remarks, IReadOnlyList<ProblemItem> Findings)
{
    /// <summary>A pack as it is reported.</summary>
    /// <param name="folder">As the user wrote it.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="findings">What is wrong with the lesson; what is wrong with the chapters and the given files follows.</param>
    public static PackReport Of(string folder, MadePack pack, ImmutableArray<Diagnostic> findings) => new(
        ReportJson.Format,
        folder,
        [.. pack.Files.Select(f => new PackFileItem(f.Name, f.Says, f.Bytes.Length))],
        pack.Chapters.Times switch
        {
            ChapterTimes.Given => "given",
            ChapterTimes.Heard => "heard",
            _ => "estimated",
        },
        pack.Remarks,
        [.. findings.Concat(pack.Chapters.Problems).Select(ProblemItem.Of)]);
}

/// <summary>A file: its name in the folder, what it is, its size in bytes.</summary>
internal sealed record PackFileItem(string Name, string Says, int Bytes);

/// <summary>What <c>draw --json</c> writes: the file as the user named it, its size in bytes, what the picture shows in words.</summary>
internal sealed record DrawReport(int Format, string File, int Bytes, string Says);
