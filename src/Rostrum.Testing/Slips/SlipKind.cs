namespace Rostrum.Testing.Slips;

/// <summary>What a hand gets wrong on a keyboard.</summary>
public enum SlipKind
{
    /// <summary>One letter in place of another.</summary>
    LetterChanged,

    /// <summary>A letter left out.</summary>
    LetterDropped,

    /// <summary>A letter twice.</summary>
    LetterDoubled,

    /// <summary>Two letters beside each other, the wrong way round.</summary>
    LettersSwapped,

    /// <summary>A word left out.</summary>
    WordDropped,

    /// <summary>A word twice.</summary>
    WordDoubled,

    /// <summary>Another word of the same file in place of one.</summary>
    WordReplaced,

    /// <summary>Another number.</summary>
    NumberChanged,

    /// <summary>A line left out.</summary>
    LineMissing,

    /// <summary>A line twice.</summary>
    LineDoubled,

    /// <summary>A line further in or out, or a tab before it.</summary>
    IndentChanged,

    /// <summary>A comma one word too early or too late.</summary>
    CommaMoved,

    /// <summary>A comma left out.</summary>
    CommaRemoved,

    /// <summary>A colon left out.</summary>
    ColonRemoved,

    /// <summary>No blank behind a colon or a comma.</summary>
    BlankRemoved,

    /// <summary>A bracket or quote left out.</summary>
    BracketRemoved,
}
