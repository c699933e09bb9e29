using System.Collections.Immutable;

namespace Rostrum.Text;

/// <summary>Collects problems while a text is read, so that all of them are told at once.</summary>
/// <remarks>Keeps the first <see cref="Most"/>: a file that is no sheet at all would otherwise fill the memory with messages that nobody reads.</remarks>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> _found = [];
    private readonly HashSet<(string Id, SourceSpan At)> _seen = [];

    /// <summary>How many problems are kept; what comes after is only counted.</summary>
    public const int Most = 1000;

    /// <summary>True when at least one error was added, kept or not.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>How many are kept, 0 to <see cref="Most"/>.</summary>
    public int Count => _found.Count;

    /// <summary>How many were added after the last that is kept, echoes included; 0 unless <see cref="Count"/> is <see cref="Most"/>.</summary>
    public int LeftOut { get; private set; }

    /// <summary>Adds a problem, unless the same id already stands at the same place (an echo of one cause).</summary>
    public void Add(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        HasErrors |= diagnostic.Severity == Severity.Error;
        if (_found.Count == Most)
        {
            LeftOut++;
        }
        else if (_seen.Add((diagnostic.Id, diagnostic.At)))
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

    /// <summary>Everything kept, by file, then by place in it; the last one tells how many were left out.</summary>
    public ImmutableArray<Diagnostic> InOrder()
    {
        Diagnostic[] all = [.. _found.OrderBy(d => d.At.Source.Name, StringComparer.Ordinal).ThenBy(d => d.At.Start).ThenBy(d => d.Id, StringComparer.Ordinal)];
        if (LeftOut > 0)
        {
            all[^1] = all[^1] with { Further = LeftOut };
        }

        return [.. all];
    }
}
