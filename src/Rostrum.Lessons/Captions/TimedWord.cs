namespace Rostrum.Lessons.Captions;

/// <summary>A word with the time at which it is said.</summary>
/// <param name="Text">As written, its punctuation included; never empty and without blanks.</param>
/// <param name="Start">When it begins, in whole milliseconds; as exact as <paramref name="IsTimed"/> says.</param>
/// <param name="End">When it ends; not before <paramref name="Start"/>.</param>
/// <param name="CueIndex">The 0-based place of its cue in <see cref="CaptionFile.Cues"/>.</param>
/// <param name="IsTimed">True where the file gives the word's own beginning; false where it was worked out inside the cue by letters.</param>
public readonly record struct TimedWord(string Text, TimeSpan Start, TimeSpan End, int CueIndex, bool IsTimed);
