using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Terms;

/// <summary>How plainly a sentence tells what a term is.</summary>
internal enum TermManner
{
    /// <summary>It only uses the term.</summary>
    Used,

    /// <summary>It may well tell what the term is: counts it, puts it on the table, says what it has.</summary>
    Shown,

    /// <summary>It tells what the term is: calls a thing so, leans on the word, or stands below a heading that says it.</summary>
    Defined,
}

/// <summary>A sentence that says a term.</summary>
/// <param name="Term">The term.</param>
/// <param name="Sentence">The sentence; 0-based among those of the script.</param>
/// <param name="At">Where the term stands.</param>
/// <param name="Manner">How plainly it is told.</param>
internal sealed record TermUse(SheetTerm Term, int Sentence, SourceSpan At, TermManner Manner);

/// <summary>Finds the terms of a sheet in a script.</summary>
internal static partial class TermUses
{
    /// <summary>Every sentence with every term that it says, in order; captions are left out.</summary>
    public static ImmutableArray<TermUse> In(ScriptSpeech speech, ImmutableArray<SheetTerm> terms)
    {
        ILookup<string, (SheetTerm Term, ImmutableArray<string> Phrase)> byFirst = terms.SelectMany(t => t.Phrases.Select(p => (t, p))).OrderByDescending(p => p.p.Length).ToLookup(p => p.p[0], StringComparer.Ordinal);
        var seen = new HashSet<(SheetTerm, int)>();
        var uses = ImmutableArray.CreateBuilder<TermUse>();
        for (int i = 0; i < speech.Sentences.Length; i++)
        {
            SpokenSentence sentence = speech.Sentences[i];
            for (int at = 0; !sentence.IsCaption && at < sentence.Stems.Length; at++)
            {
                if (Longest(byFirst, sentence, at) is { } found)
                {
                    uses.AddRange(Use(speech, sentence, i, at, found, seen));
                    at += found.Phrase.Length - 1;
                }
            }
        }

        return uses.ToImmutable();
    }

    // A term within a longer one is not said: 'fire dice' say nothing of fire.
    private static (SheetTerm Term, ImmutableArray<string> Phrase)? Longest(ILookup<string, (SheetTerm Term, ImmutableArray<string> Phrase)> byFirst, SpokenSentence sentence, int at)
    {
        foreach ((SheetTerm Term, ImmutableArray<string> Phrase) candidate in byFirst[sentence.Stems[at].Stem])
        {
            if (at + candidate.Phrase.Length <= sentence.Stems.Length && candidate.Phrase.Select((s, k) => sentence.Stems[at + k].Stem == s).All(same => same))
            {
                return candidate;
            }
        }

        return null;
    }

    private static IEnumerable<TermUse> Use(ScriptSpeech speech, SpokenSentence sentence, int index, int at, (SheetTerm Term, ImmutableArray<string> Phrase) found, HashSet<(SheetTerm, int)> seen)
    {
        if (seen.Add((found.Term, index)))
        {
            int start = sentence.Stems[at].Start;
            (_, int lastStart, int lastLength) = sentence.Stems[at + found.Phrase.Length - 1];
            yield return new TermUse(found.Term, index, Within(sentence, start, lastStart + lastLength - start), MannerOf(speech, sentence, found.Phrase, start, lastStart + lastLength));
        }
    }

    // The sentence in the file may hold targets and stars, so the words are sought in it.
    public static SourceSpan Within(SpokenSentence sentence, int start, int length)
    {
        string said = sentence.Words.Substring(start, length);
        int found = sentence.At.Text.IndexOf(said, Math.Min(start, sentence.At.Length), StringComparison.Ordinal);
        return found < 0 ? sentence.At : sentence.At.Part(found, length);
    }

    private static TermManner MannerOf(ScriptSpeech speech, SpokenSentence sentence, ImmutableArray<string> phrase, int start, int end)
    {
        if (phrase.All(speech.TopicStems[sentence.Topic].Contains) || IsLeantOn(sentence, phrase) || Called().IsMatch(sentence.Words[..start]) || CalledSo().IsMatch(sentence.Words[end..]))
        {
            return TermManner.Defined;
        }

        return Counted().IsMatch(sentence.Words[..start]) || Told().IsMatch(sentence.Words[end..]) ? TermManner.Shown : TermManner.Used;
    }

    private static bool IsLeantOn(SpokenSentence sentence, ImmutableArray<string> phrase) =>
        sentence.Runs.OfType<LessonRun.Stressed>().Any(r => WordStems.Of(r.Words).SequenceEqual(phrase, StringComparer.Ordinal));

    [GeneratedRegex(@"\b(?:call(?:s|ed)?|named?|known\sas|says?|stands?\sfor|means?)\s(?:it\s|them\s|this\s|these\s|all\s)?(?:a\s|an\s|the\s|our\s|your\s)?[“""‘']?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Called();

    [GeneratedRegex(@"^[”""’']?,?\s(?:(?:is|are)\s(?:what|where|when|called)|means?\b|that\sis\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex CalledSo();

    // 'there is a crate', 'beside them lie three drying boards', 'each of us has nine planks'. A number alone tells nothing: 'lay four orders face up'.
    [GeneratedRegex(@"\b(?:there|here|lies?|is|are|have|has|had|get|gets|needs?)\b[^.]{0,90}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Counted();

    [GeneratedRegex(@"^,?\s(?:has|have|is|are)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex Told();
}
