using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Every section reads what its author wrote.</summary>
public sealed class SectionTests
{
    [Fact]
    public void Sources_have_title_pages_rank_printing_and_date()
    {
        RuleSource[] sources = [.. Loaded.Of("sources:\n  note: A note\n  book: {title: Rulebook, printing: first, pages: 12, rank: 3, date: 3 March 2026}\n").Sheet.Sources];

        Assert.Equal(("A note", null, null), (sources[0].Title, sources[0].Pages, sources[0].Rank));
        Assert.Equal(("Rulebook", 12, 3, "first", "3 March 2026"), (sources[1].Title, sources[1].Pages, sources[1].Rank, sources[1].Printing, sources[1].Date));
    }

    [Theory]
    [InlineData("players: 2", 2, 2)]
    [InlineData("players: 1 to 4", 1, 4)]
    [InlineData("players: two to four", 2, 4)]
    public void Players_are_one_number_or_two(string text, int fewest, int most)
    {
        Sheet sheet = Loaded.Of(text).Sheet;

        Assert.Equal((fewest, most), (sheet.FewestPlayers, sheet.MostPlayers));
    }

    [Fact]
    public void Facts_are_useful_alone()
    {
        Loaded loaded = Loaded.Of("facts:\n  crate refill: {is: 2, of: ware}\n  start player: the tallest\n");

        Assert.Empty(loaded.Told);
        Assert.Equal([("crate refill", 2, "2", "ware"), ("start player", null, "the tallest", null)], loaded.Sheet.Facts.Select(f => (f.Name, f.Number, f.Words, f.Of)));
    }

    [Fact]
    public void Pieces_have_attributes_states_and_counts()
    {
        KindFacts ware = Loaded.Of("pieces:\n  ware:\n    plural: ware\n    attributes: {form: [bowl, jug], size: 1 to 3}\n    states: {wear: whole cracked}\n    count of each form: {1: 4, 2: 3}\n").Sheet.Kinds[0];

        Assert.Equal(["form bowl jug", "size 1 2 3", "wear whole cracked"], ware.Attributes.Select(a => $"{a.Attribute.Name} {string.Join(' ', a.Values.Select(v => v.Name))}"));
        Assert.Equal([false, false, true], ware.Attributes.Select(a => a.Attribute.IsState));
        Assert.Equal(14, ware.Supply.Total);
    }

    [Fact]
    public void Values_of_the_attribute_itself_are_counted_once() =>
        Assert.Equal(4, Loaded.Of("pieces: {tree: {attributes: {fruit: [apple, pear]}, count of each fruit: {apple: 3, pear: 1}}}").Sheet.Kinds[0].Supply.Total);

    [Fact]
    public void A_kind_may_be_called_like_an_operation_and_its_plural_is_English()
    {
        Sheet sheet = Loaded.Of("pieces: {order: {count: 3}, shelf: {count: 2}, berry: {each player: 5}}\nplaces: {orders: {heap of: order}}\nwords: {w: count(orders)}\n").Sheet;

        Assert.Equal(["orders", "shelves", "berries"], sheet.Kinds.Select(k => k.Kind.Plural));
        Assert.Equal([false, false, true], sheet.Kinds.Select(k => k.Supply.EachPlayer));
    }

    [Fact]
    public void Dice_show_their_faces() =>
        Assert.Equal("1 2 3 moon", string.Join(' ', Loaded.Of("dice: {fire die: {plural: fire dice, count: 3, faces: 1 2 3 moon}}").Sheet.Kinds[0].Attributes[0].Values.Select(v => v.Name)));

    [Fact]
    public void Boards_are_squares_a_drawing_or_a_way()
    {
        Sheet sheet = Loaded.Of("""
            boards:
              field: {of: each player, squares: 3 across 2 up, stands: upright, columns: bay A to C, rows: tier 1 to 2, spaces: shelf, neighbours: sides and corners}
              steps:
                drawn: |
                  2 - .
                  1 . .
                  / a b
              pits: {ring: s1 to s3 S n1 to n3 N}
              scale: {track: 5}
            """).Sheet;

        Assert.Equal(["A2 B2 C2 A1 B1 C1", "b2 a1 b1", "s1 s2 s3 S n1 n2 n3 N", "1 2 3 4 5"], sheet.Boards.Select(b => string.Join(' ', b.Spaces.Select(s => s.Name.Name))));
        Assert.Equal((true, Touching.SidesAndCorners, "shelf"), (sheet.Boards[0].IsUpright, sheet.Boards[0].Neighbours, sheet.Boards[0].Noun.Name));
        Assert.Equal([false, false, true, false], sheet.Boards.Select(b => b.Wraps));
        Assert.Equal(["bay", "tier"], sheet.Boards[0].Families.Select(f => f.Name));
    }

