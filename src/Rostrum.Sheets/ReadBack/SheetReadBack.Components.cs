using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.ReadBack;

/// <content>What lies on the table: kinds, boards, places, marks, constants; and where the rules stand.</content>
public static partial class SheetReadBack
{
    private static IEnumerable<ReadClause> Components(Sheet sheet)
    {
        if (sheet.MostPlayers is { } most)
        {
            string words = sheet.FewestPlayers == most ? $"For {Prose.Count(most, "player", "players")}." : $"For {sheet.FewestPlayers} to {most} players.";
            yield return Plain("Components", "players", words, sheet.Tree.Find("players")?.Key.Span);
        }

        if (!sheet.SeatNames.IsEmpty)
        {
            yield return Plain("Components", "seats", $"The seats, clockwise: {string.Join(", ", sheet.SeatNames)}.", sheet.Tree.Find("seats")?.Key.Span);
        }

        foreach (NumberConstant number in sheet.Numbers)
        {
            yield return Plain("Components", number.Name, $"{Prose.Sentence(number.Name)} is {number.Amount}.", number.DeclaredAt);
        }

        foreach (KindFacts kind in sheet.Kinds)
        {
            yield return new ReadClause("Components", kind.Kind.Plural, KindInWords(sheet, kind), null, kind.Cite, ClauseStatus.Settled, null, kind.Kind.DeclaredAt);
        }

        foreach (BoardFacts board in sheet.Boards)
        {
            yield return new ReadClause("Places", board.Place.Name, BoardInWords(board), null, board.Cite, ClauseStatus.Settled, null, board.Place.DeclaredAt);
        }

        foreach (PlaceFacts place in sheet.Places)
        {
            yield return new ReadClause("Places", place.Place.Name, PlaceInWords(place), null, place.Cite, ClauseStatus.Settled, null, place.Place.DeclaredAt);
        }
    }

    private static string KindInWords(Sheet sheet, KindFacts facts)
    {
        string count = facts.Supply.Total is { } total ? $"{total} {(total == 1 ? facts.Kind.Name : facts.Kind.Plural)}" : Prose.Sentence(facts.Kind.Plural);
        string each = facts.Supply.EachPlayer ? " for each player" : "";
        IEnumerable<string> parts = facts.Attributes.Where(a => !a.Values.IsEmpty).Select(a => $"{Prose.Sentence(a.Attribute.Name)}: {Prose.Or(a.Values.Select(v => v.Name))}.");
        return string.Join(' ', parts.Concat(CountsInWords(sheet, facts.Kind)).Prepend($"{count}{each}."));
    }

    // `Of each glaze: 8 bowls and 6 jugs.`
    private static IEnumerable<string> CountsInWords(Sheet sheet, Kind kind) =>
        from entry in (sheet.Tree.Find("pieces")?.Value as OutlineMapping)?.Entries ?? []
        where entry.Key.Span == kind.DeclaredAt && entry.Value is OutlineMapping
        from count in ((OutlineMapping)entry.Value).Entries
        where count.Key.Text.StartsWith("count of each ", StringComparison.Ordinal)
        select $"{Prose.Sentence(count.Key.Text["count ".Length..])}: {Rows(sheet.KindOf(kind), count.Value)}.";

    private static string Rows(KindFacts kind, OutlineNode counts) => counts is OutlineMapping rows
        ? Prose.And(rows.Entries.Select(r => kind.Attributes.SelectMany(a => a.Values).FirstOrDefault(v => v.Name == Prose.Fold(r.Key.Text)) is { Number: null } value
            ? $"{ClauseParts.Words(r.Value)} {(ClauseParts.Words(r.Value) == "1" ? value.Name : value.Plural)}" : $"{ClauseParts.Words(r.Value)} of {Prose.Fold(r.Key.Text)}"))
        : ClauseParts.Words(counts);

    private static string BoardInWords(BoardFacts board)
    {
        string whose = board.Place.EachPlayer ? "Each player has one" : "One for the table";
        string lines = string.Join(", ", board.Families.Select(Labels));
        string holds = board.MostInSpace is { } most ? $"; each {board.Noun.Name} holds {most}{Kinds(board, most)}" : "";
        string shape = board.Layout == BoardLayout.Squares && board.Spaces.Length != board.Columns.Length * board.Rows.Length ? $"; {Steps(board)}" : "";
        string touch = board.Neighbours switch
        {
            Touching.Corners => "; neighbours touch with corners",
            Touching.SidesAndCorners => "; neighbours touch with sides or corners",
            _ => "",
        };
        string stands = $"{(board.IsUpright ? ", upright" : "")}{(board.Wraps ? ", round and round" : "")}";
        return $"{whose}{stands}: {Prose.Count(board.Spaces.Length, board.Noun.Name, board.Noun.Plural)}{LayoutInWords(board)}{(lines.Length == 0 ? "" : $" ({lines})")}{shape}{holds}{touch}.{string.Concat(Parts(board).Select(p => " " + p))}";
    }

    private static string Kinds(BoardFacts board, int most) =>
        board.Holds.IsEmpty ? "" : $" {Prose.Or(board.Holds.Select(k => most == 1 ? k.Name : k.Plural))}";

