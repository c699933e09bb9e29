using System.Collections.Immutable;

namespace Rostrum.Lessons.Prompter;

/// <summary>What a teleprompter shows: the words to be spoken, large, and quiet directions between them.</summary>
/// <param name="Title">Of the lesson.</param>
/// <param name="Presenter">Who speaks; empty where that is not given.</param>
/// <param name="WordsAMinute">The pace at which it begins to scroll.</param>
/// <param name="Topics">In the order of speech.</param>
public sealed record PrompterScript(string Title, string Presenter, int WordsAMinute, ImmutableArray<PrompterTopic> Topics)
{
    /// <summary>The language of all texts, as BCP 47 writes it.</summary>
    public string Language { get; init; } = "en";
}

/// <summary>A topic on the prompter.</summary>
/// <param name="Title">Not to be spoken.</param>
/// <param name="Start">When it begins at the pace of the script.</param>
/// <param name="Blocks">What is spoken and shown, from top to bottom.</param>
public sealed record PrompterTopic(string Title, TimeSpan Start, ImmutableArray<PrompterBlock> Blocks);

/// <summary>A piece of a topic on the prompter. Closed: the four below and no more.</summary>
public abstract record PrompterBlock
{
    private PrompterBlock()
    {
    }

    /// <summary>Words spoken in one breath.</summary>
    /// <param name="Said">The words.</param>
    public sealed record Spoken(PrompterPassage Said) : PrompterBlock;

    /// <summary>A list that is spoken item by item.</summary>
    /// <param name="IsNumbered">True where the order matters.</param>
    /// <param name="Items">The words of each item.</param>
    public sealed record List(bool IsNumbered, ImmutableArray<PrompterPassage> Items) : PrompterBlock;

    /// <summary>A heading inside of a topic; not to be spoken.</summary>
    /// <param name="Words">The heading.</param>
    public sealed record Heading(string Words) : PrompterBlock;

    /// <summary>What happens there and is not spoken, such as a shot.</summary>
    /// <param name="Kind">One word, such as <c>Shot</c>.</param>
    /// <param name="Words">What is seen.</param>
    /// <param name="HoldSeconds">How long the presenter is silent; 0 where words go on.</param>
    public sealed record Direction(string Kind, string Words, int HoldSeconds) : PrompterBlock;
}

/// <summary>Words spoken in one breath.</summary>
/// <param name="Runs">In order; together they are the words of the lesson.</param>
/// <param name="Words">How many words they are, as the lesson counts them.</param>
public sealed record PrompterPassage(ImmutableArray<PrompterRun> Runs, int Words);

/// <summary>A stretch of words on the prompter.</summary>
/// <param name="Words">As spoken.</param>
/// <param name="IsStressed">True where the voice leans on them.</param>
/// <param name="Direction">What is to be known there and not spoken; empty for nothing.</param>
/// <param name="IsWrong">True where the rules say something else, so that nobody reads it aloud unawares.</param>
public sealed record PrompterRun(string Words, bool IsStressed, string Direction, bool IsWrong);
