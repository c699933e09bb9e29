using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Review;

/// <summary>Holds what was said in a recording against the sheet: wrong numbers, rules never said, rows passed over.</summary>
public static class RecordingReview
{
    // From there on a finding is certain; chosen on lessons that no figure is taken from.
    private const double LeastCertain = 0.8;
    private const double LeastCertainNumber = 0.82;
    private const double LeastCertainNeverSaid = 0.6;
    private const double LeastListened = 0.4;

    // A recording of this game says its words and its names all the time; another game or language does not. On 150 talks and ten games ('bench review games').
    private const double LeastWordsOfGame = 0.2;
    private const double LeastWordsWithNames = 0.12;
    private const double EnoughWordsOfGame = 0.35;
    private const double OfFewNames = 0.28;
    private const int FewestWords = 40;

    // A pick-up of a minute need not name half of the game.
    private const int ShortTalk = 250;
    private const int MostWords = 100_000;

    // To be listened to.
    private const double OfAside = 0.6;

    // What is reckoned aloud follows from itself; a large number tells which clause it is.
    private const string OfReckoning = "a sum";
    private const double OfReckoned = 0.9;
    private const int LeastTelling = 10;

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
        if (words.Length > MostWords)
        {
            return new RecordingReport([], [], [], $"{words.Length} words were heard, and a recording has {MostWords} at the most: more than ten hours of speech.", words.Length, length);
        }

        var statements = Statements.Of(game, lesson);
        ImmutableArray<SpokenToken> tokens = SpeechReader.Read(words);
        Sheet sheet = game.Sheet().Sheet!;
        if (WhyNot(statements, tokens, NamesHeard.In(sheet, words)) is { } refused)
        {
            return new RecordingReport([], [], [], refused, words.Length, length);
        }

