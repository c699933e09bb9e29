using System.Collections.Frozen;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Review;

/// <summary>Words reduced to what they have in common: <c>scores</c>, <c>scoring</c> and <c>scored</c> are one; words that teachers use for each other are one too.</summary>
internal static class Stems
{
    // Words that say nothing of which rule is meant.
    private static readonly FrozenSet<string> Small = FrozenSet.ToFrozenSet(
    [
        "a", "an", "the", "of", "in", "on", "to", "for", "at", "with", "and", "or", "from", "by", "as", "is", "are", "be", "am", "was", "were", "been", "it", "its", "this", "that", "these", "those",
        "you", "your", "yours", "i", "my", "we", "our", "us", "he", "she", "they", "them", "their", "his", "her", "who", "which", "what", "there", "here", "so", "then", "now", "if", "when", "where",
        "while", "can", "may", "must", "will", "would", "should", "could", "do", "does", "did", "have", "has", "had", "not", "no", "but", "also", "just", "only", "very", "really", "like", "okay", "ok",
        "well", "uh", "um", "er", "right", "know", "mean", "let", "one", "ones", "some", "any", "all", "up", "out", "into", "than", "more", "other", "such", "how", "about", "because", "too", "even",
        "go", "goes", "going", "gets", "get", "got", "make", "makes", "thing", "things", "way", "yet", "still", "again", "back", "own", "whether", "whoever", "whatever", "once", "each", "every", "per", "much", "many",
    ]);

    // Forms of this table talk that the stems of a script do not know.
    private static readonly FrozenDictionary<string, string> Irregular = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["children"] = "child", ["people"] = "person", ["pennies"] = "penny", ["paid"] = "pay", ["led"] = "lead", ["sown"] = "sow", ["tied"] = "tie", ["ties"] = "tie", ["tying"] = "tie", ["dying"] = "die",
        ["neighbouring"] = "neighbour", ["neighboring"] = "neighbour", ["beaten"] = "beat", ["caught"] = "catch", ["everyone"] = "everybody", ["everyone's"] = "everybody", ["left"] = "left",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    // Each row is one idea in the mouth of a teacher; the first word stands for it.
    private static readonly FrozenDictionary<string, string> Ideas = new string[][]
    {
        ["point", "score", "worth", "value", "count"],
        ["tie", "draw", "equal", "level", "even", "deadlock", "tiebreak", "tiebreaker", "breaker"],
        ["end", "finish", "over", "stop", "close", "trigger"],
        ["supply", "pile", "pool", "reserve", "stock", "bank", "store"],
        ["start", "begin", "starting", "beginning"],
        ["player", "person", "people", "folk"],
        ["take", "grab", "receive", "pick", "gain", "collect", "carry"],
        ["place", "put", "lay", "set", "position"],
        ["win", "winner", "victory", "winning"],
        ["alone", "lone", "single", "itself", "solo", "solitary", "myself", "yourself"],
        ["neighbour", "neighbor", "adjacent", "beside", "touch", "next", "alongside"],
        ["most", "largest", "biggest", "longest", "greatest", "highest", "maximum", "max", "limit"],
        ["least", "smallest", "fewest", "lowest", "minimum", "min"],
        ["cost", "pay", "spend", "lose", "price", "minus", "penalty"],
        ["save", "spare", "rescue", "protect"],
        ["swap", "exchange", "switch", "trade"],
        ["board", "mat"],
        ["kind", "sort", "type"],
        ["front", "before"],
        ["group", "clump", "cluster", "bunch", "patch", "connected"],
        ["full", "fill", "filled", "complete", "top-up"],
        ["stand", "sit", "rest", "belong", "fit"],
        ["smash", "shatter", "smashed"],
        ["last", "final"],
        ["remain", "leftover", "remaining", "remainder"],
        ["cancel", "void", "knock"],
        ["claim", "accept"],
        ["lawful", "legal", "allowed", "permitted", "properly", "correctly", "lawfully"],
        ["turn", "go"],
        ["drawn", "drawing", "picture", "pattern", "printed", "shown"],
        ["deck", "stack"],
        ["opponent", "rival", "enemy"],
        ["pass", "skip"],
        ["column", "file"],
        ["diagonal", "diagonally", "slanting", "slanted"],
        ["high", "tall", "height", "up"],
        ["throw", "roll", "cast"],
        ["crack", "break", "crumble"],
        ["share", "split"],
        ["row", "line"],
        ["whole", "intact", "unbroken"],
        ["floor", "bottom", "ground"],
        ["different", "distinct", "other"],
        ["empty", "free", "open", "unfilled"],
        ["clockwise", "round"],
        ["discard", "remove"],
        ["secret", "hidden", "secretly", "facedown"],
        ["capture", "catch"],
        ["opposite", "across", "facing"],
    }.SelectMany(row => row.Select(w => (Word: Cut(w), Idea: Cut(row[0])))).DistinctBy(p => p.Word).ToFrozenDictionary(p => p.Word, p => p.Idea, StringComparer.Ordinal);

    /// <summary>True for a word that says nothing of which rule is meant.</summary>
    /// <param name="word">In small letters.</param>
    public static bool IsSmall(string word) => Small.Contains(word);

    /// <summary>What a word has in common with its kin.</summary>
    /// <param name="word">In small letters, without punctuation.</param>
    public static string Of(string word)
    {
        string cut = Cut(word);
        return Ideas.GetValueOrDefault(cut, cut);
    }

    private static string Cut(string word) => Irregular.TryGetValue(word, out string? regular) ? regular : WordStems.OfWord(word.TrimEnd('\''));
}
