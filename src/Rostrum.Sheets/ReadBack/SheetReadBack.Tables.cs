using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <content>Components, words, tables, cards, facts and the register of what is open.</content>
public static partial class SheetReadBack
{
    private static IEnumerable<ReadClause> Components(Sheet sheet)
    {
        if (sheet.MostPlayers is { } most)
        {
            string words = sheet.FewestPlayers == most ? $"For {Prose.Count(most, "player", "players")}." : $"For {sheet.FewestPlayers} to {most} players.";
            yield return new ReadClause("Components", "players", words, null, null, ClauseStatus.Settled, null, sheet.Tree.Find("players")?.Key.Span);
        }

        foreach (KindFacts kind in sheet.Kinds)
        {
            yield return new ReadClause("Components", kind.Kind.Plural, KindInWords(kind), null, kind.Cite, ClauseStatus.Settled, null, kind.Kind.DeclaredAt);
        }

        foreach (BoardFacts board in sheet.Boards)
        {
            yield return new ReadClause("Components", board.Place.Name, BoardInWords(board), null, board.Cite, ClauseStatus.Settled, null, board.Place.DeclaredAt);
        }

        foreach (PlaceFacts place in sheet.Places)
        {
            yield return new ReadClause("Components", place.Place.Name, PlaceInWords(place), null, place.Cite, ClauseStatus.Settled, null, place.Place.DeclaredAt);
        }
    }

    private static string KindInWords(KindFacts facts)
    {
        string count = facts.Supply.Total is { } total ? $"{total} {(total == 1 ? facts.Kind.Name : facts.Kind.Plural)}" : Prose.Sentence(facts.Kind.Plural);
        string each = facts.Supply.EachPlayer ? " for each player" : "";
        IEnumerable<string> parts = facts.Attributes.Where(a => !a.Values.IsEmpty).Select(a => $"{a.Attribute.Name} {Prose.Or(a.Values.Select(v => v.Name))}");
        string like = string.Join("; ", parts);
        return like.Length == 0 ? $"{count}{each}." : $"{count}{each}: {like}.";
    }

    private static string BoardInWords(BoardFacts board)
    {
        string whose = board.Place.EachPlayer ? "Each player has one" : "One for the table";
        string lines = string.Join(", ", board.Families.Select(f => Labels(f, f.AreColumns ? board.Columns : board.Rows)));
        string holds = board.MostInSpace is { } most ? $"; each {board.Noun.Name} holds {most}" : "";
        return $"{whose}: {Prose.Count(board.Spaces.Length, board.Noun.Name, board.Noun.Plural)}{(lines.Length == 0 ? "" : $" ({lines})")}{holds}.";
    }

    private static string Labels(LineFamily family, System.Collections.Immutable.ImmutableArray<string> labels) =>
        labels.Length == 0 ? family.Plural : $"{family.Plural} {labels[0]} to {labels[^1]}";

    private static string PlaceInWords(PlaceFacts place)
    {
        string form = place.Place.Form.ToString().ToLowerInvariant();
        string slots = place.Slots > 0 ? $" of {Prose.Count(place.Slots, place.SlotNoun?.Name ?? "slot", place.SlotNoun?.Plural ?? "slots")}" : "";
        string holds = place.Holds.IsEmpty ? "" : $" for {Prose.And(place.Holds.Select(h => h.Plural))}";
        return $"{Prose.Sentence(Prose.A(form))}{slots}{holds}{(place.Place.EachPlayer ? ", one for each player" : "")}.";
    }

    private static IEnumerable<ReadClause> Blocks(Sheet sheet) =>
        sheet.Blocks.Select(b => Told("Course", b.Block, null, string.Join("; ", b.Steps.Select(Sentence)), b.Cite, null, sheet.Tree.Find(b.Block)?.Key.Span ?? sheet.Tree.Span, isCarriedOut: false));

    private static IEnumerable<ReadClause> Words(Sheet sheet)
    {
        var texts = sheet.Tree.Find("words")?.Value as OutlineMapping;
        return from entry in texts?.Entries ?? []
               let meaning = sheet.Meanings.FirstOrDefault(m => m.Word.DeclaredAt == entry.Key.Span)
               where meaning is not null
               select Told("Words", OutlineAsk.Fold(entry.Key.Text), meaning.Says, MeaningInWords(entry.Value, meaning), meaning.Cite, (meaning.Body as Term.Fork)?.Choice, entry.Key.Span);
    }

