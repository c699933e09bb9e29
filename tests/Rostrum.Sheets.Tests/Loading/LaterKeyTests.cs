using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Every key of the language is read, or answered with "understood but not used yet"; none is ever called unknown.</summary>
public sealed class LaterKeyTests
{
    /// <summary>A sheet for each key that is not used yet, with the key that is underlined.</summary>
    public static TheoryData<string, string> Later => new()
    {
        { "pieces: {ware: {how to say: wear}}", "how to say" },
        { "tables: {worth: {1: 1, how to say: price}}", "how to say" },
        { "actions: {lay: {do: nothing, readings: {a: {}, b: {}}}}", "readings" },
    };

    [Theory]
    [MemberData(nameof(Later))]
    public void A_key_that_is_not_used_yet_is_understood(string text, string key)
    {
        Diagnostic problem = Loaded.Problem(text);

        Assert.Equal(("ROS0405", key, Severity.Warning), (problem.Id, problem.At.Text, problem.Severity));
        Assert.EndsWith("is understood but not used yet.", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_key_that_comes_later_is_a_key_of_its_section() =>
        Assert.All(
            SheetDialect.LaterKeys.Where(s => s.Key.Length > 0),
            s => Assert.Empty(s.Value.Except(SheetDialect.EntryKeys[s.Key]).Except(SheetDialect.ClauseKeys)));

    [Fact]
    public void Cards_are_called_as_their_sheet_says()
    {
        Loaded loaded = Loaded.Of("cards: {card: {attributes: {suit: [red, blue], rank: [7, king]}, called: (rank) on (suit)}}");

        Assert.Empty(loaded.Told);
        Assert.Equal(["7 on red", "king on red", "7 on blue", "king on blue"], loaded.Sheet.CardTables[0].Rows.Select(r => r.Card.Name));
    }
}
