using System.Text;
using CsCheck;
using Rostrum.Rulings.Positions;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>A position may come from anyone: whatever stands in it, reading ends with an answer or with messages.</summary>
public sealed class HostileFileTests
{
    private static readonly string Example = TestFiles.Read("games/kiln-night/positions/E1.yaml");

    [Fact]
    public void Any_changed_character_gives_a_position_or_messages_whose_places_lie_in_the_file() =>
        Gen.Select(Gen.Int[0, Example.Length - 1], Gen.OneOf(Gen.Char[' ', '~'], Gen.Char.AlphaNumeric, Gen.Char)).Hold((at, sign) =>
        {
            string text = new StringBuilder(Example) { [at] = sign }.ToString();
            Read read = Read.Of(text);

            Assert.All(read.Problems, p => Assert.InRange(p.At.End, p.At.Start, text.Length));
            Assert.True(read.File.Position is not null || read.Problems.Length > 0);
        });

    [Fact]
    public void A_huge_number_of_things_is_refused_without_being_laid_out()
    {
        string line = string.Join(", ", Enumerable.Repeat("99999 sticks", 1000));

        Read read = Read.Of($"seat 1:\n  sticks: [{line}]\n");

        Assert.Equal(999, read.Problems.Count(p => p.Id == "ROS0146"));
        Assert.Null(read.File.Position);
    }

    [Fact]
    public void A_message_about_a_cell_stays_inside_the_cell() =>
        Gen.String[Gen.Char["abjlpix!?+.-0123456789"], 1, 8].Hold(cell =>
        {
            string text = $"seat 1:\n  chamber: |\n    4 {cell} . . . .\n    3 . . . . .\n    2 . . . . .\n    1 . . . . .\n    / A B C D E\n";
            int start = text.IndexOf(cell + " . .", StringComparison.Ordinal);

            Assert.All(Read.Of(text).Problems.Where(p => p.Severity == Severity.Error), p => Assert.InRange(p.At.Start, start, start + cell.Length));
        });
}
