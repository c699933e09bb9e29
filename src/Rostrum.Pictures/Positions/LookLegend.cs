using Rostrum.Text;

namespace Rostrum.Pictures.Positions;

/// <summary>Tells which piece is which, where nobody could know: a bowl looks like a bowl, a plum that is drawn as a disc does not.</summary>
internal sealed class LookLegend
{
    private const int Most = 8;

    private readonly List<PieceLook> _drawn = [];

    /// <summary>Notes a look that needs a word; each is told once.</summary>
    public void Add(PieceLook look)
    {
        if (_drawn.All(d => d.Says != look.Says))
        {
            _drawn.Add(look);
        }
    }

    /// <summary>One sentence, such as <c>Disc: lily; square: frog.</c>; null where there is nothing to tell apart, or too much.</summary>
    public string? InWords
    {
        get
        {
            // A hut that looks like a hut needs no word.
            string[] told = [.. _drawn.Where(l => l.Says != l.Outline.Name).Select(l => $"{Shape(l)}: {l.Says}")];
            return told.Length > 0 && _drawn.Count is > 1 and <= Most ? $"{Prose.Sentence(string.Join("; ", told))}." : null;
        }
    }

    // The colour is told only where the silhouette alone is not enough.
    private string Shape(PieceLook look)
    {
        bool isAlone = _drawn.Count(d => d.Outline.Name == look.Outline.Name) == 1;
        return isAlone ? look.Outline.Name : $"{look.Colour.Name} {look.Outline.Name}{(look.Emblem is { } emblem ? $" with {emblem.Name}" : "")}";
    }
}
