using Rostrum.Play.Chance;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Whole;

/// <summary>Games of the repository that can be played from beginning to end, played by chance.</summary>
internal static class RandomGames
{
    // Some of the sentences are games without an end.
    private const int MostMoves = 400;
    private const string Sentences = "tests/Rostrum.Play.Tests/Sentences/";
    private const string Sheets = "tests/Rostrum.Play.Tests/Sheets/";

    /// <summary>Every shipped game whose sheet has a turn or a course.</summary>
    public static IReadOnlyList<string> Shipped { get; } =
        [.. ShippedGames.Names.Where(n => ShippedGames.Open(n).Sheet().Sheet is { } sheet && sheet.Blocks.Any(b => b.Name is "turn" or "course"))];

    /// <summary>The shipped games, and the sheets of the hard sentences and the small games of these tests by their file names.</summary>
    public static IReadOnlyList<string> Names { get; } =
        [.. Shipped, .. In(Sentences), .. In(Sheets)];

    private static IEnumerable<string> In(string folder) =>
        TestFiles.In(folder.TrimEnd('/'), "*.yaml").Where(f => !f.EndsWith(".cases.yaml", StringComparison.Ordinal)).Select(f => f[folder.Length..^".yaml".Length]);

    private static string FileOf(string game) => $"{(In(Sheets).Contains(game) ? Sheets : Sentences)}{game}.yaml";

    /// <summary>A game made ready for the fewest players.</summary>
    public static GameTable Table(string game) => GameTable.Of(Shipped.Contains(game)
        ? ShippedGames.Open(game).Sheet().Sheet!
        : SheetReader.Read(GameFolder.InMemory(game, [(SheetReader.FileName, TestFiles.Read(FileOf(game)))]), ShippedGames.Idioms, []).Sheet!);

    /// <summary>A game as code.</summary>
    public static CoursePlan Plan(string game) => Table(game).Plan;

    /// <summary>The decisions of a game as they come; once the caller goes on, one of the options is taken by chance.</summary>
    /// <param name="plan">The game.</param>
    /// <param name="seed">Of the same seed it is the same game.</param>
    /// <param name="afterMove">Told after each choice and chance event; null for nobody.</param>
    public static IEnumerable<(Machine Machine, Moment.Decision Decision)> Decisions(CoursePlan plan, ulong seed, Action<TableState>? afterMove = null) =>
        Decisions(new Machine(plan) { State = plan.Start() }, seed, afterMove);

    /// <summary>A machine that has played a game to its end, or as far as games are played here.</summary>
    public static Machine Played(CoursePlan plan, ulong seed)
    {
        var machine = new Machine(plan) { State = plan.Start() };
        Assert.All(Decisions(machine, seed, null), d => Assert.NotEmpty(d.Decision.Options));
        return machine;
    }

    private static IEnumerable<(Machine Machine, Moment.Decision Decision)> Decisions(Machine machine, ulong seed, Action<TableState>? afterMove)
    {
        var draws = new Draws(seed, 0, 0);
        for (int moves = 0; moves < MostMoves; moves++)
        {
            switch (machine.Advance())
            {
                case Moment.Decision decision:
                    yield return (machine, decision);
                    machine.Choose(decision.Options[(int)draws.Below((uint)decision.Options.Length)]);
                    break;
                case Moment.Chance chance:
                    machine.Choose(chance.Event, draws.Weighted(chance.Event.Weights));
                    break;
                default:
                    yield break;
            }

            afterMove?.Invoke(machine.State);
        }
    }

    /// <summary>So many of several, by chance; all where there are no more.</summary>
    public static IEnumerable<T> Some<T>(IReadOnlyList<T> all, int most, Draws draws) =>
        all.Count <= most ? all : Enumerable.Range(0, most).Select(_ => all[(int)draws.Below((uint)all.Count)]);
}
