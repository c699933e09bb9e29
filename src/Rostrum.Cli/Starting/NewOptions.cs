using System.CommandLine;

namespace Rostrum.Cli.Starting;

/// <summary>The options of <c>rostrum new</c>, one for each question.</summary>
internal sealed class NewOptions
{
    /// <summary>The name of the game.</summary>
    public Option<string?> Game { get; } = new("--game") { HelpName = "NAME", Description = "What the game is called; else the name of the folder." };

    /// <summary>How many play.</summary>
    public Option<string?> Players { get; } = new("--players") { HelpName = "N", Description = "How many play, such as '2 to 4', which it is if you do not say." };

    /// <summary>The pieces.</summary>
    public Option<string?> Pieces { get; } = new("--pieces") { HelpName = "LIST", Description = "The pieces and how many of each, such as 'coin 30, lamp 12'; an unusual plural behind '/': 'lily/lilies 20'." };

    /// <summary>The board.</summary>
    public Option<string?> Board { get; } = new("--board") { HelpName = "SHAPE", Description = "A board of each player: 'squares 5 across 4 up', 'hexes rows of 3 4 3', 'hexes radius 2' or 'none'; else squares 4 across 3 up." };

    /// <summary>Whether every player keeps pieces.</summary>
    public Option<string?> Heaps { get; } = new("--heaps") { HelpName = "yes|no", Description = "Whether players keep pieces in front of them; else yes." };

    /// <summary>What scores.</summary>
    public Option<string?> Score { get; } = new("--score") { HelpName = "IDEA", Description = $"What scores: {string.Join(", ", Answers.Ideas.Select(i => i.Word))}; else each." };

    /// <summary>Whether the sheet is played.</summary>
    public Option<string?> Turn { get; } = new("--turn") { HelpName = "yes|no", Description = "Whether the sheet has a turn and an end, so that whole games are played and counted; else yes." };

    /// <summary>All of them.</summary>
    public IReadOnlyList<Option<string?>> All => [Game, Players, Pieces, Board, Heaps, Score, Turn];
}
