using System.Collections.Immutable;
using Rostrum.Sheets.Loading.Keys;

namespace Rostrum.Rulings.Positions;

/// <summary>What every key of <see cref="PositionDialect"/> is for. A key without help, and help without a key, fails a test.</summary>
internal static class PositionHelp
{
    /// <summary>The keys at the margin.</summary>
    public static ImmutableArray<KeyHelp> Top { get; } =
    [
        new("says", "What the position is about, in your words.", KeyForm.Prose),
        new("cite", "Source and page of the example, such as 'book 8'.", KeyForm.Texts),
        new("variants", "The variants that are on: [Climbing Chamber].", KeyForm.Texts),
        new("players", "How many sit at the table, where more do than are named.", KeyForm.Number),
        new("turn of", "Whose turn it is, such as 'seat 1'.", KeyForm.Text) { Words = ["seat 1"] },
        new("expect", "What must come out; 'rostrum check' holds it against the sheet.", KeyForm.Keys),
    ];

    /// <summary>The keys of what is expected of one clause or one action.</summary>
    public static ImmutableArray<KeyHelp> Expect { get; } =
    [
        new("is", "The answer: points, 'at least 4', legal, illegal, yes, no, unsettled.", KeyForm.Anything),
        new("illegal", "The laws that are broken, all of them: [copper and ash].", KeyForm.Texts),
        new("because", "How it comes out, worked by hand.", KeyForm.Prose),
        new("cite", "Source and page of the answer.", KeyForm.Texts),
    ];

    /// <summary>The parts of what is expected.</summary>
    public static ImmutableArray<KeyHelp> Sections { get; } =
    [
        new(ExpectationReader.OfMe, "Points of whose turn it is: a scoring clause, or 'total', then the points.", KeyForm.Names),
        new($"{ExpectationReader.TallyOf}…", "Points of another seat.", KeyForm.Names),
        new(ExpectationReader.OfRule, "An action or a question, then the answer: 'place jug on B2: legal'.", KeyForm.Names),
    ];
}
