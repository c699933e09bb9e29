using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Review;

/// <summary>How the presenter's own script says what the sheet says: the words that are most likely to be spoken.</summary>
/// <param name="Facts">Sentences that state a fact, with the fact's name and the number that the claim speaks.</param>
/// <param name="Places">The sentences that say a clause, by the clause's section and name, steps of ties in a section of their own: the first, and how many.</param>
/// <param name="Speech">The script; null for none.</param>
internal sealed record ScriptWords(ImmutableArray<(string Fact, string Sentence, long Number)> Facts, ImmutableDictionary<(string Section, string Name), (int First, int Count)> Places, ScriptSpeech? Speech)
{
    /// <summary>No script.</summary>
    public static ScriptWords None { get; } = new([], ImmutableDictionary<(string, string), (int, int)>.Empty, null);

    /// <summary>The passage that says a clause; null where the script has none.</summary>
    public string? Passage((string Section, string Name) clause) => Places.TryGetValue(clause, out (int First, int Count) place) ? string.Join(' ', Speech!.Sentences.Skip(place.First).Take(place.Count).Select(s => s.Words)) : null;

    /// <summary>The section of steps of ties: the sheet has them in a clause of its scoring.</summary>
    public const string Ties = "Ties";

    private static string SectionOf(ClauseSort sort) => sort switch
    {
        ClauseSort.Law or ClauseSort.Score or ClauseSort.End => LessonClause.ToldIn(sort)!,
        ClauseSort.Tie => Ties,
        _ => sort.ToString(),
    };

    /// <summary>The words of a script.</summary>
    public static ScriptWords Of(Game game, Sheet sheet, Lesson lesson)
    {
        var speech = ScriptSpeech.Of(lesson);
        ImmutableArray<LessonClause> clauses = ClauseList.Of(game, sheet);
        ImmutableArray<ClauseCover> covers = ScriptCoverage.Of(speech, clauses, [], new MarkedNames(speech, new NamedClauses(clauses)));
        var facts =
            from sentence in speech.Sentences
            where !sentence.IsCaption
            from claim in sentence.Runs.OfType<LessonRun.Claim>()
            where ClaimTarget.Read(claim.Target) is ClaimTarget.Fact && SpokenNumber.Read(claim.Words) is not null
            select (((ClaimTarget.Fact)ClaimTarget.Read(claim.Target)!).Name, sentence.Words, SpokenNumber.Read(claim.Words)!.Value);
        var rules =
            from cover in covers
            where cover is { Status: CoverStatus.Said, Sentence: >= 0, Clause.Variant: null }
            group cover by (SectionOf(cover.Clause.Sort), cover.Clause.Name) into same
            let best = same.MaxBy(c => c.Score)!
            select KeyValuePair.Create(same.Key, (best.Sentence, Math.Max(1, best.Sentences)));
        return new ScriptWords([.. facts], rules.ToImmutableDictionary(), speech);
    }
}
