using CsCheck;
using Rostrum.Testing;

namespace Rostrum.Text.Tests;

/// <summary>Edits of a text by place.</summary>
public sealed class TextEditTests
{
    [Fact]
    public void Edits_leave_every_other_character_alone() =>
        Gen.Select(Gen.String[0, 60], Gen.Int[0, 20].Array[0, 12], Gen.OneOf("", "x", "é\n", "long words").Array[12]).Hold((content, steps, words) =>
        {
            var source = new SourceText("x", content);
            int[] cuts = [.. steps.Select((_, i) => Math.Min(content.Length, steps[..(i + 1)].Sum()))];
            TextEdit[] edits = [.. cuts.Zip(cuts.Skip(1)).Where((_, i) => i % 2 == 0).Select((c, i) => new TextEdit(source.Span(c.First, c.Second - c.First), words[i]))];
            int[] borders = [0, .. edits.SelectMany(e => new[] { e.At.Start, e.At.End }), content.Length];
            string[] kept = [.. borders.Chunk(2).Select(b => content[b[0]..b[1]])];

            string edited = TextEdit.Apply(content, edits.OrderByDescending(e => e.At.Start));

            Assert.Equal(string.Concat(kept.Select((k, i) => k + (i < edits.Length ? edits[i].NewText : ""))), edited);
        });

    [Fact]
    public void Insertions_at_one_spot_keep_their_order_and_stand_before_what_replaces_the_words_behind()
    {
        var source = new SourceText("x", "abc");

        string edited = TextEdit.Apply("abc", [new(source.Span(1, 1), "B"), new(source.Span(1, 0), "1"), new(source.Span(1, 0), "2")]);

        Assert.Equal("a12Bc", edited);
    }

    [Fact]
    public void Overlapping_edits_are_refused()
    {
        var source = new SourceText("x", "abcd");

        Assert.Throws<ArgumentException>(() => TextEdit.Apply("abcd", [new(source.Span(0, 2), "x"), new(source.Span(1, 2), "y")]));
    }

    [Fact]
    public void Hundred_thousand_edits_take_linear_time()
    {
        string content = new('a', 2_000_000);
        var source = new SourceText("x", content);
        var watch = System.Diagnostics.Stopwatch.StartNew();

        string edited = TextEdit.Apply(content, Enumerable.Range(0, 100_000).Select(i => new TextEdit(source.Span(i * 20, 1), "")));

        Assert.Equal(1_900_000, edited.Length);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 10);
    }
}
