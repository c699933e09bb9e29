namespace Rostrum.Text.Outline;

/// <summary>Keys, bare texts, quoted texts and prose inside braces and brackets.</summary>
internal sealed partial class FlowReader
{
    private void SkipSpace()
    {
        while (!AtEnd && (OutlineInput.IsSpace(Current) || _input.StartsComment(_at)))
        {
            _at = Current == '#' ? LineEnd(_at) : _at + 1;
        }
    }

    private int LineEnd(int at) => Math.Min(_limit, _input.Text.LineEnd(_input.Text.LineIndexOf(at)));

    private int SkipSpaceFrom(int at)
    {
        while (at < _limit && OutlineInput.IsSpace(_input.Content[at]))
        {
            at++;
        }

        return at;
    }

    private int TrimmedEnd(int start, int end)
    {
        while (end > start && OutlineInput.IsSpace(_input.Content[end - 1]))
        {
            end--;
        }

        return end;
    }

    // The colon of the piece that begins here; -1 where it has none before its comma or closing sign.
    private int FindColon(int from, bool tightToo)
    {
        if (_input.KnownKeyColon(from, _limit) is var known and >= 0 && (tightToo || _input.EndsKey(known, _limit)))
        {
            return known;
        }

        if (from < _limit && _input.Content[from] is '"' or '\'')
        {
            return ColonBehindQuotes(from);
        }

        int tight = -1;
        for (int i = from; i < _limit; i = NextInWords(i))
        {
            char c = _input.Content[i];
            if (c is ',' or '}' or ']' or '{' or '[' || _input.StartsComment(i))
            {
                break;
            }

            if (c == ':' && (_input.EndsKey(i, _limit) || _input.Content[i + 1] is ',' or '}' or ']'))
            {
                return i;
            }

            tight = tight < 0 && c == ':' && i > from && _input.Content[i + 1] != '/' ? i : tight;
        }

        return tightToo ? tight : -1;
    }

    private int ColonBehindQuotes(int from)
    {
        if (_brokenQuotes.Contains(_input.Content[from], StringComparison.Ordinal))
        {
            return -1;
        }

        if (QuotedText.Read(_input.Content, from, _limit) is not { } quoted)
        {
            BreakQuote(from);
            return -1;
        }

        int behind = _input.SkipBlanks(quoted.End, _limit);
        return behind < _limit && _input.Content[behind] == ':' ? behind : -1;
    }

    // One step on in bare words: round brackets that are closed and words in double quotes count as one step.
    private int NextInWords(int at)
    {
        int closer = _input.Content[at] is '(' or '[' or '{' ? _pairs.CloserOf(at) : -1;
        return closer >= 0 ? closer + 1 : Math.Max(at + 1, _input.SkipQuotedWords(at, _limit));
    }

    private OutlineScalar ReadKey(int colon)
    {
        if (Current is '"' or '\'' && QuotedText.Read(_input.Content, _at, colon) is { } quoted)
        {
            return quoted.ToScalar(_input.Text, _at);
        }

        SourceSpan span = _input.Between(_at, TrimmedEnd(_at, colon));
        var key = new OutlineScalar(span, span.Text, OutlineStyle.Plain, _at);
        if (key.Text == "<<")
        {
            Report(OutlineProblems.MergeKey(span));
        }
        else
        {
            OwnedSigns.Check(key, _input.Problems);
        }

        return key;
    }

    private OutlineScalar ReadQuoted(bool inBraces)
    {
        int open = _at;
        if (QuotedText.Read(_input.Content, open, _limit) is { } quoted)
        {
            BlockReader.ReportEscapes(_input, quoted);
            _at = quoted.End;
            return quoted.ToScalar(_input.Text, open);
        }

        BreakQuote(open);
        return ReadBare(inBraces);
    }

    private void BreakQuote(int open)
    {
        Report(OutlineProblems.MissingQuote(_input.Between(open, open + 1)));
        _brokenQuotes += _input.Content[open];
        _gaveUp = true;
    }

