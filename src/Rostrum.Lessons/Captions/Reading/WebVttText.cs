using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads the text of a WebVTT cue: "WebVTT cue text parsing rules" and the tokenizer that belongs to it.</summary>
/// <remarks>The states of the standard's tokenizer are the methods here. Tags that it does not know are left out, their words stay.</remarks>
internal sealed class WebVttText
{
    private readonly CuePartBuilder _parts = new();
    private readonly string _text;
    private int _at;

    private WebVttText(string text) => _text = text;

    /// <summary>The parts of a text.</summary>
    public static ImmutableArray<CuePart> Read(string text)
    {
        var reader = new WebVttText(text);
        while (reader._at < text.Length)
        {
            if (text[reader._at] == '<')
            {
                reader._at++;
                reader.ReadTag();
            }
            else
            {
                reader._parts.Add(new CuePart.Words(reader.ReadUpTo('<')));
            }
        }

        return reader._parts.Finish();
    }

    /// <summary>The tag of a name as WebVTT writes it, or null.</summary>
    public static CueTag? TagOf(string name) => name switch
    {
        "c" => CueTag.Class,
        "i" => CueTag.Italic,
        "b" => CueTag.Bold,
        "u" => CueTag.Underline,
        "ruby" => CueTag.Ruby,
        "rt" => CueTag.RubyText,
        "v" => CueTag.Voice,
        "lang" => CueTag.Language,
        _ => null,
    };

    private char Next => _at < _text.Length ? _text[_at] : '>';

    private void ReadTag()
    {
        if (Next == '/')
        {
            _at++;
            Close(RawUpTo(c => c == '>'));
            _at = Math.Min(_at + 1, _text.Length);
        }
        else if (char.IsAsciiDigit(Next))
        {
            Mark(RawUpTo(c => c == '>'));
            _at = Math.Min(_at + 1, _text.Length);
        }
        else
        {
            ReadStart();
        }
    }

    private void ReadStart()
    {
        string name = RawUpTo(IsEndOfName);
        ImmutableArray<string>.Builder classes = ImmutableArray.CreateBuilder<string>();
        while (Next == '.')
        {
            _at++;
            classes.Add(RawUpTo(IsEndOfName));
        }

        string note = string.Join(' ', Blanks.Split(ReadUpTo('>')));
        _at = Math.Min(_at + 1, _text.Length);
        if (TagOf(name) is { } tag && (tag != CueTag.RubyText || _parts.Current == CueTag.Ruby))
        {
            _parts.Open(tag, [.. classes.Where(c => c.Length > 0)], tag is CueTag.Voice or CueTag.Language ? note : "");
        }
    }

    private void Close(string name)
    {
        CueTag? tag = TagOf(name);
        if (tag is CueTag.Ruby && _parts.Current == CueTag.RubyText)
        {
            _parts.Close();
            _parts.Close();
        }
        else if (tag is not null && _parts.Current == tag)
        {
            _parts.Close();
        }
    }

    private void Mark(string written)
    {
        var scan = new LineScan(written);
        if (WebVttTime.Read(scan) is { } time && scan.IsAtEnd)
        {
            _parts.Add(new CuePart.Timestamp(time));
        }
    }

    // With character references.
    private string ReadUpTo(char end)
    {
        var words = new StringBuilder();
        while (_at < _text.Length && _text[_at] != end)
        {
            if (_text[_at] == '&')
            {
                _at = CharacterReferences.Read(_text, _at, words);
            }
            else
            {
                words.Append(_text[_at++]);
            }
        }

        return words.ToString();
    }

    private string RawUpTo(Func<char, bool> isEnd)
    {
        int from = _at;
        while (_at < _text.Length && !isEnd(_text[_at]))
        {
            _at++;
        }

        return _text[from.._at];
    }

    private static bool IsEndOfName(char c) => c is '.' or '>' or ' ' or '\t' or '\n' or '\f';
}
