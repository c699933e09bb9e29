using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Words;

/// <summary>A cue with its lines, as one sees it.</summary>
/// <param name="Cue">The cue.</param>
/// <param name="Index">Its 0-based place in the file.</param>
/// <param name="Lines">The lines that hold words.</param>
/// <param name="Words">The words of each of those lines, with single blanks.</param>
internal sealed record ShownCue(Cue Cue, int Index, ImmutableArray<ImmutableArray<SpokenPiece>> Lines, ImmutableArray<string> Words)
{
    /// <summary>The cues of a file by the time at which they appear; those of one moment stay in the order of the file.</summary>
    public static ImmutableArray<ShownCue> InOrder(CaptionFile file) =>
        [.. file.Cues.Select((c, i) => Of(c, i, file.Format)).OrderBy(c => c.Cue.Start)];

    private static ShownCue Of(Cue cue, int index, CaptionFormat format)
    {
        var lines = SpokenPieces.Lines(SpokenPieces.Of(CueText.Read(cue.Text, format)))
            .Select(l => (Pieces: l, Words: SpokenPieces.WordsOf(l)))
            .Where(l => l.Words.Length > 0)
            .ToList();
        return new ShownCue(cue, index, [.. lines.Select(l => l.Pieces)], [.. lines.Select(l => l.Words)]);
    }
}
