using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>One cut of the page's typeface.</summary>
/// <param name="Weight">100 to 900; the page uses 400 and 700.</param>
/// <param name="IsItalic">True for the slanted cut.</param>
/// <param name="Bytes">A TrueType, OpenType, WOFF or WOFF2 file.</param>
public sealed record PageFont(int Weight, bool IsItalic, ImmutableArray<byte> Bytes);
