using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Where the sources are silent or disagree: open questions, readings and conflicts, those of variants included.</summary>
internal static class QuestionList
{
    /// <summary>The questions of the rules without a variant, then what each variant adds.</summary>
    /// <param name="game">The game.</param>
    /// <param name="sheet">Its sheet without a variant.</param>
    /// <param name="variants">The variants that are of interest.</param>
    public static IEnumerable<PageQuestion> Of(Game game, Sheet sheet, IEnumerable<string> variants)
    {
        PageQuestion[] own = [.. OfSheet(sheet)];
        var seen = own.Select(Key).ToHashSet();
        return own.Concat(
            from variant in variants
            let with = game.Sheet(variant).Sheet
            where with is not null
            from question in OfSheet(with)
            where seen.Add(Key(question))
            select question with { Variant = variant });
    }

    private static (string Title, string Words, int Answers) Key(PageQuestion question) => (question.Title, question.Words, question.Answers.Length);

    // A question about readings takes their place in the list.
    private static IEnumerable<PageQuestion> OfSheet(Sheet sheet) =>
        sheet.Choices.Where(c => sheet.Questions.All(q => q.About != c.Owner)).Select(c => Unasked(sheet, c))
            .Concat(sheet.Questions.Select(q => Asked(sheet, q, sheet.Choices.FirstOrDefault(c => c.Owner == q.About))));

    private static PageQuestion Asked(Sheet sheet, OpenQuestion question, Choice? about) =>
        new(Prose.Sentence(question.Name), question.Words, Citation.Tell(question.Cite ?? about?.Cite), about is null ? [] : Answers(sheet, about), Why(about));

    private static PageQuestion Unasked(Sheet sheet, Choice choice)
    {
        string number = Prose.Sentence(Prose.Word(choice.Names.Length));
        string words = choice.Cause == ChoiceCause.Conflict ? $"{number} sources disagree." : $"This can be read in {Prose.Word(choice.Names.Length)} ways.";
        return new PageQuestion(Prose.Sentence(choice.Owner), words, PagesOf(sheet, choice), Answers(sheet, choice), Why(choice));
    }

    private static ImmutableArray<QuestionAnswer> Answers(Sheet sheet, Choice choice) =>
        [.. choice.Names.Select((name, i) => choice.Cause == ChoiceCause.Conflict
            ? new QuestionAnswer($"{SourceOf(sheet, name)}:", Ended(choice.Says[i]), i == choice.Followed)
            : new QuestionAnswer(Ended(Prose.Sentence(name)), Ended(choice.Says[i]), i == choice.Followed))];

    private static string Why(Choice? choice) => choice?.Why is { } why ? Ended(Prose.Sentence(why)) : "";

    // `book 12` is written as the sheet cites: a source, and perhaps a page.
    private static string SourceOf(Sheet sheet, string cited)
    {
        RuleSource? source = sheet.Sources.Where(s => cited == s.Name || cited.StartsWith(s.Name + " ", StringComparison.Ordinal)).MaxBy(s => s.Name.Length);
        return source is null ? cited : cited.Length == source.Name.Length ? source.Title : $"{source.Title}, page {cited[source.Name.Length..].Trim()}";
    }

    // Each source that disagrees is named with its page below; for readings it is where the words stand.
    private static string PagesOf(Sheet sheet, Choice choice)
    {
        if (choice.Cause == ChoiceCause.Conflict)
        {
            return "";
        }

        Citation? cite = sheet.Score.FirstOrDefault(s => s.Name == choice.Owner)?.Cite
            ?? sheet.Laws.FirstOrDefault(l => l.Name == choice.Owner)?.Cite
            ?? sheet.Tables.FirstOrDefault(t => t.Table.Name == choice.Owner)?.Cite
            ?? sheet.Meanings.FirstOrDefault(m => m.Word.Name == choice.Owner)?.Cite
            ?? choice.Cite;
        return Citation.Tell(cite);
    }

    private static string Ended(string words) => words.Length == 0 || words[^1] is '.' or '!' or '?' ? words : words + ".";
}
