using System.Collections.Immutable;
using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Pack;

/// <summary>A pack, all of it made and nothing of it written yet.</summary>
/// <param name="Files">Its files, the first page first; empty where it is refused.</param>
/// <param name="Chapters">The chapters, with what is wrong with them or with the files that were given.</param>
/// <param name="Remarks">What else the presenter should know, a sentence each.</param>
public sealed record MadePack(ImmutableArray<PackFile> Files, FilmChapters Chapters, ImmutableArray<string> Remarks);
