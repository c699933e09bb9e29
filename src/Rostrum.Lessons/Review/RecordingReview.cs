using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Lessons.Review;

/// <summary>Holds what was said in a recording against the sheet: wrong numbers, rules never said, rows passed over.</summary>
public static class RecordingReview
{
    // From there on a finding is certain; chosen on lessons that no figure is taken from.
    private const double LeastCertain = 0.8;
    private const double LeastCertainNeverSaid = 0.6;
    private const double LeastListened = 0.4;

    // A recording of this game says its words all the time; another game or language does not.
    private const double LeastWordsOfGame = 0.12;
    private const int FewestWords = 40;

    private const int Before = 6;
    private const int Behind = 6;

    /// <summary>The report.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    /// <param name="captions">The captions of the recording.</param>
    /// <param name="lesson">The script that was spoken from, more or less freely; null where there is none.</param>
    public static RecordingReport Of(Game game, CaptionFile captions, Lesson? lesson = null)
    {
        ArgumentNullException.ThrowIfNull(game);
        ArgumentNullException.ThrowIfNull(captions);
        ImmutableArray<TimedWord> words = SpokenWords.Of(captions);
        TimeSpan length = words.IsEmpty ? TimeSpan.Zero : words[^1].End - words[0].Start;
        var statements = Statements.Of(game, lesson);
        ImmutableArray<SpokenToken> tokens = SpeechReader.Read(words);
        if (WhyNot(statements, tokens) is { } refused)
        {
            return new RecordingReport([], [], [], refused, words.Length, length);
        }

        HeardRule[] rules = [.. new CoverageReview(statements, tokens).All()];
        Finding[] all = [.. Tables(statements, tokens), .. Values(statements, tokens), .. NeverSaid(rules)];
        Finding[] once = [.. all.OrderBy(f => f.Time is null).ThenBy(f => f.Time).DistinctBy(f => (f.Kind, f.Time, f.Time is null ? f.Clause : ""))];
        return new RecordingReport(
            [.. once.Where(f => IsCertain(f))],
            [.. once.Where(f => f.Confidence >= LeastListened && !IsCertain(f))],
            [.. rules.Select(r => new RuleHeard(r.Rule.Clause.Name, r.Rule.Clause.Section, r.Said, r.NeverSaid < LeastListened && r.At >= 0 ? tokens[r.At].Start : null))],
            null,
            words.Length,
            length);
    }

    private static bool IsCertain(Finding finding) => finding.Confidence >= (finding.Kind == FindingKind.NeverSaid ? LeastCertainNeverSaid : LeastCertain);

    private static string? WhyNot(Statements statements, ImmutableArray<SpokenToken> tokens)
    {
        string[] telling = [.. tokens.Where(t => t.Stem.Length > 0).Select(t => t.Stem)];
        if (tokens.Length < FewestWords)
        {
            return $"Only {Prose.Count(tokens.Length, "word", "words")} were heard, which is too little to hold against the rules.";
        }

        double known = telling.Length == 0 ? 0 : (double)telling.Count(statements.Weights.ContainsKey) / telling.Length;
        return known < LeastWordsOfGame ? $"Only {known:P0} of the words are words of this game's sheet, so this seems to be another game or another language." : null;
    }

    private static IEnumerable<Finding> Values(Statements statements, ImmutableArray<SpokenToken> tokens) =>
        from heard in new ValueReview(statements, tokens).All()
        where heard.Confidence >= LeastListened
        let clause = heard.Statement.Clause
        select new Finding(FindingKind.WrongValue, tokens[heard.At].Start, Words(tokens, heard.At), clause.Says, clause.Name, clause.Cite, heard.Confidence, heard.Because)
        {
            Right = heard.Slot.Value,
            Heard = tokens[heard.At].Amount,
        };

    private static IEnumerable<Finding> Tables(Statements statements, ImmutableArray<SpokenToken> tokens)
    {
        foreach (HeardTable table in new TableReview(statements, tokens).All())
        {
            foreach ((int at, long key, long value) in table.Wrong)
            {
                yield return new Finding(FindingKind.WrongValue, tokens[at].Start, Words(tokens, at), table.Clause.Says, table.Clause.Name, table.Clause.Cite, 0.9, $"the row for {key} is {value}")
                {
                    Right = value,
                    Heard = tokens[at].Amount,
                };
            }

            foreach (long key in table.Missing)
            {
                yield return new Finding(FindingKind.RowMissing, tokens[table.From].Start, Words(tokens, table.From), table.Clause.Says, table.Clause.Name, table.Clause.Cite, 0.8, $"the row for {key} was passed over");
            }
        }
    }

    private static IEnumerable<Finding> NeverSaid(HeardRule[] rules) =>
        from rule in rules
        where rule.NeverSaid >= LeastListened
        let clause = rule.Rule.Clause
        select new Finding(FindingKind.NeverSaid, null, "", clause.Says, clause.Name, clause.Cite, rule.NeverSaid, $"of its telling words {rule.Said:P0} stand together anywhere");

    private static string Words(ImmutableArray<SpokenToken> tokens, int at) =>
        string.Join(' ', tokens.Skip(Math.Max(0, at - Before)).Take(Math.Min(at, Before) + 1 + Behind).Select(t => t.Text));
}