    // `bays of 2, 3, 4, 5 and 6`: how many spaces each column of a drawn board has.
    private static string Steps(BoardFacts board)
    {
        string columns = board.Family(LineForm.Columns)?.Plural ?? "columns";
        return $"{columns} of {Prose.And(board.Columns.Select((_, i) => $"{board.Spaces.Count(s => s.Column == i)}"))}";
    }

    private static string Labels(LineFamily family) => family.Lines.IsEmpty ? family.Plural
        : family.Form == LineForm.Areas ? $"{family.Plural} {Prose.And(family.Lines.Select(l => l.Label))}"
        : $"{family.Plural} {family.Lines[0].Label} to {family.Lines[^1].Label}";

    private static string LayoutInWords(BoardFacts board) => board.Layout switch
    {
        BoardLayout.Hexes => $", hexes in rows of {Prose.And(board.Spaces.GroupBy(s => s.Row).OrderByDescending(r => r.Key).Select(r => $"{r.Count()}"))}",
        BoardLayout.Points => $", joined by {Prose.Count(board.Ways.Length, "line", "lines")}",
        _ => "",
    };

    // What belongs to whom, what leads where, what is printed.
    private static IEnumerable<string> Parts(BoardFacts board)
    {
        string Names(IEnumerable<int> spaces) => Prose.And(spaces.Select(s => board.Spaces[s].Name.Name));
        foreach (HoleName hole in board.HoleNames)
        {
            yield return $"The {hole.Name} takes nothing and lies next to {Names(hole.Round)}.";
        }

        foreach (Region region in board.Regions)
        {
            yield return $"The {region.Name} of each seat in turn: {string.Join("; ", region.OfSeat.Select(s => Names(s)))}.";
        }

        foreach (Link link in board.Links)
        {
            yield return $"{Prose.Sentence(link.Name)} of each other: {Prose.And(Enumerable.Range(0, link.To.Length).Where(s => link.To[s] > s).Select(s => $"{Names([s])} and {Names([link.To[s]!.Value])}"))}.";
        }

        foreach (PrintedValue value in board.Values)
        {
            yield return $"The {value.Name}: {string.Join("; ", Enumerable.Range(0, value.On.Length).Where(s => value.On[s] is not null).GroupBy(s => value.On[s]!.Value).OrderBy(g => g.Key).Select(g => $"{g.Key} on {Names(g)}"))}.";
        }
    }

    private static string PlaceInWords(PlaceFacts place)
    {
        string form = place.Place.Form.ToString().ToLowerInvariant();
        string slots = place.Slots > 0 ? $" of {Prose.Count(place.Slots, place.SlotNoun?.Name ?? "slot", place.SlotNoun?.Plural ?? "slots")}" : "";
        string holds = place.Holds.IsEmpty ? "" : $" for {Prose.And(place.Holds.Select(h => h.Plural))}";
        string most = place.Most is { } number ? $"; {number} at the most" : "";
        string first = place.StartsEmpty ? "; empty at first" : place.Starts is { } look ? $"; {LookWords.Many(look)} at first" : "";
        string isShort = place.WhenShort is { } action ? $"; when too little is left: {action.Name}" : "";
        return $"{Prose.Sentence(Prose.A(form))}{slots}{holds}{(place.Place.EachPlayer ? ", one for each player" : "")}{most}{first}{isShort}.";
    }

    private static IEnumerable<ReadClause> Marks(Sheet sheet) =>
        from mark in sheet.Marks
        let whose = mark.EachPlayer ? ", one for each player" : mark.EachSpaceOf is { } board ? $", one for each {sheet.Board(board).Noun.Name} of {board.Name}" : ""
        let facts = sheet.MarkFacts.FirstOrDefault(f => ReferenceEquals(f.Mark, mark))
        let starts = facts?.Starts is { } first ? $"; {Words(first)} at first" : ""
        let lasts = facts?.Lasts is { } block ? $"; until the end of the {block}" : ""
        let range = mark.Lowest is null ? Prose.Sentence(mark.Sort.InWords) : $"A number from {mark.Lowest}{(mark.Highest is null ? "" : $" to {mark.Highest}")}"
        select Plain("Marks", mark.Name, $"{range}{whose}{starts}{lasts}.", mark.DeclaredAt);

    private static IEnumerable<ReadClause> Signs(Sheet sheet)
    {
        if (!sheet.Signs.IsEmpty)
        {
            yield return Plain("Drawings", "signs", $"In drawings {Prose.And(sheet.Signs.Select(s => $"{s.Sign} is {s.Stands.Name}"))}.", sheet.Tree.Find("signs")?.Key.Span);
        }
    }

    private static IEnumerable<ReadClause> Sources(Sheet sheet) =>
        from source in sheet.Sources
        let pages = source.Pages is { } count ? $", {Prose.Count(count, "page", "pages")}" : ""
        let printing = source.Printing is { } name ? $", {name} printing" : ""
        let date = source.Date is { } day ? $", {day}" : ""
        let rank = source.Rank is { } number ? $", rank {number}" : ""
        select Plain("Sources", source.Name, $"{Prose.Sentence(source.Title)}{printing}{date}{pages}{rank}.", source.DeclaredAt);

    private static ReadClause Plain(string section, string name, string says, SourceSpan? at) => new(section, name, says, null, null, ClauseStatus.Settled, null, at);
}
