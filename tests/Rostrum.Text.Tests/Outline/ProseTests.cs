using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Prose keys: the rest of the line and its deeper lines are only text.</summary>
public sealed class ProseTests
{
    public static TheoryData<string, string, string> Cases => new()
    {
        { "a colon, a hash, quotes and commas", "says: Note: a \"b\", 'c # d, e: f\ncite: 1", "{says: ‹Note: a \"b\", 'c # d, e: f›, cite: ‹1›}" },
        { "deeper lines", "says: One\n  two: three\n  # four\n\n  five\ncite: 1", "{says: ‹One\n  two: three\n  # four\n\n  five›, cite: ‹1›}" },
        { "quotes around all of it", "says: \"One, two: 3\"", "{says: ‹One, two: 3›}" },
        { "quotes around two parts", "says: \"One\" and \"two\"", "{says: ‹\"One\" and \"two\"›}" },
        { "a sign that opens lines", "says: |\n  One\n  two\ncite: 1", "{says: ‹One\n  two›, cite: ‹1›}" },
        { "a sign that folds lines", "says: >\n  One\n  two\ncite: 1", "{says: ‹One\n  two›, cite: ‹1›}" },
        { "on the line below", "says:\n  One: two\ncite: 1", "{says: ‹One: two›, cite: ‹1›}" },
        { "none", "says:\ncite: 1", "{says: ~, cite: ‹1›}" },
        { "signs at its beginning", "says: *Draw* one\nwhy: - none -\nnote: [sic]\ntitle: {one} two", "{says: ‹*Draw* one›, why: ‹- none -›, note: ‹[sic]›, title: ‹{one} two›}" },
        { "in a list item", "do:\n  - says: a: b\n      c\n    cite: 1", "{do: [{says: ‹a: b\n      c›, cite: ‹1›}]}" },
        { "in braces up to a known key", "a: {says: Draw one, then: place it, board up., cite: book 5}", "{a: {says: ‹Draw one›, then: ‹place it, board up.›, cite: ‹book 5›}}" },
        { "in braces with an unknown key", "a: {says: Draw one, note well: place it., cite: book 5}", "{a: {says: ‹Draw one, note well: place it.›, cite: ‹book 5›}}" },
        { "in braces with a hash and quotes", "a: {says: No # and 'no \"quote, cite: 5}", "{a: {says: ‹No # and 'no \"quote›, cite: ‹5›}}" },
        { "in braces with braces", "a: {says: The {x, cite: y} sign., cite: 5}", "{a: {says: ‹The {x, cite: y} sign.›, cite: ‹5›}}" },
        { "in square brackets", "a: [says: Draw one: two, [x] three]\nb: [says: \"x, y\"]", "{a: [{says: ‹Draw one: two, [x] three›}], b: [{says: ‹x, y›}]}" },
        { "in braces, quoted", "a: {says: \"One, cite: two\", cite: 5}", "{a: {says: ‹One, cite: two›, cite: ‹5›}}" },
        { "a source that is called note", "sources:\n  note: {title: Publisher's note, rank: 1}  # x\n", "{sources: {note: {title: ‹Publisher's note›, rank: ‹1›}}}" },
        { "a source that is called note, on lines", "sources:\n  note:\n    title: Publisher's: note\n    rank: 1\n", "{sources: {note: {title: ‹Publisher's: note›, rank: ‹1›}}}" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Prose_is_only_text(string name, string content, string told)
    {
        Reading reading = Reading.Of(content);

        Assert.Equal((name, told), (name, reading.Told));
        Assert.Empty(reading.Problems);
    }

    [Fact]
    public void Part_of_prose_with_quotes_around_it_has_its_true_place()
    {
        var says = (OutlineScalar)Reading.Of("says: \"One \\\" two\"").Tree.Entries[0].Value;

        Assert.Equal("two", says.SpanOf(says.Text.IndexOf("two", StringComparison.Ordinal), 3).Text);
        Assert.Equal("\"One \\\" two\"", says.Span.Text);
    }
}
