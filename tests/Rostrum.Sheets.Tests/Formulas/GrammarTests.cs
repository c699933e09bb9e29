using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading.Sections;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Holds the grammar of <c>docs/language.md</c> and the reading of formulas and steps together, by sentences made from the grammar.</summary>
public sealed class GrammarTests
{
    private const int Sentences = 2500;

    private static readonly IReadOnlyDictionary<string, GrammarPart> Rules = Grammar.Read(TestFiles.Read("docs/language.md"));

    private static readonly Vocabulary Names = BenchSheet.WithLetters().Names;

    private static readonly ActionName[] Actions = [.. Names.All.Select(n => n.Symbol).OfType<ActionName>()];

    private static readonly Dictionary<string, string[]> Classes = new()
    {
        ["NUMBER"] = ["2", "7", "three"],
        ["NAME"] = ["A1", "C3", "limit", "market", "crate", "leader", "lit", "players", "opponent", "start player", "s", "n", "v"],
        ["COUNTED"] = ["limit", "m", "n"],
        ["BLOCK"] = ["set-up", "turn", "course", "closing"],
        ["PLAYER"] = ["p", "opponent", "start player"],
        ["VALUE"] = ["copper", "ash", "whole", "jug", "plates", "cracked"],
        ["KIND"] = ["ware", "stick", "orders", "fire dice"],
        ["CARD"] = ["First order", "Second order"],
        ["SPOTS"] = ["shelf", "shelves", "stall"],
        ["ADJECTIVE"] = ["empty", "full", "open", "ready"],
        ["OWNED"] = ["field", "sticks", "coins", "carried", "accepted", "supply"],
        ["NOUN"] = ["glaze", "wear", "worth", "picture", "run points", "coins", "carried", "top", "height", "first", "last", "neighbours", "left", "bays", "tier", "owner", "order", "face"],
        ["FAMILY"] = ["bay", "tier"],
        ["LABEL"] = ["C", "2"],
        ["PAIRWORD"] = ["touching", "clash"],
        ["SETWORD"] = ["set worth"],
        ["DIRECTION"] = ["left", "right", "north"],
        ["LETTER"] = ["x", "y", "zz"],
        ["NEWNAME"] = ["pot", "best pick"],
        ["ACTION"] = ["lay", "trade", "use the kiln"],
        ["PHRASE"] = [],
        ["CHOICE"] = ["what", "spot", "shelf"],
        ["ENDNAME"] = ["three in a row", "pile empty"],
        ["WORDS"] = ["give", "hand over", "for", "up front"],
        ["GAP"] = ["(what)", "(the other)"],
    };

    [Fact]
    public void Every_rule_of_the_grammar_is_defined_and_every_class_is_known()
    {
        GrammarPart[] all = [.. Rules.Values.SelectMany(r => r.All)];

        Assert.Empty(all.OfType<GrammarPart.Rule>().Select(r => r.Name).Except(Rules.Keys));
        Assert.Empty(all.OfType<GrammarPart.Class>().Select(c => c.Name).Except(Classes.Keys));
        Assert.Empty(Rules.Keys.Except(all.OfType<GrammarPart.Rule>().Select(r => r.Name)).Except(["formula", "step", "head", "domain", "phrase"]));
    }

    [Fact]
    public void Grammar_names_every_operation_that_takes_brackets()
    {
        string[] said = [.. Rules["call"].All.OfType<GrammarPart.Words>().Select(w => w.Said)];

        Assert.Empty(Operations.All.Where(o => o.Form == OperationForm.Function).Select(o => o.Name).Except(said));
    }

