using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <content>Words, tables, cards, facts and the register of what is open.</content>
public static partial class SheetReadBack
{
    private static IEnumerable<ReadClause> Blocks(Sheet sheet) =>
        sheet.Blocks.Select(b => (b.Name, b.Steps, b.Cite)).Concat(sheet.Hooks.Select(h => (Name: h.Key, h.Steps, h.Cite)))
            .Select(b => Told("Course", b.Name, SaysOf(sheet, b.Name), string.Join("; ", b.Steps.Select(Sentence)), b.Cite, null, sheet.Tree.Find(b.Name)?.Key.Span ?? sheet.Tree.Span))
            .Concat(Seating(sheet));

    private static IEnumerable<ReadClause> Seating(Sheet sheet)
    {
        if (sheet.NextToPlay is { } next)
        {
            yield return Told("Course", "next to play", SaysOf(sheet, "next to play"), $"next to play: {Words(next)}", null, null, next.Origin.At);
        }

        if (!sheet.Teams.IsEmpty)
        {
            string teams = Prose.And(sheet.Teams.Select(t => $"{t.Name} ({Prose.And(t.Seats.Select(s => s < sheet.SeatNames.Length ? sheet.SeatNames[s] : $"seat {s + 1}"))})"));
            yield return Plain("Course", "teams", $"The teams: {teams}.", sheet.Tree.Find("teams")?.Key.Span);
        }
    }

    private static string? SaysOf(Sheet sheet, string block) => (sheet.Tree.Find(block)?.Value as OutlineMapping)?.Find("says")?.Value is OutlineScalar says ? Prose.Fold(says.Text) : null;

    private static IEnumerable<ReadClause> Words(Sheet sheet)
    {
        var texts = sheet.Tree.Find("words")?.Value as OutlineMapping;
        return from entry in texts?.Entries ?? []
               let meaning = sheet.Meanings.FirstOrDefault(m => m.Word.DeclaredAt == entry.Key.Span)
               where meaning is not null
               let name = Prose.Fold(entry.Key.Text)
               let means = MeaningInWords(entry.Value, meaning)
               select Told("Words", name, meaning.Says, meaning.Says is null ? $"{name}: {means}" : means, meaning.Cite, (meaning.Body as Term.Fork)?.Choice, entry.Key.Span);
    }

    // Of a word with readings the one that is followed, else all of them.
    private static string MeaningInWords(OutlineNode node, WordMeaning meaning)
    {
        if (node is not OutlineMapping mapping)
        {
            return ClauseParts.Words(node);
        }

        if (meaning.Body is Term.Fork fork && (mapping.Find("readings") ?? mapping.Find("conflict"))?.Value is OutlineMapping readings)
        {
            return ByReading(fork.Choice, i => MeansOf(mapping, readings.Find(fork.Choice.Names[i])?.Value));
        }

        return meaning.Body is Term.Idiomatic idiom ? idiom.Use.Sentence : ClauseParts.Words(mapping.Find("means")?.Value);
    }

    private static string MeansOf(OutlineMapping word, OutlineNode? reading) => reading switch
    {
        OutlineMapping changes => ClauseParts.Words(OutlineMerge.Lay(word, changes).Find("means")?.Value),
        OutlineScalar value when word.Find("means") is null => ClauseParts.Words(value),
        _ => ClauseParts.Words(word.Find("means")?.Value),
    };

    private static string Rows(TableVersion version)
    {
        IEnumerable<string> rows = version.Rows.Select(r => $"{Key(r)}: {Words(r.Entry)}");
        string? beyond = version.Beyond switch
        {
            TableBeyond.Last => "beyond: last",
            TableBeyond.Given => $"beyond: {Words(version.BeyondTerm!)}",
            _ => null,
        };
        return string.Join(", ", beyond is null ? rows : rows.Append(beyond));
    }

    private static ReadClause Table(TableFacts table)
    {
        string rows = ByReading(table.Choice, i => Rows(table.Versions[i]));
        return Told("Tables", table.Table.Name, table.Says, rows, table.Cite, table.Choice, table.Table.DeclaredAt!.Value);
    }

    private static string Key(TableRow row) => (row.Key, row.Low, row.High) switch
    {
        ({ } key, _, _) => key.Name,
        (_, { } low, null) => $"{low} or more",
        (_, var low, var high) when low == high => $"{low}",
        (_, var low, var high) => $"{low} to {high}",
    };

    private static IEnumerable<ReadClause> Cards(Sheet sheet) =>
        from table in sheet.CardTables
        from row in table.Rows
        where row.Says is not null || row.Cells.Length > 0
        let fork = row.Cells.OfType<Term.Fork>().FirstOrDefault()
        select new ReadClause(
            Prose.Sentence(table.Kind.Plural), row.Card.Name, CardInWords(table, row), Formulas(table, row), row.Cite, StatusOf(fork?.Choice), fork?.Choice, row.Card.DeclaredAt);

