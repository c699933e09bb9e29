using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Makes what lies on the table: pieces, cards, dice, boards, places, marks.</summary>
internal sealed class TableMaker(Picks picks, TableWords words)
{
    private readonly Dictionary<string, List<string>> _entries = [];

    /// <summary>The sections, and in <see cref="TableWords"/> how formulas speak of them.</summary>
    public ImmutableArray<SheetSection> Make()
    {
        words.Seats = picks.Of(2, 2, 2, 3, 1);
        Boards();
        Pieces();
        Cards();
        Dice();
        Hoards();
        Marks();
        Tables();
        string[] order = ["pieces", "cards", "dice", "signs", "boards", "places", "marks", "tables"];
        return [new SheetSection("players", $"{words.Seats}", []), .. order.Where(_entries.ContainsKey).Select(k => new SheetSection(k, null, [.. _entries[k]]))];
    }

    private void Add(string section, string entry)
    {
        _entries.TryAdd(section, []);
        _entries[section].Add(entry);
    }

    private void Boards()
    {
        Board("yard", "plot", picks.Percent(30));
        if (picks.Percent(30))
        {
            Board("lane", "stop", picks.Percent(50));
        }
    }

    private void Board(string name, string space, bool isEach)
    {
        (string shape, int spaces, bool hasRows) = picks.Of<Func<(string, int, bool)>>(Squares, Squares, Hexes, Drawn, Ring, Track, Map)();
        string values = "";
        if (picks.Percent(30) && hasRows)
        {
            values = $", values: {{{name} worth: {{A1: {picks.From(1, 4)}, B2: {picks.From(1, 4)}}}}}";
        }

        string holds = picks.Percent(55) ? ", holds: 1" : picks.Percent(30) ? ", holds: 2" : "";
        string of = isEach ? "of: each player, " : "";
        string lines = hasRows ? $", columns: {name} column, rows: {name} row" : "";
        Add("boards", $"{name}: {{{of}{shape}{lines}, spaces: {space}{holds}{values}}}");
        words.Boards.Add(new BoardWords(name, space, isEach, spaces) { HasRows = hasRows, Values = values.Length > 0 ? $"{name} worth" : null });
    }

    private (string, int, bool) Squares()
    {
        (int across, int up) = (picks.From(2, 4), picks.From(2, 3));
        string corners = picks.Percent(40) ? ", neighbours: sides and corners" : "";
        string wraps = picks.Percent(15) && across > 2 && up > 2 ? ", wraps: yes" : "";
        string without = picks.Percent(20) ? ", without: A2" : "";
        return ($"squares: {across} across {up} up{corners}{wraps}{without}", (across * up) - (without.Length > 0 ? 1 : 0), true);
    }

    private (string, int, bool) Hexes() => picks.Of(("hexes: radius 1", 7, false), ("hexes: rows of 2 3 2", 7, false), ("hexes: 3 across 2 up", 6, false));

    private (string, int, bool) Drawn() => picks.Of(("drawn: \"~ . . / . # . / ~ . .\"", 6, false), ("drawn: \"~ . . / . . . / ~ . -\"", 6, false));

    private (string, int, bool) Ring()
    {
        int spaces = picks.From(3, 8);
        return ($"ring: {spaces}", spaces, false);
    }

    private (string, int, bool) Track()
    {
        int spaces = picks.From(4, 9);
        return ($"track: {spaces}", spaces, false);
    }

    private (string, int, bool) Map() => picks.Of(("points: [Inn Ferry Mill, Inn Hill Mill, Mill Market]", 5, false), ("points: [Oak Elm Ash Oak, Ash Yew]", 4, false));

    private void Pieces()
    {
        if (words.Seats > 1 || picks.Percent(30))
        {
            bool hasSide = picks.Percent(40);
            Add("pieces", $"pawn: {{each player: {picks.From(2, 5)}{(hasSide ? ", states: {side: [awake, asleep]}" : "")}}}");
            words.Kinds.Add(new KindWords("pawn", "pawns", IsOwned: true) { State = hasSide ? "side" : null, StateValues = hasSide ? ["awake", "asleep"] : [] });
        }

        if (picks.Percent(80) || words.Kinds.Count == 0)
        {
            bool hasWear = picks.Percent(40);
            string states = hasWear ? ", states: {wear: [fresh, worn, broken]}" : "";
            Add("pieces", $"stone: {{count of each colour: {picks.From(1, 4)}, attributes: {{colour: [red, blue, green]}}{states}}}");
            words.Kinds.Add(new KindWords("stone", "stones", IsOwned: false)
            {
                Attribute = "colour", Values = ["red", "blue", "green"], State = hasWear ? "wear" : null, StateValues = hasWear ? ["fresh", "worn", "broken"] : [],
                Home = picks.Percent(40) ? "sack" : null,
            });
        }

        if (picks.Percent(40))
        {
            Add("pieces", $"coin: {{count: {picks.From(4, 12)}}}");
            words.Kinds.Add(new KindWords("coin", "coins", IsOwned: false));
        }

        if (picks.Percent(50))
        {
            string[] signs = [.. words.Kinds.Select(k => $"{k.Name[0]}: {k.Name}")];
            signs.ToList().ForEach(s => Add("signs", s));
        }
    }

