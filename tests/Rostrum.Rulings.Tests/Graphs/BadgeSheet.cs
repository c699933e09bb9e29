using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tests.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Tests.Graphs;

/// <summary>A game of badges, each with a symbol and a colour of its own, that are parted into sets.</summary>
internal static class BadgeSheet
{
    private static readonly string[] Symbols = ["sun", "moon", "star", "leaf", "drop", "bird"];
    private static readonly string[] Colours = ["red", "blue", "green", "white"];

    /// <summary>Words that say what a set is worth.</summary>
    public const string Words = """
          symbol count (set of badge w): different(b in w, symbol of b)
          colour count (set of badge w): different(b in w, colour of b)
          trio (set of badge w): 0 if count(w) is not 3 otherwise (5 if symbol count(w) is 3 otherwise (4 if symbol count(w) is 1 otherwise 0))
          fours (set of badge w): 0 if count(w) is at least 5 otherwise (2 times count(w) - 1 if symbol count(w) is count(w) and colour count(w) is count(w) otherwise 0)
          broad (set of badge w): symbol count(w) times colour count(w)
          squares (set of badge w): count(w) times count(w)
          pairing (set of badge w): 3 if any(b in w where b is Badge 1) and count(w) is 2 otherwise 0
          lonely (set of badge w): minus 2 if count(w) is 1 otherwise (1 if count(w) is 2 otherwise minus 9)
          red pairs (set of badge w): count(b in w where b is red) if count(w) is 2 otherwise 0

        """;

    /// <summary>The sheet with so many badges.</summary>
    /// <param name="badges">How many cards there are.</param>
    /// <param name="symbols">How many symbols they bear, in turn.</param>
    /// <param name="worth">The word by which the score splits.</param>
    public static Sheet Of(int badges, int symbols, string worth) => Game.Of($$"""
        cards:
          badge:
            attributes: {symbol: [{{string.Join(", ", Symbols)}}], colour: [{{string.Join(", ", Colours)}}]}
            rows:
        {{string.Join('\n', Enumerable.Range(0, badges).Select(i => $"      Badge {i + 1}: {{symbol: {Symbols[i % symbols]}, colour: {Colours[i / symbols % 4]}}}"))}}
        places:
          badges: {heap of: badge, of: each player}
        words:
        {{Words}}
        score:
          sets: best split(my badges, worth {{worth}})
        """);

    /// <summary>A position in which seat 1 has all badges.</summary>
    public static Position All(Sheet sheet, int badges) =>
        Game.Position(sheet, $"seat 1:\n  badges: [{string.Join(", ", Enumerable.Range(1, badges).Select(i => $"Badge {i}"))}]\nturn of: seat 1\n");
}
