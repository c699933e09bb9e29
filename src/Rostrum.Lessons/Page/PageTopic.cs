using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>One topic of the lesson: a level 2 heading with what stands under it.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Slug">The topic's name in links; unique among the topics. Odd characters become hyphens.</param>
/// <param name="Blocks">Paragraphs, lists, quotes and figures from top to bottom.</param>
public sealed record PageTopic(string Title, string Slug, ImmutableArray<PageBlock> Blocks);