    [Fact]
    public void Places_hold_kinds_in_their_form()
    {
        Sheet sheet = Loaded.Of("pieces: {ware: {plural: ware}, stick: {}}\nplaces:\n  crate: {bag of: ware}\n  pile: {deck of: ware}\n  sticks: {heap of: [stick, ware], of: each player}\n  hand: {hand of: stick, of: each player}\n  market: {row of: 3, slots: stall, holds: ware and sticks}\n").Sheet;

        Assert.Equal(
            ["crate Bag False ware", "pile Deck False ware", "sticks Heap True stick ware", "hand Hand True stick", "market Row False ware stick"],
            sheet.Places.Select(p => $"{p.Place.Name} {p.Place.Form} {p.Place.EachPlayer} {string.Join(' ', p.Holds.Select(h => h.Name))}"));
        Assert.Equal((3, "stall"), (sheet.Places[4].Slots, sheet.Places[4].SlotNoun!.Name));
    }

    [Fact]
    public void Marks_hold_numbers_truths_and_players()
    {
        Sheet sheet = Loaded.Of("marks: {round: 1 to 9, coins: {holds: number, of: each player}, done: yes or no, leader: {holds: player}}").Sheet;

        Assert.Equal([SortKind.Number, SortKind.Number, SortKind.Truth, SortKind.Player], sheet.Marks.Select(m => m.Sort.Kind));
        Assert.Equal((1, 9), (sheet.Marks[0].Lowest, sheet.Marks[0].Highest));
        Assert.Equal([false, true, false, false], sheet.Marks.Select(m => m.EachPlayer));
    }

    [Fact]
    public void Words_use_each_other_in_any_order_and_take_sets()
    {
        Sheet sheet = Loaded.Of("pieces: {ware: {plural: ware}}\nwords:\n  twice (number n): n + plain of n\n  plain (number n): n\n  worth (set of ware w): count(w)\n").Sheet;

        Assert.Equal([Sort.Number, Sort.Number, Sort.Number], sheet.Meanings.Select(m => m.Body.Sort));
        Assert.Equal("a set of things", sheet.Meanings[2].Word.Subjects[0].Sort.InWords);
    }

    [Fact]
    public void Tables_have_numbers_ranges_values_and_what_lies_beyond()
    {
        Sheet sheet = Loaded.Of("pieces: {ware: {plural: ware, attributes: {form: [bowl, jug]}}}\ntables:\n  worth: {1: 1, 2 to 4: 3, 5 or more: 6}\n  price: {bowl: 2, jug: 3, beyond: last}\n  left: not modelled, at least 0\n").Sheet;

        Assert.Equal([(1L, 1L), (2L, 4L), (5L, null)], sheet.Tables[0].Versions[0].Rows.Select(r => (r.Low!.Value, r.High)));
        Assert.Equal(["bowl", "jug"], sheet.Tables[1].Versions[0].Rows.Select(r => r.Key!.Name));
        Assert.Equal([TableBeyond.Nothing, TableBeyond.Last, TableBeyond.Given], sheet.Tables.Select(t => t.Versions[0].Beyond));
    }

    [Fact]
    public void Laws_bind_actions_and_powers_lift_laws()
    {
        Sheet sheet = Loaded.Of("""
            marks: {coins: {holds: 0 to 9, of: each player}}
            actions:
              pay: add 1 to my coins
              spend: {phrase: spend (n), choose: {n: a number from 1 to 3}, do: take n from my coins}
            laws:
              enough: {binds: spend, needs: [my coins is at least n, n is at most 3], unless: my coins is 9}
              rich: {binds: [pay, spend], must leave: my coins is at most 9}
            powers:
              purse: {lifts: enough, for: spend, price: take 1 from my coins}
              crown: {lifts: any one law}
            """).Sheet;

        Assert.Equal(["pay", "spend"], sheet.Actions.Select(a => a.Action.Name));
        Assert.Single(sheet.Actions[0].Steps);
        Assert.Equal([DemandKind.Needs, DemandKind.Needs], sheet.Laws[0].Bodies[0][0].Demands.Select(d => d.Kind));
        Assert.Equal(2, sheet.Laws[1].Binds.Length);
        Assert.Equal(["enough"], sheet.Powers[0].Lifts);
        Assert.Empty(sheet.Powers[1].Lifts);
    }

