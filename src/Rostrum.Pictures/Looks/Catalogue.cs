using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace Rostrum.Pictures;

/// <summary>Something that a rule sheet picks by its word.</summary>
public interface INamedLook
{
    /// <summary>One lower-case word, unique in its list.</summary>
    string Name { get; }
}

/// <summary>Looks things up by their word in a short list.</summary>
internal static class Catalogue
{
    public static bool TryFind<T>(ImmutableArray<T> all, string name, [NotNullWhen(true)] out T? found)
        where T : class, INamedLook
    {
        found = all.FirstOrDefault(entry => entry.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        return found is not null;
    }

    public static T Find<T>(ImmutableArray<T> all, string name, string whatItIs)
        where T : class, INamedLook =>
        TryFind(all, name, out T? found)
            ? found
            : throw new ArgumentException($"There is no {whatItIs} '{name}'. There are: {string.Join(", ", all.Select(entry => entry.Name))}.", nameof(name));
}
