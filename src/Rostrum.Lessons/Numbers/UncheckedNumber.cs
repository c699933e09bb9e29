using Rostrum.Text;

namespace Rostrum.Lessons.Numbers;

/// <summary>A number that a lesson says without holding it against the sheet.</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Said">As spoken, such as <c>three</c>.</param>
/// <param name="Target">What it would have to equal, such as <c>fact:glazes</c>; null where the sheet has not exactly one thing of that value and name.</param>
public sealed record UncheckedNumber(SourceSpan At, string Said, string? Target)
{
    /// <summary>The number as a checked value, such as <c>[three](fact:glazes)</c>; null where nothing can be proposed.</summary>
    public string? Write => Target is null ? null : $"[{Said}]({(Target.Contains(' ', StringComparison.Ordinal) ? $"<{Target}>" : Target)})";
}
