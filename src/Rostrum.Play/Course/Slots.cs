namespace Rostrum.Play.Course;

/// <summary>The first numbers of every state: what the course of any game keeps. Marks, memory and choices follow.</summary>
internal static class Slots
{
    /// <summary>The position in the code of the step that is due.</summary>
    public const int Step = 0;

    /// <summary>The seat that acts.</summary>
    public const int Me = 1;

    /// <summary>The seat whose turn it is.</summary>
    public const int Turn = 2;

    /// <summary>The seat that starts a round.</summary>
    public const int Start = 3;

    /// <summary>1 where the same player has another turn.</summary>
    public const int Extra = 4;

    /// <summary>How many turns are left once an end has come; -1 before that.</summary>
    public const int TurnsLeft = 5;

    /// <summary>The end that came, by its position in the sheet; -1 for none.</summary>
    public const int End = 6;

    /// <summary>Who wins by that end, one bit a seat; -1 where the totals say.</summary>
    public const int Winners = 7;

    /// <summary>Who is out, one bit a seat.</summary>
    public const int Out = 8;

    /// <summary>The number of the round from 1; 0 where nobody asks for it.</summary>
    public const int Round = 9;

    /// <summary>The number of the turn from 1; 0 where nobody asks for it.</summary>
    public const int TurnNumber = 10;

    /// <summary>1 once the game is over.</summary>
    public const int Over = 11;

    /// <summary>How many there are.</summary>
    public const int Count = 12;
}
