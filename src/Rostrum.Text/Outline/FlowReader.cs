using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Reads what stands in braces or square brackets, over as many lines as belong to it.</summary>
internal sealed partial class FlowReader
{
    private readonly OutlineInput _input;
    private readonly BracketPairs _pairs;
    private readonly int _limit;
    private readonly Stack<(int Open, char Closer)> _levels = [];
    private int _at;
    private int _depth;

    // After a slip that leaves the rest doubtful nothing more is told: it would be an echo.
    private bool _gaveUp;
    private string _brokenQuotes = "";

    // The piece that was just read ends before a key without a comma; that was told.
    private bool _lacksComma;

    /// <summary>Stands at an opening brace or bracket.</summary>
    /// <param name="input">The file.</param>
    /// <param name="open">The offset of the brace or bracket.</param>
    /// <param name="limit">Where the deeper lines that may belong to it end.</param>
    public FlowReader(OutlineInput input, int open, int limit)
    {
        _input = input;
        _at = open;
        _limit = limit;
        _pairs = new BracketPairs(input, limit);
    }

    /// <summary>The offset behind what was read.</summary>
    public int Position => _at;

    private bool AtEnd => _at >= _limit;

    private char Current => _input.Content[_at];

    /// <summary>Reads up to the closing brace or bracket.</summary>
    /// <param name="depth">How many levels lie around it.</param>
    public OutlineNode Read(int depth)
    {
        _depth = depth;
        return ReadValue(inBraces: false);
    }

    private OutlineNode ReadValue(bool inBraces) => Current switch
    {
        '{' or '[' when _depth >= OutlineReader.DeepestLevel => GiveUp(),
        '{' => ReadBraces(),
        '[' => ReadBrackets(),
        '"' or '\'' when !_brokenQuotes.Contains(Current, StringComparison.Ordinal) => ReadQuoted(inBraces),
        _ => ReadBare(inBraces),
    };

    private OutlineEmpty GiveUp()
    {
        Report(OutlineProblems.TooDeep(_input.Between(_at, _at + 1)));
        _gaveUp = true;
        OutlineEmpty empty = new(_input.Text.Span(_at, 0));
        _at = _limit;
        return empty;
    }

    private OutlineMapping ReadBraces()
    {
        int open = Open('}');
        var entries = new EntryCollector(_input.Problems);
        while (!AtCloser(open))
        {
            if (Current == ',')
            {
                Report(OutlineProblems.EmptyPiece(_input.Between(_at, _at + 1)));
                _at++;
                continue;
            }

            ReadPiece(entries);
            EndPiece(inBraces: true);
        }

        Close();
        return entries.Within(_input.Between(open, _at));
    }

    private OutlineSequence ReadBrackets()
    {
        int open = Open(']');
        var items = ImmutableArray.CreateBuilder<OutlineNode>();
        while (!AtCloser(open))
        {
            if (Current == ',')
            {
                Report(OutlineProblems.EmptyPiece(_input.Between(_at, _at + 1)));
                _at++;
                continue;
            }

            items.Add(ReadBracketItem());
            EndPiece(inBraces: false);
        }

        Close();
        return new OutlineSequence(_input.Between(open, _at), items.ToImmutable());
    }

    private int Open(char closer)
    {
        _levels.Push((_at, closer));
        _depth++;
        return _at++;
    }

    private void Close()
    {
        _levels.Pop();
        _depth--;
    }

    // Steps over blanks and the closing sign; tells one that is missing or wrong.
    private bool AtCloser(int open)
    {
        SkipSpace();
        char closer = _input.Content[open] == '{' ? '}' : ']';
        if (AtEnd)
        {
            ReportMissingCloser(open, closer);
            return true;
        }

        if (Current is not ('}' or ']'))
        {
            return false;
        }

        if (Current != closer)
        {
            Report(OutlineProblems.WrongCloser(_input.Between(_at, _at + 1), _input.Between(open, open + 1), closer));
        }

        _at++;
        return true;
    }

    private void ReportMissingCloser(int open, char closer)
    {
        if (!_gaveUp)
        {
            Report(OutlineProblems.MissingCloser(_input.Between(open, open + 1), closer, CloserFix()));
            _gaveUp = true;
        }

        _at = Math.Min(_limit, TrimmedEnd(open, _limit));
    }

