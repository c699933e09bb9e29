namespace Rostrum.Text.Tests.Outline;

/// <summary>Levels by indentation: what reads, and as what.</summary>
public sealed class BlockTests
{
    public static TheoryData<string, string, string> Cases => new()
    {
        { "an empty text", "", "{}" },
        { "only comments", "# one\n  # two\n", "{}" },
        { "a byte order sign", "\uFEFFgame: Nine Stones\n", "{game: ‹Nine Stones›}" },
        { "windows line ends", "a: 1\r\nb:\r\n  c: 2\r\n", "{a: ‹1›, b: {c: ‹2›}}" },
        { "a lone line of dashes at the beginning", "---\na: 1\n", "{a: ‹1›}" },
        { "an end sign with nothing behind it", "a: 1\n...\n# over\n", "{a: ‹1›}" },
        { "names in names", "a:\n  b:\n    c: 1\n  d: 2\ne: 3", "{a: {b: {c: ‹1›}, d: ‹2›}, e: ‹3›}" },
        { "nothing behind a name", "a:\nb: 1", "{a: ~, b: ‹1›}" },
        { "nothing behind a dash", "a:\n  -\n  - x", "{a: [~, ‹x›]}" },
        { "a list below its name", "a:\n  - x\n  - y\n", "{a: [‹x›, ‹y›]}" },
        { "a list at the column of its name", "a:\n- x\n- y\nb: 1", "{a: [‹x›, ‹y›], b: ‹1›}" },
        { "names in a list item", "a:\n  - b: 1\n    c: 2\n  - d", "{a: [{b: ‹1›, c: ‹2›}, ‹d›]}" },
        { "a list in a list item", "a:\n  - b:\n      - x\n    c:\n      - y", "{a: [{b: [‹x›], c: [‹y›]}]}" },
        { "a dash behind a dash", "a:\n  - - x\n    - y\n  - z", "{a: [[‹x›, ‹y›], ‹z›]}" },
        { "an item on the line below its dash", "a:\n  -\n    b: 1\n    c: 2", "{a: [{b: ‹1›, c: ‹2›}]}" },
        { "a value on the line below its name", "a:\n  x and\n  y\nb: 1", "{a: ‹x and\n  y›, b: ‹1›}" },
        { "a value that goes on", "a: x\n  or y\n\n  or z\nb: 1", "{a: ‹x\n  or y\n\n  or z›, b: ‹1›}" },
        { "a comment inside a value that goes on", "a: x  # first\n  # second\n  or y  # third\nb: 1", "{a: ‹x\nor y›, b: ‹1›}" },
        { "comments everywhere", "# x\na: 1  # y\n# z\nb:  # w\n  c: 2\n", "{a: ‹1›, b: {c: ‹2›}}" },
        { "a hash inside a word", "a: b#c", "{a: ‹b#c›}" },
        { "brackets and commas in a name", "clash (ware v, ware w): v is w\nplace copper jug on B2: x", "{clash (ware v, ware w): ‹v is w›, place copper jug on B2: ‹x›}" },
        { "a colon inside the brackets of a name", "a (b: c): d", "{a (b: c): ‹d›}" },
        { "a bracket that is never closed", "a (b: c", "{a (b: ‹c›}" },
        { "quoted names", "\"!\": cracked\n'a: b': c\n\"x\" : y", "{!: ‹cracked›, a: b: ‹c›, x: ‹y›}" },
        { "a long head that ends in a comma", "do:\n  - for each d in dice,\n      lowest first:\n      - heat d", "{do: [{for each d in dice,\n      lowest first: [‹heat d›]}]}" },
        { "a long head that ends in and", "if a is b and\n  c is d: x", "{if a is b and\n  c is d: ‹x›}" },
        { "an item that goes on behind a comma", "do:\n  - move a,\n    b to c\n  - x", "{do: [‹move a,\n    b to c›, ‹x›]}" },
        { "quoted texts", "a: 'it''s'\nb: \"say \\\"x\\\": y # z\"", "{a: ‹it's›, b: ‹say \"x\": y # z›}" },
        { "a quoted text on two lines", "a: \"one\n  two\"\nb: 1", "{a: ‹one two›, b: ‹1›}" },
        { "quotes inside words", "a: he says \"b: c\" aloud", "{a: ‹he says \"b: c\" aloud›}" },
        { "an apostrophe", "a: day's work, players' choice", "{a: ‹day's work, players' choice›}" },
        { "values that other readers would change", "a: no\nb: 010\nc: 1.10\nd: ~\ne: -3", "{a: ‹no›, b: ‹010›, c: ‹1.10›, d: ‹~›, e: ‹-3›}" },
        { "a text with a colon and no blank", "a: 10:30", "{a: ‹10:30›}" },
        { "a web address", "a: https://example.org/x", "{a: ‹https://example.org/x›}" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Text_reads_as_its_tree(string name, string content, string told)
    {
        Reading reading = Reading.Of(content);

        Assert.Equal((name, told), (name, reading.Told));
        Assert.Empty(reading.Problems);
    }
}
