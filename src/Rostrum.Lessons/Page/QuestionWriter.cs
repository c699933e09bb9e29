using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes the places where the sources are silent or disagree: what is open, what was decided, then what belongs to a variant.</summary>
internal static class QuestionWriter
{
    /// <summary>Writes every question with its answers and what the lesson does about it.</summary>
    public static void Write(PageContext page, ImmutableArray<PageQuestion> questions)
    {
        WriteGroup(page, "Still open", "Nobody has answered these yet. Where a score depends on one, its slip gives each reading.", questions.Where(q => q.IsOpen && q.Variant.Length == 0));
        WriteGroup(page, "Decided", "The sources disagree or can be read in several ways; this lesson follows one of them.", questions.Where(q => !q.IsOpen && q.Variant.Length == 0));
        foreach (IGrouping<string, PageQuestion> variant in questions.Where(q => q.Variant.Length > 0).GroupBy(q => q.Variant))
        {
            WriteGroup(page, $"Only with {variant.Key}", "", variant);
        }
    }

    private static void WriteGroup(PageContext page, string title, string says, IEnumerable<PageQuestion> questions)
    {
        if (!questions.Any())
        {
            return;
        }

        page.Out.Leaf("h3", title).Line();
        if (says.Length > 0)
        {
            page.Out.Leaf("p", says, ("class", "group-says")).Line();
        }

        page.Out.Open("div", ("class", "questions")).Line();
        foreach (PageQuestion question in questions)
        {
            WriteQuestion(page, question);
        }

        page.Out.Close().Line();
    }

    private static void WriteQuestion(PageContext page, PageQuestion question)
    {
        page.Out.Open("section", ("class", "question")).Line().Leaf("h4", question.Title).Line()
            .Open("p").Text($"{question.Words} ").Leaf("span", question.Pages, ("class", "cite")).Close().Line();
        WriteAnswers(page, question.Answers);
        if (question.Why.Length > 0)
        {
            page.Out.Leaf("p", question.Why, ("class", "follows")).Line();
        }

        page.Out.Close().Line();
    }

    private static void WriteAnswers(PageContext page, ImmutableArray<QuestionAnswer> answers)
    {
        if (answers.IsEmpty)
        {
            return;
        }

        page.Out.Open("ul", ("class", "choices")).Line();
        foreach (QuestionAnswer answer in answers)
        {
            page.Out.Open("li").Leaf("b", answer.Who).Text(answer.Says.Length > 0 ? $" {answer.Says}" : "")
                .Text(answer.IsFollowed ? " Followed here." : "").Close().Line();
        }

        page.Out.Close().Line();
    }
}