        ScriptAlignment? along = statements.Script.Speech is null ? null : new ScriptAlignment(statements.Script.Speech, tokens);
        ScriptReview? script = along is null ? null : new ScriptReview(statements, along);
        ScriptPassages? passages = along is null ? null : new ScriptPassages(statements, along);
        HeardRule[] rules = [.. new CoverageReview(statements, tokens, passages).All()];
        var reckoning = new Reckoning(tokens, statements.All);
        Finding[] all = [.. Spoken(script, tokens), .. Tables(statements, tokens, passages), .. Values(statements, tokens, [.. script?.Right ?? [], .. reckoning.Settled], script), .. Reckoned(reckoning, statements, tokens), .. NeverSaid(rules), .. TermReview.Of(sheet, words, script)];
        Finding[] once = [.. all.OrderBy(f => f.Time is null).ThenBy(f => f.Time).ThenByDescending(f => f.Confidence).DistinctBy(f => (f.Kind, f.Time, f.Time is null ? f.Clause : ""))];
        return new RecordingReport(
            [.. once.Where(f => IsCertain(f))],
            [.. once.Where(f => f.Confidence >= LeastListened && !IsCertain(f))],
            [.. rules.Select(r => new RuleHeard(r.Rule.Clause.Name, r.Rule.Clause.Section, r.Said, r.NeverSaid < LeastListened && r.At >= 0 ? tokens[r.At].Start : null))],
            null,
            words.Length,
            length)
        {
            Topics = TopicReview.Of(sheet, lesson, words),
        };
    }

    /// <summary>The topics of a recording alone; none where it is refused.</summary>
    public static FilmedTopics TopicsOf(Game game, CaptionFile captions, Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(game);
        ImmutableArray<TimedWord> words = SpokenWords.Of(captions);
        return words.Length > MostWords || Refusal(game, words) is not null ? FilmedTopics.None : TopicReview.Of(game.Sheet().Sheet!, lesson, words);
    }

    private static bool IsCertain(Finding finding) =>
        finding.Confidence >= finding.Kind switch { FindingKind.WrongValue => LeastCertainNumber, FindingKind.NeverSaid => LeastCertainNeverSaid, _ => LeastCertain };

    /// <summary>Why words are not held against a game; null where they are.</summary>
    internal static string? Refusal(Game game, ImmutableArray<TimedWord> words) => WhyNot(Statements.Of(game), SpeechReader.Read(words), NamesHeard.In(game.Sheet().Sheet!, words));

    /// <summary>How much of the words is the game's, and how many of its names were heard.</summary>
    internal static (double Known, NamesHeard Names) Kin(Game game, ImmutableArray<TimedWord> words) => (Known(Statements.Of(game), SpeechReader.Read(words)), NamesHeard.In(game.Sheet().Sheet!, words));

    private static double Known(Statements statements, ImmutableArray<SpokenToken> tokens)
    {
        string[] telling = [.. tokens.Where(t => t.Stem.Length > 0).Select(t => t.Stem)];
        return telling.Length == 0 ? 0 : (double)telling.Count(statements.Weights.ContainsKey) / telling.Length;
    }

    private static string? WhyNot(Statements statements, ImmutableArray<SpokenToken> tokens, NamesHeard names)
    {
        if (tokens.Length < FewestWords)
        {
            return $"Only {Prose.Count(tokens.Length, "word", "words")} were heard, and at least {FewestWords} are needed to hold them against the rules. Give the captions of the whole recording.";
        }

        double known = Known(statements, tokens);
        return known < (names.AreAllHeard ? LeastWordsWithNames : LeastWordsOfGame) ? $"Only {Percent(known)} of the words are words of this game's sheet, so this seems to be another game or another language."
            : (names.IsCertainlyOfAnother && ((names.AreMany && names.Heard == 0) || tokens.Length >= ShortTalk)) || (names.IsOfAnother && known < (names.AreMany ? EnoughWordsOfGame : OfFewNames)) ? $"{(names.Heard == 0 ? "None" : $"Only {Prose.Word(names.Heard)}")} of this game's {names.Of} names {(names.Heard == 1 ? "was" : "were")} heard, so this seems to be another game."
            : null;
    }

    private static string Percent(double share) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %");

    private static IEnumerable<Finding> Spoken(ScriptReview? script, ImmutableArray<SpokenToken> tokens) =>
        from wrong in script?.WrongNumbers() ?? []
        select new Finding(FindingKind.WrongValue, tokens[wrong.At].Start, Words(tokens, wrong.At), wrong.Sheet, wrong.Clause, wrong.Cite, wrong.Confidence, wrong.Because)
        {
            IsOfScript = wrong.Clause == ScriptReview.OfScript,
            Right = Math.Abs(wrong.Right),
            Heard = tokens[wrong.At].Size ?? tokens[wrong.At].Homophone,
        };

    private static IEnumerable<Finding> Values(Statements statements, ImmutableArray<SpokenToken> tokens, ImmutableHashSet<int> right, ScriptReview? script) =>
        from heard in new ValueReview(statements, tokens).All()
        where heard.Confidence >= LeastListened && !right.Contains(heard.At)
        let clause = heard.Statement.Clause
        select new Finding(FindingKind.WrongValue, tokens[heard.At].Start, Words(tokens, heard.At), clause.Says, clause.Name, clause.Cite, script?.IsAside(heard.At) == true ? Math.Min(heard.Confidence, OfAside) : heard.Confidence, heard.Because)
        {
            Right = heard.Slot.Value,
            Heard = tokens[heard.At].Size,
        };

    // A sum that a number of the sheet agrees with is told with its clause.
    private static IEnumerable<Finding> Reckoned(Reckoning reckoning, Statements statements, ImmutableArray<SpokenToken> tokens) =>
        from wrong in reckoning.Found
        where !wrong.IsRight
        let clause = wrong.Right < LeastTelling ? null : statements.All.FirstOrDefault(s => s.Variant is null && s.Slots.Any(n => n.Value == wrong.Right && n.Key is null))?.Clause
        select new Finding(FindingKind.WrongValue, tokens[wrong.At].Start, Words(tokens, wrong.At), clause is null ? wrong.Told : $"{wrong.Told} {clause.Says}", clause?.Name ?? OfReckoning, clause?.Cite, OfReckoned, "it follows from the numbers said just before")
        {
            Right = wrong.Right,
            Heard = tokens[wrong.At].Size,
        };

    private static IEnumerable<Finding> Tables(Statements statements, ImmutableArray<SpokenToken> tokens, ScriptPassages? script)
    {
        HeardTable[] heard = [.. new TableReview(statements, tokens).All()];
        foreach ((ReadClause clause, ImmutableArray<(long Key, long Value)> rows) in script is null ? [] : statements.Tables)
        {
            (ImmutableArray<long> keys, int from) = script!.MissingRows(rows);
            foreach (long key in keys.Where(k => !heard.Any(t => t.Clause == clause && (t.Missing.Contains(k) || t.Wrong.Any(w => w.Key == k)))))
            {
                yield return RowMissing(clause, key, tokens, from);
            }
        }

        foreach (HeardTable table in heard)
        {
            foreach ((int at, long key, long value) in table.Wrong)
            {
                yield return new Finding(FindingKind.WrongValue, tokens[at].Start, Words(tokens, at), $"{table.Clause.Says.TrimEnd('.')}; for {key}: {value}", table.Clause.Name, table.Clause.Cite, 0.92, $"the row for {key} is {value}")
                {
                    Right = value,
                    Heard = tokens[at].Amount,
                };
            }

            foreach (long key in table.Missing)
            {
                yield return RowMissing(table.Clause, key, tokens, table.From);
            }
        }
    }

    private static Finding RowMissing(ReadClause clause, long key, ImmutableArray<SpokenToken> tokens, int from) =>
        new(FindingKind.RowMissing, tokens[from].Start, Words(tokens, from), clause.Says, clause.Name, clause.Cite, 0.8, $"the row for {key} was passed over");

    private static IEnumerable<Finding> NeverSaid(HeardRule[] rules) =>
        from rule in rules
        where rule.NeverSaid >= LeastListened
        let clause = rule.Rule.Clause
        select new Finding(FindingKind.NeverSaid, null, "", clause.Says, clause.Name, clause.Cite, rule.NeverSaid,
            rule.IsLeftOutOfScript ? "the passage of the lesson that says it is not heard, nor anything in its place" : $"of its telling words {Percent(rule.Said)} stand together anywhere");

    private static string Words(ImmutableArray<SpokenToken> tokens, int at) =>
        string.Join(' ', tokens.Skip(Math.Max(0, at - Before)).Take(Math.Min(at, Before) + 1 + Behind).Select(t => t.Text));
}
