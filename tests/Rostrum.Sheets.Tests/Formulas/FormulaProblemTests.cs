using Rostrum.Sheets.Formulas;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Every message about formulas, with the words that it underlines.</summary>
public sealed class FormulaProblemTests
{
    public static TheoryData<string, string> Cases => new()
    {
        { "ROS0180", "2 + 3 «empty»" },
        { "ROS0180", "«)»" },
        { "ROS0180", "«»" },
        { "ROS0180", "2 +«»" },
        { "ROS0180", "1 if lit«»" },
        { "ROS0180", "count(jugs in my field) is between 1 «2»" },
        { "ROS0180", "lay was «yesterday»" },
        { "ROS0180", "lay was done «yesterday»" },
        { "ROS0180", "me can «A1»" },
        { "ROS0180", "count(run(«A1» going right while A1 is empty))" },
        { "ROS0180", "count(run(x from A1 «right» while x is empty))" },
        { "ROS0180", "longest way(my field, joined by touching, «counted as stroll»)" },
        { "ROS0180", "A1 is A2 «is» empty" },
        { "ROS0181", "count«(»my field" },
        { "ROS0181", "2 times «(»3 + 4" },
        { "ROS0181", "count«(»my sticks is less than 3" },
        { "ROS0181", "2 times «(»3 + 4 is 9" },
        { "ROS0180", "«-»2" },
        { "ROS0180", "3 times «-»2" },
        { "ROS0182", "«0.5»" },
        { "ROS0182", "«0,5»" },
        { "ROS0182", "count(my sticks) times «1.5»" },
        { "ROS0201", "count(my sticks) is «less then» 3" },
        { "ROS0201", "count(my sticks) is «fewer then» 3" },
        { "ROS0182", "2 «*» 3" },
        { "ROS0182", "A1 «=» A2" },
        { "ROS0182", "2 «<» 3" },
        { "ROS0182", "4 «/» 2" },
        { "ROS0182", "4 «$» 2" },
        { "ROS0183", "lit and lit «or» lit" },
        { "ROS0183", "lit or lit «and» lit" },
        { "ROS0203", "count(«jgus» in my field)" },
        { "ROS0201", "count(my «feild»)" },
        { "ROS0201", "worth of «Frist order»" },
        { "ROS0201", "worth of «First ordr»" },
        { "ROS0201", "«runn points» of 3" },
        { "ROS0201", "«zebra» is 3" },
        { "ROS0201", "count(my sticks) «plus» 1 is 3" },
        { "ROS0201", "count(my sticks) is 2 «x» 3" },
        { "ROS0180", "count «my» sticks is 3" },
        { "ROS0201", "count(«columns» of my field) is 3" },
        { "ROS0201", "me can «lya»" },
        { "ROS0201", "«waht» of last lay is top of A1" },
        { "ROS0201", "A1 is spot of my last «stroll»" },
        { "ROS0201", "spot of last «turn» is A1" },
        { "ROS0201", "what of last «use teh kiln» is 3" },
        { "ROS0201", "«turn» is 20" },
        { "ROS0201", "«count(turns)» is 20" },
        { "ROS0201", "count(my sticks) is «number of rounds»" },
        { "ROS0201", "«number» of bay of A1 is 2" },
        { "ROS0201", "«number» of sticks in my sticks is 2" },
        { "ROS0202", "«A1» of me is empty" },
        { "ROS0202", "«count» of me" },
        { "ROS0203", "count(«s» in my field)" },
        { "ROS0203", "any(s in my field where any(«t» in neighbours of s where s is empty))" },
        { "ROS0204", "count(my field where any(neighbours of it where «it» is empty))" },
        { "ROS0205", "«it» is empty" },
        { "ROS0206", "count(«field»)" },
        { "ROS0207", "count(«my market»)" },
        { "ROS0209", "count(jugs in bay «Z» of my field)" },
        { "ROS0301", "A1 is empty and «B1»" },
        { "ROS0301", "not «3»" },
        { "ROS0302", "«bays of my field» + 1" },
        { "ROS0302", "«bay of A1» is at least 2" },
        { "ROS0302", "count(«3»)" },
        { "ROS0302", "A1 is in «3»" },
        { "ROS0303", "A1 is a «jug»" },
        { "ROS0303", "any(s in my field where s is «copper» or ash)" },
        { "ROS0304", "glaze of top of A1 is «jug»" },
        { "ROS0305", "«touching(A1)»" },
        { "ROS0306", "«count(my field, 3)»" },
        { "ROS0306", "count(«groups(my field)»)" },
        { "ROS0307", "count(«copper ash jugs» in my field)" },
        { "ROS0308", "A1 shows «A2»" },
        { "ROS0309", "1 if lit otherwise «A1»" },
        { "ROS0309", "count((1, «A1»))" },
        { "ROS0310", "count(groups(my field, joined by «clash»))" },
        { "ROS0313", "best split(my field, worth «touching»)" },
    };

