using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests;

/// <summary>Near spellings, sentences, quotes and the bag of problems.</summary>
public sealed class SmallToolsTests
{
    [Theory]
    [InlineData("blak", "black")]
    [InlineData("lbue", "blue")]
    [InlineData("BLACK", "black")]
    [InlineData("commision", "commission")]
    [InlineData("commmision", "commission")]
    [InlineData("red", "rod")]
    [InlineData("b", null)]
    [InlineData("yellow", null)]
    [InlineData("rxxd", null)]
    [InlineData("", null)]
    public void Nearest_spelling_is_found_up_to_the_cut_off(string written, string? meant) =>
        Assert.Equal(meant, NearSpelling.Find(written, ["black", "blue", "rod", "road", "commission"]));

    [Fact]
    public void Equally_near_spellings_give_the_first_and_very_long_words_none()
    {
        Assert.Equal("bat", NearSpelling.Find("bxt", ["bat", "bet"]));
        Assert.Null(NearSpelling.Find(new string('a', 100_000), [new string('a', 99_999)]));
    }

    [Theory]
    [InlineData("", "", "")]
    [InlineData("a", "a", "a")]
    [InlineData("a b", "a and b", "a or b")]
    [InlineData("a b c", "a, b and c", "a, b or c")]
    public void Lists_are_joined_as_English_does(string parts, string and, string or)
    {
        string[] words = parts.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal((and, or), (Prose.And(words), Prose.Or(words)));
    }

    [Theory]
    [InlineData(0, "0 pieces", "no")]
    [InlineData(1, "1 piece", "one")]
    [InlineData(-1, "-1 piece", "-1")]
    [InlineData(12, "12 pieces", "twelve")]
    [InlineData(13, "13 pieces", "13")]
    public void Numbers_are_counted_and_said(long number, string counted, string said) =>
        Assert.Equal((counted, said), (Prose.Count(number, "piece", "pieces"), Prose.Word(number)));

    [Theory]
    [InlineData("Three", 3)]
    [InlineData("twelve", 12)]
    [InlineData("no", null)]
    [InlineData("thirteen", null)]
    public void Number_words_up_to_twelve_are_read(string word, int? number) => Assert.Equal(number, Prose.NumberOf(word));

    [Fact]
    public void Words_are_clipped_begun_large_and_given_their_article()
    {
        Assert.Equal("one two", Prose.Clip("one\ntwo"));
        Assert.Equal("on…", Prose.Clip("one two", 3));
        Assert.Equal(("an island", "a stone", "a "), (Prose.A("island"), Prose.A("stone"), Prose.A("")));
        Assert.Equal(("Stone", ""), (Prose.Sentence("stone"), Prose.Sentence("")));
    }

    [Theory]
    [InlineData("a \"b\" \\ c")]
    [InlineData("one\ntwo")]
    [InlineData("")]
    [InlineData("- x # y: {z}")]
    public void Quoted_words_are_read_back(string words) =>
        Assert.Equal($"{{a: ‹{words}›}}", Tests.Outline.Reading.Of($"a: {OutlineQuotes.Quote(words)}").Told);

    [Fact]
    public void Bag_keeps_no_echo_and_orders_by_file_and_place()
    {
        (SourceText a, SourceText b) = (new("a.yaml", "one two"), new("b.yaml", "one two"));
        var bag = new DiagnosticBag();

        bag.AddRange([At(b, 0, "ROS0002"), At(a, 4, "ROS0002"), At(a, 4, "ROS0001"), At(a, 4, "ROS0002")]);

        Assert.Equal(["ROS0001 a.yaml(1,5)", "ROS0002 a.yaml(1,5)", "ROS0002 b.yaml(1,1)"], bag.InOrder().Select(p => $"{p.Id} {p.At}"));
        Assert.False(bag.HasErrors);
    }

    [Fact]
    public void Bag_keeps_a_thousand_and_counts_the_rest()
    {
        var text = new SourceText("a.yaml", new string('x', 2000));
        var bag = new DiagnosticBag();

        bag.AddRange(Enumerable.Range(0, 1500).Select(i => At(text, i, "ROS0001")));
        bag.Add(At(text, 1, "ROS0009") with { Severity = Severity.Error });

        Assert.Equal((DiagnosticBag.Most, 501, true), (bag.Count, bag.LeftOut, bag.HasErrors));
        Assert.Equal([501], bag.InOrder().Select(p => p.Further).Where(f => f != 0));
    }

    private static Diagnostic At(SourceText text, int start, string id) => new(id, Severity.Warning, text.Span(start, 1), "Something.", "Do it.");
}
