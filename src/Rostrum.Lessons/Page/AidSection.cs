using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>A group of clauses under one heading of the player aid.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Clauses">In the order of the sheet.</param>
public sealed record AidSection(string Title, ImmutableArray<AidClause> Clauses);
