using System.Collections.Frozen;

namespace Rostrum.Lessons.Speech;

/// <summary>Counts the syllables of an English word from its letters.</summary>
/// <remarks>Groups of vowels, less those that are silent, more those that are two. How often it is right is measured in
/// <c>SyllablesTests</c> and told in <c>docs/lesson.md</c>. Figures and signs count one, as Flesch's counting rules say.</remarks>
internal static class Syllables
{
    private const string Vowels = "aeiouy";

    // Short words of daily speech that the rules below get wrong.
    private static readonly FrozenDictionary<string, int> Known = new Dictionary<string, int>(StringComparer.Ordinal)
    {
        ["every"] = 2, ["everything"] = 3, ["everybody"] = 4, ["everyone"] = 3, ["somebody"] = 3, ["something"] = 2, ["sometimes"] = 2, ["someone"] = 2, ["somewhere"] = 2,
        ["business"] = 2, ["people"] = 2, ["being"] = 2, ["doing"] = 2, ["going"] = 2, ["area"] = 3, ["idea"] = 3, ["real"] = 1, ["really"] = 2, ["science"] = 2, ["quiet"] = 2,
        ["player"] = 2, ["players"] = 2, ["poem"] = 2, ["ruin"] = 2, ["fuel"] = 2, ["diary"] = 3, ["create"] = 2, ["created"] = 3, ["seeing"] = 2, ["higher"] = 2, ["lower"] = 2,
        ["one's"] = 1, ["chocolate"] = 2, ["different"] = 3, ["evening"] = 2, ["family"] = 3, ["interest"] = 3, ["vegetable"] = 4, ["whatever"] = 3, ["wherever"] = 3, ["whoever"] = 3,
        ["therefore"] = 2, ["hundred"] = 2, ["commission"] = 3, ["australian"] = 3, ["reptilian"] = 3, ["eighteen"] = 2, ["nineteen"] = 2, ["hyphen"] = 2, ["naïve"] = 2,
        ["variant"] = 3, ["variants"] = 3, ["triangle"] = 3, ["diagonal"] = 4, ["dial"] = 2, ["lion"] = 2, ["giant"] = 2, ["client"] = 2, ["trial"] = 2, ["piano"] = 3, ["radio"] = 3,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The syllables of all parts of a word: at least one.</summary>
    /// <param name="word">Letters, figures, apostrophes and hyphens; large letters allowed.</param>
    public static int Of(string word)
    {
        int all = 0;
        foreach (string part in word.ToLowerInvariant().Split(['-', '–'], StringSplitOptions.RemoveEmptyEntries))
        {
            all += OfPart(new string([.. part.Where(c => char.IsLetter(c) || c is '\'' or '’')]).Replace('’', '\''));
        }

        return Math.Max(1, all);
    }

    private static int OfPart(string word)
    {
        if (Known.TryGetValue(word, out int known))
        {
            return known;
        }

        string letters = word.EndsWith("'s", StringComparison.Ordinal) ? word[..^2] : word.Replace("'", "", StringComparison.Ordinal);
        return letters.Length <= 3 ? Math.Max(1, Groups(letters) - (letters.Length == 3 && letters[2] == 'e' && !IsVowel(letters[1]) ? 1 : 0)) : Math.Max(1, Groups(letters) - Silent(letters) + Twofold(letters));
    }

    private static int Groups(string word)
    {
        int groups = 0;
        bool before = false;
        for (int i = 0; i < word.Length; i++)
        {
            bool isVowel = Vowels.Contains(word[i], StringComparison.Ordinal) && !(word[i] == 'u' && i > 0 && word[i - 1] == 'q') && !(word[i] == 'y' && i == 0);
            groups += isVowel && !before ? 1 : 0;
            before = isVowel;
        }

        return groups;
    }

    private static int Silent(string word)
    {
        int silent = EndsSilent(word) ? 1 : 0;
        // An 'e' before an ending that begins with a consonant: 'moment' speaks it, 'placement', 'likely', 'homeless' do not.
        foreach (string ending in (string[])["ely", "eful", "eless", "ement", "eness"])
        {
            if (word.Length > ending.Length + 2 && word.EndsWith(ending, StringComparison.Ordinal) && !IsVowel(word[^(ending.Length + 1)]))
            {
                return silent + 1;
            }
        }

        return silent;
    }

    // 'lake', 'placed', 'places' hide one; 'table', 'landed', 'boxes' do not.
    private static bool EndsSilent(string word)
    {
        if (word.EndsWith("ed", StringComparison.Ordinal))
        {
            return word[^3] is not ('t' or 'd') && !IsVowel(word[^3]) && !(word[^3] is 'l' or 'r' && word.Length > 4 && !IsVowel(word[^4]) && word[^4] != word[^3] && word[^4] is not ('l' or 'r'));
        }

        if (word.EndsWith("es", StringComparison.Ordinal))
        {
            return !(word[^3] is 's' or 'x' or 'z' or 'c' or 'g' || word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal)) && !IsVowel(word[^3]) && !IsLe(word[..^1]);
        }

        return word[^1] == 'e' && !IsVowel(word[^2]) && !IsLe(word);
    }

    private static bool IsLe(string word) => word.EndsWith("le", StringComparison.Ordinal) && word.Length > 3 && !IsVowel(word[^3]) && word[^3] != 'l';

    // Vowels side by side that are spoken one after the other.
    private static int Twofold(string word)
    {
        int more = 0;
        foreach (string pair in (string[])["ia", "io", "iu", "eo", "ua", "uo"])
        {
            for (int at = word.IndexOf(pair, StringComparison.Ordinal); at >= 0; at = word.IndexOf(pair, at + 2, StringComparison.Ordinal))
            {
                more += IsTwo(word, pair, at) ? 1 : 0;
            }
        }

        return more + (word.EndsWith("ism", StringComparison.Ordinal) ? 1 : 0) + (word.EndsWith("ying", StringComparison.Ordinal) ? 1 : 0) + (word.StartsWith("re", StringComparison.Ordinal) && word.Length > 4 && word[2] is 'i' or 'o' && word[1] == 'e' ? 1 : 0);
    }

    private static bool IsTwo(string word, string pair, int at)
    {
        char before = at > 0 ? word[at - 1] : ' ';
        string rest = word[at..];
        return pair switch
        {
            "ia" => !(before is 't' or 'c' or 's' or 'g') && !rest.StartsWith("iage", StringComparison.Ordinal),
            "io" => !(before is 't' or 's' or 'c' or 'g' or 'x') || !(rest.StartsWith("ion", StringComparison.Ordinal) || rest.StartsWith("iou", StringComparison.Ordinal)),
            "iu" => true,
            "eo" => !(before is 'g') && !rest.StartsWith("eou", StringComparison.Ordinal) && !rest.StartsWith("eop", StringComparison.Ordinal),
            "ua" => !(before is 'q' or 'g'),
            _ => before is not ('q' or 'b'),
        };
    }

    private static bool IsVowel(char letter) => Vowels.Contains(letter, StringComparison.Ordinal);
}
