namespace Rostrum.Lessons.Review;

/// <summary>A word or a number as it was heard.</summary>
/// <param name="Text">The words, in small letters and without punctuation: <c>thirty five</c>.</param>
/// <param name="Stem">What it has in common with its kin; empty for a word that says nothing of which rule is meant.</param>
/// <param name="Number">The number that it says; null for a word.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
internal sealed record SpokenToken(string Text, string Stem, long? Number, TimeSpan Start, TimeSpan End)
{
    /// <summary>True for <c>third</c>, <c>3rd</c>: a place in an order, not an amount.</summary>
    public bool IsOrdinal { get; init; }

    /// <summary>True where a sentence ends behind it, as far as captions have points, or where the speaker pauses behind it.</summary>
    public bool EndsSentence { get; init; }

    /// <summary>True for a number that was taken back: <c>three, no, make that two</c>.</summary>
    public bool IsTakenBack { get; init; }

    /// <summary>What else it may have been: machine captions write <c>for</c> where somebody says four. Null for nothing.</summary>
    public long? Homophone { get; init; }

    /// <summary>The number without its sign: 'costs one' and 'is minus one' say the same. Null for a word.</summary>
    public long? Size => Number is { } number ? Math.Abs(number) : null;

    /// <summary>The number, where it was said as an amount and not taken back.</summary>
    public long? Amount => IsOrdinal || IsTakenBack ? null : Number;
}
