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
        new("done", "What was done before, by time: 'the turn before: lay jug on B2'. What is not listed was not done.", KeyForm.Names),
        new("expect", "What must come out; 'rostrum check' holds it against the sheet.", KeyForm.Keys),
    ];

    /// <summary>The times at which something was done.</summary>
    public static ImmutableArray<KeyHelp> Done { get; } =
    [
        new("this turn", "What was done in the turn that goes on, by whose turn it is or, behind another seat, by that one: 'seat 2: claim Order 3'.", KeyForm.Anything),
        new("the turn before", "What was done in the turn just before, by the player to the right unless a seat stands before it.", KeyForm.Anything),
        new("this round", "What was done in this round, before the turn before.", KeyForm.Anything),
        new("the round before", "What was done in the round before, before the turn before.", KeyForm.Anything),
        new("before", "What was done still earlier.", KeyForm.Anything),
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