    private OutlineScalar ReadBare(bool inBraces)
    {
        int from = _at;
        var pieces = new TextPieces(_input);
        int colon = SkipWords(inBraces, pieces);
        _at += _at == from ? 1 : 0;
        OutlineScalar text = pieces.ToScalar();
        if (!_gaveUp)
        {
            OwnedSigns.Check(text, _input.Problems);
        }

        if (colon >= 0 && inBraces && !pieces.HasGap && KeyBefore(from, colon) is var key and >= 0)
        {
            _at = key;
            _lacksComma = true;
            SourceSpan value = _input.Between(from, TrimmedEnd(from, key));
            Report(OutlineProblems.MissingComma(_input.Between(key, TrimmedEnd(key, colon)), value));
            return new OutlineScalar(value, value.Text, OutlineStyle.Plain, from);
        }

        if (colon >= 0)
        {
            Fix fix = OutlineQuotes.QuoteFix(text.Span, FixGrade.Choice);
            Report(OutlineProblems.SecondColon(_input.Between(colon, colon + 1), text.Text, fix));
        }

        return text;
    }

    // Where the known key before a colon begins, or -1: `{heap of: ware of: each player}` lacks a comma before `of`.
    private int KeyBefore(int from, int colon)
    {
        for (int i = from + 1; i < colon; i++)
        {
            if (OutlineInput.IsBlank(_input.Content[i - 1]) && !OutlineInput.IsBlank(_input.Content[i]) && _input.KnownKeyColon(i, colon + 1) == colon)
            {
                return i;
            }
        }

        return -1;
    }

    // Steps over a bare text up to the comma or sign that ends it, and collects it without its comments.
    // Gives the first colon in it that could end a key, or -1.
    private int SkipWords(bool inBraces, TextPieces? pieces = null)
    {
        int from = _at;
        int colon = -1;
        while (!AtEnd && Current is not ('}' or ']') && !(Current == ',' && Splits(_at, inBraces)))
        {
            if (_at > from && _input.StartsComment(_at))
            {
                pieces?.AddUpToComment(from, _at);
                _at = from = SkipSpaceFrom(LineEnd(_at));
                if (pieces is not null)
                {
                    pieces.HasGap = true;
                }

                continue;
            }

            colon = colon < 0 && _input.EndsKey(_at, _limit) ? _at : colon;
            _at = NextInWords(_at);
        }

        pieces?.Add(from, _at);
        return colon;
    }

    // In brackets every comma splits; in braces one that a name and a colon follow, or nothing.
    private bool Splits(int comma, bool inBraces)
    {
        int next = SkipSpaceFrom(comma + 1);
        return !inBraces || next >= _limit || _input.Content[next] is ',' or '}' or ']' || _input.StartsComment(next) || FindColon(next, tightToo: true) >= 0;
    }

    // Prose runs up to a comma with a known key behind it, or to the sign that closes this level.
    private OutlineNode ReadProse(char closer)
    {
        int from = _at;
        if (Current is '"' or '\'' && QuotedText.Read(_input.Content, from, _limit) is { } quoted && EndsProse(SkipSpaceFrom(quoted.End), closer))
        {
            _at = quoted.End;
            return quoted.ToScalar(_input.Text, from, OutlineStyle.Prose);
        }

        char opener = closer == '}' ? '{' : '[';
        int open = 0;
        for (; !AtEnd; _at++)
        {
            open += Current == opener ? 1 : Current == closer ? -1 : 0;
            if (open < 0 || (open == 0 && Current == ',' && EndsProse(_at, closer)))
            {
                break;
            }
        }

        return ProseText.Read(_input, from, _at);
    }

    private bool EndsProse(int at, char closer) =>
        at >= _limit || _input.Content[at] == closer || (_input.Content[at] == ',' && _input.KnownKeyColon(SkipSpaceFrom(at + 1), _limit) >= 0);
}
