using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Numbers;

/// <summary>A passage as one text, with the way back to the file.</summary>
internal sealed class SpokenText
{
    private readonly List<(int Start, string Words, SourceSpan? At)> _pieces = [];

    /// <summary>Takes a passage together.</summary>
    public SpokenText(ImmutableArray<LessonRun> passage)
    {
        var words = new StringBuilder();
        foreach (LessonRun run in passage.Where(r => r.Words.Length > 0))
        {
            _pieces.Add((words.Length, run.Words, PlaceOf(run)));
            words.Append(run.Words);
        }

        Words = words.ToString();
    }

    /// <summary>Everything that is spoken, checked values included.</summary>
    public string Words { get; }

    /// <summary>Where some of the words stand in the file; null where they are checked, need no check, or are read letter by letter.</summary>
    /// <param name="start">0-based in <see cref="Words"/>.</param>
    /// <param name="length">How many characters.</param>
    public SourceSpan? PlaceOf(int start, int length)
    {
        (int first, string words, SourceSpan? at) = PieceAt(start);
        if (at is not { } whole)
        {
            return null;
        }

        // An escaped sign stands at the beginning of its piece, so the ends of piece and file agree.
        SourceSpan exact = whole.Part(start - first + whole.Length - words.Length, length);
        return exact.Length > 0 && Words.AsSpan(start, length).StartsWith(exact.Text) ? exact : whole;
    }

    // By halving: a paragraph of a stranger may have a hundred thousand pieces and as many numbers.
    private (int Start, string Words, SourceSpan? At) PieceAt(int place)
    {
        int low = 0;
        int high = _pieces.Count;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = _pieces[middle].Start <= place ? (middle, high) : (low, middle);
        }

        return _pieces[low];
    }

    private static SourceSpan? PlaceOf(LessonRun run) => run switch
    {
        LessonRun.Plain plain => plain.At,
        LessonRun.Stressed stressed => stressed.At,
        LessonRun.Link link => link.At,
        _ => null,
    };
}
