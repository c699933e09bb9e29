using System.Collections.Immutable;

namespace Rostrum.Cli.Starting;

/// <summary>What somebody says of a game with which he starts a sheet.</summary>
/// <param name="Name">The game.</param>
/// <param name="Fewest">The fewest players, at least 1.</param>
/// <param name="Most">The most players.</param>
/// <param name="Pieces">At least one kind.</param>
/// <param name="Board">The board that every player has; null where there is none.</param>
/// <param name="HasHeaps">True where every player keeps pieces of each kind in front of him; always so without a board.</param>
/// <param name="Score">What scores.</param>
/// <param name="HasTurn">True where it has a turn and an end, so that whole games are played.</param>
internal sealed record NewGame(string Name, int Fewest, int Most, ImmutableArray<NewPiece> Pieces, NewBoard? Board, bool HasHeaps, ScoreIdea Score, bool HasTurn);

/// <summary>A kind of piece.</summary>
/// <param name="Name">One of them.</param>
/// <param name="Plural">Several.</param>
/// <param name="Count">How many there are, at least 1.</param>
internal sealed record NewPiece(string Name, string Plural, int Count)
{
    /// <summary>What a player's heap of them is called; a heap cannot bear the name of one piece.</summary>
    public string Heap => Plural == Name ? $"{Name} heap" : Plural;
}

/// <summary>A board.</summary>
/// <param name="Key">The key of its shape: <c>squares</c> or <c>hexes</c>.</param>
/// <param name="Shape">Its value, such as <c>5 across 4 up</c>.</param>
internal sealed record NewBoard(string Key, string Shape);

/// <summary>What scores.</summary>
internal enum ScoreIdea
{
    /// <summary>So many points for each piece.</summary>
    Each,

    /// <summary>Points by how many, from a table.</summary>
    Table,

    /// <summary>Sets of one piece of each kind.</summary>
    Sets,

    /// <summary>Full rows of the board.</summary>
    Rows,

    /// <summary>What stands beside a piece.</summary>
    Neighbours,
}
