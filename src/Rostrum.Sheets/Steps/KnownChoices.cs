using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Steps;

/// <summary>What is known of the choices of an action while they are read: a choice may speak of what was chosen the last time.</summary>
/// <param name="names">The names of the choices, in order.</param>
internal sealed class KnownChoices(ImmutableArray<string> names)
{
    private readonly Sort?[] _sorts = new Sort?[names.Length];

    /// <summary>The names of the choices, in order.</summary>
    public ImmutableArray<string> Names => names;

    /// <summary>What a choice stands for; null as long as that is not known.</summary>
    public Sort? SortOf(int choice) => _sorts[choice];

    /// <summary>Notes what a choice stands for.</summary>
    public void Learn(int choice, Sort sort) => _sorts[choice] = sort;
}
