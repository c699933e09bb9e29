using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Variants lie over the base: keys replaced or removed, hooks added, order and collisions.</summary>
public sealed class VariantTests
{
    private const string Sheet = """
        numbers: {m: 3}
        score:
          jugs: {says: A jug., points: 1}
          lamps: {points: 2}
        set-up: nothing
        after set-up: [nothing]
        variants:
          long: {says: A longer game., numbers: {m: 5}}
          plain: {score: {lamps: removed, jugs: {points: 4}}}
          eager: {after set-up: [nothing, nothing]}
          hasty: {numbers: {m: 1}}
          late: {after: long, numbers: {m: 7}}
          both: {when: [long, plain], score: {bowls: {points: 9}}}
          all: {when: [both], score: {plates: {points: 9}}}

        """;

    [Fact]
    public void A_variant_replaces_the_keys_that_it_names_and_keeps_the_others()
    {
        ScoreClause jugs = Loaded.Of(Sheet, "plain").Sheet.Score.Single();

        Assert.Equal(("jugs", "A jug.", 4L), (jugs.Name, jugs.Says, ((Term.Number)jugs.Bodies[0].Points).Amount));
    }

    [Fact]
    public void Hooks_of_two_layers_add_up() =>
        Assert.Equal(3, Loaded.Of(Sheet, "eager").Sheet.Hooks.Single(h => h.Key == "after set-up").Steps.Length);

    [Fact]
    public void A_variant_comes_on_by_itself_when_all_of_those_it_names_are_on()
    {
        ImmutableArray<string> on = Loaded.Of(Sheet, "plain", "long").Sheet.VariantsOn;

        Assert.Equal(["all", "both", "long", "plain"], on.Order());
        Assert.Equal(["long"], Loaded.Of(Sheet, "long").Sheet.VariantsOn);
    }

    [Fact]
    public void After_says_which_comes_last()
    {
        Loaded loaded = Loaded.Of(Sheet, "late", "long");

        Assert.Empty(loaded.Told);
        Assert.Equal(7, loaded.Sheet.Numbers[0].Amount);
    }

    [Theory]
    [InlineData("long", "hasty", "ROS0401", "m")]
    [InlineData("hasty", "long", "ROS0401", "m")]
    public void Two_that_change_one_key_need_an_order(string one, string other, string id, string words)
    {
        Diagnostic problem = Loaded.Problem(Sheet, one, other);

        Assert.Equal((id, words), (problem.Id, problem.At.Text));
        Assert.Equal("'long' and 'hasty' both change 'm', and the sheet does not say which comes last.", problem.Message);
    }

    [Fact]
    public void A_variant_that_comes_on_with_both_may_settle_their_collision() =>
        Assert.Equal(2, Loaded.Of($"{Sheet}  settled: {{when: [long, hasty], numbers: {{m: 2}}}}\n", "long", "hasty").Sheet.Numbers[0].Amount);

    [Fact]
    public void The_order_in_which_variants_are_asked_for_never_matters()
    {
        string[][] orders = [["long", "plain", "eager"], ["eager", "long", "plain"], ["plain", "eager", "long"]];

        Assert.Single(orders.Select(o => string.Join('|', Loaded.Of(Sheet, o).Sheet.VariantsOn)).Distinct());
    }

    [Theory]
    [InlineData("long", "variants: {long: {score: {jugs: removed}}}", "ROS0402", "jugs", "There is no 'jugs' that could be removed.")]
    [InlineData("", "variants: {long: {scor: {}}}", "ROS0201", "scor", "'scor' is not something that a variant can have.")]
    [InlineData("", "variants: {long: {after: lang}}", "ROS0201", "lang", "'lang' is not a variant of this sheet.")]
    [InlineData("", "variants: {long: {when: [lang]}}", "ROS0201", "lang", "'lang' is not a variant of this sheet.")]
    [InlineData("", "variants: {long: longer}", "ROS0811", "longer", "Here should stand what the variant changes, each with its name and a colon.")]
    [InlineData("", "variants: long", "ROS0811", "long", "Here should stand the variants, each with its name and a colon.")]
    public void A_slip_in_a_variant_is_told_at_its_place(string variants, string text, string id, string words, string message)
    {
        Diagnostic problem = Loaded.Problem($"score: {{one: 1}}\n{text}", [.. variants.Split(" ", StringSplitOptions.RemoveEmptyEntries)]);

        Assert.Equal((id, words, message), (problem.Id, problem.At.Text, problem.Message));
    }

    [Fact]
    public void A_variant_that_nobody_declared_is_named_with_the_nearest()
    {
        Diagnostic problem = Loaded.Problem("variants: {long: {}}", "lung");

        Assert.Equal(("ROS0201", "'lung' is not a variant of this sheet.", "Did you mean 'long'?"), (problem.Id, problem.Message, problem.Hint));
        Assert.Null(problem.Fix);
    }

    [Fact]
    public void A_message_about_a_variant_points_into_the_variant()
    {
        Diagnostic problem = Loaded.Problem("score: {jugs: {points: 1}}\nvariants:\n  long: {score: {jugs: {points: cuont(players)}}}\n", "long");

        Assert.Equal(("ROS0201", "3,33", "cuont"), (problem.Id, problem.At.StartPosition.ToString(), problem.At.Text));
    }
}
