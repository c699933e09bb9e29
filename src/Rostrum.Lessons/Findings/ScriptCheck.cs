using System.Collections.Immutable;
using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Marks;
using Rostrum.Lessons.Order;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using SourceSpan = Rostrum.Text.SourceSpan;

namespace Rostrum.Lessons.Findings;

/// <summary>Holds a script as a whole against its sheet: is every rule said, in an order that builds up, with one name for each thing?</summary>
/// <remarks>Few and certain: what may be wrong more than once in twenty times on text known to be right is not told at all. How the rules do on
/// such text is measured in the tests.</remarks>
internal sealed class ScriptCheck
{
    // The game's name for the finding about the order, which concerns no single word.
    private const string OrderOfTopics = "the order of the topics";

    private const int MostChangesApart = 3;

    private readonly ScriptSpeech _speech;
    private readonly int _pace;
    private readonly MarkedNames _marks;
    private readonly ImmutableArray<ClauseCover> _covers;
    private readonly ImmutableArray<TermUse> _uses;
    private readonly MarkCheck _markCheck;
    private readonly Sheet _sheet;

    private ScriptCheck(Game game, Sheet sheet, Lesson lesson, ImmutableArray<CheckedClaim> claims)
    {
        _sheet = sheet;
        _speech = ScriptSpeech.Of(lesson);
        _pace = lesson.WordsAMinute;
        ImmutableArray<LessonClause> clauses = ClauseList.Of(game, sheet);
        var named = new NamedClauses(clauses);
        _marks = new MarkedNames(_speech, named);
        _covers = ScriptCoverage.Of(_speech, clauses, claims, _marks);
        ImmutableArray<SheetTerm> terms = TermList.Of(sheet);
        _uses = TermUses.In(_speech, terms);
        _markCheck = new MarkCheck(_speech, _marks, new MarkNames(sheet, _speech, named, terms), _covers, _uses);
    }

    /// <summary>The report of a lesson.</summary>
    /// <param name="game">The game.</param>
    /// <param name="sheet">Its sheet, sound and without a variant.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="claims">Its checked statements.</param>
    /// <param name="problems">Receives what is wrong with marks (ROS0620) and dismissals (ROS0622).</param>
    public static ScriptReport Of(Game game, Sheet sheet, Lesson lesson, ImmutableArray<CheckedClaim> claims, DiagnosticBag problems)
    {
        var check = new ScriptCheck(game, sheet, lesson, claims);
        problems.AddRange(check._markCheck.Problems());
        ImmutableArray<Dismissal> dismissals = game.Folder.Read(Dismissals.FileName).Text is { } file ? Dismissals.Read(file, problems) : [];
        return check.Report(dismissals);
    }

    private ScriptReport Report(ImmutableArray<Dismissal> dismissals)
    {
        var order = new Prerequisites(_speech, _uses, _marks);
        TopicOrder best = TopicOrder.Best(order.Weights);
        ScriptFinding[] all = [.. Coverage(), .. _markCheck.Findings(), .. NameCheck.Of(_sheet, _speech), .. Order(order, best), .. FirstTerms.Of(_speech, _uses) is { } many ? [many] : Array.Empty<ScriptFinding>()];
        var dismissed = all.Select(f => (Finding: f, Dismissal: dismissals.FirstOrDefault(d => d.Covers(f)))).Where(p => p.Dismissal is not null).ToImmutableArray();
        IEnumerable<ScriptFinding> open = all.Where(f => !dismissed.Any(d => ReferenceEquals(d.Finding, f)));
        IEnumerable<ScriptFinding> unused = dismissals.Where(d => dismissed.All(p => p.Dismissal != d)).Select(d => new ScriptFinding(ScriptProblems.UnusedDismissal(d.At, d.Id, d.Concerns), d.Concerns));
        var byTopic = _speech.Sentences.Where(s => !s.IsCaption).GroupBy(s => s.Topic).ToDictionary(g => g.Key, g => Readability.Of([.. g.Select(s => s.Words)]));
        return new ScriptReport
        {
            Findings = [.. open.Concat(unused).OrderBy(f => f.Rank).ThenBy(f => f.Problem.At.Source.Name, StringComparer.Ordinal).ThenBy(f => f.Problem.At.Start)],
            Dismissed = dismissed!,
            Clauses = _covers,
            Forward = order.Forward,
            Order = best,
Readability = [.. Enumerable.Range(0, _speech.Lesson.Topics.Length).Select(byTopic.GetValueOrDefault).Select(r => r ?? new Readability(0, 0, 0))],
        };
    }

