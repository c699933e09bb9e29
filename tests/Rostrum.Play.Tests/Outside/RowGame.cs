namespace Rostrum.Play.Tests.Outside;

/// <summary>The family of games in which k own stones in a straight line win on a grid of m by n.</summary>
internal static class RowGame
{
    /// <summary>One of them, made ready.</summary>
    public static GameTable Of(int m, int n, int k) => TableOf.Written($$"""
        rule sheet: 1
        game: Row
        players: 2
        pieces:
          stone: {each player: {{((m * n) + 1) / 2}}}
        boards:
          grid: {squares: {{m}} across {{n}} up, neighbours: sides and corners}
        turn: put
        actions:
          put:
            phrase: put at (spot)
            choose: {spot: a space in grid}
            do: move a stone from my supply to spot
        laws:
          on an empty space: {binds: put, needs: spot is empty}
        end:
          row:
            if: any(line in straights(grid, {{k}}) where all(s in line, s shows my stone))
            then: at once
            winner: me
          grid full: {if: grid is full, then: at once, winner: nobody}
        """);
}
