using System.Collections.Immutable;
using System.Text;
using Rostrum.Text;

namespace Rostrum.Sheets.Idioms;

/// <summary>Fills the gaps of an idiom's sentence: <c>(of)</c> one, <c>(many of)</c> several, <c>(a of)</c> with its article, <c>(points point)</c> a number of
/// something, <c>(number points)</c> the number as a word.</summary>
internal static class IdiomSentence
{
    /// <summary>The sentence with the words of a clause in it.</summary>
    public static string Fill(string pattern, ImmutableArray<IdiomArgument> arguments)
    {
        var sentence = new StringBuilder();
        int at = 0;
        while (at < pattern.Length)
        {
            int open = pattern.IndexOf('(', at);
            int close = open < 0 ? -1 : pattern.IndexOf(')', open);
            if (close < 0)
            {
                break;
            }

            sentence.Append(pattern, at, open - at).Append(Gap(pattern[(open + 1)..close], arguments));
            at = close + 1;
        }

        return Prose.Sentence(sentence.Append(pattern, at, pattern.Length - at).ToString());
    }

    private static string Gap(string gap, ImmutableArray<IdiomArgument> arguments)
    {
        foreach (IdiomArgument argument in arguments.OrderByDescending(a => a.Parameter.Name.Length))
        {
            string name = argument.Parameter.Name;
            if (gap == name)
            {
                return argument.Number is { } plain ? Figure(plain) : argument.Singular;
            }

            if (gap == $"many {name}")
            {
                return argument.Plural;
            }

            if (gap == $"a {name}")
            {
                return Prose.A(argument.Singular);
            }

            if (gap == $"number {name}")
            {
                return argument.Number is { } n and >= 0 ? Prose.Word(n) : argument.Singular;
            }

            if (gap.StartsWith(name + " ", StringComparison.Ordinal))
            {
                string noun = gap[(name.Length + 1)..];
                return argument.Number is { } count ? $"{Figure(count)} {(Math.Abs(count) == 1 ? noun : noun + "s")}" : $"{argument.Singular} {noun}s";
            }
        }

        return $"({gap})";
    }

    private static string Figure(long number) => number < 0 ? $"minus {-number}" : $"{number}";
}