    // Everything that is still open is closed, from the inside out: none of it found its end. Behind a comment that would not help.
    private Fix? CloserFix()
    {
        int outermost = _levels.Last().Open;
        string closers = string.Concat(_levels.Select(l => l.Closer));
        bool sure = _input.Text.LineIndexOf(outermost) == _input.Text.LineIndexOf(Math.Max(outermost, _limit - 1)) && OpenSigns(outermost) == closers.Length;
        var insertion = new TextEdit(_input.Text.Span(_limit, 0), closers);
        return HoldsComment(outermost) ? null : new Fix($"write '{closers}' at the end", sure ? FixGrade.Safe : FixGrade.Choice, [insertion]);
    }

    // How many signs open without being closed, those inside bare words included: a closing sign could be taken for theirs.
    private int OpenSigns(int from)
    {
        int open = 0;
        for (int i = from; i < _limit; i++)
        {
            open += _input.Content[i] switch { '{' or '[' => 1, '}' or ']' => -1, _ => 0 };
        }

        return open;
    }

    private bool HoldsComment(int from)
    {
        for (int i = from; i < _limit; i++)
        {
            if (_input.StartsComment(i))
            {
                return true;
            }
        }

        return false;
    }

    private void EndPiece(bool inBraces)
    {
        SkipSpace();
        if (_lacksComma)
        {
            _lacksComma = false;
        }
        else if (!AtEnd && Current == ',')
        {
            _at++;
        }
        else if (!AtEnd && Current is not ('}' or ']'))
        {
            int from = _at;
            SkipWords(inBraces);
            SourceSpan rest = _input.Between(from, TrimmedEnd(from, _at));
            Report(OutlineProblems.TextAfterClosing(rest, PieceBefore(from)));
            SkipComma();
        }
    }

    private SourceSpan PieceBefore(int at)
    {
        int end = TrimmedEnd(0, at);
        return _input.Between(end - 1, end);
    }

    private void SkipComma()
    {
        SkipSpace();
        _at += !AtEnd && Current == ',' ? 1 : 0;
    }

    private void ReadPiece(EntryCollector entries)
    {
        int colon = FindColon(_at, tightToo: true);
        if (colon < 0)
        {
            int from = _at;
            SkipWords(inBraces: true);
            Report(OutlineProblems.PieceWithoutColon(_input.Between(from, TrimmedEnd(from, _at))));
            _at += _at == from ? 1 : 0;
            return;
        }

        OutlineScalar key = ReadKey(colon);
        if (key.Span.Length == 0)
        {
            Report(OutlineProblems.NoName(_input.Between(colon, colon + 1)));
            ReadPieceValue(key, colon + 1, inBraces: true);
            return;
        }

        if (!_input.EndsKey(colon, _limit) && colon + 1 < _limit && _input.Content[colon + 1] is not (',' or '}' or ']'))
        {
            Report(OutlineProblems.MissingBlank(_input.Between(colon, colon + 1), key.Text));
        }

        entries.Add(key, ReadPieceValue(key, colon + 1, inBraces: true));
    }

    private OutlineNode ReadBracketItem()
    {
        int from = _at;
        int colon = FindColon(_at, tightToo: false);
        if (colon < 0)
        {
            return ReadValue(inBraces: false);
        }

        var entry = new EntryCollector(_input.Problems);
        OutlineScalar key = ReadKey(colon);
        entry.Add(key, ReadPieceValue(key, colon + 1, inBraces: false));
        return entry.ToMapping(_input.Text, from);
    }

    private OutlineNode ReadPieceValue(OutlineScalar key, int from, bool inBraces)
    {
        _at = from;
        SkipSpace();
        if (AtEnd || Current is ',' or '}' or ']')
        {
            return new OutlineEmpty(_input.Text.Span(from, 0));
        }

        bool prose = _input.Dialect.ProseKeys.Contains(key.Text) && !BlockReader.BracesOpenKeys(_input, _at, _limit);
        return prose ? ReadProse(inBraces ? '}' : ']') : ReadValue(inBraces);
    }

    private void Report(Diagnostic problem)
    {
        if (!_gaveUp)
        {
            _input.Problems.Add(problem);
        }
    }
}
