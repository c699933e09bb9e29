using System.Collections.Immutable;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Speech;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Terms;

/// <summary>One name for one thing: names that may not be said, and other names without the one that the rules use.</summary>
internal static class NameCheck
{
    /// <summary>The findings, one for each name.</summary>
    public static IEnumerable<ScriptFinding> Of(Sheet sheet, ScriptSpeech speech)
    {
        foreach (SaidNames names in SaidNames.Of(sheet))
        {
            foreach (string never in names.Never)
            {
                if (First(speech, never) is { } at)
                {
                    yield return new ScriptFinding(ScriptProblems.ForbiddenName(at, never, names.Name), never);
                }
            }

            if (First(speech, names.Name) is null && names.Called.Select(c => (Said: c, At: First(speech, c))).FirstOrDefault(c => c.At is not null) is { At: { } said } other)
            {
                yield return new ScriptFinding(ScriptProblems.OnlyOtherName(said, other.Said, names.Name), names.Name);
            }
        }
    }

    private static SourceSpan? First(ScriptSpeech speech, string name)
    {
        ImmutableArray<string> stems = WordStems.Of(name);
        foreach (int i in stems.IsEmpty ? [] : speech.With(stems[0]))
        {
            SpokenSentence sentence = speech.Sentences[i];
            for (int at = 0; at + stems.Length <= sentence.Stems.Length; at++)
            {
                if (stems.Select((s, k) => sentence.Stems[at + k].Stem == s).All(same => same))
                {
                    return TermUses.Within(sentence, sentence.Stems[at].Start, sentence.Stems[at + stems.Length - 1].Start + sentence.Stems[at + stems.Length - 1].Length - sentence.Stems[at].Start);
                }
            }
        }

        return null;
    }
}
