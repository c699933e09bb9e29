using System.Text;

namespace Rostrum.Testing;

/// <summary>Parts a message into what Rostrum says and what it quotes from the author.</summary>
internal static class OwnWords
{
    /// <summary>The letters of a message with blanks between its words; what stands in single quotes or backticks, digits and signs are left out.</summary>
    /// <remarks>A quote opens behind a blank or a bracket only, so that an apostrophe inside a word never does.</remarks>
    public static string WithoutQuotes(string message)
    {
        var words = new StringBuilder();
        for (int i = 0; i < message.Length; i++)
        {
            bool opens = message[i] is '\'' or '`' && (i == 0 || message[i - 1] is ' ' or '(' or '\n');
            int close = opens ? CloserOf(message, i) : -1;
            i = Math.Max(i, close);
            words.Append(close < 0 && char.IsLetter(message[i]) ? message[i] : ' ');
        }

        return words.ToString();
    }

    // A closing quote has no letter behind it: the quoted words may hold an apostrophe.
    private static int CloserOf(string message, int open)
    {
        for (int i = open + 1; i < message.Length; i++)
        {
            if (message[i] == message[open] && (i + 1 == message.Length || !char.IsLetterOrDigit(message[i + 1])))
            {
                return i;
            }
        }

        return -1;
    }
}
