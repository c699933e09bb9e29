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
        new(Prose.Sentence(question.Name), question.Words, Citation.Tell(question.Cite ?? about?.Cite), about is null ? [] : Answers(about), Why(about));

    private static PageQuestion Unasked(Sheet sheet, Choice choice)
    {
        string number = Prose.Sentence(Prose.Word(choice.Names.Length));
        string words = choice.Cause == ChoiceCause.Conflict ? $"{number} sources disagree." : $"This can be read in {Prose.Word(choice.Names.Length)} ways.";
        return new PageQuestion(Prose.Sentence(choice.Owner), words, PagesOf(sheet, choice), Answers(choice), Why(choice));
    }

    private static ImmutableArray<QuestionAnswer> Answers(Choice choice) =>
        [.. choice.Names.Select((name, i) => choice.Cause == ChoiceCause.Conflict
            ? new QuestionAnswer($"{choice.Sources[i]?.InWords ?? name}:", Prose.Ended(choice.Says[i]), i == choice.Followed)
            : new QuestionAnswer(Prose.Ended(Prose.Sentence(name)), Prose.Ended(choice.Says[i]), i == choice.Followed))];

    private static string Why(Choice? choice) => choice?.Why is { } why ? Prose.Ended(Prose.Sentence(why)) : "";

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
}
