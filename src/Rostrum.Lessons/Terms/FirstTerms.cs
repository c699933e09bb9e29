using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Findings;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Terms;

/// <summary>How much is named before the first example.</summary>
/// <remarks>Working memory holds about four things: N. Cowan, Behavioral and Brain Sciences 24 (2001). A kind with its forms and colours, or a board
/// with its lines, is counted as one thing.</remarks>
internal static partial class FirstTerms
{
    /// <summary>How many people keep in mind.</summary>
    public const int Most = 4;

    /// <summary>The words that a dismissal of the finding concerns.</summary>
    public const string Concerns = "before the first example";

    /// <summary>The finding; null where no example comes, or little is named before it.</summary>
    public static ScriptFinding? Of(ScriptSpeech speech, ImmutableArray<TermUse> uses)
    {
        int example = FirstExample(speech);
        string[] chunks = [.. uses.Where(u => u.Sentence < example).Select(u => u.Term.Chunk).Distinct()];
        return example < 0 || chunks.Length <= Most ? null : new ScriptFinding(ScriptProblems.ManyTerms(speech.Sentences[example].At, chunks.Length, Most, chunks), Concerns);
    }

    private static int FirstExample(ScriptSpeech speech)
    {
        for (int i = 0; i < speech.Sentences.Length; i++)
        {
            SpokenSentence sentence = speech.Sentences[i];
            if (sentence.IsCaption || Example().IsMatch(sentence.Words) || sentence.Runs.OfType<LessonRun.Claim>().Any(c => c.Target.StartsWith("tally:", StringComparison.Ordinal) || c.Target.StartsWith("rule:", StringComparison.Ordinal)))
            {
                return i;
            }
        }

        return -1;
    }

    [GeneratedRegex(@"\b(?:for\s(?:example|instance)|an\sexample|let\sme\sshow|look\sat\sth)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Example();
}
