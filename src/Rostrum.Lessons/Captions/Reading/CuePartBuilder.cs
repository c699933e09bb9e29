using System.Collections.Immutable;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Puts the parts of a cue's text together while its tags are read.</summary>
internal sealed class CuePartBuilder
{
    private readonly Stack<OpenTag> _open = new();
    private readonly ImmutableArray<CuePart>.Builder _root = ImmutableArray.CreateBuilder<CuePart>();

    /// <summary>The innermost tag that is open; null outside of all.</summary>
    public CueTag? Current => _open.TryPeek(out OpenTag? open) ? open.Tag : null;

    /// <summary>Adds a part inside the innermost tag.</summary>
    public void Add(CuePart part) => Parts.Add(part);

    /// <summary>Opens a tag, unless it would lie too deep.</summary>
    public void Open(CueTag tag, ImmutableArray<string> classes, string note)
    {
        if (_open.Count < CueText.MostDepth)
        {
            string around = _open.TryPeek(out OpenTag? outer) ? outer.Language : "";
            _open.Push(new OpenTag(tag, classes, note, tag == CueTag.Language ? note : around));
        }
    }

    /// <summary>Closes the innermost tag.</summary>
    public void Close()
    {
        OpenTag closed = _open.Pop();
        Parts.Add(new CuePart.Span(closed.Tag, closed.Classes, closed.Note, closed.Language, closed.Parts.ToImmutable()));
    }

    /// <summary>Closes what is open and gives everything.</summary>
    public ImmutableArray<CuePart> Finish()
    {
        while (_open.Count > 0)
        {
            Close();
        }

        return _root.ToImmutable();
    }

    private ImmutableArray<CuePart>.Builder Parts => _open.TryPeek(out OpenTag? open) ? open.Parts : _root;

    private sealed record OpenTag(CueTag Tag, ImmutableArray<string> Classes, string Note, string Language)
    {
        public ImmutableArray<CuePart>.Builder Parts { get; } = ImmutableArray.CreateBuilder<CuePart>();
    }
}