    private void Cards()
    {
        if (picks.Percent(45))
        {
            bool hasSuits = picks.Percent(70);
            Add("cards", hasSuits
                ? $"card: {{plural: cards, attributes: {{suit: [moon, sun], rank: 1 to {picks.From(2, 5)}}}, called: (rank) of (suit)}}"
                : "card: {plural: cards, names: [elm, ash, oak, yew, fir]}");
            words.Kinds.Add(new KindWords("card", "cards", IsOwned: false) { Attribute = hasSuits ? "suit" : null, Values = hasSuits ? ["moon", "sun"] : [], Home = "pack" });
        }
    }

    private void Dice()
    {
        if (picks.Percent(30))
        {
            Add("dice", $"die: {{plural: dice, count: {picks.From(1, 2)}, faces: 1 to {picks.From(2, 4)}}}");
            words.Kinds.Add(new KindWords("die", "dice", IsOwned: false));
            Place("tray", PlaceForm.Heap, words.Kinds[^1], isEach: false);
        }
    }

    private void Hoards()
    {
        foreach (KindWords kind in words.Kinds.Where(k => k.Name != "die").ToArray())
        {
            if (kind.Home is { } home)
            {
                Place(home, kind.Name == "card" || picks.Percent(25) ? PlaceForm.Deck : PlaceForm.Bag, kind, isEach: false);
            }

            if (kind.Name == "card" || (picks.Percent(15) && !kind.IsOwned))
            {
                Place(kind.Name == "card" ? "hand" : $"{kind.Name} hand", PlaceForm.Hand, kind, isEach: true);
            }

            if (picks.Percent(65))
            {
                Place($"{kind.Name} heap", PlaceForm.Heap, kind, isEach: picks.Percent(60));
            }

            if (picks.Percent(25) && !kind.IsOwned)
            {
                Place($"{kind.Name} row", PlaceForm.Row, kind, isEach: false);
            }
        }
    }

    private void Place(string name, PlaceForm form, KindWords kind, bool isEach)
    {
        string of = isEach ? ", of: each player" : "";
        string limit = form == PlaceForm.Heap && picks.Percent(15) ? ", holds: 4" : "";
        Add("places", form == PlaceForm.Row
            ? $"{name}: {{row of: {picks.From(2, 4)}, slots: {kind.Name} slot, holds: {kind.Name}}}"
            : $"{name}: {{{form.ToString().ToLowerInvariant()} of: {kind.Name}{of}{limit}}}");
        words.Places.Add(new PlaceWords(name, form, kind, isEach));
    }

    private void Marks()
    {
        if (picks.Percent(60))
        {
            Mark($"fame: {{holds: 0 to {picks.From(2, 9)}, of: each player, starts: {picks.From(0, 2)}}}", new("fame", SortKind.Number, true, null));
        }

        if (picks.Percent(30))
        {
            Mark($"pot: {{holds: {picks.Of("0 to 5", "minus 2 to 3", "number")}{(picks.Percent(40) ? ", lasts: turn" : "")}, starts: 0}}", new("pot", SortKind.Number, false, null));
        }

        if (picks.Percent(30))
        {
            Mark($"ready: {{holds: yes or no, of: each player{(picks.Percent(30) ? ", lasts: round" : "")}}}", new("ready", SortKind.Truth, true, null));
        }

        if (picks.Percent(30))
        {
            Mark("leader: {holds: player}", new("leader", SortKind.Player, false, null));
        }

        if (picks.Percent(35))
        {
            BoardWords board = picks.Of(words.Boards);
            Mark($"lit: {{holds: yes or no, of: each {board.Space}}}", new("lit", SortKind.Truth, false, board));
        }

        if (picks.Percent(25))
        {
            BoardWords board = picks.Of(words.Boards);
            Mark($"heat: {{holds: 0 to 3, of: each {board.Space}}}", new("heat", SortKind.Number, false, board));
        }
    }

    private void Mark(string entry, MarkWords mark)
    {
        Add("marks", entry);
        words.Marks.Add(mark);
    }

    private void Tables()
    {
        if (picks.Percent(30))
        {
            Add("tables", $"prize: {{0: {picks.From(0, 1)}, 1: {picks.From(1, 3)}, 2: {picks.From(2, 6)}, beyond: last}}");
            words.Tables.Add("prize");
        }
    }
}
