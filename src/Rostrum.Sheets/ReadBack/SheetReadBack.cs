using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <summary>Says a sheet back in English, clause by clause, so that its author can check it against the rulebook.</summary>
public static partial class SheetReadBack
{
    /// <summary>Every clause in the order in which one would teach it: components, actions, laws, ends, scoring, then what is open.</summary>
    public static ImmutableArray<ReadClause> Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return
        [
            .. Components(sheet), .. Marks(sheet), .. Signs(sheet), .. Blocks(sheet), .. sheet.Actions.Select(a => Action(sheet, a)), .. sheet.Laws.Select(Law), .. sheet.Powers.Select(Power), .. sheet.Ends.Select(End),
            .. sheet.Score.Select(Score), .. Closing(sheet), .. Words(sheet), .. sheet.Tables.Select(Table), .. Cards(sheet), .. Facts(sheet), .. Sources(sheet), .. Register(sheet),
        ];
    }

    /// <summary>What a variant changes: clauses that are new, changed or gone. Nothing else changes.</summary>
    /// <param name="sheet">The sheet without the variant.</param>
    /// <param name="with">The sheet with it.</param>
    public static ImmutableArray<ReadDifference> Differences(Sheet sheet, Sheet with)
    {
        ImmutableArray<ReadClause> before = Of(sheet);
        ImmutableArray<ReadClause> after = Of(with);
        var differences = ImmutableArray.CreateBuilder<ReadDifference>();
        foreach (ReadClause clause in after)
        {
            ReadClause? old = before.FirstOrDefault(b => b.Section == clause.Section && b.Name == clause.Name);
            if (old is null || old.Says != clause.Says || old.Meaning != clause.Meaning || old.StatusInWords != clause.StatusInWords || Citation.Tell(old.Cite) != Citation.Tell(clause.Cite))
            {
                differences.Add(new ReadDifference(old, clause));
            }
        }

        differences.AddRange(before.Where(b => !after.Any(a => a.Section == b.Section && a.Name == b.Name)).Select(b => new ReadDifference(b, null)));
        return differences.ToImmutable();
    }

    private static ClauseStatus StatusOf(Choice? choice) => choice switch
    {
        null => ClauseStatus.Settled,
        { IsOpen: true } => ClauseStatus.Open,
        _ => ClauseStatus.Decided,
    };

    private static ReadClause Told(string section, string name, string? says, string meaning, Citation? cite, Choice? choice, SourceSpan at)
    {
        string sentence = says ?? Prose.Sentence(Prose.Ended(meaning));
        return new ReadClause(section, name, sentence, says is null || meaning.Length == 0 ? null : Prose.Ended(meaning), cite, StatusOf(choice), choice, at);
    }

    private static ReadClause Law(Law law)
    {
        string binds = $"{Prose.And(law.Binds.Select(b => b.Name))}: ";
        string meaning = ByReading(law.Choice, i => law.Bodies.Length > i && law.Bodies[i] is [var first, ..] ? first.Formula : "");
        return Told("Laws", law.Name, law.Says, binds + meaning, law.Cite, law.Choice, law.At);
    }

    private static ReadClause Score(ScoreClause clause)
    {
        ReadClause told = Told("Scoring", clause.Name, clause.Says, ByReading(clause.Choice, i => Body(clause.Bodies[i])), clause.Cite, clause.Choice, clause.At);
        return clause.Choice is null && clause.Bodies[0].Points is Term.NotModelled ? told with { Status = ClauseStatus.NotModelled } : told;
    }

    private static string Body(ScoreBody body)
    {
        string limits = $"{(body.AtLeast is { } least ? $", at least {Words(least)}" : "")}{(body.AtMost is { } most ? $", at most {Words(most)}" : "")}";
        string meaning = body.Idiom?.Sentence ?? body.Formula;
        return limits.Length == 0 ? meaning : meaning.TrimEnd('.') + limits;
    }

    // An open choice is told reading by reading, a decided one by what is followed.
    private static string ByReading(Choice? choice, Func<int, string> meaning) => choice switch
    {
        null => meaning(0),
        { Followed: { } followed } => meaning(followed),
        _ => string.Join("; ", choice.Names.Select((name, i) => $"if {name}: {meaning(i).TrimEnd('.')}")),
    };

    /// <summary>A formula as its author wrote it, on one line.</summary>
    private static string Words(Term term) => Prose.Fold(term.Origin.At.Text);

    private static ReadClause Power(Power power)
    {
        string lifts = power.Lifts.IsEmpty ? "any one law" : Prose.And(power.Lifts);
        string price = power.Price.IsEmpty ? "" : $", at the price: {string.Join("; ", power.Price.Select(p => p.Sentence))}";
        string limit = power.LimitTimes is { } times ? $", {(times == 1 ? "once" : $"{times} times")} a {power.LimitPer.ToString().ToLowerInvariant()}" : "";
        return Told("Powers", power.Name, power.Says, $"lifts {lifts}{(power.For is null ? "" : $" for {power.For.Name}")}{(power.If is null ? "" : $" if {Words(power.If)}")}{limit}{price}", power.Cite, null, power.At);
    }

    private static ReadClause End(EndRule end) =>
        Told("End of the game", end.Name, end.Says, EndInWords(end), end.Cite, end.Choice, end.At);

    // `if count(…) is at least 3: at once and winner: me`
    private static string EndInWords(EndRule end)
    {
        string last = string.Join("; ", end.Steps.Select(Sentence));
        string follows = Prose.And(((string?[])[last.Length == 0 ? null : last, end.Then, end.Winner is null ? null : $"winner: {end.Winner}", CheckedInWords(end)]).OfType<string>());
        return end.If is null ? follows : $"if {Words(end.If)}{(follows.Length == 0 ? "" : $": {follows}")}";
    }

    private static string? CheckedInWords(EndRule end) => end.Moment switch
    {
        EndMoment.AfterEachTurn => null,
        EndMoment.AfterEachRound => "checked after each round",
        EndMoment.AfterEachAction => "checked after each action",
        _ => $"checked {(end.Moment == EndMoment.BeforeBlock ? "before" : "after")} {end.Block}",
    };

    private static ReadClause Action(Sheet sheet, ActionFacts action)
    {
        var text = (sheet.Tree.Find("actions")?.Value as OutlineMapping)?.Find(action.Action.Name)?.Value as OutlineMapping;
        string choices = text?.Find("choose") is { } chosen ? $"choosing {ClauseParts.Words(chosen.Value)}; " : "";
        string steps = choices + string.Join("; ", action.Steps.Select(Sentence));
        string final = action.IsFinal ? "; final: once done, nothing is taken back" : "";
        string meaning = (action.Action.Phrase.InWords == action.Action.Name ? steps : $"{action.Action.Phrase.InWords}: {steps}") + final;
        return Told("Actions", action.Action.Name, action.Says, meaning, action.Cite, null, action.Action.DeclaredAt!.Value);
    }

    /// <summary>A step with those below it, on one line.</summary>
    private static string Sentence(Step step)
    {
        string head = Prose.Begun(step.Sentence);
        string inner = string.Join("; ", step.Inner.Select(Sentence));
        string otherwise = step.Otherwise.IsEmpty ? "" : $", otherwise ({string.Join("; ", step.Otherwise.Select(Sentence))})";
        return (inner.Length == 0 ? head : $"{head} ({inner})") + otherwise;
    }
}

/// <summary>A clause that a variant changes.</summary>
/// <param name="Before">As it was; null for a new clause.</param>
/// <param name="After">As it is with the variant; null for one that is gone.</param>
public sealed record ReadDifference(ReadClause? Before, ReadClause? After)
{
    /// <summary>What differs, in words: the sentences, or what they mean where the author says the same of both, or else how sure they are or their pages.</summary>
    /// <returns>As it was and as it is; null for a clause that is not there.</returns>
    public (string? Before, string? After) InWords
    {
        get
        {
            if (Before is null || After is null)
            {
                return (Before?.Says, After?.Says);
            }

            Func<ReadClause, string>[] tells = [c => c.Says, c => c.Meaning ?? c.Says, c => c.StatusInWords, c => Citation.Tell(c.Cite)];
            Func<ReadClause, string> differing = tells.FirstOrDefault(t => t(Before) != t(After), tells[0]);
            return (differing(Before), differing(After));
        }
    }
}
