namespace Rostrum.Text.Outline;

/// <summary>Finds which bracket closes which inside bare words, each character looked at once.</summary>
/// <remarks>A round bracket that is never closed pairs with nothing, so that one slip does not swallow what follows.</remarks>
/// <param name="input">The file.</param>
/// <param name="limit">Nothing from here on is looked at.</param>
internal sealed class BracketPairs(OutlineInput input, int limit)
{
    private readonly Dictionary<int, int> _closers = [];
    private int _scannedTo;

    /// <summary>The offset of the bracket that closes the one at <paramref name="open"/>, or -1.</summary>
    public int CloserOf(int open)
    {
        if (open >= _scannedTo)
        {
            Scan(open);
        }

        return _closers.GetValueOrDefault(open, -1);
    }

    private void Scan(int from)
    {
        var open = new Stack<int>();
        int at = from;
        for (; at < limit; at++)
        {
            at = Math.Max(at, input.SkipQuotedWords(at, limit) - 1);
            if (input.Content[at] is '(' or '[' or '{')
            {
                open.Push(at);
            }
            else if (input.Content[at] is ')' or ']' or '}' && !Close(at, open))
            {
                break;
            }

            if (open.Count == 0)
            {
                break;
            }
        }

        _scannedTo = at + 1;
    }

    // False at a bracket that closes something outside.
    private bool Close(int at, Stack<int> open)
    {
        char closer = input.Content[at];
        char opener = closer switch { ')' => '(', ']' => '[', _ => '{' };
        while (open.Count > 0 && input.Content[open.Peek()] != opener)
        {
            if (closer == ')')
            {
                return true;
            }

            open.Pop();
        }

        if (open.Count == 0)
        {
            return closer == ')';
        }

        _closers[open.Pop()] = at;
        return true;
    }
}
