namespace Rostrum.Lessons.Captions.Breaking;

/// <summary>What the breaker weighs. The guides say what is better, not how much; the weights are our choice.</summary>
/// <remarks>All in one unit. Sums stay far below the range of a long: the largest weight times ten million words is 10^14.</remarks>
internal static class BreakCosts
{
    /// <summary>One more caption; so that two short sentences share one where both fit.</summary>
    public const long Cue = 40;

    /// <summary>A caption ends at the end of a sentence.</summary>
    public const long SentenceEnd = 0;

    /// <summary>Behind a comma, semicolon, colon or dash, or at a pause of <see cref="PauseMilliseconds"/>.</summary>
    public const long Clause = 10;

    /// <summary>Before a conjunction.</summary>
    public const long BeforeConjunction = 20;

    /// <summary>Before a preposition.</summary>
    public const long BeforePreposition = 30;

    /// <summary>Anywhere else.</summary>
    public const long Elsewhere = 60;

    /// <summary>Behind a conjunction or preposition, which belongs to what follows.</summary>
    public const long BehindSmallWord = 120;

    /// <summary>Between an article and its noun or inside a number: only where nothing else can be done.</summary>
    public const long Never = 1_000_000;

    /// <summary>A sentence ends inside a caption and another begins.</summary>
    public const long SentenceInside = 30;

    /// <summary>A silence of <see cref="SilenceMilliseconds"/> or more inside a caption.</summary>
    public const long SilenceInside = 200;

    /// <summary>The last two lines of a caption differ by this many characters: costs 1.</summary>
    public const long RaggedCharacters = 4;

    /// <summary>A break between two lines counts this part of one between captions.</summary>
    public const long LineShare = 2;

    /// <summary>A hundredth of a second by which a caption is seen too short or too long.</summary>
    public const long WrongLength = 5;

    /// <summary>A hundredth of a second that a reader lacks.</summary>
    public const long TooFast = 1;

    /// <summary>The next caption begins so soon that this one cannot be seen at all.</summary>
    public const long Unseen = 10_000_000;

    /// <summary>A pause at which one may break as behind a comma; captions made by machine have no commas.</summary>
    public const long PauseMilliseconds = 500;

    /// <summary>A pause over which a caption should not stand.</summary>
    public const long SilenceMilliseconds = 1500;
}
