using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>A small step of the course, compiled. Instructions know the positions of those that follow.</summary>
/// <param name="at">Where the step stands in the sheet; null for steps of the usual course.</param>
internal abstract class Instruction(SourceSpan? at)
{
    /// <summary>Play waits: the machine's moment says why. The same instruction is due again.</summary>
    public const int Wait = -1;

    /// <summary>Where the step stands in the sheet; null for steps of the usual course.</summary>
    public SourceSpan? At { get; } = at;

    /// <summary>For a decision: what may stand at it; empty for every other step.</summary>
    public virtual IEnumerable<Alternative> Alternatives => [];

    /// <summary>Carries it out on the machine's state.</summary>
    /// <returns>The position of the next instruction, or <see cref="Wait"/>.</returns>
    public abstract int Do(Machine machine, int here);
}

/// <summary>A place in the code that is filled in once it is known.</summary>
internal sealed class Label
{
    /// <summary>The position; -1 while it is not known.</summary>
    public int At { get; set; } = -1;
}
