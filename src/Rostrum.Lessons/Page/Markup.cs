using System.Text;

namespace Rostrum.Lessons.Page;

/// <summary>Writes HTML that is also well-formed XML. Text and attribute values are escaped here and nowhere else.</summary>
internal sealed class Markup
{
    private readonly StringBuilder _written = new();
    private readonly Stack<string> _open = new();

    /// <summary>Opens an element; attributes whose value is null are left out.</summary>
    public Markup Open(string tag, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Start(tag, attributes);
        _written.Append('>');
        _open.Push(tag);
        return this;
    }

    /// <summary>Writes an element that never holds anything, such as <c>meta</c>.</summary>
    public Markup Void(string tag, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Start(tag, attributes);
        _written.Append(" />");
        return this;
    }

    /// <summary>Closes the innermost open element.</summary>
    public Markup Close()
    {
        _written.Append("</").Append(_open.Pop()).Append('>');
        return this;
    }

    /// <summary>Writes an element that holds words only.</summary>
    public Markup Leaf(string tag, string words, params ReadOnlySpan<(string Name, string? Value)> attributes) =>
        Open(tag, attributes).Text(words).Close();

    /// <summary>Writes words.</summary>
    public Markup Text(string words)
    {
        foreach (Rune rune in words.EnumerateRunes())
        {
            _written.Append(Escaped(rune));
        }

        return this;
    }

    /// <summary>Ends the line, for people who read the source.</summary>
    public Markup Line()
    {
        _written.Append('\n');
        return this;
    }

    /// <summary>Writes markup as it is. Only for what this room made or guarded itself.</summary>
    public Markup Trusted(string markup)
    {
        _written.Append(markup);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _written.ToString();

    private void Start(string tag, ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        _written.Append('<').Append(tag);
        foreach ((string name, string? value) in attributes)
        {
            if (value is not null)
            {
                _written.Append(' ').Append(name).Append("=\"");
                Text(value);
                _written.Append('"');
            }
        }
    }

    private static string Escaped(Rune rune) => rune.Value switch
    {
        '&' => "&amp;",
        '<' => "&lt;",
        '>' => "&gt;",
        '"' => "&quot;",
        '\'' => "&#39;",
        '\n' or '\t' => rune.ToString(),
        < 0x20 or 0x7F or 0xFFFE or 0xFFFF => "\uFFFD",   // not allowed in XML, or invisible
        >= 0x202A and <= 0x202E or >= 0x2066 and <= 0x2069 => "\uFFFD",   // would turn the direction of what follows
        _ => rune.ToString(),
    };
}