    private static string CardInWords(CardTable table, CardRow row)
    {
        IEnumerable<string> cells = table.Columns.Where(c => row.Cells[c.Index] is not Term.Nothing && c.Sort.Kind != SortKind.Drawing)
            .Select(c => (c, term: row.Cells[c.Index]))
            .Where(p => p.term is Term.Number or Term.Fork or Term.Idiomatic)
            .Select(p => $"{p.c.Name} {CellInWords(p.term)}");
        string says = row.Says ?? "";
        string values = string.Join("; ", cells.Where(c => says.Length == 0 || !c.Contains(' ', StringComparison.Ordinal) || char.IsDigit(c[^1])));
        return Prose.Sentence(Prose.Ended(says.Length == 0 ? values : values.Length == 0 ? says : $"{says}; {values}"));
    }

    // Drawings and formulas as they are written, so that a change of one is told.
    private static string? Formulas(CardTable table, CardRow row)
    {
        string[] cells = [.. table.Columns.Select(c => (c, term: row.Cells[c.Index])).Where(p => p.term is not (Term.Nothing or Term.Number or Term.Fork) && (p.term is not Term.Idiomatic || row.Says is not null))
            .Select(p => p.term is Term.Idiomatic ? CellInWords(p.term).TrimEnd('.') : $"{p.c.Name} {Words(p.term)}")];
        string count = row.Count == 1 ? "" : $"{row.Count} of this card";
        string meaning = string.Join("; ", count.Length == 0 ? cells : cells.Prepend(count));
        return meaning.Length == 0 ? null : Prose.Ended(meaning);
    }

    private static string CellInWords(Term term) => term switch
    {
        Term.Number number => $"{number.Amount}",
        Term.Fork { Choice.Followed: { } followed } fork => CellInWords(fork.Alternatives[followed]),
        Term.Fork fork => Prose.Or(fork.Alternatives.Select((a, i) => $"{CellInWords(a)} if {fork.Choice.Names[i]}")),
        Term.Idiomatic idiom => idiom.Use.Sentence,
        _ => term.Origin.At.Text,
    };

    private static IEnumerable<ReadClause> Facts(Sheet sheet) =>
        sheet.Facts.Select(f => new ReadClause("Facts", f.Name, $"{Prose.Sentence(f.Name)}: {f.Words}{(f.Of is null ? "" : $" {f.Of}")}.", null, f.Cite, StatusOf(f.Choice), f.Choice, f.At));

    private static IEnumerable<ReadClause> Closing(Sheet sheet)
    {
        if (!sheet.Ties.IsEmpty)
        {
            yield return new ReadClause("Scoring", "ties", $"Of equal players: {string.Join(", then ", sheet.Ties.Select(t => t.Replace("my ", "", StringComparison.Ordinal)))}.", null, null, ClauseStatus.Settled, null, sheet.Tree.Find("ties")?.Key.Span);
        }

        if (sheet.Aim != Aim.Highest)
        {
            yield return new ReadClause("Scoring", "aim", AimInWords(sheet.Aim), null, null, ClauseStatus.Settled, null, sheet.Tree.Find("aim")?.Key.Span);
        }

        if (!sheet.Rating.IsEmpty)
        {
            string steps = string.Join(", ", sheet.Rating.Select(s => s.From is null ? s.Name : $"{s.From} {s.Name}"));
            yield return new ReadClause("Scoring", "rating", $"Steps by total: {steps}.", null, sheet.RatingCite, ClauseStatus.Settled, null, sheet.Tree.Find("rating")?.Key.Span);
        }

        foreach ((string variant, long points) in sheet.RatingCredit)
        {
            yield return new ReadClause("Scoring", $"credit for {variant}", $"Before rating, {variant} counts {points}.", null, sheet.RatingCite, ClauseStatus.Settled, null, sheet.Tree.Find("rating")?.Key.Span);
        }
    }

    private static string AimInWords(Aim aim) => aim.Kind switch
    {
        AimKind.LowestTotal => "The lowest total wins.",
        AimKind.AtLeast => $"A total of at least {aim.Target} wins; any other loses.",
        AimKind.MoreThan => $"A total of more than {aim.Target} wins; any other loses.",
        _ => "The highest total wins.",
    };

    private static IEnumerable<ReadClause> Register(Sheet sheet) =>
        sheet.Questions.Select(q => new ReadClause("Open questions", q.Name, q.Words, null, q.Cite, ClauseStatus.Settled, null, q.At))
            .Concat(sheet.NotModelled.Select(n => new ReadClause("Not modelled", n, Prose.Sentence(Prose.Ended(n)), null, null, ClauseStatus.NotModelled, null, sheet.Tree.Find("not modelled")?.Key.Span)));
}
