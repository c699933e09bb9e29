using System.Collections.Immutable;
using Rostrum.Lessons.Numbers;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Speech;

/// <summary>Everything that a script says, sentence by sentence, and what its captions show.</summary>
internal sealed class ScriptSpeech
{
    /// <summary>How many sentences are looked at: six hours of speech. A file that is no lesson may hold a hundred thousand.</summary>
    public const int MostSentences = 4000;

    // Half an hour without drawing breath, and ten hours in all.
    private const int LongestPassage = 50_000;
    private const int MostWords = 100_000;

    private readonly ILookup<string, int> _byStem;
    private readonly ILookup<string, int> _byMeaning;

    private ScriptSpeech(Lesson lesson, ImmutableArray<SpokenSentence> sentences)
    {
        (Lesson, Sentences) = (lesson, sentences);
        TopicStems = [.. lesson.Topics.Select(t => WordStems.Of(t.Title).ToImmutableHashSet(StringComparer.Ordinal))];
        HeadingMeanings = [.. TopicStems.Select(t => t.Select(TableTalk.Of).ToImmutableHashSet(StringComparer.Ordinal))];
        _byStem = Index(sentences, s => s);
        _byMeaning = Index(sentences, TableTalk.Of);
    }

    /// <summary>The script.</summary>
    public Lesson Lesson { get; }

    /// <summary>Its sentences in order, captions of shots where they stand.</summary>
    public ImmutableArray<SpokenSentence> Sentences { get; }

    /// <summary>The stems of each topic's heading.</summary>
    public ImmutableArray<ImmutableHashSet<string>> TopicStems { get; }

    /// <summary>The same, words that mean the same at any table taken together: see <see cref="TableTalk"/>.</summary>
    public ImmutableArray<ImmutableHashSet<string>> HeadingMeanings { get; }

    /// <summary>The sentences that hold a stem or one that means the same.</summary>
    /// <param name="meaning">As <see cref="TableTalk.Of"/> gives it.</param>
    public IEnumerable<int> Meaning(string meaning) => _byMeaning[meaning];

    /// <summary>The sentences that hold a stem: positions in <see cref="Sentences"/>, in order, each once.</summary>
    public IEnumerable<int> With(string stem) => _byStem[stem];

    /// <summary>Takes a script apart.</summary>
    public static ScriptSpeech Of(Lesson lesson)
    {
        var sentences = ImmutableArray.CreateBuilder<SpokenSentence>();
        int block = 0;
        int words = 0;
        for (int topic = 0; topic < lesson.Topics.Length; topic++)
        {
            foreach (LessonBlock piece in lesson.Topics[topic].Blocks)
            {
                sentences.AddRange(Of(piece, topic, block++, words).Take(words < MostWords ? MostSentences - sentences.Count : 0));
                words += piece.SpokenWords;
            }
        }

        return new ScriptSpeech(lesson, sentences.ToImmutable());
    }

    private static IEnumerable<SpokenSentence> Of(LessonBlock piece, int topic, int block, int words)
    {
        if (piece is LessonBlock.Shot shot)
        {
            return [new SpokenSentence(topic, block, shot.Caption, shot.At, words, [.. WordStems.In(shot.Caption)]) { IsCaption = true }];
        }

        return OfPassages(piece, topic, block, words);
    }

    private static IEnumerable<SpokenSentence> OfPassages(LessonBlock piece, int topic, int block, int words)
    {
        foreach (ImmutableArray<LessonRun> passage in piece.Passages)
        {
            foreach (SpokenSentence sentence in OfPassage(passage, topic, block, words))
            {
                yield return sentence;
            }

            words += LessonBlock.WordsIn(passage);
        }
    }

    private static IEnumerable<SpokenSentence> OfPassage(ImmutableArray<LessonRun> passage, int topic, int block, int words)
    {
        var text = new SpokenText(passage);
        string spoken = text.Words[..Math.Min(text.Words.Length, LongestPassage)];
        foreach ((int start, int length) in SentenceCut.In(spoken))
        {
            string sentence = spoken.Substring(start, length);
            if (text.SpanOf(start, length) is { } at)
            {
                yield return new SpokenSentence(topic, block, sentence, at, words, [.. WordStems.In(sentence)]) { Runs = text.RunsIn(start, length) };
            }

            words += Prose.WordsOf(sentence).Length;
        }
    }

    private static ILookup<string, int> Index(ImmutableArray<SpokenSentence> sentences, Func<string, string> key) =>
        sentences.SelectMany((s, i) => s.Stems.Select(t => key(t.Stem)).Distinct().Select(t => (t, i))).ToLookup(p => p.t, p => p.i, StringComparer.Ordinal);
}
