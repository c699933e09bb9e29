using System.Collections.Immutable;
using System.Text;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Idioms;

/// <summary>Fills the gaps of an idiom's sentence: <c>(of)</c> one, <c>(many of)</c> several, <c>(a of)</c> with its article, <c>(each of)</c>,
/// <c>(points point)</c> a number of something, <c>(number points)</c> the number as a word, <c>(number points of)</c> and <c>(number points different of)</c>
/// so many of another parameter, in its singular for one.</summary>
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

    /// <summary>The sentence with the names of the parameters in their gaps: <c>Each full ‹along› scores ‹points› points.</c></summary>
    public static string InNames(string pattern, ImmutableArray<IdiomParameter> parameters)
    {
        ImmutableArray<IdiomArgument> named = [.. parameters.Select(p => new IdiomArgument(p, new Unread(p.Name), $"‹{p.Name}›", $"‹{p.Name}›", null))];
        return Fill(pattern, named);
    }

    // A parameter may be called `each`: the forms come before the names.
    private static string Gap(string gap, ImmutableArray<IdiomArgument> arguments)
    {
        IdiomArgument[] longestFirst = [.. arguments.OrderByDescending(a => a.Parameter.Name.Length)];
        return longestFirst.Select(a => InForm(gap, a, arguments)).FirstOrDefault(w => w is not null)
            ?? longestFirst.Select(a => ByName(gap, a)).FirstOrDefault(w => w is not null)
            ?? $"({gap})";
    }

    private static string? InForm(string gap, IdiomArgument argument, ImmutableArray<IdiomArgument> arguments)
    {
        string name = argument.Parameter.Name;
        return gap switch
        {
            _ when gap == $"many {name}" => argument.Plural,
            _ when gap == $"a {name}" => IsOwned(argument) ? $"one of {argument.Plural}" : Prose.A(argument.Singular),
            _ when gap == $"each {name}" => IsOwned(argument) ? $"each of {argument.Plural}" : $"each {argument.Singular}",
            _ when gap == $"number {name}" => InWords(argument),
            _ when gap.StartsWith($"number {name} ", StringComparison.Ordinal) => Counted(gap[(name.Length + 8)..], argument, arguments),
            _ => null,
        };
    }

    private static string? ByName(string gap, IdiomArgument argument)
    {
        string name = argument.Parameter.Name;
        if (gap == name)
        {
            return argument.Number is { } plain ? Figure(plain) : argument.Singular;
        }

        if (!gap.StartsWith(name + " ", StringComparison.Ordinal))
        {
            return null;
        }

        string noun = gap[(name.Length + 1)..];
        return argument.Number is { } count ? $"{Figure(count)} {(Math.Abs(count) == 1 ? noun : noun + "s")}" : $"{argument.Singular} {noun}s";
    }

    // `three jugs`, `one jug`, `three different glazes`; `three of your stones`
    private static string? Counted(string words, IdiomArgument number, ImmutableArray<IdiomArgument> arguments)
    {
        int blank = words.LastIndexOf(' ');
        string before = words[..(blank + 1)];
        if (arguments.FirstOrDefault(a => a.Parameter.Name == words[(blank + 1)..]) is not { } counted)
        {
            return null;
        }

        string noun = IsOwned(counted) ? $"of {counted.Plural}" : number.Number == 1 ? counted.Singular : counted.Plural;
        return $"{InWords(number)} {before}{noun}";
    }

    private static string InWords(IdiomArgument number) => number.Number is { } n and >= 0 ? Prose.Word(n) : number.Singular;

    // `your stone` takes no article.
    private static bool IsOwned(IdiomArgument argument) =>
        argument.Singular.StartsWith("your ", StringComparison.Ordinal) || argument.Singular.StartsWith("their ", StringComparison.Ordinal);

    private static string Figure(long number) => number < 0 ? $"minus {-number}" : $"{number}";

    // A parameter for which nothing is given.
    private sealed class Unread(string name) : Named(name, null)
    {
        public override string Role => "a parameter";
    }
}
