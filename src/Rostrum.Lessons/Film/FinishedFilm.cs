using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Review;

namespace Rostrum.Lessons.Film;

/// <summary>What a presenter gives of a film that is cut.</summary>
public sealed record FinishedFilm
{
    /// <summary>Nothing: the film is not shot yet.</summary>
    public static FinishedFilm None { get; } = new();

    /// <summary>Its captions; null where none are given.</summary>
    public CaptionFile? Captions { get; init; }

    /// <summary>The topics of the lesson as the captions have them, in whatever words; null where nobody looked for them.</summary>
    public FilmedTopics? Topics { get; init; }

    /// <summary>The name of the caption file, for messages.</summary>
    public string CaptionsName { get; init; } = "";

    /// <summary>Its chapters with the times of the film, in the presenter's words; null where none are given.</summary>
    public PlacedChapters? Chapters { get; init; }

    /// <summary>What was wrong in it and is put right in its description; null where nothing is given.</summary>
    public PlacedCorrections? Corrections { get; init; }

    /// <summary>How long it is: to the end of its last caption; null where no captions are given.</summary>
    public TimeSpan? Length => Captions is { Cues.IsEmpty: false } file ? file.Cues.Max(c => c.End) : null;
}
