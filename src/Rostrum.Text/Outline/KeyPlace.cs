namespace Rostrum.Text.Outline;

/// <summary>Where a key of a block stands.</summary>
/// <param name="Key">The key.</param>
/// <param name="Line">The index of the line that holds its colon: a long key may go over several lines.</param>
/// <param name="ColonEnd">The offset behind the colon.</param>
internal sealed record KeyPlace(OutlineScalar Key, int Line, int ColonEnd);
