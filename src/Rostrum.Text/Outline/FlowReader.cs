using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Reads what stands in braces or square brackets, over as many lines as belong to it.</summary>
internal sealed partial class FlowReader
{
    private readonly OutlineInput _input;
    private readonly BracketPairs _pairs;
    private readonly int _limit;
    private readonly Stack<char> _closers = [];
    private int _at;
    private int _depth;

    // After a slip that leaves the rest doubtful nothing more is told: it would be an echo.
    private bool _gaveUp;
    private string _brokenQuotes = "";

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
        _closers.Push(closer);
        _depth++;
        return _at++;
    }

    private void Close()
    {
        _closers.Pop();
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
        Report(OutlineProblems.MissingCloser(_input.Between(open, open + 1), closer, HoldsComment(open) ? null : CloserFix(open)));
        _gaveUp = true;
        _at = Math.Min(_limit, TrimmedEnd(open, _limit));
    }

    // Behind a comment a closing sign would be part of it.
    private bool HoldsComment(int open)
    {
        for (int i = open + 1; i < _limit; i++)
        {
            if (_input.StartsComment(i))
            {
                return true;
            }
        }

        return false;
    }

    // Everything that is still open is closed, from the inside out: none of it found its end.
    private Fix CloserFix(int open)
    {
        bool oneLine = _input.Text.LineIndexOf(open) == _input.Text.LineIndexOf(Math.Max(open, _limit - 1));
        string closers = string.Concat(_closers);
        return new Fix($"write '{closers}' at the end", oneLine ? FixGrade.Safe : FixGrade.Choice, [new TextEdit(_input.Text.Span(_limit, 0), closers)]);
    }

    private void EndPiece(bool inBraces)
    {
        SkipSpace();
        if (!AtEnd && Current == ',')
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
        return prose ? ReadProse() : ReadValue(inBraces);
    }

    private void Report(Diagnostic problem)
    {
        if (!_gaveUp)
        {
            _input.Problems.Add(problem);
        }
    }
}
