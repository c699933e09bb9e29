namespace Rostrum.Text;

/// <summary>A spot in a text as a person names it.</summary>
/// <param name="Line">1-based.</param>
/// <param name="Column">1-based, counted in characters (Unicode scalar values).</param>
public readonly record struct LinePosition(int Line, int Column)
{
    /// <summary>For example <c>14,10</c>.</summary>
    public override string ToString() => $"{Line},{Column}";
}
