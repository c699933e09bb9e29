using CsCheck;
using Rostrum.Testing;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Tallies;

/// <summary>Tallies add up, tell why, and say what they are without.</summary>
public sealed class TallyTests
{
    private const string Head = """
        rule sheet: 1
        game: Counters
        players: 1
        pieces: {coin: {count: 50}}
        places: {purse: {heap of: coin, of: each player}}
        """;

    private static readonly Sheet Kiln = Game.Sheet("kiln-night");

    private static readonly Gen<Position> Random = Gen.Int[0, 36].Array[20].Select(Gen.Int[0, 9], Gen.Int[0, 20].Array[0, 3], Gen.Int[0, 4], Lay);

    [Fact]
    public void Lines_add_up_to_the_total_and_parts_to_their_line() =>
        Random.Hold(
            position =>
            {
                Tally tally = Tally.Of(position, 0);
                return tally.Total.Certain == tally.Lines.Sum(l => l.Points.Certain)
                    && tally.Lines.All(l => l.Because.Length > 0 && l.Points.Certain == l.Because.Sum(p => p.Points.Certain))
                    && tally.Lines.All(l => l.Because.All(p => p.Text.Length > 0 && (p.Points.Certain != 0 || l.Because.Length == 1)));
            },
            cases: 60);

    [Fact]
    public void Each_reading_that_matters_is_listed_with_its_total()
    {
        Tally tally = Tally.Of(Game.Kiln("E3"), 0);

        Assert.Equal(["as for four 12 59", "growing on 17 64", "best split 13 60"], tally.Readings.Select(r => $"{r.Name} {r.Points.InWords} {r.Total.InWords}"));
        Assert.All(tally.Readings, r => Assert.Equal("bowls", r.Clause));
    }

    [Fact]
    public void A_choice_that_changes_no_points_is_no_reading() => Assert.Empty(Tally.Of(Game.Kiln("E1"), 0).Readings);

    [Theory]
    [InlineData("plates", "tier 1: 3 whole plates (A1, B1 and C1)", "A1 B1 C1")]
    [InlineData("bowls", "A2 and A3: 2 whole bowls give 3", "A2 A3")]
    [InlineData("jugs", "B2: ash at A2 and iron at C2", "B2 A2 C2")]
    [InlineData("lamps", "C3: there is 1 whole lamp in tier 3", "C3")]
    [InlineData("glaze", "A1, A2, A3 and B1: 4 whole ware", "A1 A2 A3 B1")]
    [InlineData("full", "tier 1 is full", "A1 B1 C1 D1 E1")]
    [InlineData("commissions", "Commission 12 is met: the drawing is shown at C1, C2 and C3", "C1 C2 C3")]
    [InlineData("shards", "2 ware", "")]
    [InlineData("sticks", "4 sticks, one for every 3, rounded down", "")]
    public void The_first_part_of_each_line_of_E1_can_be_read_aloud(string clause, string text, string spaces)
    {
        TallyPart part = Tally.Of(Game.Kiln("E1"), 0).Lines.Single(l => l.Clause == clause).Because[0];

        Assert.Equal(text, part.Text);
        Assert.Equal(spaces, string.Join(' ', part.Spaces));
    }

    [Fact]
    public void A_limit_is_a_part_of_its_own()
    {
        Tally tally = Purse("  coins: {points: 2 times count(my purse), at most: 5}", "4");

        Assert.Equal([8L, -3L], tally.Lines[0].Because.Select(p => p.Points.Certain!.Value));
        Assert.Equal("at most 5 for this", tally.Lines[0].Because[1].Text);
        Assert.Equal(5, tally.Total.Certain);
    }

    [Fact]
    public void A_part_that_is_not_modelled_with_a_bound_makes_the_total_at_least()
    {
        Tally tally = Purse("  coins: {points: count(my purse)}\n  luck: {points: not modelled, at least 0}", "4");

        Assert.Equal("at least 4", tally.TotalInWords);
        Assert.Equal(["luck"], tally.NotModelled.Select(_ => tally.Lines.Single(l => !l.Points.IsCertain).Clause));
        Assert.Empty(tally.Without);
    }

    [Fact]
    public void A_part_that_is_not_modelled_without_a_bound_is_left_out_of_the_total()
    {
        Tally tally = Purse("  coins: {points: count(my purse)}\n  luck: {points: not modelled}", "4");

        Assert.Equal("4 without luck", tally.TotalInWords);
    }

    [Fact]
    public void A_heap_that_is_not_given_bounds_the_total_by_what_there_is()
    {
        Tally tally = Tally.Of(Position.Blank(Game.Of($"{Head}\nscore:\n  coins: {{points: count(my purse)}}"), "blank", 1), 0);

        Assert.Equal("0 to 50", tally.TotalInWords);
        Assert.Equal(["your purse"], tally.NotGiven);
    }

