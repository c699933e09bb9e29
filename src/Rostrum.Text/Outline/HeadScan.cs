namespace Rostrum.Text.Outline;

/// <summary>Looks for the colon of a key, line after line; round brackets stay open from one line to the next.</summary>
/// <param name="input">The file.</param>
internal sealed class HeadScan(OutlineInput input)
{
    private int _open;
    private int _first = -1;

    /// <summary>Where a bracket was never closed: the first colon that could end a key all the same; else -1.</summary>
    public int FirstColon => _open > 0 ? _first : -1;

    /// <summary>Where the last line ended, its comment left out.</summary>
    public int LastEnd { get; private set; }

    /// <summary>How many lines were looked at.</summary>
    public int Lines { get; private set; }

    /// <summary>The colon that ends the key, or -1.</summary>
    /// <param name="from">Where the content of the line begins.</param>
    /// <param name="end">Where it ends.</param>
    public int Run(int from, int end)
    {
        Lines++;
        LastEnd = end;
        for (int i = from; i < end; i++)
        {
            if (i > from && input.StartsComment(i))
            {
                LastEnd = EndBefore(from, i);
                return -1;
            }

            int words = input.SkipQuotedWords(i, end);
            if (words > i)
            {
                i = words - 1;
                continue;
            }

            Count(input.Content[i]);
            if (!input.EndsKey(i, end))
            {
                continue;
            }

            _first = _first < 0 ? i : _first;
            if (_open == 0)
            {
                return i;
            }
        }

        return -1;
    }

    private void Count(char c) => _open = Math.Max(0, _open + (c switch { '(' => 1, ')' => -1, _ => 0 }));

    private int EndBefore(int from, int at)
    {
        while (at > from && OutlineInput.IsBlank(input.Content[at - 1]))
        {
            at--;
        }

        return at;
    }
}
