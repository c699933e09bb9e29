using Rostrum.Sheets.ReadBack;
using Rostrum.Sheets.Tests.Loading;

namespace Rostrum.Sheets.Tests.ReadBack;

public sealed class SaidNamesTests
{
    [Fact]
    public void Other_names_and_forbidden_ones_are_told_with_the_thing()
    {
        Loaded loaded = Loaded.Of("pieces:\n  ware: {called: [pot, piece of pottery], never: tile, count: 4}\n  stick: {count: 3}\nwords:\n  heavy (ware w): {called: full of sand, means: w is a ware}\n");

        Assert.Empty(loaded.Told);
        Assert.Equal(
            [("pieces", "ware", "pot; piece of pottery", "tile"), ("words", "heavy", "full of sand", "")],
            SaidNames.Of(loaded.Sheet).Select(n => (n.Section, n.Name, string.Join("; ", n.Called), string.Join("; ", n.Never))));
    }

    [Fact]
    public void The_pattern_of_the_names_of_cards_is_no_other_name() =>
        Assert.Empty(SaidNames.Of(Loaded.Of("cards: {card: {attributes: {suit: [red, blue], rank: [7, king]}, called: (rank) on (suit)}}").Sheet));
}
