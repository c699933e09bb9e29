using System.Collections.Immutable;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Text;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Coverage;

/// <summary>A mark or note of the script with its place in it.</summary>
/// <param name="Kind">What it says.</param>
/// <param name="Names">Of what.</param>
/// <param name="Words">The spoken words; empty for a note.</param>
/// <param name="Topic">0-based topic.</param>
/// <param name="Block">0-based among the blocks of the script.</param>
/// <param name="At">Where the words stand.</param>
/// <param name="TargetAt">Where the names stand.</param>
internal sealed record MarkUse(MarkKind Kind, ImmutableArray<string> Names, string Words, int Topic, int Block, SourceSpan At, SourceSpan TargetAt);

/// <summary>What the marks and notes of a script say of clauses.</summary>
internal sealed class MarkedNames
{
    private readonly HashSet<LessonClause> _leftOut = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<string> _variantsLeftOut = new(StringComparer.Ordinal);
    private readonly Dictionary<LessonClause, SortedSet<int>> _taught = new(ReferenceEqualityComparer.Instance);
    private readonly ScriptSpeech _speech;
    private readonly Dictionary<string, ImmutableHashSet<int>> _ofVariant = new(StringComparer.Ordinal);

    public MarkedNames(ScriptSpeech speech, NamedClauses clauses)
    {
        _speech = speech;
        Uses = [.. In(speech.Lesson)];
        foreach (MarkUse use in Uses)
        {
            foreach (LessonClause clause in use.Names.SelectMany(clauses.Of))
            {
                Take(use, clause);
            }
        }
    }

    /// <summary>Every mark and note, in the order of the file.</summary>
    public ImmutableArray<MarkUse> Uses { get; }

    /// <summary>True where the script leaves the clause out on purpose.</summary>
    public bool LeavesOut(LessonClause clause) => _leftOut.Contains(clause) || clause.OnlyWith.Any(_variantsLeftOut.Contains);

    /// <summary>The topics that say that they teach the clause; empty where none does.</summary>
    public ImmutableArray<int> TopicsOf(LessonClause clause) => _taught.TryGetValue(clause, out SortedSet<int>? topics) ? [.. topics] : [];

    /// <summary>The topics that speak of a variant: those that say that they teach it, else those that say its name.</summary>
    public ImmutableHashSet<int> TopicsOfVariant(string variant)
    {
        if (!_ofVariant.TryGetValue(variant, out ImmutableHashSet<int>? topics))
        {
            topics = [.. Uses.Where(u => u.Kind == MarkKind.Teaches && u.Names.Contains(variant, StringComparer.OrdinalIgnoreCase)).Select(u => u.Topic)];
            _ofVariant[variant] = topics = topics.IsEmpty ? Naming(variant) : topics;
        }

        return topics;
    }

    private ImmutableHashSet<int> Naming(string variant)
    {
        string[] stems = [.. WordStems.Of(variant).Select(TableTalk.Of)];
        ImmutableHashSet<int> headed = [.. _speech.HeadingMeanings.Select((t, i) => (t, i)).Where(p => stems.Length > 0 && stems.All(p.t.Contains)).Select(p => p.i)];
        ImmutableHashSet<int> named = [.. _speech.Sentences.Where(s => stems.Length > 0 && stems.All(w => s.Stems.Any(t => TableTalk.Of(t.Stem) == w))).Select(s => s.Topic)];
        return headed.IsEmpty ? named : headed;
    }

    private void Take(MarkUse use, LessonClause clause)
    {
        if (use.Kind == MarkKind.LeftOut)
        {
            _leftOut.Add(clause);
            if (clause.Sort == ClauseSort.Variant)
            {
                _variantsLeftOut.Add(clause.Name);
            }
        }
        else if (use.Kind == MarkKind.Teaches)
        {
            _taught.TryAdd(clause, []);
            _taught[clause].Add(use.Topic);
        }
    }

    private static IEnumerable<MarkUse> In(Lesson lesson)
    {
        int block = -1;
        for (int topic = 0; topic < lesson.Topics.Length; topic++)
        {
            foreach (LessonBlock piece in lesson.Topics[topic].Blocks)
            {
                block++;
                if (piece is LessonBlock.Note note)
                {
                    yield return new MarkUse(note.Kind, note.Names, "", topic, block, note.At, note.At);
                }

                foreach (LessonRun.Marked mark in piece.Runs.OfType<LessonRun.Marked>())
                {
                    yield return new MarkUse(mark.Kind, mark.Names, Prose.Fold(mark.Words), topic, block, mark.At, mark.TargetAt);
                }
            }
        }
    }
}
