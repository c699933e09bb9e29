using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Telling;
using Rostrum.Play.Tests.Reference;

namespace Rostrum.Play.Tests.Outside;

/// <summary>Peg solitaire on 33 holes: positions and sequences jump by jump, and one perfect game.</summary>
/// <remarks>Source: <c>Reference/peg_solitaire_english33.csv</c>. A sequence that cannot go on counts where it ends and not after.</remarks>
public sealed class PegSolitaireTests
{
    private const string Name = "traditional/peg-solitaire";

    // Found by a search over our own rules, depth first; not published anywhere.
    private const string Perfect =
        "D6 over D5, B5 over C5, C7 over C6, E7 over D7, D5 over C5, A5 over B5, E5 over E6, G5 over F5, "
        + "C4 over C5, C7 over C6, A4 over B4, C4 over C5, E4 over E5, E7 over E6, G4 over F4, E4 over E5, "
        + "C2 over C3, A3 over B3, C3 over C4, C6 over C5, C4 over D4, E3 over E4, E6 over E5, G3 over F3, "
        + "D3 over E3, E1 over E2, E4 over E3, C1 over D1, E1 over E2, F3 over E3, D2 over D3";

    [Fact]
    public void Positions_and_sequences_up_to_jump_6() => Counted(6);

    [Fact]
    [Trait("Category", "Slow")]
    public void Positions_and_sequences_up_to_jump_10() => Counted(10);

    [Fact]
    public void A_perfect_game_ends_with_one_peg_in_the_middle()
    {
        CoursePlan plan = TableOf.Shipped(Name).Plan;
        var machine = new Machine(plan) { State = plan.Start() };
        var phrases = new PhraseWriter(plan);

        foreach (string jump in Perfect.Split(", "))
        {
            Moment.Decision decision = Assert.IsType<Moment.Decision>(machine.Advance());
            machine.Choose(decision.Options[phrases.All(machine.State, decision.Options).IndexOf($"jump from {jump}")]);
        }

        Assert.IsType<Moment.GameOver>(machine.Advance());
        Assert.Equal((31, 1), (Perfect.Split(", ").Length, Reckoning.Total(machine, 0)));
    }

    private static void Counted(int jumps)
    {
        PlyCount[] counts = [.. TableOf.Shipped(Name).Count(jumps)];

        Assert.Equal(Published("jump_sequences", jumps), counts.Select(c => (long)c.Lines));
        Assert.Equal(Published("positions", jumps), counts.Select(c => c.Distinct!.Value));
        Assert.Equal(Published("dead_ends", jumps), counts.Select(c => c.Results.Sum(r => r.Positions!.Value)));
        Assert.Equal(Published("games_ending_here", jumps), counts.Select(c => (long)c.Ended));
    }

    private static IEnumerable<long> Published(string column, int jumps) => ReferenceTable.Column("peg_solitaire_english33.csv", column).Take(jumps + 1).Select(ReferenceTable.Number);
}
