using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions;

/// <summary>A caption file: everything that was written in it, in its order, so that it can be written again and nothing is lost.</summary>
/// <param name="format">How it is written.</param>
/// <param name="header">What follows <c>WEBVTT</c> up to the first blank line, such as <c> - Kiln Night</c> or lines as
/// <c>Language: en</c>; lines are parted by <c>\n</c>; empty for SubRip.</param>
/// <param name="blocks">In the order of the file.</param>
/// <param name="problems">What is wrong with it, in the order of the file; none for one that was never read.</param>
public sealed class CaptionFile(CaptionFormat format, string header, ImmutableArray<CaptionBlock> blocks, ImmutableArray<Diagnostic> problems)
{
    /// <summary>A file that was never read.</summary>
    /// <param name="format">How it is written.</param>
    /// <param name="header">As <see cref="Header"/>.</param>
    /// <param name="blocks">As <see cref="Blocks"/>.</param>
    public CaptionFile(CaptionFormat format, string header, ImmutableArray<CaptionBlock> blocks)
        : this(format, header, blocks, [])
    {
    }

    /// <summary>A file with nothing but cues.</summary>
    public static CaptionFile Of(CaptionFormat format, IEnumerable<Cue> cues) => new(format, "", [.. cues]);

    /// <summary>How it is written.</summary>
    public CaptionFormat Format { get; } = format;

    /// <summary>What follows <c>WEBVTT</c> up to the first blank line, lines parted by <c>\n</c>; empty for SubRip.</summary>
    public string Header { get; } = header;

    /// <summary>Cues, notes, styles, regions and what could not be read, in the order of the file.</summary>
    public ImmutableArray<CaptionBlock> Blocks { get; } = blocks;

    /// <summary>The captions, in the order of the file, which need not be that of their times.</summary>
    public ImmutableArray<Cue> Cues { get; } = [.. blocks.OfType<Cue>()];

    /// <summary>What is wrong with it, in the order of the file; empty for one that was never read.</summary>
    public ImmutableArray<Diagnostic> Problems { get; } = problems;

    /// <summary>True where the file was refused; then there are no cues.</summary>
    public bool IsRefused => Problems.Any(p => p.Severity == Severity.Error);

    /// <summary>The same captions in the other format: times and words are the same, tags that it does not know are left out.</summary>
    public CaptionFile As(CaptionFormat format) => Writing.FormatChange.Of(this, format);
}
