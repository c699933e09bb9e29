namespace Rostrum.Text.Outline;

/// <summary>What every part of the outline reading looks at.</summary>
/// <param name="Text">The file.</param>
/// <param name="Lines">Its lines, sorted into blank ones, comments and content.</param>
/// <param name="Dialect">Which keys mean what.</param>
/// <param name="Problems">Receives what is wrong.</param>
internal sealed record OutlineInput(SourceText Text, OutlineLines Lines, OutlineDialect Dialect, DiagnosticBag Problems)
{
    private readonly int _longestKey = Dialect.KnownKeys.Concat(Dialect.ProseKeys).Select(k => k.Length).DefaultIfEmpty(0).Max();

    /// <summary>The text itself.</summary>
    public string Content => Text.Content;

    /// <summary>True for the two characters that separate words on a line.</summary>
    public static bool IsBlank(char c) => c is ' ' or '\t';

    /// <summary>True for a blank or a line end.</summary>
    public static bool IsSpace(char c) => c is ' ' or '\t' or '\n' or '\r';

    /// <summary>The first offset from <paramref name="at"/> on, below <paramref name="end"/>, where no blank stands.</summary>
    public int SkipBlanks(int at, int end)
    {
        while (at < end && IsBlank(Content[at]))
        {
            at++;
        }

        return at;
    }

    /// <summary>True where a <c>#</c> begins a comment: at the start of a line or behind a blank.</summary>
    public bool StartsComment(int at) => Content[at] == '#' && (at == 0 || IsSpace(Content[at - 1]) || Content[at - 1] == '\uFEFF');

    /// <summary>True where a colon at this offset ends a key: a blank, a line end or the end of the text follows.</summary>
    public bool EndsKey(int colon, int end) => Content[colon] == ':' && (colon + 1 >= end || IsSpace(Content[colon + 1]));

    /// <summary>The colon behind a known key that begins at <paramref name="at"/>, with or without a blank behind it; -1 where none does.</summary>
    public int KnownKeyColon(int at, int end)
    {
        int last = Math.Min(end, at + _longestKey + 2);
        for (int i = at; i < last; i++)
        {
            if (Content[i] == ':')
            {
                string key = Content[at..i].TrimEnd();
                return Dialect.KnownKeys.Contains(key) || Dialect.ProseKeys.Contains(key) ? i : -1;
            }
        }

        return -1;
    }

    /// <summary>Where a text in double quotes inside other words ends, or <paramref name="at"/> where no such text begins there.</summary>
    /// <remarks>An apostrophe never opens one: <c>day's work</c> is two words.</remarks>
    public int SkipQuotedWords(int at, int end)
    {
        bool opens = Content[at] == '"' && (at == 0 || IsSpace(Content[at - 1]) || Content[at - 1] is '(' or '[' or '{' or ',');
        for (int i = at + 1; opens && i < end && Content[i] is not ('\n' or '\r'); i++)
        {
            if (Content[i] == '"')
            {
                return i + 1;
            }
        }

        return at;
    }

    /// <summary>The stretch between two offsets.</summary>
    public SourceSpan Between(int start, int end) => Text.Span(start, end - start);
}
