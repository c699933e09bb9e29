using System.Collections.Immutable;

namespace Rostrum.Lessons.Pack;

/// <summary>A file of a pack.</summary>
/// <param name="Name">Relative to the pack's folder, with <c>/</c> between parts.</param>
/// <param name="Says">What it is, in a few words.</param>
/// <param name="Bytes">Its content.</param>
public sealed record PackFile(string Name, string Says, ImmutableArray<byte> Bytes);
