using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Cards from a table, from the sheet, and both together.</summary>
public sealed class CardTests
{
    private const string Orders = "cards: {order: {file: orders.csv, columns: {pay: number}}}\n";

    [Fact]
    public void A_table_gives_names_cells_and_counts()
    {
        Loaded loaded = Loaded.With("sources: {card: Cards}\n" + Orders, [("orders.csv", "name;pay;count;cite;says\nFirst order;3;2;card;Pays three.\nSecond order;;;card;\n")]);
        CardTable table = loaded.Sheet.CardTables[0];

        Assert.Empty(loaded.Told);
        Assert.Equal([("First order", 2), ("Second order", 1)], table.Rows.Select(r => (r.Card.Name, r.Count)));
        Assert.IsType<Term.Nothing>(table.Rows[1].Cells[0]);
        Assert.Equal(("Pays three.", "card"), (table.Rows[0].Says, table.Rows[0].Cite!.Source.Name));
        Assert.Equal(3, loaded.Sheet.Kinds[0].Supply.Total);
    }

    [Fact]
    public void Rows_in_the_sheet_have_cells_values_and_counts()
    {
        CardTable table = Loaded.Of("cards:\n  order:\n    attributes: {suit: [red, blue]}\n    columns: {pay: number, lists: numbers}\n    rows:\n      Big: {suit: blue, pay: 3, lists: [1, 2], count: 4}\n      Small: {}\n").Sheet.CardTables[0];

        Assert.Equal([(4, 1), (1, -1)], table.Rows.Select(r => (r.Count, r.Values[0])));
        Assert.IsType<Term.Listed>(table.Rows[0].Cells[1]);
    }

    [Theory]
    [InlineData("count(ten of diamonds in my pile)")]
    [InlineData("count(pile of me where it is 2 of spades)")]
    [InlineData("count(jack of hearts in my pile) + count(spades in my pile) + count(aces in my pile)")]
    [InlineData("order of rank of jack of hearts")]
    public void Cards_of_a_pack_are_called_as_people_call_them(string formula)
    {
        Loaded loaded = Loaded.Of($"""
            cards:
              card:
                called: (rank) of (suit)s
                attributes:
                  rank: [ace, 2, 10, jack]
                  suit: [diamond, heart, spade]
            places:
              pile:
                heap of: card
                of: each player
            score:
              tried: {formula}
            """);

        Assert.Empty(loaded.Told);
        Assert.Equal("10 of diamonds", loaded.Sheet.CardTables[0].Rows[6].Card.Name);
    }

    [Theory]
    [InlineData("of (rank) (suit)")]
    [InlineData("(rank) in (suit)")]
    public void Other_words_of_the_grammar_stay_out_of_names(string called) => Assert.Contains(
        Loaded.Of($"cards:\n  card:\n    called: {called}\n    attributes:\n      rank: [ace, 2]\n      suit: [heart, spade]\n").Told, t => t.Contains("ROS0211", StringComparison.Ordinal));

    [Fact]
    public void Changes_replace_single_cells_of_the_table()
    {
        Sheet sheet = Loaded.Of("cards:\n  order:\n    file: orders.csv\n    columns: {pay: number}\n    changes:\n      Second order: {pay: 9}\n").Sheet;

        Assert.Equal([3L, 9L], sheet.CardTables[0].Rows.Select(r => ((Term.Number)r.Cells[0]).Amount));
    }

    [Fact]
    public void Cards_without_names_are_only_counted() =>
        Assert.Equal(12, Loaded.Of("cards: {order: {count: 12}}").Sheet.Kinds[0].Supply.Total);

    [Theory]
    [InlineData("cards: {order: {file: ../orders.csv}}", "ROS0815", "../orders.csv", "'../orders.csv' leads out of the game's folder.")]
    [InlineData("cards: {order: {file: /etc/orders.csv}}", "ROS0815", "/etc/orders.csv", "'/etc/orders.csv' leads out of the game's folder.")]
    [InlineData("cards: {order: {file: oders.csv}}", "ROS0815", "oders.csv", "There is no file 'oders.csv' in the game's folder.")]
    [InlineData("cards: {order: {file: untitled.csv}}", "ROS0827", "title", "The table of cards has no column 'name'.")]
    [InlineData("cards: {order: {file: orders.csv, columns: {pya: number}}}", "ROS0201", "pya", "'pya' is not a column of orders.csv.")]
    [InlineData("cards: {order: {file: orders.csv, columns: {pay: nmber}}}", "ROS0201", "nmber", "'nmber' is not something that a column can hold.")]
    [InlineData("cards: {order: {file: orders.csv, columns: {pay: number}, changes: {Thrid order: {pay: 2}}}}", "ROS0201", "Thrid order", "'Thrid order' is not an order.")]
    [InlineData("cards: {order: {file: orders.csv, columns: {pay: number}, changes: {First order: {pya: 2}}}}", "ROS0201", "pya", "'pya' is not a column of orders.")]
    [InlineData("cards: {order: {rows: {Big: {count: many}}}}", "ROS0813", "many", "'many' is not a number, and how many there are of this card is one.")]
    [InlineData("cards: {order: {attributes: {suit: [red]}, rows: {Big: {suit: rde}}}}", "ROS0201", "rde", "'rde' is not a value of suit.")]
    [InlineData("cards: {order: {names: [Big, Big]}}", "ROS0212", "Big", "'Big' is an order already, so it cannot be an order too.")]
    public void A_slip_about_cards_is_told_at_its_place(string text, string id, string words, string message)
    {
        Diagnostic problem = Loaded.Problem(text);

        Assert.Equal((id, words, message), (problem.Id, problem.At.Text, problem.Message));
    }

    [Fact]
    public void A_cell_that_is_wrong_is_underlined_in_the_table()
    {
        Diagnostic problem = Assert.Single(Loaded.With(Orders, [("orders.csv", "name,pay\nFirst order,3\nSecond order,lots of\n")]).Reading.Problems);

        Assert.Equal("orders.csv(3,14)", $"{problem.At}");
    }

    [Fact]
    public void A_table_or_a_sheet_of_more_than_4_MB_is_refused_unread()
    {
        string large = new('x', GameFolder.LargestFileBytes + 1);

        Assert.Equal(["ROS0815"], Loaded.With(Orders, [("orders.csv", large)]).Ids);
        Assert.Equal(["ROS0815"], Loaded.Of($"says: {large}").Ids);
    }
}
