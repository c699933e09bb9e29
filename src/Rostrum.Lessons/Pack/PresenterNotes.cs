using System.Text;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Pack;

/// <summary>Writes what the presenter should know before publishing; it is for no one else.</summary>
internal static class PresenterNotes
{
    private static readonly string[] Cautions =
    [
        "Was the copy a gift, or is the lesson paid for? Say so in the lesson and beside it, where your law asks for it. `disclosure:` at the head of the lesson puts your sentence into `description.txt`.",
        "Does the box carry a warning, such as small parts or flashing lights? Say it.",
        "The drawings are yours to use. For scans, covers and card texts ask the publisher.",
        "Upload `lesson.html` together with the folder `pictures`: the page leads to the drawings. This file stays with you.",
    ];

    /// <summary>The notes as Markdown.</summary>
    public static string Write(Game game, LessonReport report, LessonPage page)
    {
        var notes = new StringBuilder($"# {page.Title}: before you publish\n\nFor you, not for your audience.\n\n");
        foreach (string caution in Cautions)
        {
            notes.Append("- ").Append(caution).Append('\n');
        }

        notes.Append("- ").Append(page.CorrectAsOf.Length == 0 ? "The lesson names no day up to which it is correct. Write `correct as of:` at its head." : $"The page says: correct as of {page.CorrectAsOf}. Look for news from the publisher before that day grows old.").Append('\n');
        Section(notes, "What the check found", report.Problems.Select(p => $"Line {p.At.StartPosition.Line}: {p.Message} {p.Hint}".TrimEnd()), "Nothing is wrong.");
        Section(notes, "Questions for the publisher", Questions(game).Select(Question), "None.");
        return notes.ToString();
    }

    private static IEnumerable<PageQuestion> Questions(Game game)
    {
        Sheet sheet = game.Sheet().Sheet!;
        return QuestionList.Of(game, sheet, sheet.Variants.Select(v => v.Name)).Where(q => q.IsOpen);
    }

    private static string Question(PageQuestion question)
    {
        string answers = string.Concat(question.Answers.Select(a => $" {a.Who}{(a.Says.Length > 0 ? " " : "")}{a.Says}"));
        string[] where = [.. ((string[])[question.Pages, question.Variant.Length > 0 ? $"only with {question.Variant}" : ""]).Where(w => w.Length > 0)];
        return $"{question.Title}: {question.Words}{answers}{(where.Length > 0 ? $" ({string.Join("; ", where)})" : "")}";
    }

    private static void Section(StringBuilder notes, string title, IEnumerable<string> lines, string none)
    {
        string[] all = [.. lines];
        notes.Append("\n## ").Append(title).Append("\n\n").Append(all.Length == 0 ? $"{none}\n" : string.Concat(all.Select(l => $"- {l}\n")));
    }
}
