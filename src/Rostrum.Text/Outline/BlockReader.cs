using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>Reads levels that are told apart by indentation: names with a colon, and lists with dashes.</summary>
internal sealed partial class BlockReader
{
    private readonly OutlineInput _input;
    private readonly KeyFinder _keys;

    // Where reading stands: a line with content, and the offset in it where the part to be read begins.
    private int _line;
    private int _at;

    /// <summary>Stands before the first line of a file.</summary>
    public BlockReader(OutlineInput input)
    {
        _input = input;
        _keys = new KeyFinder(input);
        MoveTo(0);
    }

    private bool HasLine => _line < _input.Lines.Count;

    private OutlineLine Line => _input.Lines[_line];

    private int Column => Line.ColumnOf(_at);

    private SourceSpan RestOfLine => _input.Between(_at, Line.End);

    /// <summary>Reads the whole file; null where it holds nothing.</summary>
    public OutlineMapping? ReadRoot()
    {
        if (!HasLine)
        {
            return null;
        }

        if (_input.Content[_at] != '{')
        {
            return ReadMapping(Column, parent: -1, depth: 1);
        }

        var root = ReadFlow(parent: -1, depth: 1) as OutlineMapping;
        if (HasLine)
        {
            _input.Problems.Add(OutlineProblems.LineWithoutKey(RestOfLine));
        }

        return root;
    }

    private void MoveTo(int line)
    {
        _line = _input.Lines.NextContent(line);
        _at = HasLine ? Line.ContentStart : _input.Content.Length;
    }


    private bool AtDash() => IsDashAt(_at, Line.End);

    private bool IsDashAt(int at, int end) => _input.Content[at] == '-' && (at + 1 >= end || OutlineInput.IsBlank(_input.Content[at + 1]));

    private bool BeginsEntry(int line) =>
        IsDashAt(_input.Lines[line].ContentStart, _input.Lines[line].End) || _keys.Find(line, _input.Lines[line].ContentStart, keyExpected: false) is not null;

    // Whatever stands at the current spot, with everything that lies deeper than the parent's column.
    private OutlineNode ReadBlock(int parent, int depth)
    {
        if (depth > OutlineReader.DeepestLevel)
        {
            _input.Problems.Add(OutlineProblems.TooDeep(RestOfLine));
            OutlineEmpty empty = new(_input.Text.Span(_at, 0));
            MoveTo(Math.Max(_line + 1, _input.Lines.EndOfDeeper(_line + 1, parent)));
            return empty;
        }

        if (AtDash())
        {
            return ReadSequence(Column, parent, besideKey: false, depth);
        }

        return _keys.Find(_line, _at, keyExpected: false) is not null ? ReadMapping(Column, parent, depth) : ReadItemText(parent, depth);
    }

    private OutlineMapping ReadMapping(int column, int parent, int depth)
    {
        var entries = new EntryCollector(_input.Problems);
        int start = _at;
        int misfit = -1;
        while (HasLine && Column > parent)
        {
            if (IsFirstTooDeep(column, parent, entries.Count, start))
            {
                column = Column;
            }

            misfit = CheckFit(column, misfit, start);
            if (AtDash())
            {
                _input.Problems.Add(OutlineProblems.StrayItem(RestOfLine));
                SkipItems(Column);
            }
            else
            {
                ReadEntry(entries, depth);
            }
        }

        return entries.ToMapping(_input.Text, start);
    }

    private void SkipItems(int column)
    {
        do
        {
            MoveTo(_input.Lines.EndOfDeeper(_line + 1, column));
        }
        while (HasLine && Column == column && AtDash());
    }

    // The first line of a level stands where no other does, and the second one a level deeper than their owner, as is usual: then the first one slipped.
    private bool IsFirstTooDeep(int column, int parent, int read, int start)
    {
        int usual = parent < 0 ? 0 : parent + 2;
        if (read != 1 || Column != usual || column == usual)
        {
            return false;
        }

        int first = _input.Text.LineIndexOf(start);
        SourceSpan blanks = _input.Between(_input.Lines[first].Start, _input.Lines[first].ContentStart);
        if (blanks.End != start)
        {
            return false;
        }

        _input.Problems.Add(OutlineProblems.WrongIndentation(_input.Between(start, _input.Lines[first].End), blanks, usual));
        return true;
    }

