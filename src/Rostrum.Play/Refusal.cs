using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play;

/// <summary>Why words are no option of a decision.</summary>
/// <param name="Because">The reason in one or more sentences.</param>
/// <param name="By">What refuses them: every law that they break; else the action in whose gaps they do not fit; else the block, end or action in whose course they have no place.</param>
public sealed record Refusal(string Because, ImmutableArray<RefusedBy> By);

/// <summary>A clause of a sheet that refuses something.</summary>
/// <param name="Clause">Its name, such as <c>follow suit</c>, <c>turn</c> or <c>after turn</c>.</param>
/// <param name="Says">What the sheet says of it; null where it says nothing.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
public sealed record RefusedBy(string Clause, string? Says, Citation? Cite);
