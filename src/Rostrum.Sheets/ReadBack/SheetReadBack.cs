using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

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
            .. Components(sheet), .. Blocks(sheet), .. sheet.Actions.Select(Action), .. sheet.Laws.Select(Law), .. sheet.Powers.Select(Power), .. sheet.Ends.Select(End),
            .. sheet.Score.Select(Score), .. Closing(sheet), .. Words(sheet), .. sheet.Tables.Select(Table), .. Cards(sheet), .. Facts(sheet), .. Register(sheet),
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
            if (old is null || old.Says != clause.Says || old.Meaning != clause.Meaning || old.StatusInWords != clause.StatusInWords)
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

    private static ReadClause Told(string section, string name, string? says, string meaning, Citation? cite, Choice? choice, SourceSpan at, bool isCarriedOut = true)
    {
        string sentence = says ?? Prose.Sentence(Ended(meaning));
        ClauseStatus status = choice is null && !isCarriedOut ? ClauseStatus.NotYet : StatusOf(choice);
        return new ReadClause(section, name, sentence, says is null || meaning.Length == 0 ? null : Ended(meaning), cite, status, choice, at);
    }

    private static string Ended(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' ? words : words + ".";

    private static ReadClause Law(Law law)
    {
        string binds = $"{Prose.And(law.Binds.Select(b => b.Name))}: ";
        return Told("Laws", law.Name, law.Says, binds + (law.Bodies is [[var first, ..], ..] ? first.Formula : ""), law.Cite, law.Choice, law.At);
    }

    private static ReadClause Score(ScoreClause clause)
    {
        ScoreBody first = clause.Bodies[clause.Choice?.Followed ?? 0];
        string meaning = first.Idiom?.Sentence ?? first.Formula;
        return Told("Scoring", clause.Name, clause.Says, meaning, clause.Cite, clause.Choice, clause.At);
    }

    private static ReadClause Power(Power power)
    {
        string lifts = power.Lifts.IsEmpty ? "any one law" : Prose.And(power.Lifts);
        string price = power.Price.IsEmpty ? "" : $", at the price: {string.Join("; ", power.Price.Select(p => p.Sentence))}";
        return Told("Powers", power.Name, power.Says, $"lifts {lifts}{(power.For is null ? "" : $" for {power.For.Name}")}{price}", power.Cite, null, power.At);
    }

    private static ReadClause End(EndRule end) =>
        Told("End of the game", end.Name, end.Says, Prose.And(((string?[])[end.Then, end.Winner is null ? null : $"winner: {end.Winner}"]).OfType<string>()), end.Cite, end.Choice, end.At, isCarriedOut: false);

    private static ReadClause Action(ActionFacts action)
    {
        string steps = string.Join("; ", action.Steps.Select(Sentence));
        string meaning = action.Action.Phrase.InWords == action.Action.Name ? steps : $"{action.Action.Phrase.InWords}: {steps}";
        return Told("Actions", action.Action.Name, action.Says, meaning, action.Cite, null, action.Action.DeclaredAt!.Value, IsSimple(action.Steps));
    }

    /// <summary>A step with those below it, on one line.</summary>
    private static string Sentence(Step step)
    {
        string own = step.Sentence.TrimEnd('.', ':');
        string head = own.Length == 0 ? own : char.ToLowerInvariant(own[0]) + own[1..];
        string inner = string.Join("; ", step.Inner.Select(Sentence));
        string otherwise = step.Otherwise.IsEmpty ? "" : $", otherwise ({string.Join("; ", step.Otherwise.Select(Sentence))})";
        return (inner.Length == 0 ? head : $"{head} ({inner})") + otherwise;
    }

    private static bool IsSimple(ImmutableArray<Step> steps) =>
        steps.All(s => s.Kind is StepKind.Move or StepKind.Swap or StepKind.Change or StepKind.Let or StepKind.Set or StepKind.Add or StepKind.Take or StepKind.Nothing);
}

/// <summary>A clause that a variant changes.</summary>
/// <param name="Before">As it was; null for a new clause.</param>
/// <param name="After">As it is with the variant; null for one that is gone.</param>
public sealed record ReadDifference(ReadClause? Before, ReadClause? After);
