using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Clauses that use idioms, rightly and not.</summary>
public sealed class IdiomUseTests
{
    private const string Base = """
        pieces: {ware: {plural: ware, attributes: {form: [bowl, jug], glaze: [ash, iron]}}, stone: {each player: 3}}
        boards: {field: {squares: 3 across 3 up, columns: bay, rows: tier}}
        places: {sticks: {heap of: stone, of: each player}}
        tables: {worth: {1: 1, beyond: last}}

        """;

    private const string Lay = """
        actions:
          lay: {phrase: lay on (spot), choose: {spot: a space in field}, do: move a jug from supply to spot}
          trade: {phrase: trade (here) for (there), choose: {here: a space in field, there: a space in field}, do: swap here and there}

        """;

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "score: {x: {idiom: full lins, along: bays, points: 3}}", "ROS0201", "full lins", "'full lins' is not an idiom of the library." },
        { "score: {x: {idiom: majority, of: jug}}", "ROS0201", "majority", "'majority' is not an idiom of the library." },
        { "score: {x: {idiom: so many for each, of: jugs, points: 1}}", "ROS0311", "jugs", "'jugs' tells what is meant, but not where it lies." },
        { "score: {x: {idiom: full lines, along: bays}}", "ROS0821", "full lines", "The idiom 'full lines' needs 'points', which is a number." },
        { "score: {x: {idiom: full lines, alogn: bays, along: bays, points: 3}}", "ROS0201", "alogn", "The idiom 'full lines' has nothing called 'alogn'." },
        { "score: {x: {idiom: full lines, along: rows, points: 3}}", "ROS0201", "rows", "'rows' is not the name of lines of a board." },
        { "score: {x: {idiom: full lines, along: bays, points: 3, each: 3}}", "ROS0406", "each", "'full lines' has both an idiom and a formula of its own." },
        { "score: {x: {idiom: at least so many, of: jug, at least: 2}}", "ROS0407", "at least so many", "The idiom 'at least so many' gives no points." },
        { "words: {x: {idiom: full lines, along: bays, points: 3}}", "ROS0408", "full lines", "The idiom 'full lines' scores and gives no condition." },
        { "score: {x: {idiom: runs by length, of: jug, along: bays, points: wort}}", "ROS0201", "wort", "'wort' is not the name of a table." },
        { "score: {x: {idiom: different neighbours, of: jug, by: glzae}}", "ROS0201", "glzae", "'glzae' is not an attribute." },
        { "score: {x: {idiom: full lines, along: bays, points: 3, in: my sticks}}", "ROS0201", "my sticks", "'my sticks' is not a board." },
        { "score: {x: {idiom: full lines, along: bays, points: 3, readings: {a: {alogn: bays}, b: {}}}}", "ROS0201", "alogn", "The idiom 'full lines' has nothing called 'alogn'." },
        { "score: {x: {idiom: full lines, alogn: bays, along: bays, points: 3, readings: {a: {points: 4}, b: {}}}}", "ROS0201", "alogn", "The idiom 'full lines' has nothing called 'alogn'." },
        { "score: {x: {idiom: so many for each, of: my stikcs, points: 1}}", "ROS0201", "stikcs", "" },
        { "score: {x: {idiom: leftovers by a rate, of: my sticks, every: 2, rounded: dwon}}", "ROS0201", "dwon", "'dwon' is not one of 'down', 'up' or 'to the nearest'." },
        { "score: {x: {idiom: the most, of: my stiks, points: 3, ties: each scores it}}", "ROS0201", "my stiks", "'my stiks' is not what every player has, such as" },
        { "score: {x: {idiom: the most, of: jugs in field, points: 3, ties: each scores it}}", "ROS0201", "jugs in field", "'jugs in field' is not what every player has, such as" },
        { "score: {x: {idiom: the lowest counts, of: [my sticks, jugs]}}", "ROS0311", "jugs", "'jugs' tells what is meant, but not where it lies." },
        { "score: {x: {idiom: its own worth, of: my sticks, worth: pya}}", "ROS0201", "pya", "'pya' is not a column, an attribute or a word that gives each thing a number." },
        { "score: {x: {idiom: pairs that fit, of: my sticks, with: my sticks, joined by: touches, points: 1}}", "ROS0201", "touches", "'touches' is not a word that is said of two." },
        { "score: {x: {idiom: bonus where something holds, if: count(my sticks), points: 1}}", "ROS0301", "count(my sticks)", "" },
        { "score: {x: {idiom: only next to, near: jug}}", "ROS0407", "only next to", "The idiom 'only next to' gives no points." },
        { "words: {x: {idiom: only next to, near: jug}}", "ROS0408", "only next to", "The idiom 'only next to' is a law and gives no condition." },
        { Lay + "laws: {x: {binds: lay, idiom: full lines, along: bays, points: 3}}", "ROS0409", "full lines", "The idiom 'full lines' scores and forbids nothing." },
        { Lay + "laws: {x: {binds: lay, idiom: at least so many, of: jug, at least: 2}}", "ROS0409", "at least so many", "The idiom 'at least so many' is a condition" },
        { Lay + "laws: {x: {binds: lay, idiom: only next to its like, by: glaze}}", "ROS0410", "only next to its like", "The idiom 'only next to its like' speaks of a thing that the action chooses, and 'lay' chooses none." },
        { Lay + "laws: {x: {binds: lay, idiom: only next to, near: jug, on: sopt}}", "ROS0201", "sopt", "'sopt' is not a space that the action chooses." },
        { Lay + "laws: {x: {binds: trade, idiom: only next to, near: jug}}", "ROS0821", "only next to", "The idiom 'only next to' needs 'on', which is 'here' or 'there'." },
        { Lay + "laws: {x: {binds: lay, idiom: only next to, near: jug, needs: spot is empty}}", "ROS0406", "needs", "'only next to' has both an idiom and a formula of its own." },
        { Lay + "laws: {x: {binds: lay, idiom: only next to, near: jug, unles: spot is empty}}", "ROS0201", "unles", "The idiom 'only next to' has nothing called 'unles'." },
        { Lay + "laws: {x: {binds: lay, idiom: only inside, area: my sticks}}", "ROS0302", "my sticks", "" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_in_the_words_of_the_idiom(string text, string id, string words, string message)
    {
        Diagnostic problem = Loaded.Problem(Base + text);

        Assert.Equal((id, words), (problem.Id, problem.At.Text));
        Assert.StartsWith(message, problem.Message, StringComparison.Ordinal);
        Assert.Empty(EveryMessage.SaidBy(problem).SelectMany(BannedWords.In));
    }

    [Fact]
    public void What_does_not_fit_the_meaning_is_told_in_the_idiom_and_at_the_clause()
    {
        Diagnostic problem = Loaded.Problem(Base + "score: {x: {idiom: leftovers by a rate, of: my sticks, every: bays}}");

        Assert.Contains(problem.Related.Append(new RelatedPlace(problem.At, "")), r => r.At.Source.Name == "sheet.yaml");
    }

    [Theory]
    [InlineData("your stones", "score: {x: {idiom: alone in its line, of: my stone, along: bays, alone: 2}}", "One of your stones scores 2 points where it is the only one in its bay, otherwise 0 points.")]
    [InlineData("each of", "score: {x: {idiom: best line, of: my stones, along: bays, each: 2}}", "Score 2 points for each of your stones in one bay, the one that shows most of them.")]
    [InlineData("limits", "score: {x: {idiom: full lines, along: bays, points: 3, at most: 6}}", "Each full bay scores 3 points.")]
    [InlineData("formula", "numbers: {m: 2}\nscore: {x: {idiom: full lines, along: bays, points: m}}", "Each full bay scores m points.")]
    public void The_sentence_of_a_clause_is_English(string what, string text, string sentence)
    {
        Loaded loaded = Loaded.Of(Base + text);

        Assert.NotEmpty(what);
        Assert.Empty(loaded.Told);
        Assert.Equal(sentence, loaded.Sheet.Score[0].Bodies[0].Idiom!.Sentence);
    }

    [Theory]
    [InlineData("idiom: twice\nreads: Twice.\npoints: 1\n", "ROS0212", "twice")]
    [InlineData("idiom: other\nraeds: Other.\npoints: 1\n", "ROS0201", "raeds")]
    [InlineData("idiom: other\nreads: Other.\nparameters: {of: {is: lok}}\npoints: 1\n", "ROS0201", "lok")]
    public void A_slip_in_a_file_of_the_library_is_told(string second, string id, string words)
    {
        var problems = new DiagnosticBag();

        IdiomLibrary.Read(GameFolder.InMemory("idioms", ("a.yaml", "idiom: twice\nreads: Twice.\npoints: 2\n"), ("b.yaml", second)), problems);

        Assert.Contains(problems.InOrder(), p => (p.Id, p.At.Text, p.At.Source.Name) == (id, words, "b.yaml"));
    }

    [Fact]
    public void A_condition_of_an_idiom_stays_a_node_of_its_own()
    {
        Sheet sheet = Loaded.Of(Base + "words: {x: {idiom: at least so many, of: ash jugs, at least: 1}}").Sheet;

        Assert.Equal("The field shows at least one ash jug.", ((Term.Idiomatic)sheet.Meanings[0].Body).Use.Sentence);
    }
}
