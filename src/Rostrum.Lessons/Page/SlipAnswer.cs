namespace Rostrum.Lessons.Page;

/// <summary>What a slip says at its head.</summary>
public abstract record SlipAnswer
{
    private SlipAnswer() { }

    /// <summary>A ruling.</summary>
    /// <param name="Word">The verdict, such as <c>allowed</c>, <c>no</c> or <c>the sheet does not say</c>.</param>
    /// <param name="Tone">Which of three tones the word is printed in; never the only carrier of the meaning.</param>
    public sealed record Verdict(string Word, SlipTone Tone) : SlipAnswer;

    /// <summary>A score.</summary>
    /// <param name="Points">Whole points; may be negative.</param>
    /// <param name="IsAtLeast">True if something unknown could add to it.</param>
    public sealed record Total(long Points, bool IsAtLeast = false) : SlipAnswer;

    /// <summary>A number or name as the sheet gives it.</summary>
    /// <param name="Words">The fact, such as <c>72</c>.</param>
    public sealed record Fact(string Words) : SlipAnswer;
}