    // A variant of which nothing is said is one finding; of one that is taught, each change that is missing.
    private IEnumerable<ScriptFinding> Coverage()
    {
        var silent = _covers.Where(c => c.Clause.Sort == ClauseSort.Variant && c.Status != CoverStatus.Said).Select(c => c.Clause.Name).ToHashSet(StringComparer.Ordinal);
        // What comes with two variants together is asked only where both are told.
        ILookup<string?, ClauseCover> changes = _covers.Where(c => !c.Clause.OnlyWith.Any(silent.Contains)).ToLookup(c => c.Clause.Variant);
        return changes.Where(v => v.Key is not { } variant || !silent.Contains(variant)).SelectMany(v => Many(v.Key, [.. v]) is { } many ? [many] : v.Select(Finding).OfType<ScriptFinding>());
    }

    // A list of twenty changes that are not said drowns what else is wrong.
    private ScriptFinding? Many(string? variant, ClauseCover[] changes)
    {
        LessonClause[] missing = [.. changes.Where(c => c.Status is CoverStatus.NeverSaid or CoverStatus.OnlyShown).Select(c => c.Clause)];
        return variant is null || missing.Length <= MostChangesApart ? null
            : new ScriptFinding(ScriptProblems.ChangesNeverSaid(PlaceFor(missing[0]), variant, changes.Length, [.. missing.Select(m => m.Name)]), variant, variant);
    }

    private ScriptFinding? Finding(ClauseCover cover)
    {
        LessonClause clause = cover.Clause;
        string page = Citation.Tell(clause.Cite);
        SourceSpan at = cover.Sentence >= 0 ? _speech.Sentences[cover.Sentence].At : PlaceFor(clause);
        Diagnostic? problem = cover.Status switch
        {
            CoverStatus.NeverSaid when clause.Variant is { } variant => ScriptProblems.ChangeNeverSaid(at, variant, clause.InWords, clause.Says, page, clause.LongName),
            CoverStatus.NeverSaid => ScriptProblems.NeverSaid(at, clause.InWords, clause.Says, page, clause.Key),
            CoverStatus.OnlyShown => ScriptProblems.OnlyShown(at, clause.InWords, page, clause.Key),
            CoverStatus.InPart => ScriptProblems.RowsNeverSaid(at, clause.Name, [.. cover.Missing.Select(n => $"{n}")], page),
            _ => null,
        };
        return problem is null ? null : new ScriptFinding(problem, clause.Variant is null ? clause.Key : clause.LongName, clause.Key, clause.Cite);
    }

    // What is never said has no place: the heading under which its like is said, else the first one.
    private SourceSpan PlaceFor(LessonClause clause)
    {
        Lesson lesson = _speech.Lesson;
        int? like = clause.Variant is { } variant
            ? _marks.TopicsOfVariant(variant).Order().Select(t => (int?)t).FirstOrDefault()
            : _covers.Where(c => c.Clause.Sort == clause.Sort && c.Clause.Variant is null).SelectMany(c => c.Topics).GroupBy(t => t).OrderByDescending(g => g.Count()).Select(g => (int?)g.Key).FirstOrDefault();
        return lesson.Topics.IsEmpty ? lesson.Source.Span(0, 0) : lesson.Topics[like ?? 0].At;
    }

    private IEnumerable<ScriptFinding> Order(Prerequisites order, TopicOrder best)
    {
        Lesson lesson = _speech.Lesson;
        foreach (ForwardReference use in order.Forward)
        {
            LessonTopic topic = lesson.Topics[use.Topic];
            string time = Duration(Pace.Seconds(use.WordsBetween, _pace));
            yield return new ScriptFinding(ScriptProblems.UsedTooEarly(use.At, use.Term, topic.Title, topic.At.StartPosition.Line, use.Sentences, time), use.Term);
        }

        long now = TopicOrder.CostOf(order.Weights, [.. Enumerable.Range(0, order.Weights.GetLength(0))]);
        if (best.Cost < now && !order.Forward.IsEmpty)
        {
            int moved = Enumerable.Range(0, best.Topics.Length).First(i => best.Topics[i] != i);
            yield return new ScriptFinding(
                ScriptProblems.BetterOrder(lesson.Topics[best.Topics[moved]].At, [.. best.Topics.Select(t => lesson.Topics[t].Title)], now, best.Cost, best.IsExact), OrderOfTopics);
        }
    }

    private static string Duration(int seconds) => seconds < 60 ? $"{seconds} s" : $"{seconds / 60} min {seconds % 60} s";
}
