using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>A formula of a sheet with what its frame begins with.</summary>
/// <param name="Name">Where it stands, for messages.</param>
/// <param name="Term">The formula.</param>
/// <param name="FrameSize">How many frame positions it needs.</param>
/// <param name="Given">Its subjects or choices: frame position and sort.</param>
internal sealed record Question(string Name, Term Term, int FrameSize, ImmutableArray<(int Slot, Sort Sort)> Given)
{
    private static readonly SortKind[] Comparable =
    [
        SortKind.Number, SortKind.Truth, SortKind.Value, SortKind.Thing, SortKind.Space, SortKind.Slot, SortKind.Place, SortKind.Player, SortKind.Line, SortKind.Fit, SortKind.Set, SortKind.List,
    ];

    /// <summary>Every formula of a sheet: words, scoring, laws, choices, cells, ends.</summary>
    public static IEnumerable<Question> All(Sheet sheet) =>
        Words(sheet).Concat(Score(sheet)).Concat(Laws(sheet)).Concat(Choices(sheet)).Concat(Cells(sheet)).Concat(Others(sheet)).Where(q => IsComparable(q.Term.Sort));

    private static bool IsComparable(Sort sort) => Comparable.Contains(sort.Kind) && (!sort.IsMany || IsComparable(sort.Element!));

    private static IEnumerable<Question> Words(Sheet sheet) =>
        sheet.Meanings.Select(m => new Question($"word {m.Word.Name}", m.Body, m.FrameSize, [.. m.Word.Subjects.Select((s, i) => (i, s.Sort))]));

    private static IEnumerable<Question> Score(Sheet sheet) => sheet.Score.SelectMany(c => c.Bodies.SelectMany(b => Score(c, b)));

    private static IEnumerable<Question> Score(ScoreClause clause, ScoreBody body)
    {
        string name = $"score {clause.Name}";
        if (body.Each is not { } each)
        {
            yield return new Question(name, body.Points, clause.FrameSize, []);
            yield break;
        }

        yield return new Question($"{name} total", new Term.Apply(Operations.Of(Op.Sum), each, [body.Points], Sort.Number, body.Points.Origin), clause.FrameSize, []);
        yield return new Question($"{name} each", new Term.Filtered(each, each.Domain.Sort, body.Points.Origin), clause.FrameSize, []);
        yield return new Question($"{name} points", body.Points, clause.FrameSize, [(each.Slot, each.Element)]);
    }

    private static IEnumerable<Question> Laws(Sheet sheet) =>
        from law in sheet.Laws
        from bodies in law.Bodies
        from body in bodies.Select((b, i) => (Body: b, Action: sheet.Actions[law.Binds[i].Index]))
        from truth in body.Body.Demands.Select(d => d.Truth).Append(body.Body.Unless).OfType<Term>()
        select new Question($"law {law.Name}", truth, law.FrameSize + body.Action.FrameSize, [.. body.Action.Choices.Select(c => (c.Slot, c.Sort))]);

    private static IEnumerable<Question> Choices(Sheet sheet) =>
        from action in sheet.Actions
        from choice in action.Choices.Select((c, i) => (Choice: c, Before: action.Choices.Take(i)))
        select new Question($"choice {choice.Choice.Name} of {action.Action.Name}", choice.Choice.From, action.FrameSize, [.. choice.Before.Select(c => (c.Slot, c.Sort))]);

    private static IEnumerable<Question> Cells(Sheet sheet) =>
        from table in sheet.CardTables
        from row in table.Rows
        from cell in row.Cells
        where cell is not Term.Nothing
        select new Question($"cell of {row.Card.Name}", cell, row.FrameSize, []);

    private static IEnumerable<Question> Others(Sheet sheet) =>
        sheet.Ends.Where(e => e.If is not null).Select(e => new Question($"end {e.Name}", e.If!, e.FrameSize, []))
            .Concat(sheet.Powers.Where(p => p.If is not null && p.For is null).Select(p => new Question($"power {p.Name}", p.If!, p.FrameSize, [])))
            .Concat(sheet.TieBreaks.Where(t => t.Number is not null).Select(t => new Question($"tie {t.Words}", t.Number!, t.FrameSize, [])));
}
