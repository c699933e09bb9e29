using System.Text.RegularExpressions;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads SubRip as leniently as players do: a line with two times begins a caption, whatever stands around it.</summary>
/// <remarks>There is no standard. A number directly above the times is the caption's number and may be missing, as may the blank line before it.
/// Blank lines inside the text hold no words and are left out.</remarks>
internal sealed partial class SubRipReader
{
    private readonly SourceText _source;
    private readonly List<int> _times = [];

    private SubRipReader(SourceText source)
    {
        _source = source;
        string content = source.Content;

        // A file of a stranger may have twenty million lines; only those with an arrow are looked at.
        for (int arrow = content.IndexOf("->", StringComparison.Ordinal); arrow >= 0; arrow = content.IndexOf("->", arrow + 2, StringComparison.Ordinal))
        {
            int line = source.LineIndexOf(arrow);
            if ((_times.Count == 0 || _times[^1] != line) && (SubRipTime.ReadLine(Line(line)) is not null || MeansTimes().IsMatch(Line(line))))
            {
                _times.Add(line);
            }
        }
    }

    /// <summary>Reads a file; one without any line of times has no cues.</summary>
    public static CaptionFile Read(SourceText source)
    {
        var reader = new SubRipReader(source);
        return new CaptionFile(CaptionFormat.SubRip, "", reader._times.Count == 0 ? [] : [.. reader.LinesBefore(), .. Enumerable.Range(0, reader._times.Count).Select(reader.Cue)]);
    }

    private IEnumerable<CaptionBlock> LinesBefore()
    {
        int end = Beginning(0);
        int first = Enumerable.Range(0, end).FirstOrDefault(i => !string.IsNullOrWhiteSpace(Line(i)), end);
        return first == end ? [] : [new UnreadBlock(Text(first, end)) { Line = first + 1 }];
    }

    private CaptionBlock Cue(int index)
    {
        (int begin, int times) = (Beginning(index), _times[index]);
        string text = Text(times + 1, index + 1 < _times.Count ? Beginning(index + 1) : _source.LineCount);
        if (SubRipTime.ReadLine(Line(times)) is not (var start, var end, var rectangle))
        {
            return new UnreadBlock($"{Line(times)}\n{text}") { Line = times + 1 };
        }

        return new Cue(begin < times ? Line(begin).Trim() : "", start, end, CueSettings.None with { Rectangle = rectangle }, text) { Line = times + 1 };
    }

    // The line with the number, or the one with the times where there is none.
    private int Beginning(int index)
    {
        int above = _times[index] - 1;
        int lowest = index == 0 ? 0 : _times[index - 1] + 1;
        return above >= lowest && Line(above).Trim() is { Length: > 0 } number && number.All(char.IsAsciiDigit) ? above : above + 1;
    }

    private string Text(int from, int to) =>
        string.Join('\n', Enumerable.Range(from, to - from).Select(Line).Where(l => !string.IsNullOrWhiteSpace(l)));

    private string Line(int index) => (index == 0 ? WebVttReader.FirstLine(_source) : _source.Line(index)).Replace('\0', '\uFFFD');

    // Two times that nobody can read, such as 99 minutes: the words below belong to no time.
    [GeneratedRegex(@"^\s*\d+[:.,]\d[\d:.,]*\s*-->\s*\d+[:.,]\d[\d:.,]*\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex MeansTimes();
}
