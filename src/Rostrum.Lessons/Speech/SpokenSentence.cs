using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Speech;

/// <summary>A sentence of a script, with its stems.</summary>
/// <param name="Topic">0-based topic.</param>
/// <param name="Block">0-based among the blocks of the script: sentences of one block belong together.</param>
/// <param name="Words">As spoken.</param>
/// <param name="At">Where it stands.</param>
/// <param name="WordsBefore">How many words of the script are spoken before it.</param>
/// <param name="Stems">Its stems in order, see <see cref="WordStems"/>.</param>
internal sealed record SpokenSentence(int Topic, int Block, string Words, SourceSpan At, int WordsBefore, ImmutableArray<(string Stem, int Start, int Length)> Stems)
{
    /// <summary>True where the camera shows it and nobody says it: the caption of a shot.</summary>
    public bool IsCaption { get; init; }

    /// <summary>The runs that it is made of, claims and marks among them.</summary>
    public ImmutableArray<LessonRun> Runs { get; init; } = [];
}
