using System.Collections.Immutable;

namespace Rostrum.Lessons.Coverage;

/// <summary>Finds the clauses that a mark or a note of the lesson names.</summary>
internal sealed class NamedClauses(ImmutableArray<LessonClause> clauses)
{
    private readonly ILookup<string, LessonClause> _byName = clauses
        .SelectMany(c => c.Called.Append(c.Name).Append(c.LongName).Append($"{LessonClause.SectionOf(c.Sort)}/{c.Name}").Distinct().Select(n => (n, c)))
        .Concat(clauses.Where(c => c.Variant is not null).Select(c => (n: c.Variant!, c)))
        .Concat(clauses.Where(c => c.Variant is null).Select(c => (n: LessonClause.SectionOf(c.Sort), c)))
        .ToLookup(p => p.n, p => p.c, StringComparer.OrdinalIgnoreCase);

    /// <summary>All of a name: a clause, a variant with everything that it changes, or a section such as <c>ties</c>; empty for none.</summary>
    public IEnumerable<LessonClause> Of(string name) => _byName[name];

    /// <summary>Every name that would be understood.</summary>
    public IEnumerable<string> Names => _byName.Select(g => g.Key);
}