    [Theory]
    [InlineData("? ? .", "The lines cannot all be at their highest at once.")]
    [InlineData("ba ji .", null)]
    public void Lines_that_cannot_be_at_their_highest_together_are_told(string lowest, string? told)
    {
        Tally tally = Tally.Of(Game.Position(Kiln, $"seat 1:\n  chamber: |\n    4 . . . . .\n    3 . . . . .\n    2 . . . . .\n    1 {lowest} . .\n    / A B C D E\n  sticks: 0\n  shards: []\n  accepted: []\nturn of: seat 1\n"), 0);

        Assert.Equal(told, tally.TogetherInWords);
    }

    [Fact]
    public void A_board_of_which_nothing_is_given_is_one_missing_fact()
    {
        Tally tally = Tally.Of(Game.Position(Kiln, "seat 1: {sticks: 0, shards: [], accepted: []}\nturn of: seat 1\n"), 0);

        Assert.Equal(["your chamber"], tally.NotGiven);
        Assert.Equal("not given: your chamber", tally.Lines[0].Because[0].Text);
    }

    [Theory]
    [InlineData("30", "steady", "Rulebook, page 2")]
    [InlineData("29", "calm", "Rulebook, page 2")]
    [InlineData("2", "calm", "Rulebook, page 2")]
    public void A_total_is_rated_where_the_sheet_has_steps(string coins, string step, string cite)
    {
        const string Steps = "  coins: {points: count(my purse)}\nsources: {book: {title: Rulebook, pages: 4}}\nrating: {cite: book 2, steps: {0: calm, 30: steady}}";

        TallyRating rating = Purse(Steps, coins).Rating!;

        Assert.Equal((step, 0L, cite), (rating.Step, rating.Credit, Citation.Tell(rating.Cite)));
        Assert.Null(Tally.Of(Game.Kiln("E1"), 0).Rating);
    }

    // Page 10 of the demo game's rulebook takes 3 points off for the guild marks.
    [Fact]
    public void What_a_variant_counts_before_rating_is_taken_off() =>
        Assert.Equal(-3, TallyRating.Of(Game.Sheet("kiln-night", "solo", "guild marks"), Points.Of(35), isWhole: true)!.Credit);

    [Theory]
    [InlineData("coins: {points: 3 times down(count(my purse), by 2)}", "4 coins, three for every 2")]
    [InlineData("coins: {points: smallest((count(my purse), 9), it)}", "4 coins, the smallest of them")]
    [InlineData("coins: {points: 7 if me is in most(p in players, count(purse of p)) otherwise 0}", "you have 4 coins, the most")]
    public void Reasons_speak_of_what_is_counted(string score, string reason) => Assert.Equal(reason, Purse($"  {score}", "4").Lines[0].Because[0].Text);

    private static Tally Purse(string score, string coins) =>
        Tally.Of(Game.Position(Game.Of($"{Head}\nscore:\n{score}"), $"seat 1:\n  purse: {coins}\nturn of: seat 1\n"), 0);

    // 0 to 12 free shelves, else form, glaze and wear by their numbers.
    private static Position Lay(int[] shelves, int sticks, int[] cards, int shards)
    {
        Kind ware = Kiln.Kinds.Single(k => k.Kind.Name == "ware").Kind;
        Kind stick = Kiln.Kinds.Single(k => k.Kind.Name == "stick").Kind;
        Position position = Position.Blank(Kiln, "random", 1);
        for (int i = 0; i < shelves.Length; i++)
        {
            int number = shelves[i] - 13;
            position = position.With(0, 0, i, number < 0 ? Stack.Empty : new Stack([new Thing(ware, [number % 4, number / 4 % 3, number / 12], null, Thing.Nobody, true)]));
        }

        CardTable table = Kiln.CardTables[0];
        position = Put(position, "sticks", Enumerable.Repeat(new Thing(stick, [], null, Thing.Nobody, true), sticks));
        position = Put(position, "shards", Enumerable.Repeat(new Thing(ware, [null, null, null], null, Thing.Nobody, true), shards));
        return Put(position, "accepted", cards.Distinct().Where(c => c < table.Rows.Length).Select(c => new Thing(table.Kind, [], table.Rows[c].Card, Thing.Nobody, true)));
    }

    private static Position Put(Position position, string place, IEnumerable<Thing> things) =>
        position.WithPlace(Kiln.Places.IndexOf(Kiln.Places.Single(p => p.Place.Name == place)), 0, 0, new Stack([.. things]));
}