    [Fact]
    public void Grammar_has_every_beginning_of_a_step()
    {
        var maker = new SentenceMaker(Rules, Classes, seed: 13);
        string[] made = [.. ((string[])["step", "head"]).SelectMany(rule => Enumerable.Range(0, Sentences).Select(_ => $"{maker.Make(rule)} "))];

        Assert.All(StepWords.All, begin => Assert.Contains(made, m => m.StartsWith($"{begin} ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Page_says_every_word_with_which_a_game_ends()
    {
        string page = TestFiles.Read("docs/language.md");

        Assert.All(EndSection.FollowWords.Concat(EndSection.WinnerWords).Concat(ActionsSection.BlockKeys), words => Assert.Contains($"`{words}`", page));
    }

    [Theory]
    [InlineData("formula")]
    [InlineData("step")]
    [InlineData("head")]
    [InlineData("domain")]
    [InlineData("phrase")]
    public void Sentence_of_the_grammar_reads_without_a_message_and_prints_back(string rule)
    {
        var maker = new SentenceMaker(Rules, Classes, seed: 20260725);

        string[] wrong = [.. Enumerable.Range(0, Sentences).Select(_ => maker.Make(rule)).Select(s => WrongWith(rule, s)).OfType<string>().Take(12)];

        Assert.Equal("", string.Join('\n', wrong));
    }

    [Fact]
    public void Sentences_take_every_way_of_the_grammar()
    {
        var maker = new SentenceMaker(Rules, Classes, seed: 7);

        string[] starts = ["formula", "step", "head", "domain", "phrase"];
        string[] made = [.. starts.SelectMany(rule => Enumerable.Range(0, Sentences).Select(_ => maker.Make(rule)))];

        Assert.NotEmpty(made);
        Assert.Equal("", string.Join('\n', maker.NotTaken));
    }

    [Fact]
    public void Sentence_of_the_grammar_binds_or_is_refused_in_plain_words()
    {
        var maker = new SentenceMaker(Rules, Classes, seed: 11);

        string[] forbidden = [.. Enumerable.Range(0, Sentences).SelectMany(_ => BenchSheet.ProblemsWithLetters(maker.Make("formula"))).SelectMany(PlainWords.ForbiddenIn)];

        Assert.Empty(forbidden);
    }

    [Theory]
    [InlineData("formula")]
    [InlineData("step")]
    [InlineData("head")]
    [InlineData("domain")]
    [InlineData("phrase")]
    public void Words_in_any_order_are_read_or_refused_in_plain_words(string rule)
    {
        var maker = new SentenceMaker(Rules, Classes, seed: 5);
        string[] words = [.. Enumerable.Range(0, 300).SelectMany(_ => maker.Make(rule).Replace("(", " ( ", StringComparison.Ordinal).Split(' ')).Append("*").Append("zebra")];
        var random = new Random(3);

        Diagnostic[] messages = [.. Enumerable.Range(0, Sentences)
            .Select(_ => Read(rule, string.Join(' ', random.GetItems(words, random.Next(9)))).Problem).OfType<Diagnostic>()];

        Assert.NotEmpty(messages);
        Assert.Empty(messages.SelectMany(PlainWords.ForbiddenIn));
    }

    private static string? WrongWith(string rule, string sentence)
    {
        (string shape, string printed, Diagnostic? problem) = Read(rule, sentence);
        if (problem is not null)
        {
            return $"{sentence} -> {problem.Id} at {problem.At.StartPosition}: {problem.Message}";
        }

        (string again, _, Diagnostic? other) = Read(rule, printed);
        return shape == again && other is null ? null : $"{sentence} -> {printed} -> {other?.Message ?? again} instead of {shape}";
    }

    private static (string Shape, string Printed, Diagnostic? Problem) Read(string rule, string sentence)
    {
        var problems = new DiagnosticBag();
        var parser = new FormulaParser(BenchSheet.Text(sentence), Names, problems);
        (string Shape, string Printed) read = rule switch
        {
            "formula" => Told(parser.ReadAll(), SyntaxShape.Of, FormulaPrinter.Print),
            "step" => Told(parser.ReadAllAsStep(Actions), SyntaxShape.Of, StepPrinter.Print),
            "head" => Told(parser.ReadAllAsHead(Actions), SyntaxShape.Of, StepPrinter.Print),
            "domain" => Told(parser.ReadAllAsDomain(), SyntaxShape.Of, StepPrinter.Print),
            _ => Told(new PhraseReader(problems).Read(BenchSheet.Text(sentence)), p => string.Join('|', p.Parts), p => p.InWords),
        };
        return (read.Shape, read.Printed, problems.InOrder().FirstOrDefault());
    }

    private static (string Shape, string Printed) Told<T>(T? read, Func<T, string> shape, Func<T, string> print)
        where T : class => read is null or Syntax.Broken ? ("", "") : (shape(read), print(read));
}
