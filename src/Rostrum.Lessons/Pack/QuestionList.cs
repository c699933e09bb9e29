using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Pack;

/// <summary>Where the sources are silent or disagree: open questions, readings and conflicts, those of the variants included.</summary>
internal static class QuestionList
{
    public static IEnumerable<PageQuestion> Of(Game game, Sheet sheet)
    {
        IEnumerable<OpenQuestion> questions = sheet.Variants.Select(v => game.Sheet(v.Name).Sheet).OfType<Sheet>().SelectMany(s => s.Questions).Concat(sheet.Questions);
        return sheet.Choices.Select(c => Choice(sheet, c)).Concat(questions.DistinctBy(q => q.Name).Select(Question));
    }

    private static PageQuestion Question(OpenQuestion question) => new(question.Words, false, [], Citation.Tell(question.Cite), "", "");

    private static PageQuestion Choice(Sheet sheet, Choice choice)
    {
        bool isConflict = choice.Cause == ChoiceCause.Conflict;
        string question = isConflict ? $"The sources disagree about '{choice.Owner}'." : $"'{choice.Owner}' can be read in several ways.";
        string pages = PagesOf(sheet, choice);
        string follows = choice.Followed is { } followed ? choice.Names[followed] : "";
        return new PageQuestion(question, isConflict, [.. choice.Names.Select((n, i) => new SlipReading(n, "", i == choice.Followed))], pages, follows, choice.Why ?? "");
    }

    private static string PagesOf(Sheet sheet, Choice choice)
    {
        Citation? cite = sheet.Score.FirstOrDefault(s => s.Name == choice.Owner)?.Cite
            ?? sheet.Tables.FirstOrDefault(t => t.Table.Name == choice.Owner)?.Cite
            ?? sheet.Meanings.FirstOrDefault(m => m.Word.Name == choice.Owner)?.Cite
            ?? sheet.Ends.FirstOrDefault(e => e.Name == choice.Owner)?.Cite
            ?? choice.Cite;
        return Citation.Tell(cite);
    }
}
