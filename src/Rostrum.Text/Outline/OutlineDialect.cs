using System.Collections.Immutable;

namespace Rostrum.Text.Outline;

/// <summary>What an outline reader has to know about the kind of file it reads.</summary>
/// <param name="ProseKeys">Keys whose value is prose: the raw rest of the line and its deeper lines are only text.</param>
/// <param name="KnownKeys">Keys that may stand in braces; a piece that begins with one of them never continues the text before it.</param>
public sealed record OutlineDialect(ImmutableHashSet<string> ProseKeys, ImmutableHashSet<string> KnownKeys);
