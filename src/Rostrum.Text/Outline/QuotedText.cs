using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Rostrum.Text.Outline;

/// <summary>A text in quotes, with its escapes resolved.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Offsets">The source offset of each character and of the closing quote; empty where they simply follow the opening quote.</param>
/// <param name="End">The offset behind the closing quote.</param>
/// <param name="BadEscapes">Backslashes followed by something that means nothing.</param>
internal sealed record QuotedText(string Text, ImmutableArray<int> Offsets, int End, ImmutableArray<int> BadEscapes)
{
    private const string EscapeSigns = "0abtnvfre\"/\\N_LP \t";
    private const string EscapeMeanings = "\0\a\b\t\n\v\f\r\u001B\"/\\\u0085\u00A0\u2028\u2029 \t";

    /// <summary>Reads from an opening quote on.</summary>
    /// <param name="content">The whole text.</param>
    /// <param name="open">The offset of a single or double quote.</param>
    /// <param name="limit">Nothing from here on belongs to it.</param>
    /// <returns>Null where no closing quote stands before the limit.</returns>
    public static QuotedText? Read(string content, int open, int limit) => new Reading(content, open, limit).Run();

    /// <summary>The node for it.</summary>
    /// <param name="source">The text it stands in.</param>
    /// <param name="open">The offset of the opening quote.</param>
    /// <param name="style">How it is written.</param>
    public OutlineScalar ToScalar(SourceText source, int open, OutlineStyle style = OutlineStyle.Quoted) =>
        new(source.Span(open, End - open), Text, style, open + 1) { Offsets = Offsets };

    private sealed class Reading(string content, int open, int limit)
    {
        private readonly StringBuilder _text = new();
        private readonly List<int> _offsets = [];
        private readonly List<int> _badEscapes = [];
        private bool _plain = true;
        private int _at = open + 1;

        public QuotedText? Run()
        {
            char quote = content[open];
            while (_at < limit)
            {
                char c = content[_at];
                if (c == quote && !(quote == '\'' && _at + 1 < limit && content[_at + 1] == '\''))
                {
                    _offsets.Add(_at);
                    return new QuotedText(_text.ToString(), _plain ? [] : [.. _offsets], _at + 1, [.. _badEscapes]);
                }

                TakeOne(c, quote);
            }

            return null;
        }

        private void TakeOne(char c, char quote)
        {
            if (c is '\n' or '\r')
            {
                FoldLineEnd();
            }
            else if (c == quote)
            {
                Take(quote, 2);
            }
            else if (c == '\\' && quote == '"')
            {
                TakeEscape();
            }
            else
            {
                Take(c, 1);
            }
        }

        private void Take(char meaning, int length)
        {
            _text.Append(meaning);
            _offsets.Add(_at);
            _plain &= length == 1;
            _at += length;
        }

        // A line end with the blanks around it counts as one blank; each empty line more is a line end.
        private void FoldLineEnd()
        {
            while (_text.Length > 0 && OutlineInput.IsBlank(_text[^1]))
            {
                _text.Length--;
                _offsets.RemoveAt(_offsets.Count - 1);
            }

            int start = _at;
            int lineEnds = 0;
            for (; _at < limit && OutlineInput.IsSpace(content[_at]); _at++)
            {
                lineEnds += content[_at] == '\n' || (content[_at] == '\r' && (_at + 1 == limit || content[_at + 1] != '\n')) ? 1 : 0;
            }

            _plain = false;
            string folded = lineEnds == 1 ? " " : new string('\n', lineEnds - 1);
            _text.Append(folded);
            _offsets.AddRange(Enumerable.Repeat(start, folded.Length));
        }

        private void TakeEscape()
        {
            char sign = _at + 1 < limit ? content[_at + 1] : '\0';
            int digits = sign switch { 'x' => 2, 'u' => 4, 'U' => 8, _ => 0 };
            int known = EscapeSigns.IndexOf(sign, StringComparison.Ordinal);
            if (known >= 0)
            {
                Take(EscapeMeanings[known], 2);
            }
            else if (sign is '\n' or '\r')
            {
                SkipEscapedLineEnd();
            }
            else if (digits > 0 && CodePoint(digits) is { } character)
            {
                TakeCharacter(character, 2 + digits);
            }
            else
            {
                _badEscapes.Add(_at);
                Take('\\', 1);
            }
        }

        private void SkipEscapedLineEnd()
        {
            _plain = false;
            for (_at++; _at < limit && OutlineInput.IsSpace(content[_at]); _at++)
            {
            }
        }

        private string? CodePoint(int digits)
        {
            bool fits = _at + 2 + digits <= limit;
            return fits && int.TryParse(content.AsSpan(_at + 2, digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int point)
                && Rune.IsValid(point) ? new Rune(point).ToString() : null;
        }

        private void TakeCharacter(string character, int length)
        {
            _text.Append(character);
            _offsets.AddRange(Enumerable.Repeat(_at, character.Length));
            _plain = false;
            _at += length;
        }
    }
}