    [Theory]
    [InlineData("3", 3)]
    [InlineData("1 fox", 1, "fox")]
    [InlineData("2 foxes or hens", 2, "fox", "hen")]
    [InlineData("1 fox or hen or fence", 1, "fox", "hen", "fence")]
    [InlineData("1 fox and hen", 1, "fox", "hen")]
    [InlineData("1 fox, hen, fence", 1, "fox", "hen", "fence")]
    public void A_board_says_how_many_of_what_its_spaces_hold(string holds, int most, params string[] kinds)
    {
        Loaded loaded = Loaded.Of($"pieces: {{fox: {{}}, hen: {{}}, fence: {{}}}}\nboards:\n  field:\n    squares: 2 across 2 up\n    holds: {holds}\n");

        Assert.Empty(loaded.Told);
        Assert.Equal(most, loaded.Sheet.Boards[0].MostInSpace);
        Assert.Equal(kinds, loaded.Sheet.Boards[0].Holds.Select(k => k.Name));
    }

    [Theory]
    [InlineData("{conflict: {book 3: 3, aid 1: 2, follow: book 3}}", "3", 3L)]
    [InlineData("{conflict: {book 3: 3, aid 1: 2}, follow: aid 1, cite: aid 1}", "2", 2L)]
    [InlineData("{is: 3, conflict: {book 3: 3, aid 1: 2, follow: book 3}}", "3", 3L)]
    [InlineData("{conflict: {book 3: 3, aid 1: 2}}", "3 if book 3 or 2 if aid 1", null)]
    [InlineData("{readings: {few: 3, many: 30}, follow: many, cite: book 3}", "30", 30L)]
    public void A_fact_is_what_the_followed_source_says(string fact, string words, long? number)
    {
        Loaded loaded = Loaded.Of($"sources: {{book: {{pages: 4}}, aid: {{pages: 1}}}}\nfacts: {{sticks: {fact}}}");

        Assert.Empty(loaded.Told);
        Assert.Equal((words, number), (loaded.Sheet.Facts[0].Words, loaded.Sheet.Facts[0].Number));
        Assert.Single(loaded.Sheet.Choices);
    }

    [Fact]
    public void What_closes_a_sheet_is_read()
    {
        Sheet sheet = Loaded.Of("""
            end:
              full: {if: 1 is 1, then: every other player once more, winner: nobody}
            ties: [fewer players, shared]
            rating: {credit: {Steps: -4}, steps: {0: damp, 30: dry}}
            not modelled: [swaps]
            open questions:
              runs of six: {says: What does a run of six score?}
              runs of seven: And of seven?
            variants: {Steps: {players: 1}}
            """).Sheet;

        Assert.Equal(("every other player once more", "nobody"), (sheet.Ends[0].Then, sheet.Ends[0].Winner));
        Assert.Equal(["fewer players", "shared"], sheet.Ties);
        Assert.Equal([("Steps", -4L)], sheet.RatingCredit);
        Assert.Equal([(null, "damp"), (30L, "dry")], sheet.Rating.Select(r => (r.From, r.Name)));
        Assert.Equal(["swaps"], sheet.NotModelled);
        Assert.Equal(["What does a run of six score?", "And of seven?"], sheet.Questions.Select(q => q.Words));
    }

    [Theory]
    [InlineData("laws: not modelled")]
    [InlineData("score: not modelled")]
    [InlineData("actions: {lay: not modelled}\nlaws: {free: not modelled}\nend: {full: not modelled}\npowers: {key: not modelled}")]
    [InlineData("turn: not modelled")]
    public void Any_section_and_any_entry_may_be_left_out_in_words(string text)
    {
        Loaded loaded = Loaded.Of(text);

        Assert.Empty(loaded.Told);
        Assert.NotEmpty(loaded.Sheet.NotModelled);
    }

    [Theory]
    [InlineData]
    [InlineData("Climbing Chamber")]
    [InlineData("guild marks")]
    [InlineData("solo")]
    [InlineData("solo", "Climbing Chamber")]
    [InlineData("guild marks", "Climbing Chamber")]
    public void The_demo_game_is_read_without_a_message(params string[] variants)
    {
        const string Folder = "games/kiln-night/";

        Loaded loaded = Loaded.With(TestFiles.Read($"{Folder}sheet.yaml"), [("commissions.csv", TestFiles.Read($"{Folder}commissions.csv"))], variants);

        Assert.Empty(loaded.Reading.Problems.Select(p => $"{p.Id} {p.At}: {p.Message}"));
    }

    [Fact]
    public void A_gap_may_state_its_bound()
    {
        var gap = (Term.NotModelled)Loaded.Of("score: {bowls: 'not modelled, between 0 and 3'}").Sheet.Score[0].Bodies[0].Points;

        Assert.Equal((0, 3), (gap.Low, gap.High));
    }
}
