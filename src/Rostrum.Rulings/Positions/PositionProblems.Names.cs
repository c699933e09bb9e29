using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <content>Messages about names in a position (ROS0221 to ROS0229, ROS0175, ROS0176).</content>
internal static partial class PositionProblems
{
    public static Diagnostic UnknownPlace(SourceSpan at, string found, string where, IReadOnlyCollection<string> known) =>
        Near("ROS0221", at, $"The sheet knows nothing called '{Prose.Clip(found)}' that {where} could have.", found, known);

    public static Diagnostic NotWritten(SourceSpan at, string found) => new(
        "ROS0221", Severity.Error, at, $"A position does not say what lies in the {found}: it is what no other place holds.", "Leave the line out.");

    public static Diagnostic UnknownThing(SourceSpan at, string found, IReadOnlyCollection<string> known, string? near) => new(
        "ROS0222", Severity.Error, at, $"Nothing in the sheet is called '{Prose.Clip(found)}'.", near is null ? KnownWords.Sentence(found, known) : $"Did you mean '{near}'?")
    {
        Fix = near is null ? null : Fix.Replace(at, near),
    };

    public static Diagnostic WordForNothing(SourceSpan at) => new(
        "ROS0222", Severity.Error, at, $"Nothing in the sheet is called '{Prose.Clip(at.Text)}'.", "Write 'nothing', or '[]', where nothing lies.")
    {
        Fix = Fix.Replace(at, ContentReader.Nothing),
    };

    public static Diagnostic WantsBrackets(SourceSpan at) => new(
        "ROS0222", Severity.Error, at, "Several things stand here without brackets.", "Write them as a list: '[iron jug, 2 ash bowls]'.")
    {
        Fix = new Fix("put it in brackets", FixGrade.Safe, [new TextEdit(at.Part(0, 0), "["), new TextEdit(at.Part(at.Length, 0), "]")]),
    };

    public static Diagnostic UnknownSign(SourceSpan at, string sign, string legend) => new(
        "ROS0223", Severity.Error, at, $"No sign '{sign}' is declared, so this cell cannot be read.", legend);

    public static Diagnostic WordInCell(SourceSpan at, string word, char? sign, string legend) => new(
        "ROS0223", Severity.Error, at, $"'{Prose.Clip(word)}' is a word, and in a drawing signs stand for what a piece is.", sign is null ? legend : $"Write '{sign}'. {legend}")
    {
        Fix = sign is null ? null : Fix.Replace(at, $"{sign}"),
    };

    public static Diagnostic NothingBetween(SourceSpan at) => new(
        "ROS0223", Severity.Error, at, "This cell joins nothing with '+'.", "Write the things of a stack from the lowest up, as in 'ja+bi'.");

    public static Diagnostic UnknownSpace(SourceSpan at, string found, string board, IReadOnlyCollection<string> known) =>
        Near("ROS0224", at, $"{Prose.Sentence(board)} has no space '{Prose.Clip(found)}'.", found, known);

    public static Diagnostic UnknownLabel(SourceSpan at, string found, string lines, string board, IReadOnlyCollection<string> known) => new(
        "ROS0225", Severity.Error, at, $"{Prose.Sentence(board)} has no {lines} '{Prose.Clip(found)}'.",
        NearSpelling.Find(found, known) is { } near ? $"Did you mean '{near}'?" : $"It has {Prose.And(known)}; if another form of the board is meant, name it under 'variants'.")
    {
        Fix = NearSpelling.Find(found, known) is { } label ? Fix.Replace(at, label) : null,
    };

    public static Diagnostic RowsWithoutLabels(SourceSpan at, string found, string board, string blank) => new(
        "ROS0225", Severity.Error, at, $"The rows of this drawing do not begin with the labels of {board}: '{Prose.Clip(found)}' is none.", $"Draw it like this, with signs in place of the dots:\n{blank}");

    public static Diagnostic UnknownSeat(SourceSpan at, string found, IReadOnlyCollection<string> names)
    {
        Diagnostic problem = Near("ROS0226", at, $"'{Prose.Clip(found)}' is no seat.", found, names);
        return names.Count > 0 ? problem : problem with { Hint = "Write 'seat' and its number, such as 'seat 1'." };
    }

    public static Diagnostic SeatByItsNumber(SourceSpan at, string found, string number) => new(
        "ROS0226", Severity.Error, at, $"'{Prose.Clip(found)}' is no seat.", $"Write 'seat {number}'.")
    {
        Fix = Fix.Replace(at, $"seat {number}"),
    };

    public static Diagnostic SeveralKinds(SourceSpan at, string found, IEnumerable<Kind> kinds) => new(
        "ROS0227", Severity.Error, at, $"'{Prose.Clip(found)}' may be {Prose.Or(kinds.Select(k => Prose.A(k.Name)))}.", "Add the name of the kind.");

    public static Diagnostic BelongsToSeats(SourceSpan at, string place) => new(
        "ROS0228", Severity.Error, at, $"Every player has '{place}', so this does not say whose it is.", "Write it under a seat, such as 'seat 1'.");

    public static Diagnostic BelongsToTable(SourceSpan at, string place) => new(
        "ROS0228", Severity.Error, at, $"'{place}' belongs to no player but to the table.", "Write it at the margin, not under a seat.");

    public static Diagnostic UnknownVerdict(SourceSpan at, string found) =>
        Near("ROS0229", at, $"'{Prose.Clip(found)}' is no answer.", found, ["legal", "illegal", "unsettled", "yes", "no"]);

    public static Diagnostic UnknownExpectation(SourceSpan at, string found, IReadOnlyCollection<string> known) =>
        Near("ROS0229", at, $"'{Prose.Clip(found)}' is not something that can be expected here.", found, known);

    public static Diagnostic UnknownTime(SourceSpan at, string found, IReadOnlyCollection<string> known) =>
        Near("ROS0175", at, $"'{Prose.Clip(found)}' is no time at which something was done.", found, known);

    public static Diagnostic NobodyDidIt(SourceSpan at, string phrase, string seat) => new(
        "ROS0176", Severity.Error, at, $"This does not say who did '{Prose.Clip(phrase)}'.", $"Put who it was before it: '{seat}: {phrase}'.");

    private static Diagnostic Near(string id, SourceSpan at, string message, string found, IReadOnlyCollection<string> known)
    {
        string? near = NearSpelling.Find(found, known);
        return new Diagnostic(id, Severity.Error, at, message, near is null ? KnownWords.Sentence(found, known) : $"Did you mean '{near}'?")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }
}
