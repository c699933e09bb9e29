using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>One slip gives one message, at the slip, in plain words, with what to do about it.</summary>
public sealed class SlipTests
{
    private const string Field = "boards: {field: {squares: 3 across 3 up, columns: bay}}\n";
    private const string Ware = "pieces: {ware: {plural: ware, attributes: {form: [bowl, jug]}}}\n";
    private const string Lay = "actions: {lay: {do: nothing}}\n";

    /// <summary>Id, sheet, the underlined words, what the message says.</summary>
    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "ROS0201", "bords: {}", "bords", "'bords' is not something that a sheet can have." },
        { "ROS0816", "rule sheet: 2", "2", "This is rule sheet format '2', and only 1 is known." },
        { "ROS0813", "players: some", "some", "'some' does not say how many play." },
        { "ROS0813", "players: 4 to 2", "4 to 2", "'4 to 2' does not say how many play." },
        { "ROS0811", "sources: book", "book", "Here should stand the sources, each with its name and a colon." },
        { "ROS0201", "sources: {book: {pags: 12}}", "pags", "'pags' is not something that an entry under 'sources' can have." },
        { "ROS0813", "sources: {book: {pages: many}}", "many", "'many' is not a number, and a number of pages is one." },
        { "ROS0813", "numbers: {m: lots}", "lots", "'lots' is not a number, and a number is one." },
        { "ROS0812", "facts: {sticks: {of: ware}}", "sticks", "Here should stand 'is:' with what 'sticks' is, or 'conflict:' with what each source says." },
        { "ROS0201", "pieces: {ware: {atributes: {}}}", "atributes", "'atributes' is not something that an entry under 'pieces' can have." },
        { "ROS0211", "pieces: {ware of clay: {}}", "ware of clay", "The name 'ware of clay' holds the word 'of', which formulas need for themselves." },
        { "ROS0212", "pieces: {ware: {}, jug: {attributes: {form: [ware, pot]}}}", "ware", "'ware' is a kind of piece already, so it cannot be a value of form too." },
        { "ROS0201", "pieces: {ware: {attributes: {form: [bowl]}, count of each glaze: {bowl: 1}}}", "count of each glaze", "'glaze' is not an attribute of ware." },
        { "ROS0201", "pieces: {ware: {attributes: {form: [bowl], glaze: [ash]}, count of each glaze: {bowk: 1}}}", "bowk", "'bowk' is not a value of ware." },
        { "ROS0822", "pieces: {ware: {attributes: {size: 1 to 300}}}", "1 to 300", "There are more than 200 values." },
        { "ROS0814", "dice: {fire die: {count: 3}}", "fire die", "'fire die' does not say its 'faces'." },
        { "ROS0826", "signs: {1: ware}\n" + Ware, "1", "'1' cannot be a sign of drawings." },
        { "ROS0201", "signs: {j: jgu}\n" + Ware, "jgu", "'jgu' is not a kind, a value, a card or a seat." },
        { "ROS0823", "boards: {field: {spaces: shelf}}", "field", "The board 'field' has no shape." },
        { "ROS0818", "boards: {field: {squares: 99 across 3 up}}", "99 across 3 up", "'99 across 3 up' is not a size." },
        { "ROS0819", "boards: {field: {squares: 3 across 3 up, columns: bay A to D}}", "bay A to D", "There are 4 labels for 3 columns." },
        { "ROS0201", "boards: {field: {squares: 3 across 3 up, stands: uprigth}}", "uprigth", "'uprigth' is not a way in which a board stands." },
        { "ROS0201", "boards: {field: {squares: 3 across 3 up, of: each plyer}}", "each plyer", "'each plyer' is not somebody who can have it." },
        { "ROS0201", "boards: {field: {squares: 3 across 3 up, neighbours: side}}", "side", "'side' is not a way in which spaces touch." },
        { "ROS0201", Ware + "boards: {field: {squares: 3 across 3 up, holds: 1 waer}}", "waer", "'waer' is not a kind of piece, card or die." },
        { "ROS0824", "boards:\n  field:\n    drawn: |\n      1 . x\n      / a b\n", "x", "'x' means nothing in the drawing of a board." },
        { "ROS0825", "places: {sticks: {of: each player}}", "sticks", "The sheet does not say how 'sticks' holds things." },
        { "ROS0201", Ware + "places: {heap: {heap of: waer}}", "waer", "'waer' is not a kind of piece, card or die." },
        { "ROS0813", "places: {market: {row of: 2000}}", "2000", "'2000' is not a number, and how many slots the row has, from 1 to 1000 is one." },
        { "ROS0201", "marks: {leader: {holds: plyer}}", "plyer", "'plyer' is not something that a mark can hold." },
        { "ROS0817", "words: {clash (ware): 1}\n" + Ware, "clash (ware)", "'clash (ware)' cannot be read as a name with its subjects." },
        { "ROS0201", "words: {clash (waer v): v is v}\n" + Ware, "waer", "'waer' is not a kind of piece, a space, a line, 'number' or 'player'." },
        { "ROS0210", "words: {a1 word: not b1 word, b1 word: not a1 word}", "a1 word", "" },
        { "ROS0201", "tables: {worth: {one or so: 1}}", "one or so", "'one or so' is not a number, a range such as '3 to 5', '7 or more' or a value." },
        { "ROS0201", "tables: {total worth: {1: 1, 2: 3}}\nscore: {all: {points: total worht of 2}}", "total worht", "Nothing is called 'total worht'." },
        { "ROS0201", "score: {all: {points: total of 2}}", "total", "Nothing is called 'total'." },
        { "ROS0403", "tables: {worth: {1: 1, 4: 3}}", "{1: 1, 4: 3}", "'worth' says nothing for 2 to 3." },
        { "ROS0811", "tables: {worth: {rows: [1, 2]}}", "[1, 2]", "Here should stand the rows of the table, such as '1: 3', each with its name and a colon." },
        { "ROS0201", Lay + "laws: {free: {binds: lya, needs: 1 is 1}}", "lya", "'lya' is not an action." },
        { "ROS0404", Lay + "laws: {free: {binds: lay}}", "free", "The law 'free' demands nothing." },
        { "ROS0829", "laws: {free: {needs: 1 is 1}}", "free", "The law 'free' does not say which action it binds." },
        { "ROS0814", "powers: {key: {}}", "key", "'key' does not say its 'lifts'." },
        { "ROS0201", Lay + "laws: {free: {binds: lay, needs: 1 is 1}}\npowers: {key: {lifts: fere}}", "fere", "'fere' is not a law of this sheet." },
        { "ROS0201", Lay + "before lya: nothing", "lya", "'lya' is not an action or a block of steps." },
        { "ROS0201", "actions: {lay: {do: nothing, final: maybe}}", "maybe", "'maybe' is not 'yes' or 'no'." },
        { "ROS0201", "actions: {lay: {joins: turm, do: nothing}, turn over: nothing}", "turm", "'turm' is not an action." },
        { "ROS0201", "end: {full: {if: 1 is 1, then: at onse}}", "at onse", "'at onse' is not something that can follow." },
        { "ROS0201", "end: {full: {if: 1 is 1, winner: mee}}", "mee", "'mee' is not somebody who can win." },
        { "ROS0828", "score: {jugs: {at most: 5}}", "jugs", "The clause 'jugs' gives no points." },
        { "ROS0201", "score: {jugs: {point: 5}}", "point", "'point' is not something that an entry under 'score' can have." },
        { "ROS0302", Field + "score: {jugs: {points: bay of A1}}", "bay of A1", "" },
        { "ROS0813", "rating: {steps: {low: damp}}", "low", "'low' is not a number, and the lowest total of a step is one." },
        { "ROS0201", "score: {bowls: 'not modelled, at lest 0'}", "at lest 0", "'at lest 0' is not a bound of what is not modelled." },
        { "ROS0501", "sources: {book: Rulebook}\nfacts: {a: {is: 1, cite: bok 2}}", "bok 2", "No source is called 'bok'." },
        { "ROS0502", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: book 5}}", "book 5", "Book has no page 5; it has 4 pages." },
        { "ROS0502", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: [book 1, book 9]}}", "book 9", "Book has no page 9; it has 4 pages." },
        { "ROS0501", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: book page 2}}", "book page 2", "'book page 2' is more than a source and a number." },
        { "ROS0501", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: book p. 2}}", "book p. 2", "'book p. 2' is more" },
        { "ROS0501", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: book p.2}}", "book p.2", "'book p.2' is more" },
        { "ROS0501", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1, cite: 'book, page 2'}}", "'book, page 2'", "'book, page 2' is more" },
        { "ROS0201", "pieces: {cod: {}}\nplaces: {stock: {heap of: cod}}\nactions: {buy: {phrase: buy (n), choose: {n: a thing in stock}, do: nothing}}", "a thing in stock", "Nothing is called 'thing'" },
        { "ROS0201", "pieces: {cod: {}}\nboards: {pond: {squares: 2 across 2 up, holds: 1 cod or cdo}}", "cdo", "'cdo' is not a kind of piece, card or die." },
        { "ROS0503", "sources: {book: {pages: 4}}\nfacts: {a: {is: 1}}", "a", "'a' names no page." },
        { "ROS0811", "pieces: {cod: 12}\nplaces: {nets: {heap of: cod}}", "12", "Here should stand what 'cod' is like." },
        { "ROS0811", Ware + "places: {shelf: heap}", "heap", "Here should stand what the place holds and whose it is." },
        { "ROS0826", "signs: {ware: w}\n" + Ware, "ware", "'ware' cannot be a sign of drawings." },
        { "ROS0818", "boards: {field: {squares: 3 x 4}}", "3 x 4", "'3 x 4' is not a size." },
        { "ROS0201", "boards: {hive: {squares: 3 across 3 up, of: player}}\nscore: {a: count(my hive)}", "player", "'player' is not somebody who can have it." },
        { "ROS0180", "score: {a: each ware scores 1}\n" + Ware, "each", "A formula does not begin with 'each'." },
        { "ROS0180", "score: {a: if 1 is 1 then 2}", "if", "'if' cannot begin a formula." },
        { "ROS0180", Ware + "places: {nets: {heap of: ware, of: each player}}\nscore: {a: different(my nets, form)}", "form", "'form' is an attribute, and the formula does not say of what." },
        { "ROS0201", "boards: {hive: {squares: 3 across 3 up}}\nscore: {a: count(rows of hive)}", "rows", "Nothing is called 'rows': the lines of a board have no name until it gives them one." },
        { "ROS0201", Field + "score: {a: count(columns of field)}", "columns", "Nothing is called 'columns'." },
        { "ROS0201", "pieces: {shard: {}}\nplaces: {shards: {heap of: shard, of: each player}}\nties: [fewer my shrads, shared]", "shrads", "Nothing is called 'shrads'." },
        { "ROS0831", "pieces: {shard: {}}\nplaces: {shards: {heap of: shard, of: each player}}\nties: [less my shards]", "less my shards", "'less my shards' does not say who comes first of equal players." },
        { "ROS0831", "ties: fewer players, shared", "fewer players, shared", "Several tie-breaks stand here without brackets." },
        { "ROS0831", "ties: [fewer]", "fewer", "'fewer' does not say who comes first" },
        { "ROS0201", "variants: {Climbing Chamber: {players: 2}}\nrating: {credit: {Climbing Chambre: -4}}", "Climbing Chambre", "'Climbing Chambre' is not a variant of this sheet." },
        { "ROS0201", Field + "variants: {Big: {boards: {field: {columns: removd}}}}", "removd", "'removd' takes nothing out of the base." },
        { "ROS0823", "boards: {field: {squares: 3 across 3 up, ring: 12}}", "ring", "The board 'field' has two shapes, 'squares' and 'ring'." },
        { "ROS0505", "sources: {book: {date: 33 March 2026}}", "33 March 2026", "'33 March 2026' is no date of the calendar." },
        { "ROS0505", "sources: {book: {date: 3 Mrach 2026}}", "3 Mrach 2026", "'3 Mrach 2026' is no date of the calendar." },
        { "ROS0212", "pieces: {rod: {}}\nplaces: {stick: {heap of: rod}, sticks: {heap of: rod}}", "sticks", "'sticks' and 'stick' are one name in singular and plural" },
        { "ROS0813", "pieces: {ware: {count: -30}}", "-30", "'-30' is less than 0, and how many there are cannot be." },
        { "ROS0813", "pieces: {ware: {attributes: {form: [jug]}, count of each form: {jug: minus 1}}}", "minus 1", "'minus 1' is less than 0" },
        { "ROS0813", "cards: {order: {rows: {One: {count: -2}}}}", "-2", "'-2' is less than 0" },
        { "ROS0822", "cards: {order: {rows: {One: {count: 2000}}}}", "2000", "There are more than 1000 of one card." },
        { "ROS0813", "sources: {book: {pages: 0}}", "0", "'0' is less than 1, and a number of pages cannot be." },
        { "ROS0813", "marks: {coins: 20 to 0}", "20 to 0", "'20 to 0' is not a number" },
        { "ROS0504", "score: {jugs: {points: 1, readings: {one: {points: 1}, two: {points: 2}}, follow: tow}}", "tow", "'follow' names 'tow', which is none of the alternatives." },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_gives_one_message_at_its_place(string id, string text, string words, string message)
    {
        Diagnostic problem = Loaded.Problem(text);

        Assert.Equal((id, words), (problem.Id, problem.At.Text));
        Assert.StartsWith(message, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.Hint);
        Assert.Empty(EveryMessage.SaidBy(problem).SelectMany(BannedWords.In));
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void Reading_a_sheet_twice_gives_the_same_problems(string id, string text, string words, string message)
    {
        Assert.NotEqual(id, words + message);
        Assert.Equal(Loaded.Of(text).Told, Loaded.Of(text).Told);
    }

    [Theory]
    [InlineData("bords: {}", "boards: {}")]
    [InlineData("sources: {book: {pags: 12}}", "sources: {book: {pages: 12}}")]
    [InlineData("sources: {book: Rulebook}\nfacts: {a: {is: 1, cite: bok 2}}", "sources: {book: Rulebook}\nfacts: {a: {is: 1, cite: book 2}}")]
    [InlineData(Ware + "places: {heap: {heap of: waer}}", Ware + "places: {heap: {heap of: ware}}")]
    [InlineData("boards: {field: {squares: 3 across 3 up, of: each plyer}}", "boards: {field: {squares: 3 across 3 up, of: each player}}")]
    [InlineData(Lay + "before lya: nothing", Lay + "before lay: nothing")]
    [InlineData("end: {full: {if: 1 is 1, then: at onse}}", "end: {full: {if: 1 is 1, then: at once}}")]
    [InlineData(Ware + "words: {clash (waer v): v is v}", Ware + "words: {clash (ware v): v is v}")]
    public void The_fix_writes_the_nearest_name_and_clears_the_message(string text, string mended)
    {
        Loaded loaded = Loaded.Of(text);

        Assert.Equal(mended, loaded.Mended());
        Assert.Empty(Loaded.Of(mended).Told);
        Assert.All(loaded.Reading.Problems, p => Assert.Equal(FixGrade.Safe, p.Fix!.Grade));
    }

    [Theory]
    [InlineData("book: {pages: 4}", "Add 'cite: book 4', with")]
    [InlineData("book: {pages: 40}", "Add 'cite: book 8', with")]
    [InlineData("card: Cards, rules: {pages: 6}", "Add 'cite: rules 6', with")]
    [InlineData("card: Cards", "Add 'cite: card', with")]
    public void A_page_that_is_proposed_is_there(string sources, string hint) =>
        Assert.StartsWith(hint, Loaded.Problem($"sources: {{{sources}}}\nfacts: {{a: {{is: 1}}}}").Hint, StringComparison.Ordinal);

    [Fact]
    public void Five_slips_in_five_sections_give_five_messages_in_one_run()
    {
        Loaded loaded = Loaded.Of("""
            players: 2
            pieces:
              ware: {plurl: ware}
            boards:
              field: {squares: 3 acros 3 up}
            words:
              lit: cuont(players)
            laws:
              free: {binds: lay, needs: 1 is 1}
            score:
              jugs: {points: 1 + yes}
            """);

        Assert.Equal(["ROS0201 3,10 plurl", "ROS0818 5,20 3 acros 3 up", "ROS0201 7,8 cuont", "ROS0201 9,17 lay", "ROS0302 11,22 yes"], loaded.Told);
    }

    [Fact]
    public void A_sound_part_of_a_sheet_is_read_beside_a_slip()
    {
        Loaded loaded = Loaded.Of("pieces: {ware: {plurl: ware}}\nscore: {one: 1}\n");

        Assert.False(loaded.Reading.IsSound);
        Assert.Equal("one", loaded.Sheet.Score.Single().Name);
    }
}
