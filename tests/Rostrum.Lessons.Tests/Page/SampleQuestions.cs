using System.Collections.Immutable;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>The open questions and conflicts of the sample page (games/kiln-night/publishers-note.md and rulebook.md).</summary>
internal static class SampleQuestions
{
    public static ImmutableArray<PageQuestion> All { get; } =
    [
        new(
            "Commission 11: is it worth 7 or 6?",
            IsConflict: true,
            [new("the card", "7"), new("the list on page 12", "6", IsFollowed: true)],
            "card 11, book 12",
            "The list.",
            "The publisher\u2019s note says that the card is misprinted."),
        new(
            "What does a run of five or six bowls score?",
            IsConflict: false,
            [new("as for four", "10"), new("the numbers grow on", "15, 21"), new("split into the best runs", "11, 13")],
            "book 8",
            "",
            "Asked of the publisher; no answer yet."),
    ];
}
