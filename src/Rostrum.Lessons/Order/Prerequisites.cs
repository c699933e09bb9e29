using System.Collections.Immutable;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;

namespace Rostrum.Lessons.Order;

/// <summary>Which topic introduces which term, and which topics use it.</summary>
/// <remarks>A term is introduced by the first sentence that may well tell what it is. Only where a topic uses it without a word of that, and a
/// later one defines it, it is used too early. The opening topic is a preview: it may use what it likes, and what it shows is introduced. What is
/// promised for later (<c>later:</c>) before its first use or in the same paragraph is no surprise.</remarks>
internal sealed class Prerequisites
{
    /// <summary>Beyond so many topics a file is no lesson, and no order is sought.</summary>
    public const int MostTopics = 200;

    private readonly ScriptSpeech _speech;
    private readonly ImmutableArray<TermUse> _uses;
    private readonly MarkedNames _marks;

    public Prerequisites(ScriptSpeech speech, ImmutableArray<TermUse> uses, MarkedNames marks)
    {
        (_speech, _uses, _marks) = (speech, uses, marks);
        Weights = new long[Math.Min(speech.Lesson.Topics.Length, MostTopics), Math.Min(speech.Lesson.Topics.Length, MostTopics)];
        var forward = ImmutableArray.CreateBuilder<ForwardReference>();
        foreach (IGrouping<SheetTerm, TermUse> term in uses.GroupBy(u => u.Term))
        {
            if (IntroducedBy(term.Key, [.. term]) is { } topic)
            {
                Weigh([.. term], topic);
                forward.AddRange(Early([.. term], topic));
            }
        }

        Forward = [.. forward.OrderByDescending(f => f.Sentences).ThenBy(f => f.At.Start)];
    }

    /// <summary>How many sentences of topic <c>i</c> (row) use a term that topic <c>j</c> (column) introduces.</summary>
    public long[,] Weights { get; }

    /// <summary>What is used too early, the costliest first.</summary>
    public ImmutableArray<ForwardReference> Forward { get; }

    private int TopicOf(TermUse use) => _speech.Sentences[use.Sentence].Topic;

    // Null where no sentence tells what the term is: then its first use has to do.
    private int? IntroducedBy(SheetTerm term, TermUse[] uses)
    {
        MarkUse? taught = _marks.Uses.FirstOrDefault(u => u.Kind == MarkKind.Teaches && u.Names.Contains(term.Name, StringComparer.OrdinalIgnoreCase));
        if (taught is not null)
        {
            return taught.Topic;
        }

        TermUse? told = uses.FirstOrDefault(u => u.Manner != TermManner.Used);
        return told is null ? null : TopicOf(told) == TopicOf(uses[0]) || told.Manner == TermManner.Defined ? TopicOf(told) : null;
    }

    // A topic that tells itself what the term is needs no other one.
    private void Weigh(TermUse[] uses, int introduced)
    {
        foreach (IGrouping<int, TermUse> topic in uses.GroupBy(TopicOf).Where(t => t.Key != introduced && t.Key != 0 && t.All(u => u.Manner == TermManner.Used)))
        {
            if (topic.Key < MostTopics && introduced < MostTopics && !IsPromised(topic.First(), introduced))
            {
                Weights[topic.Key, introduced] += topic.Count();
            }
        }
    }

    private IEnumerable<ForwardReference> Early(TermUse[] uses, int introduced)
    {
        TermUse[] early = [.. uses.Where(u => TopicOf(u) > 0 && TopicOf(u) < introduced)];
        if (early.Length > 0 && uses.All(u => TopicOf(u) > 0 || u.Manner == TermManner.Used) && !IsPromised(early[0], introduced))
        {
            TermUse first = early[0];
            int told = uses.Where(u => TopicOf(u) == introduced).Select(u => _speech.Sentences[u.Sentence].WordsBefore).DefaultIfEmpty(WordsBefore(introduced)).Min();
            yield return new ForwardReference(first.Term.Name, first.At, introduced, early.Length, Math.Max(0, told - _speech.Sentences[first.Sentence].WordsBefore));
        }
    }

    private int WordsBefore(int topic) => _speech.Lesson.Topics.Take(topic).Sum(t => t.Words);

    private bool IsPromised(TermUse use, int introduced)
    {
        string[] names = [use.Term.Name, _speech.Lesson.Topics[introduced].Title];
        int block = _speech.Sentences[use.Sentence].Block;
        return _marks.Uses.Any(u => u.Kind == MarkKind.Later && u.Block <= block && u.Names.Intersect(names, StringComparer.OrdinalIgnoreCase).Any());
    }
}
