using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Text.Outline;

/// <summary>Puts a bare text together from its lines, comments left out.</summary>
/// <param name="input">The file.</param>
internal sealed class TextPieces(OutlineInput input)
{
    private readonly List<(int Start, int End)> _pieces = [];
    private bool _cut;

    /// <summary>True where something between two lines does not belong to the text.</summary>
    public bool HasGap { get; set; }

    /// <summary>Adds the part of a line up to its comment; tells a comment with one blank before it.</summary>
    /// <returns>Where the part ends.</returns>
    public int AddLine(int from, int end)
    {
        HasGap |= _cut;
        for (int i = from + 1; i < end; i++)
        {
            i = Math.Max(i, input.SkipQuotedWords(i, end) - 1);
            if (input.StartsComment(i))
            {
                return AddUpToComment(from, i);
            }
        }

        Add(from, end);
        return end;
    }

    /// <summary>Adds a part of the text; blanks at its end are left out.</summary>
    public void Add(int from, int end)
    {
        while (end > from && OutlineInput.IsSpace(input.Content[end - 1]))
        {
            end--;
        }

        _pieces.Add((from, end));
    }

    /// <summary>Adds what stands before a comment.</summary>
    /// <returns>Where the part ends.</returns>
    public int AddUpToComment(int from, int comment)
    {
        Add(from, comment);
        if (_pieces[^1].End == comment - 1 && _pieces[^1].End > from)
        {
            input.Problems.Add(OutlineProblems.OneBlankBeforeComment(input.Between(comment, comment + 1)));
        }

        _cut = true;
        return _pieces[^1].End;
    }

    /// <summary>The text: cut straight from the source where nothing lies between its lines, else its lines joined.</summary>
    public OutlineScalar ToScalar()
    {
        _pieces.RemoveAll(p => p.End == p.Start && _pieces.Count > 1);
        SourceSpan span = input.Between(_pieces[0].Start, _pieces[^1].End);
        return HasGap && _pieces.Count > 1 ? Joined(span) : new OutlineScalar(span, span.Text, OutlineStyle.Plain, span.Start);
    }

    private OutlineScalar Joined(SourceSpan span)
    {
        var text = new StringBuilder();
        var offsets = ImmutableArray.CreateBuilder<int>();
        foreach ((int start, int end) in _pieces)
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            text.Append(input.Content, start, end - start);
            offsets.AddRange(Enumerable.Range(start, end - start + 1));
        }

        return new OutlineScalar(span, text.ToString(), OutlineStyle.Plain, span.Start) { Offsets = offsets.ToImmutable() };
    }
}
