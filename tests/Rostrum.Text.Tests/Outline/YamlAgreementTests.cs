using CsCheck;
using Rostrum.Testing;
using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Where an outline is also plain YAML, another reader sees the same: YamlDotNet, event by event, with line and column of each.</summary>
public sealed class YamlAgreementTests
{
    public static TheoryData<string> Samples => [.. TestFiles.In("tests/Rostrum.Text.Tests/Samples", "*.yaml"), .. TestFiles.In("games", "*.yaml")];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Sample_is_seen_alike_once_what_YAML_would_cut_is_quoted(string name)
    {
        Reading reading = Reading.Of(TestFiles.Read(name));
        string quoted = WithQuotes(reading);

        Reading again = Reading.Of(quoted);

        Assert.Equal(reading.Told, again.Told);
        Assert.Equal(YamlEvents.OfYaml(quoted), YamlEvents.OfTree(again.Tree));
    }

    [Fact]
    public void Made_up_outlines_are_seen_alike() =>
        OutlineGen.Plain.Hold(
            content =>
            {
                Reading reading = Reading.Of(content);

                Assert.Empty(reading.Problems);
                Assert.Equal(YamlEvents.OfYaml(content), YamlEvents.OfTree(reading.Tree));
            },
            cases: 3000);

    // YAML ends a text in braces at each comma and any text at ': ' or ' #'; such a text on one line is put in quotes.
    private static string WithQuotes(Reading reading) =>
        TextEdit.Apply(reading.Tree.Span.Source.Content, reading.Tree.Pairs().Select(p => p.Child).OfType<OutlineScalar>()
            .Where(s => s.Style is OutlineStyle.Plain or OutlineStyle.Prose && s.Span.Text == s.Text && s.Text.AsSpan().ContainsAny(",:#") && !s.Text.Contains('\n', StringComparison.Ordinal))
            .Select(s => new TextEdit(s.Span, OutlineQuotes.Quote(s.Text))));
}
