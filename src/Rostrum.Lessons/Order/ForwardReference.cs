using Rostrum.Text;

namespace Rostrum.Lessons.Order;

/// <summary>A term that is used before the topic that introduces it.</summary>
/// <param name="Term">The term.</param>
/// <param name="At">Where it is first used.</param>
/// <param name="Topic">The 0-based topic that introduces it.</param>
/// <param name="Sentences">How many sentences use it before: the cost, for in each of them a viewer hears a word without a sense.</param>
/// <param name="WordsBetween">How many words are spoken between its first use and its introduction.</param>
public sealed record ForwardReference(string Term, SourceSpan At, int Topic, int Sentences, int WordsBetween);
