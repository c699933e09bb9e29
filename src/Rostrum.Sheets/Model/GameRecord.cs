namespace Rostrum.Sheets.Model;

/// <summary>What of a game is numbered.</summary>
public enum CounterKind
{
    /// <summary>The rounds.</summary>
    Round,

    /// <summary>The turns, whoever has them.</summary>
    Turn,
}

/// <summary>How far back the record of a game is looked through.</summary>
public enum DoneWhen
{
    /// <summary>Since the turn at hand began.</summary>
    ThisTurn,

    /// <summary>In the turn just before the one at hand, whoever had it.</summary>
    TurnBefore,

    /// <summary>Since the round at hand began.</summary>
    ThisRound,

    /// <summary>In the round before the one at hand.</summary>
    RoundBefore,

    /// <summary>At any time of the game.</summary>
    Before,
}
