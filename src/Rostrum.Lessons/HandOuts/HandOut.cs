using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>A player aid for paper: the aid's words with its tables and a few small drawings.</summary>
/// <param name="Aid">The words.</param>
/// <param name="Figures">Drawings that show what the words say, the weightiest first; may be empty.</param>
public sealed record HandOut(PlayerAid Aid, ImmutableArray<HandOutFigure> Figures);

/// <summary>A drawing of a hand-out.</summary>
/// <param name="Caption">What it shows, in a few words.</param>
/// <param name="Draw">Draws it with spaces of this width, in scene units; letters keep their least size however small the spaces are.</param>
public sealed record HandOutFigure(string Caption, Func<double, Scene> Draw);
