using Rostrum.Text;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads the blocks of a WebVTT file after the standard's parser algorithm, and keeps what that algorithm throws away.</summary>
/// <remarks>W3C, WebVTT: The Web Video Text Tracks Format, section "WebVTT file parsing".</remarks>
internal sealed class WebVttReader
{
    private const string Signature = "WEBVTT";

    private readonly List<CaptionBlock> _blocks = [];
    private readonly HashSet<string> _regions = new(StringComparer.Ordinal);
    private readonly SourceText _source;
    private readonly int _lineCount;
    private bool _hasSeenCue;
    private int _at;

    private WebVttReader(SourceText source)
    {
        _source = source;

        // What stands behind the last line end is no line.
        _lineCount = source.LineStart(source.LineCount - 1) == source.Content.Length ? source.LineCount - 1 : source.LineCount;
    }

    /// <summary>True where the file begins as every WebVTT file must: <c>WEBVTT</c>, then a blank or the end of the line.</summary>
    public static bool IsSigned(SourceText source) =>
        FirstLine(source) is var line && line.StartsWith(Signature, StringComparison.Ordinal) && (line.Length == Signature.Length || line[Signature.Length] is ' ' or '\t');

    /// <summary>The first line without a byte order sign.</summary>
    public static string FirstLine(SourceText source) => source.Line(0) is ['\uFEFF', .. var line] ? line : source.Line(0);

    /// <summary>Reads a file that is signed.</summary>
    public static CaptionFile Read(SourceText source)
    {
        var reader = new WebVttReader(source);
        string header = reader.ReadHeader();
        reader.ReadBlocks();
        return new CaptionFile(CaptionFormat.WebVtt, header, [.. reader._blocks]);
    }

    private string ReadHeader()
    {
        List<string> lines = [FirstLine(_source)[Signature.Length..].Replace('\0', '\uFFFD')];
        for (_at = 1; _at < _lineCount && Line(_at) is { Length: > 0 } line && !HasArrow(line); _at++)
        {
            lines.Add(line);
        }

        return string.Join('\n', lines);
    }

    private void ReadBlocks()
    {
        while (_at < _lineCount)
        {
            if (Line(_at).Length == 0)
            {
                _at++;
            }
            else
            {
                _blocks.Add(ReadBlock());
            }
        }
    }

    // The loop of "collect a WebVTT block"; an arrow makes a cue in the first line, or in the second below an id.
    private CaptionBlock ReadBlock()
    {
        int first = _at;
        string id = HasArrow(Line(first)) ? "" : Line(first);
        int times = id.Length == 0 ? first : first + 1;
        if (times < _lineCount && HasArrow(Line(times)))
        {
            _at = times + 1;
            return WebVttTime.ReadLine(Line(times)) is { } read ? ReadCue(id, times, read) : Unread(first);
        }

        _at++;
        string below = ReadText();
        return SheetOrNote(first, id.TrimEnd(' ', '\t', '\f'), below);
    }

    private Cue ReadCue(string id, int times, (TimeSpan Start, TimeSpan End, string Behind) read)
    {
        _hasSeenCue = true;
        return new Cue(id, read.Start, read.End, WebVttSettings.Read(read.Behind, _regions), ReadText()) { Line = times + 1 };
    }

    private CaptionBlock SheetOrNote(int first, string word, string below)
    {
        if (!_hasSeenCue && below.Length > 0 && word == "STYLE")
        {
            return new CaptionStyle(below) { Line = first + 1 };
        }

        if (!_hasSeenCue && below.Length > 0 && word == "REGION")
        {
            CaptionRegion region = WebVttRegion.Read(below) with { Line = first + 1 };
            _regions.Add(region.Id);
            return region;
        }

        string text = Lines(first, _at);
        return text.StartsWith("NOTE", StringComparison.Ordinal) && (text.Length == 4 || text[4] is ' ' or '\t' or '\n')
            ? new CaptionNote(text) { Line = first + 1 }
            : new UnreadBlock(text) { Line = first + 1 };
    }

    private UnreadBlock Unread(int first)
    {
        ReadText();
        return new UnreadBlock(Lines(first, _at)) { Line = first + 1 };
    }

    // Up to a blank line or an arrow, with which the next block begins even without a blank line.
    private string ReadText()
    {
        int first = _at;
        while (_at < _lineCount && Line(_at) is { Length: > 0 } line && !HasArrow(line))
        {
            _at++;
        }

        return Lines(first, _at);
    }

    private string Lines(int from, int to) => string.Join('\n', Enumerable.Range(from, to - from).Select(Line));

    private string Line(int index) => _source.Line(index).Replace('\0', '\uFFFD');

    private static bool HasArrow(string line) => line.Contains(WebVttTime.Arrow, StringComparison.Ordinal);
}
