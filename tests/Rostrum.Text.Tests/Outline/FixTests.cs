using CsCheck;
using Rostrum.Testing;

namespace Rostrum.Text.Tests.Outline;

/// <summary>A fix does what it says: a safe one takes its problem away and brings none; no fix touches anything but its own stretch.</summary>
public sealed class FixTests
{
    // What slips in when somebody types.
    private static readonly Gen<string> Slip = Gen.OneOf("\t", "*", "&", "!", "%", "{", "}", "[", "]", "\"", "'", ":", ",", "#", "\\q", "- ", " ", "\n", "\u200B", "|", "");

    private static readonly Gen<string> Slipped = Gen.Select(OutlineGen.Plain, Gen.Int[0, 10000], Gen.Int[0, 2], Slip).Select((content, place, gone, slip) =>
    {
        int at = place % (content.Length + 1);
        return string.Concat(content.AsSpan(0, at), slip, content.AsSpan(Math.Min(content.Length, at + gone)));
    });

    public static TheoryData<string> WrongOutlines => [.. DiagnosticPage.ExamplesIn("outline").Where(e => !e.IsRight).Select(e => e.Content)];

    [Theory]
    [MemberData(nameof(WrongOutlines))]
    public void Safe_fix_of_a_page_takes_its_problem_away_and_brings_none(string content) =>
        AssertSafeFixes(content);

    [Fact]
    public void Safe_fix_of_a_slip_takes_its_problem_away_and_brings_none() =>
        Slipped.Hold(AssertSafeFixes, cases: 4000);

    // A colon behind an empty text makes no key of it.
    [Theory]
    [InlineData("a:\n  b: \"x\n\"\"\n  c: 1\n")]
    [InlineData("a: 1\n\"\"\n  c: 1\n")]
    [InlineData("a: 1\n''\n  c: 1\n")]
    public void Safe_fix_of_a_known_slip_takes_its_problem_away_and_brings_none(string content) =>
        AssertSafeFixes(content);

    [Fact]
    public void All_safe_fixes_together_leave_a_text_without_a_safe_fix() =>
        Slipped.Hold(
            content =>
            {
                for (int round = 0; round < 20; round++)
                {
                    content = Reading.Of(content).Problems.FirstOrDefault(p => p.Fix is { Grade: FixGrade.Safe }) is { } problem
                        ? TextEdit.Apply(content, problem.Fix!.Edits)
                        : content;
                }

                Assert.DoesNotContain(Reading.Of(content).Problems, p => p.Fix is { Grade: FixGrade.Safe });
            },
            cases: 500);

    private static void AssertSafeFixes(string content)
    {
        Reading before = Reading.Of(content);
        foreach (Diagnostic problem in before.Problems.Where(p => p.Fix is { Grade: FixGrade.Safe }))
        {
            string mended = TextEdit.Apply(content, problem.Fix!.Edits);
            var others = before.Problems.Where(p => !ReferenceEquals(p, problem)).CountBy(p => p.Id).ToDictionary();

            // Other problems may go too: they were echoes of the slip.
            string[] added = [.. Reading.Of(mended).Ids.CountBy(i => i).Where(n => n.Value > others.GetValueOrDefault(n.Key)).Select(n => n.Key)];

            Assert.Equal((problem.Id, mended, ""), (problem.Id, mended, string.Join(' ', added)));
        }
    }
}