    // Of a word with readings the one that is followed, else the first.
    private static string MeaningInWords(OutlineNode node, WordMeaning meaning)
    {
        if (node is not OutlineMapping mapping)
        {
            return ClauseParts.Words(node);
        }

        OutlineMapping shown = mapping;
        if (meaning.Body is Term.Fork fork && mapping.Find("readings")?.Value is OutlineMapping readings
            && readings.Entries[fork.Choice.Followed ?? 0].Value is OutlineMapping changes)
        {
            shown = OutlineMerge.Lay(mapping, changes);
        }

        return ClauseParts.Words(shown.Find("means")?.Value);
    }

    private static ReadClause Table(TableFacts table)
    {
        TableVersion version = table.Versions[table.Choice?.Followed ?? 0];
        string rows = string.Join(", ", version.Rows.Select(r => $"{Key(r)}: {r.Entry.Origin.At.Text}"));
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
            Prose.Sentence(table.Kind.Plural), row.Card.Name, CardInWords(table, row), null, row.Cite, StatusOf(fork?.Choice), fork?.Choice, row.Card.DeclaredAt);

    private static string CardInWords(CardTable table, CardRow row)
    {
        IEnumerable<string> cells = table.Columns.Where(c => row.Cells[c.Index] is not Term.Nothing && c.Sort.Kind != SortKind.Drawing)
            .Select(c => (c, term: row.Cells[c.Index]))
            .Where(p => p.term is Term.Number or Term.Fork or Term.Idiomatic)
            .Select(p => $"{p.c.Name} {CellInWords(p.term)}");
        string says = row.Says ?? "";
        string values = string.Join("; ", cells.Where(c => says.Length == 0 || !c.Contains(' ', StringComparison.Ordinal) || char.IsDigit(c[^1])));
        return Prose.Sentence(Ended(says.Length == 0 ? values : values.Length == 0 ? says : $"{says}; {values}"));
    }

    private static string CellInWords(Term term) => term switch
    {
        Term.Number number => $"{number.Amount}",
        Term.Fork fork => CellInWords(fork.Alternatives[fork.Choice.Followed ?? 0]),
        Term.Idiomatic idiom => idiom.Use.Sentence,
        _ => term.Origin.At.Text,
    };

    private static IEnumerable<ReadClause> Facts(Sheet sheet) =>
        sheet.Facts.Select(f => new ReadClause("Facts", f.Name, $"{Prose.Sentence(f.Name)}: {f.Words}{(f.Of is null ? "" : $" {f.Of}")}.", null, f.Cite, ClauseStatus.Settled, null, f.At));

    private static IEnumerable<ReadClause> Closing(Sheet sheet)
    {
        if (!sheet.Ties.IsEmpty)
        {
            yield return new ReadClause("Scoring", "ties", $"Of equal players: {string.Join(", then ", sheet.Ties.Select(t => t.Replace("my ", "", StringComparison.Ordinal)))}.", null, null, ClauseStatus.NotYet, null, sheet.Tree.Find("ties")?.Key.Span);
        }

        if (!sheet.Rating.IsEmpty)
        {
            string steps = string.Join(", ", sheet.Rating.Select(s => s.From is null ? s.Name : $"{s.From} {s.Name}"));
            yield return new ReadClause("Scoring", "rating", $"Steps by total: {steps}.", null, null, ClauseStatus.NotYet, null, sheet.Tree.Find("rating")?.Key.Span);
        }

        foreach ((string variant, long points) in sheet.RatingCredit)
        {
            yield return new ReadClause("Scoring", $"credit for {variant}", $"Before rating, {variant} counts {points}.", null, null, ClauseStatus.NotYet, null, sheet.Tree.Find("rating")?.Key.Span);
        }
    }

    private static IEnumerable<ReadClause> Register(Sheet sheet) =>
        sheet.Questions.Select(q => new ReadClause("Open questions", q.Name, q.Words, null, q.Cite, ClauseStatus.Settled, null, q.At))
            .Concat(sheet.NotModelled.Select(n => new ReadClause("Not modelled", n, Prose.Sentence(Ended(n)), null, null, ClauseStatus.NotModelled, null, sheet.Tree.Find("not modelled")?.Key.Span)));
}
