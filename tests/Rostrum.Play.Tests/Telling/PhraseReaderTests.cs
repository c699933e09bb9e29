using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Telling;

/// <summary>Words that say an option, and words that do not.</summary>
public sealed class PhraseReaderTests
{
    private const string Yard = """
        rule sheet: 1
        game: Moving Yard
        players: 2
        seats: [North, South]
        sources: {book: {title: Rulebook, printing: first, pages: 4}}
        pieces: {crate: {count of each colour: 2, attributes: {colour: [red, blue]}}}
        signs: {c: crate, r: red, b: blue}
        boards: {yard: {squares: 3 across 3 up, rows: row, holds: 1 crate}}
        set-up:
          - move a red crate from supply to A1
          - move a blue crate from supply to B1
          - move a blue crate from supply to C1
        turn:
          - one of: [carry, lift, rest]
        actions:
          carry:
            phrase: carry (what) to the (spot)
            choose: {what: a crate in yard, spot: a space in yard}
            do: move what to spot
          lift: {phrase: lift (spots), choose: {spots: some spaces of yard}, do: nothing}
          rest: {phrase: rest, do: nothing}
          sweep: {phrase: sweep the yard, do: nothing}
        laws:
          free spot: {says: A crate goes where nothing lies., cite: book 2, binds: carry, needs: spot is empty}
          not low: {says: Nothing is carried along the ground., cite: book 3, binds: carry, forbids: order of row of spot is 1}
        end:
          full: {says: A full yard ends it., cite: book 4, if: yard is full}
        """;

    [Theory]
    [InlineData("carry red crate to the A2")]
    [InlineData("Carry  the red crate to A2.")]
    [InlineData("carry red crate on A1 to the A2")]
    [InlineData("carry red crate on A1 to A2 of yard")]
    [InlineData("carry blue crate on B1 to the A2")]
    [InlineData("lift A1, B1 and C1")]
    [InlineData("lift C1 and A1 and B1")]
    [InlineData("lift A1")]
    [InlineData("rest")]
    public void Words_say_an_option(string words) => Assert.Null(Played(words).Refusal?.Why.Because);

    [Fact]
    public void Every_law_that_refuses_is_named_with_its_page()
    {
        Refusal why = Refused("carry red crate to B1");

        Assert.Equal("A crate goes where nothing lies. Nothing is carried along the ground.", why.Because);
        Assert.Equal(["free spot", "not low"], why.By.Select(b => b.Clause));
        Assert.Equal([2, 3], why.By.Select(b => b.Cite?.Page));
    }

    [Fact]
    public void Words_that_fit_several_are_told_which() =>
        Assert.StartsWith("'carry blue crate to B2' may be 'carry blue crate on B1 to the B2' or 'carry blue crate on C1 to the B2'; say which.", Refused("carry blue crate to B2").Because, StringComparison.Ordinal);

    [Theory]
    [InlineData("carry rde crate to A2", "carry", "'carry rde crate to A2' is not what may be chosen. Did you mean 'carry red crate to the A2'?")]
    [InlineData("sweep the yard", "turn", "'sweep' is not at hand here. Possible: ")]
    [InlineData("rset", "turn", "'rset' names nothing that can be done here. Did you mean 'rest'?")]
    public void Words_that_say_nothing_are_told_what_could_be_said(string words, string by, string because)
    {
        Refusal why = Refused(words);

        Assert.StartsWith(because, why.Because, StringComparison.Ordinal);
        Assert.Equal([by], why.By.Select(b => b.Clause));
        Assert.Equal(6, why.Because[why.Because.IndexOf("Possible: ", StringComparison.Ordinal)..].Split("', '").Length);
    }

    private static Sheet Sheet { get; } = Read();

    private static Sheet Read()
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("yard", [(SheetReader.FileName, Yard)]), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Select(p => p.Message));
        return reading.Sheet!;
    }

    private static TranscriptResult Played(string words) => Transcript.Play(GameTable.Of(Sheet), [$"North: {words}"]);

    private static Refusal Refused(string words) => Played(words).Refusal?.Why ?? throw new InvalidOperationException($"'{words}' is not refused.");
}
