using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Testing;

namespace Rostrum.Sheets.Tests.ReadBack;

/// <summary>What a clause means as its author wrote it: words for people do not count, and of readings only what is followed.</summary>
public sealed class WrittenMeaningTests
{
    private static readonly Sheet KilnNight = ShippedGames.Open("kiln-night").Sheet().Sheet!;

    [Theory]
    [InlineData("Scoring", "plates", "idiom = best line; of = whole plate; along = tiers; each = 3")]
    [InlineData("Laws", "nothing on a lamp", "binds = place; forbids = below spot shows a lamp")]
    [InlineData("End of the game", "three bays full", "if = count(bays of my chamber where it is full) is at least 3; then = every other player once more")]
    [InlineData("Words", "beside (shelf s)", "means = (left of s, right of s)")]
    [InlineData("Words", "good for jugs (shelf s)", "below s is nothing or below s shows a plate or below s shows a jug")]
    [InlineData("Course", "turn", "(day's work, fill)")]
    public void Meaning_is_one_line_without_sentence_and_page(string section, string name, string meaning) => Assert.Equal(meaning, Of(KilnNight, section, name));

    [Fact]
    public void Open_readings_are_all_told_and_a_decided_one_alone()
    {
        const string Settled = "    points: count(my heap)\n";
        const string Open = "    readings:\n      plain:\n        says: Each scores.\n        points: count(my heap)\n      double:\n        points: 2 times count(my heap)\n";

        Assert.Equal("points = count(my heap)", Pebbles(Settled));
        Assert.Equal("readings = (plain = (points = count(my heap)), double = (points = 2 times count(my heap)))", Pebbles(Open));
        Assert.Equal(Pebbles(Settled), Pebbles(Open + "    follow: plain\n    why: So we read it.\n"));
    }

    private static string Pebbles(string score)
    {
        string sheet = "rule sheet: 1\ngame: Pebbles\npieces: {pebble: {count: 9}}\nplaces: {heap: {heap of: pebble, of: each player}}\nscore:\n  pebbles:\n    says: Pebbles score.\n" + score;
        SheetReading reading = SheetReader.Read(Text.GameFolder.InMemory("pebbles", ("sheet.yaml", sheet)), ShippedGames.Idioms, []);
        Assert.True(reading.IsSound, string.Join('\n', reading.Problems));
        return Of(reading.Sheet!, "Scoring", "pebbles");
    }

    private static string Of(Sheet sheet, string section, string name) => WrittenMeaning.Of(sheet, SheetReadBack.Of(sheet).Single(c => c.Section == section && c.Name == name));
}
