using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Pack;

/// <summary>Makes the player aid from the sheet's read-back: what a player needs at the table, not what the sheet is made of.</summary>
internal static class AidMaker
{
    private static readonly string[] Sections = ["Components", "Actions", "Laws", "End of the game", "Scoring", "Powers"];

    public static PlayerAid Make(Game game, LessonReport report)
    {
        Sheet sheet = game.Sheet().Sheet!;
        ImmutableArray<ReadClause> clauses = SheetReadBack.Of(sheet);
        ImmutableArray<AidSection> sections = [.. Sections.Select(s => Section(sheet, s, clauses)).Where(s => !s.Clauses.IsEmpty)];
        string printing = report.Lesson.Printing.Length == 0 ? sheet.Game : $"{report.Lesson.Printing} printing";
        return new PlayerAid(sheet.Game, Rostrum.Text.Prose.Sentence(printing), PageMaker.Day(report.Lesson.CorrectAsOf), sections, "Unofficial. Rules in our own words; the rulebook decides.");
    }

    private static AidSection Section(Sheet sheet, string section, ImmutableArray<ReadClause> clauses)
    {
        IEnumerable<ReadClause> chosen = clauses.Where(c => c.Section == section && IsForPlayers(sheet, c));
        return new AidSection(section, [.. chosen.Select(c => new AidClause(Sentence(c), c.Cite?.Page is { } page ? $"p. {page}" : ""))]);
    }

    // Of the components only what lies in the box; of the actions only those that somebody put into a sentence.
    private static bool IsForPlayers(Sheet sheet, ReadClause clause) => clause.Section switch
    {
        "Components" => sheet.Kinds.Any(k => k.Kind.DeclaredAt == clause.At) || clause.Name == "players",
        "Actions" => sheet.Actions.Any(a => a.Action.Name == clause.Name && a.Says is not null),
        _ => true,
    };

    private static string Sentence(ReadClause clause) =>
        clause.Status == ClauseStatus.Open ? $"{clause.Says} ({Rostrum.Text.Prose.Sentence(clause.StatusInWords)}.)" : clause.Says;
}
