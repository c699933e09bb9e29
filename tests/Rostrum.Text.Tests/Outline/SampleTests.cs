using Rostrum.Testing;

namespace Rostrum.Text.Tests.Outline;

public sealed class SampleTests
{
    public static TheoryData<string> Samples => ["kiln-night", "noughts-and-crosses", "six-pits", "plain-tricks", "position"];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Sample_reads_without_a_problem(string name)
    {
        Reading reading = Reading.Of(TestFiles.Read($"tests/Rostrum.Text.Tests/Samples/{name}.yaml"));

        Assert.Empty(reading.Problems.Select(p => $"{p.At}: {p.Message}"));
        Assert.NotEmpty(reading.Tree.Entries);
    }
}
