using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Cli.Checking;

/// <summary>Collects problems from several readings of the same files, and keeps each only once.</summary>
internal sealed class ProblemList
{
    private readonly List<Diagnostic> _all = [];
    private readonly HashSet<(string Id, string File, int Start, int Length, string Message)> _seen = [];

    /// <summary>Everything so far, errors before warnings, else in the order of finding.</summary>
    public ImmutableArray<Diagnostic> All => [.. _all.OrderByDescending(p => p.Severity)];

    /// <summary>Adds those that are not there yet.</summary>
    /// <param name="problems">What one reading found.</param>
    /// <param name="tell">Changes a new problem before it is kept, such as to say where it came up.</param>
    public void Add(IEnumerable<Diagnostic> problems, Func<Diagnostic, Diagnostic>? tell = null)
    {
        foreach (Diagnostic problem in problems.Where(p => _seen.Add((p.Id, p.At.Source.Name, p.At.Start, p.At.Length, p.Message))))
        {
            _all.Add(tell is null ? problem : tell(problem));
        }
    }
}
