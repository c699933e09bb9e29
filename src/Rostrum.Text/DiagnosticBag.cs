using System.Collections.Immutable;

namespace Rostrum.Text;

/// <summary>Collects problems while a text is read, so that all of them are told at once.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> _found = [];
    private readonly HashSet<(string Id, SourceSpan At)> _seen = [];

    /// <summary>True when at least one error was added.</summary>
    public bool HasErrors => _found.Exists(d => d.Severity == Severity.Error);

    /// <summary>How many were added.</summary>
    public int Count => _found.Count;

    /// <summary>Adds a problem, unless the same id already stands at the same place (an echo of one cause).</summary>
    public void Add(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        if (_seen.Add((diagnostic.Id, diagnostic.At)))
        {
            _found.Add(diagnostic);
        }
    }

    /// <summary>Adds all of them, echoes left out.</summary>
    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (Diagnostic diagnostic in diagnostics)
        {
            Add(diagnostic);
        }
    }

    /// <summary>Everything found, by file, then by place in it.</summary>
    public ImmutableArray<Diagnostic> InOrder() =>
        [.. _found.OrderBy(d => d.At.Source.Name, StringComparer.Ordinal).ThenBy(d => d.At.Start).ThenBy(d => d.Id, StringComparer.Ordinal)];
}
