using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>A place where the sources are silent or disagree, and what the lesson does about it.</summary>
/// <param name="Title">What it is about, in a few words, such as <c>Worth of Commission 11</c>.</param>
/// <param name="Words">The question as one would ask the publisher, or that the sources disagree; one to three sentences.</param>
/// <param name="Pages">Where the matter stands, such as <c>Rulebook, page 7</c>.</param>
/// <param name="Answers">The possible answers: what each source says, or each reading; empty where nobody wrote any down.</param>
/// <param name="Why">Why the answer is followed that is followed; empty if nobody said.</param>
public sealed record PageQuestion(string Title, string Words, string Pages, ImmutableArray<QuestionAnswer> Answers, string Why)
{
    /// <summary>The variant that the question belongs to; empty for the rules without one.</summary>
    public string Variant { get; init; } = "";

    /// <summary>True while the lesson follows none of the answers.</summary>
    public bool IsOpen => !Answers.Any(a => a.IsFollowed);
}

/// <summary>One answer to a question that the sources leave open or answer differently.</summary>
/// <param name="Who">The source or the name of the reading, with the sign that ends it, such as <c>Player aid, page 1:</c>.</param>
/// <param name="Says">What it says, as a sentence; empty where its name says it.</param>
/// <param name="IsFollowed">True for the answer that the lesson follows.</param>
public sealed record QuestionAnswer(string Who, string Says, bool IsFollowed);
