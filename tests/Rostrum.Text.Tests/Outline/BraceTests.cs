namespace Rostrum.Text.Tests.Outline;

/// <summary>Braces and square brackets: what reads, and as what.</summary>
public sealed class BraceTests
{
    public static TheoryData<string, string, string> Cases => new()
    {
        { "nothing in them", "a: {}\nb: []", "{a: {}, b: []}" },
        { "pieces", "a: {b: 1, c d: x y}", "{a: {b: ‹1›, c d: ‹x y›}}" },
        { "items", "a: [b, c d, 3]", "{a: [‹b›, ‹c d›, ‹3›]}" },
        { "in each other", "a: {b: [x, {c: 1}], d: {e: []}}", "{a: {b: [‹x›, {c: ‹1›}], d: {e: []}}}" },
        { "a piece without a colon goes on", "a: {needs: x, y or z, cite: 5}", "{a: {needs: ‹x, y or z›, cite: ‹5›}}" },
        { "a comma in round brackets", "a: {needs: any(n in b, c: d), e: clash(v, w)}", "{a: {needs: ‹any(n in b, c: d)›, e: ‹clash(v, w)›}}" },
        { "a round bracket that is never closed", "a: {needs: count(x, cite: 5}", "{a: {needs: ‹count(x›, cite: ‹5›}}" },
        { "a comma in quotes", "a: {b: say \"x, c: y\" twice, d: 1}", "{a: {b: ‹say \"x, c: y\" twice›, d: ‹1›}}" },
        { "quoted pieces", "a: {\"!\": cracked, b: 'x, y: z', 'c': \"\"}", "{a: {!: ‹cracked›, b: ‹x, y: z›, c: ‹›}}" },
        { "square brackets inside words", "a: {b: j [l] / [x, y] b, c: 1}", "{a: {b: ‹j [l] / [x, y] b›, c: ‹1›}}" },
        { "items with round brackets", "a: [f(x, y), (g, h)]", "{a: [‹f(x, y)›, ‹(g, h)›]}" },
        { "an item with a colon", "a: [if x: y, z]", "{a: [{if x: ‹y›}, ‹z›]}" },
        { "a comma at the end", "a: {b: 1,}\nc: [x, ]", "{a: {b: ‹1›}, c: [‹x›]}" },
        { "nothing behind a colon", "a: {b: , c:, d:}", "{a: {b: ~, c: ~, d: ~}}" },
        { "several lines", "a: {b: 1,\n  c: x\n    y,\n  d: [p,\n    q]}\ne: 1", "{a: {b: ‹1›, c: ‹x\n    y›, d: [‹p›, ‹q›]}, e: ‹1›}" },
        { "a closing sign at the margin", "a: {\n  b: 1\n}\nc: [\n  x\n]\n", "{a: {b: ‹1›}, c: [‹x›]}" },
        { "comments between lines", "a: {b: 1,  # one\n  # two\n  c: 2  # three\n  }\nd: 1", "{a: {b: ‹1›, c: ‹2›}, d: ‹1›}" },
        { "a comment behind them", "a: {b: 1} # c\nd: [x] # y", "{a: {b: ‹1›}, d: [‹x›]}" },
        { "in a list", "a:\n  - {b: 1}\n  - [x]", "{a: [{b: ‹1›}, [‹x›]]}" },
        { "a whole file in braces", "{a: 1,\n b: {c: 2}}\n", "{a: ‹1›, b: {c: ‹2›}}" },
        { "a wish with a reason", "a: {is: 4, because: D1 sees ash and copper}", "{a: {is: ‹4›, because: ‹D1 sees ash and copper›}}" },
        { "a known key begins a piece whatever stands before it", "a: {phrase: put (x), do: move x, cite: 5}", "{a: {phrase: ‹put (x)›, do: ‹move x›, cite: ‹5›}}" },
        { "a time", "a: {b: 10:30, c: 1}", "{a: {b: ‹10:30›, c: ‹1›}}" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Text_in_braces_reads_as_its_tree(string name, string content, string told)
    {
        Reading reading = Reading.Of(content);

        Assert.Equal((name, told), (name, reading.Told));
        Assert.Empty(reading.Problems);
    }
}
