using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Makes the player aid from the sheet's read-back: what a player needs at the table, in the order of play, not what the sheet is made of.</summary>
internal sealed class AidMaker
{
    private readonly Sheet _sheet;
    private readonly ImmutableArray<ReadClause> _clauses;
    private readonly HashSet<ActionName> _told = [];

    private AidMaker(Sheet sheet) => (_sheet, _clauses) = (sheet, SheetReadBack.Of(sheet));

    /// <summary>The aid of a game.</summary>
    public static PlayerAid Make(Game game, LessonReport report)
    {
        Sheet sheet = game.Sheet().Sheet!;
        string printing = report.Lesson.Printing.Length == 0 ? "" : $"{report.Lesson.Printing} printing";
        return new PlayerAid(sheet.Game, Prose.Sentence(printing), PageMaker.Day(report.Lesson.CorrectAsOf), [.. new AidMaker(sheet).Sections()], "Unofficial. Rules in our own words; the rulebook decides.")
        {
            Tables = [.. AidTables.Of(sheet)],
        };
    }

    private IEnumerable<AidSection> Sections()
    {
        (string Title, ReadClause[] Clauses)[] sections =
        [
            // Of the components only what lies in the box.
            ("In the box", [.. Of("Components").Where(c => c.Name == "players" || _sheet.Kinds.Any(k => k.Kind.DeclaredAt == c.At))]),
            ("Set-up", [.. Block("set-up")]),
            ("Your turn", [.. Block("turn"), .. Block("course")]),
            ("Laws", [.. Of("Laws")]),
            ("End of the game", [.. Of("End of the game"), .. Block("closing")]),
            ("Scoring", [.. Of("Scoring")]),
            ("Powers", [.. Of("Powers")]),
            ("Also", [.. _sheet.Actions.SelectMany(a => Told(a.Action))]),
        ];
        return sections.Where(s => s.Clauses.Length > 0).Select(s => new AidSection(s.Title, [.. s.Clauses.Select(Clause)]));
    }

    private IEnumerable<ReadClause> Of(string section) => _clauses.Where(c => c.Section == section);

    // The author's sentence on a block, then those on the actions that it leads to; where there are none, its steps as they read back.
    private List<ReadClause> Block(string name)
    {
        ReadClause[] own = [.. Of("Course").Where(c => c.Name == name)];
        var told = own.Where(c => c.Meaning is not null).ToList();
        told.AddRange(_sheet.Blocks.Where(b => b.Name == name).SelectMany(b => Called(b.Steps)));
        return told.Count == 0 ? [.. own] : told;
    }

    private IEnumerable<ReadClause> Called(IEnumerable<Step> steps) =>
        steps.SelectMany(s => (s.Action is { } action ? Told(action) : []).Concat(Called(s.Inner)).Concat(Called(s.Otherwise)));

    // An action that somebody put into a sentence, then those that it leads to; each once.
    private IEnumerable<ReadClause> Told(ActionName action)
    {
        if (!_told.Add(action) || _sheet.Actions.FirstOrDefault(a => a.Action == action) is not { } facts)
        {
            return [];
        }

        IEnumerable<ReadClause> own = facts.Says is null ? [] : Of("Actions").Where(c => c.Name == action.Name);
        return own.Concat(Called(facts.Steps)).ToList();
    }

    private AidClause Clause(ReadClause clause) => new(clause.Says, clause.Cite?.Page is { } page ? $"p. {page}" : "")
    {
        Name = clause.Section == "Scoring" ? Prose.Sentence(clause.Name) : "",
        Note = _sheet.Choices.FirstOrDefault(c => c.IsOpen && Bears(c, clause)) is { } open ? $"The rules leave open: {Question(open)}." : "",
    };

    // A clause is open where it has readings itself or speaks of a table or word that has.
    private bool Bears(Choice choice, ReadClause clause)
    {
        bool isNamed = _sheet.Tables.Any(t => t.Table.Name == choice.Owner) || _sheet.Meanings.Any(m => m.Word.Name == choice.Owner);
        return clause.Choice == choice || (isNamed && clause.Meaning?.Contains(choice.Owner, StringComparison.Ordinal) == true);
    }

    private string Question(Choice choice) => _sheet.Questions.FirstOrDefault(q => q.About == choice.Owner)?.Name ?? Alternatives(choice);

    private static string Alternatives(Choice choice) => choice.Cause == ChoiceCause.Conflict
        ? $"{choice.Owner} (the sources disagree)"
        : $"this can be read as {Prose.Or(choice.Names.Select(n => $"‘{n}’"))}";
}
