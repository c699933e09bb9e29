using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Understands words as an action or a truth, and rules on them under every reading that matters.</summary>
internal static class WordsRuling
{
    /// <summary>The ruling, or what is wrong with the words.</summary>
    /// <param name="position">The position.</param>
    /// <param name="words">What is asked.</param>
    /// <param name="isTold">False where nobody reads why a truth holds.</param>
    public static RulingAnswer On(Position position, string words, bool isTold = true)
    {
        SourceSpan whole = new SourceText("question", words).Whole;
        SourceSpan at = whole.Part(0, words.TrimEnd(' ', '?', '.').Length);
        var problems = new DiagnosticBag();
        Ruling? ruling = Prose.WordsOf(words).Length == 0 ? Nothing(at, problems) : Understand(position, words, at, problems, isTold);
        return new RulingAnswer(ruling is null || position.IsTurnSaid ? ruling : ruling with { Assumed = [TurnTaken(position), .. ruling.Assumed] }, problems.InOrder());
    }

    private static string TurnTaken(Position position) => $"it is the turn of {new Naming(position.Sheet, position.Me).Seat(position.Me)}";

    private static Ruling? Nothing(SourceSpan at, DiagnosticBag problems)
    {
        problems.Add(RulingProblems.NothingAsked(at));
        return null;
    }

    private static Ruling? Understand(Position position, string words, SourceSpan at, DiagnosticBag problems, bool isTold)
    {
        // Of the many ways to cut one slip at the gaps of a phrase, the first tells enough.
        var actionProblems = new Dictionary<ActionFacts, DiagnosticBag>();
        foreach (PhraseMatch match in PhraseMatch.All(position.Sheet, at))
        {
            var own = new DiagnosticBag();
            if (new ChoiceFinder(match, position, at, own).Find() is { } proposal)
            {
                return OnAction(proposal);
            }

            actionProblems.TryAdd(match.Action, own);
        }

        var formulaProblems = new DiagnosticBag();
        if (OutsideFormula.Bind(position.Sheet, FormulaText.Of(at), Sort.Truth, formulaProblems) is var (term, size))
        {
            return OnTruth(position, term, size, isTold);
        }

        if (Prose.WordsOf(words)[0] is "Is" or "is" or "Are" or "are")
        {
            problems.Add(RulingProblems.AsAQuestion(at));
            return null;
        }

        problems.AddRange(actionProblems.Count > 0 ? [.. actionProblems.Values.SelectMany(p => p.InOrder())] : Misspelt(position.Sheet, words, at) is { } misspelt ? [misspelt] : formulaProblems.InOrder());
        return null;
    }

    // Words that begin like an action, or nearly so, or with a word from its middle, were meant as one.
    private static Diagnostic? Misspelt(Sheet sheet, string words, SourceSpan at)
    {
        string[] asked = [.. Prose.WordsOf(words).Select(w => w.ToLowerInvariant())];
        (ActionPhrase Phrase, string[] Words)[] phrases = [.. sheet.Actions.Select(a => (a.Action.Phrase, RulingProblems.Fixed(a.Action.Phrase))).Where(p => p.Item2.Length > 0)];
        string? near = NearSpelling.Find(asked[0], phrases.Select(p => p.Words[0]));
        bool isName = sheet.Names.Find(asked[0]).Length > 0;
        ActionPhrase? meant = phrases.Where(p => p.Words[0] == asked[0] || (!isName && (p.Words[0] == near || p.Words.Contains(asked[0]))))
            .OrderByDescending(p => p.Words.Intersect(asked).Count()).Select(p => p.Phrase).FirstOrDefault();
        return meant is null || asked.Contains("was") ? null : RulingProblems.NoSuchAction(at, words, meant);
    }

    private static Ruling OnAction(Proposal proposal)
    {
        Naming naming = new(proposal.Position.Sheet, proposal.Position.Me);
        Readings<Judgement> readings = Readings<Judgement>.Of(proposal.Position.Sheet, (setting, touched) => new ActionJudge(proposal, setting, touched).Judge());
        Judgement first = readings.All[0].Answer;
        Ruling ruling = readings.All.All(r => r.Answer.Is == first.Is) && first.Is != Kleene.Unknown
            ? first.Is == Kleene.Yes ? new Ruling.Legal(first.Because, first.Price) { Kept = first.Kept } : new Ruling.Illegal(first.Breaches)
            : Unsettled(readings, j => j.Is, j => j.Why, naming, isAction: true);
        return ruling with { Assumed = proposal.Assumed };
    }

    private static Ruling OnTruth(Position position, Term term, int size, bool isTold)
    {
        Naming naming = new(position.Sheet, position.Me);
        Readings<Value.Truth> readings = Readings<Value.Truth>.Of(position.Sheet, (setting, touched) =>
            new Splitter().Decide(position, p => new Evaluator(p, p.Me, setting, touched).Ask(term, Evaluator.Frame(size))));
        Value.Truth first = readings.All[0].Answer;
        if (first.Is == Kleene.Unknown || readings.All.Any(r => r.Answer.Is != first.Is))
        {
            return Unsettled(readings, t => t.Is, t => t.Blame, naming, isAction: false);
        }

        var evaluator = new Evaluator(position, position.Me, Setting.First, new SortedSet<int>());
        Tale tale = !isTold ? Tale.Of("") : evaluator.Ask(term, Evaluator.Frame(size)).Is == Kleene.Unknown
            ? Tale.Of("it is so, whatever is not given")
            : new Teller(evaluator, naming).Tell(term, Evaluator.Frame(size));
        return first.Is == Kleene.Yes ? new Ruling.Yes(tale.Text, tale.Spaces) : new Ruling.No(tale.Text, tale.Spaces);
    }

    private static Ruling.Unsettled Unsettled<T>(Readings<T> readings, Func<T, Kleene> verdict, Func<T, Blame> why, Naming naming, bool isAction)
    {
        Blame blame = readings.All.Aggregate(Blame.None, (sum, r) => sum + why(r.Answer));
        return new Ruling.Unsettled(
            [.. readings.Touched.SelectMany(c => Of(readings, c, r => Word(verdict(r), isAction)))],
            naming.NotGiven(blame),
            [.. blame.Gaps.Where(g => g.Kind != GapKind.NotGiven).Select(g => g.Listed).Distinct()]);
    }

    // The alternatives of one choice, the others at their first; a choice that changes nothing by itself is told where no choice does.
    private static IEnumerable<RulingReading> Of<T>(Readings<T> readings, Choice choice, Func<T, string> word)
    {
        RulingReading[] all = [.. Enumerable.Range(0, choice.Names.Length).Select(alternative =>
        {
            T answer = readings.All.First(r => r.Setting.Of(choice) == alternative && readings.Touched.All(c => c.Id == choice.Id || r.Setting.Of(c) == (c.Followed ?? 0))).Answer;
            return new RulingReading(choice.Owner, choice.Names[alternative], word(answer));
        })];
        return all.Select(r => r.Verdict).Distinct().Count() > 1 || readings.All.Select(r => word(r.Answer)).Distinct().Count() > 1 ? all : [];
    }

    private static string Word(Kleene verdict, bool isAction) => verdict switch
    {
        Kleene.Yes => isAction ? "legal" : "yes",
        Kleene.No => isAction ? "illegal" : "no",
        _ => "unsettled",
    };
}
