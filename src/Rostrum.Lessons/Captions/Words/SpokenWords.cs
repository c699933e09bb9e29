using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Words;

/// <summary>What is said in a caption file, word by word, each word once.</summary>
public static class SpokenWords
{
    /// <summary>The words of a file in the order of their cues' times.</summary>
    /// <remarks>Captions made by machine roll: a cue shows the line before once more and a new line below it, and cues of a hundredth of a second
    /// stand between. In a file that rolls (see <see cref="RollingCaptions"/>) what is only shown again is left out, so that a word has the
    /// time at which it was first seen. In any other file nothing is left out: a line said twice is there twice.</remarks>
    public static ImmutableArray<TimedWord> Of(CaptionFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        ImmutableArray<ShownCue> shown = ShownCue.InOrder(file);
        int[] repeated = RollingCaptions.RepeatedLines(shown);
        return
        [
            .. shown.SelectMany((cue, i) => WordTimer.Of(cue.Lines.Skip(repeated[i]), cue.Cue.Start, cue.Cue.End, cue.Index)),
        ];
    }

    /// <summary>The words of one cue, repeated or not.</summary>
    /// <param name="cue">The cue.</param>
    /// <param name="format">How its text is written.</param>
    /// <param name="cueIndex">Its 0-based place, for the words.</param>
    public static ImmutableArray<TimedWord> Of(Cue cue, CaptionFormat format, int cueIndex)
    {
        ArgumentNullException.ThrowIfNull(cue);
        return WordTimer.Of(SpokenPieces.Lines(SpokenPieces.Of(CueText.Read(cue.Text, format))), cue.Start, cue.End, cueIndex);
    }
}
