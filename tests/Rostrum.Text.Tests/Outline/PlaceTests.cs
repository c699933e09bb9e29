using CsCheck;
using Rostrum.Testing;
using Rostrum.Text.Outline;

namespace Rostrum.Text.Tests.Outline;

/// <summary>Every node knows exactly where it was written.</summary>
public sealed class PlaceTests
{
    private const string Sheet = "game: Nine Stones\npieces:\n  stone: {count: 9, colours: [black,\n    white]}\n  \"old stick\": 'two'  # c\nlay:\n  - é: a,\n      b\n  -\nsays: One: two\n  three\ndrawn: |\n  2 .\n  1 #\n";

    public static TheoryData<string> Expected =>
    [
        "1,1-14,6 {}", "1,1-1,5 game", "1,7-1,18 Nine Stones", "2,1-2,7 pieces", "3,3-5,21 {}", "3,3-3,8 stone", "3,10-4,12 {}", "3,11-3,16 count", "3,18-3,19 9",
        "3,21-3,28 colours", "3,30-4,11 []", "3,31-3,36 black", "4,5-4,10 white", "5,3-5,14 old stick", "5,16-5,21 two", "6,1-6,4 lay", "7,3-9,4 []", "7,5-8,8 {}",
        "7,5-7,6 é", "7,8-8,8 a,\n      b", "9,4-9,4 ~", "10,1-10,5 says", "10,7-11,8 One: two\n  three", "12,1-12,6 drawn", "12,8-14,6 2 .\n1 #",
    ];

    [Fact]
    public void Every_node_has_its_line_and_column()
    {
        OutlineMapping tree = Reading.Of(Sheet).Tree;

        string[] told = [.. tree.Pairs().Select(p => p.Child).Prepend(tree).Select(n => $"{n.Span.StartPosition}-{n.Span.EndPosition} {Name(n)}")];

        Assert.Equal(Expected.Select(r => r.Data), told);
    }

    [Fact]
    public void Children_lie_inside_their_parents_and_in_order() =>
        OutlineGen.Plain.Hold(
            content =>
            {
                (OutlineNode Parent, OutlineNode Child)[] pairs = [.. Reading.Of(content).Tree.Pairs()];

                Assert.All(pairs, p => Assert.True(p.Parent.Span.Contains(p.Child.Span), $"{p.Child.Span} is not in {p.Parent.Span}"));
                Assert.All(pairs.GroupBy(p => p.Parent), g => Assert.Equal(g.Select(p => p.Child.Span.Start).Order(), g.Select(p => p.Child.Span.Start)));
            },
            cases: 1000);

    [Fact]
    public void Every_character_of_a_text_has_its_place() =>
        OutlineGen.Plain.Hold(
            content => Assert.All(
                Reading.Of(content).Tree.Pairs().Select(p => p.Child).OfType<OutlineScalar>().Where(s => !s.Span.Text.Contains('\\', StringComparison.Ordinal)),
                s => Assert.Equal(s.Text.Where(c => !char.IsWhiteSpace(c)), s.Text.SelectMany((c, i) => char.IsWhiteSpace(c) ? "" : s.SpanOf(i, 1).Text).Where(c => !char.IsWhiteSpace(c)))),
            cases: 1000);

    private static string Name(OutlineNode node) => node switch
    {
        OutlineMapping => "{}",
        OutlineSequence => "[]",
        OutlineScalar s => s.Text,
        _ => "~",
    };
}
