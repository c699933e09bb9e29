using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>Something that a sheet (or the kernel) gives a name to, so that formulas may speak of it.</summary>
/// <param name="name">The singular, as the author wrote it.</param>
/// <param name="declaredAt">Where it was named; null for names of the kernel.</param>
public abstract class Named(string name, SourceSpan? declaredAt)
{
    /// <summary>The singular, as the author wrote it.</summary>
    public string Name { get; } = name;

    /// <summary>Where it was named; null for names of the kernel.</summary>
    public SourceSpan? DeclaredAt { get; } = declaredAt;

    /// <summary>What sort of name it is, in words for messages, such as <c>a kind of piece</c>.</summary>
    public abstract string Role { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
