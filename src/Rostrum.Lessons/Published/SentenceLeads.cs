using System.Collections.Immutable;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Published;

/// <summary>Sentences that only say something together with those before them: behind a colon, a semicolon or a question.</summary>
/// <remarks>A correction has to be understood alone, and who jumps to its time has to hear the beginning.</remarks>
internal sealed class SentenceLeads
{
    private const int MostTogether = 4;

    private static readonly char[] GoesOn = [':', ';', '?'];

    private readonly ScriptSpeech _speech;
    private readonly int[] _first;

    /// <summary>Looks through a script.</summary>
    public SentenceLeads(ScriptSpeech speech)
    {
        _speech = speech;
        _first = [.. Enumerable.Range(0, speech.Sentences.Length)];
        for (int i = 1; i < _first.Length; i++)
        {
            bool goesOn = speech.Sentences[i - 1].Block == speech.Sentences[i].Block && GoesOn.Contains(speech.Sentences[i - 1].Words.TrimEnd()[^1]);
            _first[i] = goesOn && i - _first[i - 1] < MostTogether ? _first[i - 1] : i;
        }
    }

    /// <summary>The sentence with which another begins.</summary>
    /// <param name="sentence">0-based among the sentences of the script.</param>
    public SpokenSentence First(int sentence) => _speech.Sentences[_first[sentence]];

    /// <summary>The sentences that pass, each with those before it that it needs; none stands in two.</summary>
    public IEnumerable<ImmutableArray<SpokenSentence>> Of(Predicate<SpokenSentence> passes) =>
        Enumerable.Range(0, _first.Length).Where(i => passes(_speech.Sentences[i])).GroupBy(i => _first[i]).Select(g => _speech.Sentences[g.Key..(g.Max() + 1)]);
}