    // Lines with one wrong indentation, one below the other, are one slip.
    private int CheckFit(int column, int misfit, int levelStart)
    {
        if (Column == column || Column == misfit || IsNameless())
        {
            return misfit;
        }

        bool alone = _input.Lines.EndOfDeeper(_line + 1, Column) == _line + 1;
        var edit = new TextEdit(_input.Between(Line.Start, Line.ContentStart), new string(' ', column));
        Fix? fix = alone ? new Fix("indent it like the line above", FixGrade.Choice, [edit]) : null;
        int first = _input.Text.LineIndexOf(levelStart);
        SourceSpan? above = first != _line ? _input.Between(levelStart, _input.Lines[first].End) : null;
        _input.Problems.Add(OutlineProblems.MisfitIndentation(RestOfLine, Column, above, fix));
        return Column;
    }

    // A line whose name is missing is told for that; the blanks before its colon are what is left of the name.
    private bool IsNameless() => _input.Content[_at] == ':' && _input.EndsKey(_at, Line.End);

    private void ReadEntry(EntryCollector entries, int depth)
    {
        int column = Column;
        if (_keys.Find(_line, _at, keyExpected: true) is not { } found)
        {
            ReadLineWithoutKey(entries, depth);
            return;
        }

        if (found.Key.Text.Length == 0)
        {
            _input.Problems.Add(OutlineProblems.NoName(_input.Between(found.ColonEnd - 1, found.ColonEnd)));
            MoveTo(_input.Lines.EndOfDeeper(_line + 1, column));
            return;
        }

        CheckKey(found.Key);
        (_line, _at) = (found.Line, found.ColonEnd);
        entries.Add(found.Key, ReadValue(found.Key.Text, column, depth));
    }

    private void CheckKey(OutlineScalar key)
    {
        if (key.Text == "<<")
        {
            _input.Problems.Add(OutlineProblems.MergeKey(key.Span));
        }
        else
        {
            OwnedSigns.Check(key, _input.Problems);
        }
    }

    private void ReadLineWithoutKey(EntryCollector entries, int depth)
    {
        int column = Column;
        SourceSpan words = RestOfLine;
        int next = _input.Lines.NextContent(_line + 1);
        if (next >= _input.Lines.Count || _input.Lines[next].Column <= column || !BeginsEntry(next))
        {
            _input.Problems.Add(OutlineProblems.LineWithoutKey(words));
            MoveTo(_input.Lines.EndOfDeeper(_line + 1, column));
            return;
        }

        OutlineScalar key = _keys.WithoutColon(_line, _at);
        CheckKey(key);
        _input.Problems.Add(OutlineProblems.MissingColon(key.Span, _keys.ColonWouldHelp(key.Span) ? FixGrade.Safe : null));
        entries.Add(key, ReadNested(key.Span.End, column, depth));
    }

    private OutlineSequence ReadSequence(int column, int parent, bool besideKey, int depth)
    {
        var items = ImmutableArray.CreateBuilder<OutlineNode>();
        int start = _at;
        int misfit = -1;
        while (HasLine && Column > parent && !(besideKey && Column == column && !AtDash()))
        {
            if (IsFirstTooDeep(column, besideKey ? parent + 1 : parent, items.Count, start))
            {
                column = Column;
            }

            misfit = CheckFit(column, misfit, start);
            items.Add(ReadItem(depth));
        }

        int end = items.Count == 0 ? start + 1 : items.Max(i => i.Span.End);
        return new OutlineSequence(_input.Between(start, end), items.ToImmutable());
    }

    private OutlineNode ReadItem(int depth)
    {
        int column = Column;
        if (!AtDash())
        {
            _input.Problems.Add(OutlineProblems.LineBesideItems(RestOfLine));
            return ReadBesideItems(column, depth);
        }

        int dashEnd = _at + 1;
        int content = _input.SkipBlanks(dashEnd, Line.End);
        if (content >= Line.End || _input.StartsComment(content))
        {
            return ReadNestedItem(dashEnd, column, depth);
        }

        _at = content;
        return ReadBlock(column, depth + 1);
    }

    private OutlineNode ReadBesideItems(int column, int depth)
    {
        if (_keys.Find(_line, _at, keyExpected: false) is null)
        {
            return ReadItemText(column, depth);
        }

        int start = _at;
        var entry = new EntryCollector(_input.Problems);
        ReadEntry(entry, depth + 1);
        return entry.ToMapping(_input.Text, start);
    }

    private OutlineNode ReadNestedItem(int dashEnd, int column, int depth)
    {
        MoveTo(_line + 1);
        return HasLine && Column > column ? ReadBlock(column, depth + 1) : new OutlineEmpty(_input.Text.Span(dashEnd, 0));
    }
}
