using CsCheck;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Makes up outlines.</summary>
internal static class OutlineGen
{
    private static readonly Gen<string> Word = Gen.OneOf(
        "stone", "day's", "copper", "B2", "10:30", "no", "~", "a#b", "(v, w)", "é", "石", "3", "010", "x-y", "https://a.b/c", "is", "\"q\"");

    private static readonly Gen<string> FirstWord = Gen.OneOf("stone", "copper", "B2", "no", "~", "é", "石", "3", "010", "-3", "(v, w)", "?x");

    private static readonly Gen<string> Words = Gen.Select(FirstWord, Word.Array[0, 4]).Select((first, rest) => string.Join(' ', [first, .. rest]));

    private static readonly Gen<string> Quoted = Gen.Select(Gen.OneOf("", "a: b", "x # y", "!", "say \\\"x\\\"", "\\\\", "\\u00e9", "{", "- z"), Gen.Bool)
        .Select((words, two) => two || words.Contains('\\', StringComparison.Ordinal) ? $"\"{words}\"" : $"'{words}'");

    private static readonly Gen<string> BraceWords = Gen.OneOf("stone", "day's work", "B2", "no", "10:30", "\"a: b, c\"", "'x # y'", "copper jug", "-3");

    // Keys are numbered so that none stands twice.
    private static readonly Gen<string> KeyWords = Gen.OneOf("stone", "place copper jug on B", "é", "clash (ware v, ware w) ", "day's work ");

    private static readonly Gen<string> Behind = Gen.OneOf("", "", "", "  # said: {", " ", "\n", "\n\n# between\n");

    /// <summary>Outlines that are YAML as well, with texts of every style, lists and names inside each other, comments and blank lines.</summary>
    public static Gen<string> Plain { get; } = Names(0, 3);

    private static Gen<string> Names(int column, int depth) =>
        Gen.OneOf(Gen.Select(KeyWords, Value(column, depth), Behind), Gen.Select(Gen.Const("says "), Sentence(column), Gen.Const(""))).Array[1, 4].Select(entries =>
            string.Concat(entries.Select((e, i) => $"{new string(' ', column)}{KeyOf(e.Item1, i)}:{e.Item2}{LineEnd(e.Item2, e.Item3)}")));

    // Only one sentence a level is called 'says'; the others are names like any other.
    private static string KeyOf(string words, int i) => words == "says " && i == 0 ? "says" : $"{words}{i}";

    private static Gen<string> Sentence(int column) => Gen.OneOf<string>(
        Words.Select(w => $" {w}"),
        Gen.Select(Words, FirstWord).Select((a, b) => $" {a}\n{new string(' ', column + 3)}{b}"),
        Quoted.Select(q => $" {q}"));

    private static Gen<string> Items(int column, int depth) =>
        Gen.Select(Item(column, depth), Behind).Array[1, 4].Select(items =>
            string.Concat(items.Select(i => $"{new string(' ', column)}-{i.Item1}{LineEnd(i.Item1, i.Item2)}")));

    // What already ends in a line end gets nothing behind it.
    private static string LineEnd(string value, string behind) => value.EndsWith('\n') ? "" : $"{(value.Length == 0 && behind.StartsWith(' ') ? "" : behind)}\n";

    private static Gen<string> Value(int column, int depth) => Gen.OneOf<string>(
        depth == 0 ? [.. Texts(column)] : [.. Texts(column), Below(Names(column + 2, depth - 1)), Below(Items(column + 2, depth - 1)), Below(Items(column, depth - 1))]);

    private static Gen<string> Item(int column, int depth) => Gen.OneOf<string>(
        depth == 0 ? [.. Texts(column)] : [.. Texts(column), Below(Names(column + 2, depth - 1)), OnDashLine(Names(column + 2, depth - 1), column), OnDashLine(Items(column + 2, depth - 1), column)]);

    private static Gen<string> Below(Gen<string> block) => block.Select(b => $"\n{b}");

    private static Gen<string> OnDashLine(Gen<string> block, int column) => block.Select(b => $" {b[(column + 2)..]}");

    private static IGen<string>[] Texts(int column) =>
    [
        Gen.Const(""),
        Words.Select(w => $" {w}"),
        Gen.Select(Words, FirstWord).Select((a, b) => $" {a}\n{new string(' ', column + 3)}{b}"),
        Gen.Select(Words, FirstWord).Select((a, b) => $"\n{new string(' ', column + 1)}{a}\n\n{new string(' ', column + 1)}{b}"),
        Quoted.Select(q => $" {q}"),
        Braces(2).Select(b => $" {b}"),
        Brackets(2).Select(b => $" {b}"),
        Gen.OneOf("a . #", "2 . .", "/ a b").Array[1, 3].Select(rows => $" |\n{string.Concat(rows.Select(r => $"{new string(' ', column + 2)}{r}\n"))}"),
    ];

    private static Gen<string> Braces(int depth) =>
        Gen.Select(Gen.OneOf("stone", "count ", "é"), Inner(depth)).Array[0, 3].Select(pieces =>
            $"{{{string.Join(", ", pieces.Select((p, i) => $"{p.Item1}{i}: {p.Item2}"))}}}");

    private static Gen<string> Brackets(int depth) => Inner(depth).Array[0, 3].Select(items => $"[{string.Join(", ", items)}]");

    private static Gen<string> Inner(int depth) => depth == 0 ? BraceWords : Gen.OneOf(BraceWords, BraceWords, Braces(depth - 1), Brackets(depth - 1));
}
