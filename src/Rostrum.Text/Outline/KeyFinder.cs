namespace Rostrum.Text.Outline;

/// <summary>Finds the key at the beginning of a line: it ends at the first colon with a blank or a line end behind it, outside quotes
/// and round brackets.</summary>
/// <param name="input">The file.</param>
internal sealed class KeyFinder(OutlineInput input)
{
    /// <summary>The colon that ends a key which lies wholly on one line; -1 where there is none.</summary>
    public int ColonOnLine(int from, int end)
    {
        if (input.Content[from] is '"' or '\'')
        {
            return ColonBehindQuotes(from, end) is var behind and >= 0 && input.EndsKey(behind, end) ? behind : -1;
        }

        var scan = new HeadScan(input);
        int colon = scan.Run(from, end);
        return colon >= 0 ? colon : scan.FirstColon;
    }

    /// <summary>The key at an offset, or null.</summary>
    /// <param name="line">The index of the line.</param>
    /// <param name="at">Where its content begins.</param>
    /// <param name="keyExpected">True where nothing but a key can stand; then a colon without a blank behind it is taken for a slip.</param>
    public KeyPlace? Find(int line, int at, bool keyExpected)
    {
        int end = input.Lines[line].End;
        if (input.Content[at] is '{' or '[')
        {
            return null;
        }

        if (TightColon(at, end, keyExpected: false) is var known and >= 0)
        {
            return Tight(line, at, known);
        }

        if (input.Content[at] is '"' or '\'')
        {
            return Quoted(line, at, keyExpected);
        }

        KeyPlace? found = LongHead(line, at);
        return found is null && keyExpected && TightColon(at, end, keyExpected) is var tight and >= 0 ? Tight(line, at, tight) : found;
    }

    /// <summary>What a line would say as a key if it had a colon at its end; a comment behind it is left out.</summary>
    public OutlineScalar WithoutColon(int line, int at) => Bare(at, EndBeforeComment(at, input.Lines[line].End));

    /// <summary>True where a colon behind these words would make a key of them: they open no quote, or close it at their end around something.</summary>
    public bool ColonWouldHelp(SourceSpan words) =>
        words.Length > 0 && input.Content[words.Start] is var first && first is not ('{' or '[')
        && (first is not ('"' or '\'') || (QuotedText.Read(input.Content, words.Start, words.End) is { Text.Length: > 0 } quoted && quoted.End == words.End));

    private int EndBeforeComment(int at, int end)
    {
        var scan = new HeadScan(input);
        return scan.Run(at, end) < 0 ? scan.LastEnd : end;
    }

    private KeyPlace? LongHead(int line, int at)
    {
        int column = input.Lines[line].ColumnOf(at);
        var scan = new HeadScan(input);
        int from = at;
        for (int i = line; ; from = input.Lines[i].ContentStart)
        {
            int colon = scan.Run(from, input.Lines[i].End);
            colon = colon < 0 && i == line ? scan.FirstColon : colon;
            if (colon >= 0)
            {
                return new KeyPlace(Bare(at, colon), i, colon + 1);
            }

            i = input.Lines.NextContent(i + 1);
            if (!GoesOn(scan.LastEnd) || i >= input.Lines.Count || input.Lines[i].Column <= column || scan.Lines > MostHeadLines)
            {
                return null;
            }
        }
    }

    // Far more than anybody writes; keeps the reading of hostile text linear.
    private const int MostHeadLines = 64;

    private bool GoesOn(int end)
    {
        string content = input.Content;
        return content[end - 1] == ',' || (end > 4 && content.AsSpan(end - 3, 3).SequenceEqual("and") && OutlineInput.IsBlank(content[end - 4]));
    }

    private int ColonBehindQuotes(int from, int end)
    {
        if (QuotedText.Read(input.Content, from, end) is not { } quoted)
        {
            return -1;
        }

        int behind = input.SkipBlanks(quoted.End, end);
        return behind < end && input.Content[behind] == ':' ? behind : -1;
    }

    // A colon with no blank behind it, where a key is clearly meant.
    private int TightColon(int at, int end, bool keyExpected)
    {
        int colon = keyExpected ? input.Content.IndexOf(':', at, EndBeforeComment(at, end) - at) : input.KnownKeyColon(at, end);
        bool tight = colon > at && colon + 1 < end && !OutlineInput.IsSpace(input.Content[colon + 1]) && input.Content[colon + 1] != '/';
        return tight ? colon : -1;
    }

    private KeyPlace Tight(int line, int at, int colon)
    {
        OutlineScalar key = Bare(at, colon);
        input.Problems.Add(OutlineProblems.MissingBlank(input.Between(colon, colon + 1), key.Text));
        return new KeyPlace(key, line, colon + 1);
    }

    private KeyPlace? Quoted(int line, int at, bool keyExpected)
    {
        int end = input.Lines[line].End;
        int colon = ColonBehindQuotes(at, end);
        bool tight = colon >= 0 && !input.EndsKey(colon, end);
        if (colon < 0 || (tight && !keyExpected))
        {
            return null;
        }

        OutlineScalar key = QuotedText.Read(input.Content, at, colon)!.ToScalar(input.Text, at);
        if (tight)
        {
            input.Problems.Add(OutlineProblems.MissingBlank(input.Between(colon, colon + 1), key.Text));
        }

        return new KeyPlace(key, line, colon + 1);
    }

    private OutlineScalar Bare(int at, int colon)
    {
        int end = colon;
        while (end > at && OutlineInput.IsSpace(input.Content[end - 1]))
        {
            end--;
        }

        SourceSpan span = input.Between(at, end);
        return new OutlineScalar(span, span.Text, OutlineStyle.Plain, at);
    }
}