    public static TheoryData<string, string> Fixes => new()
    {
        { "count(jgus in my field)", "count(jugs in my field)" },
        { "count(my feild)", "count(my field)" },
        { "worth of Frist order", "worth of First order" },
        { "worth of First ordr", "worth of First order" },
        { "runn points of 3", "run points of 3" },
        { "count(my sticks is less than 3", "count(my sticks) is less than 3" },
        { "-2", "minus 2" },
        { "count(my sticks) is less then 3", "count(my sticks) is less than 3" },
        { "me can lya", "me can lay" },
        { "count(field)", "count(my field)" },
        { "bays of my field + 1", "count(bays of my field) + 1" },
        { "bay of A1 is at least 2", "order of bay of A1 is at least 2" },
        { "turns is 20", "turn number is 20" },
        { "count(turns) is 20", "turn number is 20" },
        { "round is at most 10", "round number is at most 10" },
        { "number of turns is 20", "turn number is 20" },
        { "2 + number of rounds is 20", "2 + round number is 20" },
        { "what of my last lya is top of A1", "what of my last lay is top of A1" },
        { "A1 is a jug", "A1 shows a jug" },
        { "any(s in my field where s is copper or ash)", "any(s in my field where s shows copper or ash)" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Message_underlines_the_words_that_are_wrong(string id, string marked)
    {
        MarkedText wanted = MarkedText.Of(marked);

        Diagnostic problem = Assert.Single(BenchSheet.ProblemsOf(wanted.Text), p => p.Id == id);

        Assert.Equal((1, wanted.Start + 1, wanted.Length), (problem.At.StartPosition.Line, problem.At.StartPosition.Column, problem.At.Length));
        Assert.Empty(PlainWords.ForbiddenIn(problem));
    }

    [Theory]
    [MemberData(nameof(Fixes))]
    public void Fix_removes_its_problem(string wrong, string mended)
    {
        Fix fix = BenchSheet.ProblemsOf(wrong)[0].Fix!;

        string applied = TextEdit.Apply(wrong, fix.Edits);

        Assert.Equal(mended, applied);
        Assert.Empty(BenchSheet.ProblemsOf(applied));
    }

    // A line has a number of its own, and several spaces; of several things there is only how many.
    [Theory]
    [InlineData("number of bay of A1 is 2", "Write 'order of bay of A1' for its number, from 1; or 'count(bay of A1)' for how many spaces it has.")]
    [InlineData("bay of A1 is at least 2", "Write 'order of bay of A1' for its number, from 1; or 'count(bay of A1)' for how many spaces it has.")]
    [InlineData("bays of my field is at least 2", "Write 'count(…)' round it.")]
    [InlineData("number of bays of my field is 2", "Write 'count(…)'.")]
    [InlineData("stroll was done the turn before by me", "The actions are 'lay', 'trade' and 'use the kiln'.")]
    [InlineData("spot of my last stroll is A1", "The actions are 'lay', 'trade' and 'use the kiln'.")]
    public void Way_out_fits_what_was_written(string formula, string hint) => Assert.Equal(hint, Assert.Single(BenchSheet.ProblemsOf(formula)).Hint);

    [Fact]
    public void Their_is_refused_where_three_play()
    {
        Diagnostic problem = Assert.Single(BenchSheet.ProblemsOf("their field is full", players: 3));

        Assert.Equal(("ROS0208", "their field"), (problem.Id, problem.At.Text));
    }

    [Fact]
    public void Sixty_five_parts_inside_each_other_are_too_many()
    {
        string formula = string.Concat(Enumerable.Repeat("not ", 65)) + "lit";

        Assert.Equal("ROS0184", Assert.Single(BenchSheet.ProblemsOf(formula)).Id);
    }

    [Fact]
    public void Circle_names_the_way_round()
    {
        Diagnostic problem = FormulaProblems.Circle(BenchSheet.Text("open").Span, "open", "open, closed, open");

        Assert.Equal("'open' is explained by itself: open, closed, open.", problem.Message);
        Assert.Empty(PlainWords.ForbiddenIn(problem));
    }

    [Fact]
    public void Position_counts_lines_and_characters()
    {
        Diagnostic problem = Assert.Single(BenchSheet.ProblemsOf("count(jugs in my field)\n  + count(jugs in my feild)"));

        Assert.Equal((2, 22), (problem.At.StartPosition.Line, problem.At.StartPosition.Column));
    }

    [Theory]
    [InlineData("yes if lit otherwise no", "yes if lit otherwise no")]
    [InlineData("no(jugs in my field)", "no(jugs in my field)")]
    [InlineData("A1 is (nothing)", "A1 is (nothing)")]
    [InlineData("the jug in A1 is whole", "the jug in A1 is whole")]
    [InlineData("count(run(x from A1 going above while x is empty)) is three", "count(run(x from A1 going above while x is empty)) is 3")]
    [InlineData("any(b in bays of my field where b is not (bay C of my field))", "any(b in bays of my field where b is not bay C of my field)")]
    [InlineData("(2 + 3) times (4)", "(2 + 3) times 4")]
    [InlineData("2 - (3 - 4)", "2 - (3 - 4)")]
    [InlineData("lit and (lit or lit)", "lit and (lit or lit)")]
    [InlineData("top of A1 is ash or iron or (lit)", "top of A1 is ash or iron or (lit)")]
    [InlineData("count(jugs in (my field where it is not empty))", "count(jugs in (my field where it is not empty))")]
    [InlineData("what of my last lay is nothing", "what of my last lay is nothing")]
    [InlineData("I can lay top of A1", "me can lay top of A1")]
    [InlineData("me can lay top of A1 on B1 and lit", "me can lay top of A1 on B1 and lit")]
    [InlineData("any(p in players where p can use the kiln)", "any(p in players where p can use the kiln)")]
    [InlineData("count(my supply) is between (1 + 2) and 4", "count(my supply) is between 1 + 2 and 4")]
    public void Formula_prints_in_its_canonical_spelling(string written, string printed)
    {
        var problems = new DiagnosticBag();

        Syntax syntax = new FormulaParser(BenchSheet.Text(written), BenchSheet.Declare().Names, problems).ReadAll();

        Assert.Equal(printed, FormulaPrinter.Print(syntax));
        Assert.Equal(0, problems.Count);
    }
}
