using System.Collections.Immutable;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>The open questions and conflicts of the sample page (games/kiln-night/publishers-note.md and rulebook.md).</summary>
internal static class SampleQuestions
{
    public static ImmutableArray<PageQuestion> All { get; } =
    [
        new(
            "Worth of Commission 11",
            "Two sources disagree.",
            "",
            [new("The card:", "7.", false), new("Rulebook, page 12:", "6.", IsFollowed: true)],
            "The publisher\u2019s note says that the list is right."),
        new(
            "Runs of five and six bowls",
            "What does a run of five or six bowls score?",
            "Rulebook, page 8",
            [new("As for four.", "It scores 10.", false), new("Growing on.", "15 and 21.", false), new("Best split.", "11 and 13.", false)],
            ""),
        new("The Thrower", "What becomes of a ware that cannot stand?", "Rulebook, page 9", [], "") { Variant = "guild marks" },
    ];
}
