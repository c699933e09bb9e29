using System.Collections.Immutable;
using System.Text;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Numbers;

/// <summary>A passage as one text, with the way back to the file.</summary>
internal sealed class SpokenText
{
    private readonly List<(int Start, string Words, SourceSpan? At)> _pieces = [];
    private readonly List<(int Start, string Words, SourceSpan? At)> _places = [];
    private readonly List<LessonRun> _runs = [];

    /// <summary>Takes a passage together.</summary>
    public SpokenText(ImmutableArray<LessonRun> passage)
    {
        var words = new StringBuilder();
        foreach (LessonRun run in passage.Where(r => r.Words.Length > 0))
        {
            _pieces.Add((words.Length, run.Words, PlaceOf(run)));
            _places.Add((words.Length, run.Words, run.Place));
            _runs.Add(run);
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
        (int first, string words, SourceSpan? at) = PieceAt(start, _pieces);
        if (at is not { } whole)
        {
            return null;
        }

        // An escaped sign stands at the beginning of its piece, so the ends of piece and file agree.
        SourceSpan exact = whole.Part(start - first + whole.Length - words.Length, length);
        return exact.Length > 0 && Words.AsSpan(start, length).StartsWith(exact.Text) ? exact : whole;
    }

    /// <summary>Where some of the words stand in the file, whatever they are; null where they are read letter by letter.</summary>
    /// <param name="start">0-based in <see cref="Words"/>.</param>
    /// <param name="length">How many characters; at least one.</param>
    public SourceSpan? SpanOf(int start, int length)
    {
        (int first, string words, SourceSpan? at) = PieceAt(start, _places);
        (int last, string behind, SourceSpan? end) = PieceAt(start + length - 1, _places);
        return at is not { } from || end is not { } to ? at ?? end : Exact(from, start - first, words).To(Exact(to, start + length - 1 - last, behind));
    }

    /// <summary>The runs that some of the words belong to.</summary>
    public ImmutableArray<LessonRun> RunsIn(int start, int length)
    {
        int first = IndexAt(start, _places);
        int last = IndexAt(start + length - 1, _places);
        return [.. _runs.GetRange(first, last - first + 1)];
    }

    // One character of a piece; an escaped sign stands at its beginning, so its end and that of the file agree.
    private static SourceSpan Exact(SourceSpan piece, int offset, string words) => piece.Part(offset + piece.Length - words.Length, 1);

    private static (int Start, string Words, SourceSpan? At) PieceAt(int place, List<(int Start, string Words, SourceSpan? At)> pieces) => pieces[IndexAt(place, pieces)];

    // By halving: a paragraph of a stranger may have a hundred thousand pieces and as many numbers.
    private static int IndexAt(int place, List<(int Start, string Words, SourceSpan? At)> pieces)
    {
        int low = 0;
        int high = pieces.Count;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            (low, high) = pieces[middle].Start <= place ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static SourceSpan? PlaceOf(LessonRun run) => run switch
    {
        LessonRun.Plain plain => plain.At,
        LessonRun.Stressed stressed => stressed.At,
        LessonRun.Link link => link.At,
        _ => null,
    };
}
