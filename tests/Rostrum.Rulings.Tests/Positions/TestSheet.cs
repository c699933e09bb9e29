using System.Collections.Immutable;
using Rostrum.Rulings.Tests.Boards;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>Sheets for tests, put together by hand.</summary>
internal static class TestSheet
{
    private static readonly SourceText Nowhere = new("sheet.yaml", "");

    /// <summary>Kiln Night with the Round Chamber: 5 bays, 4 tiers.</summary>
    public static Sheet Round { get; } = Kiln(4, "", []);

    /// <summary>Kiln Night with the Climbing Chamber: bays of 2, 3, 4, 5 and 6 shelves.</summary>
    public static Sheet Climbing { get; } = Kiln(6, "A3 A4 A5 A6 B4 B5 B6 C5 C6 D6", ["Climbing Chamber"]);

    /// <summary>A game of two with stacks on one board of the table, pieces that are owned, dice, marks and names for the seats.</summary>
    public static Sheet Stacks { get; } = StackGame();

    /// <summary>The sheet for a position that asks for some variants.</summary>
    public static Sheet ForVariants(ImmutableArray<string> variants) => variants.Contains("Climbing Chamber") ? Climbing : Round;

    public static KindFacts Kind(string name, string plural, KindFamily family, Supply supply, string attributes = "", string states = "")
    {
        var kind = new Kind(name, plural, family, null);
        (string Text, bool IsState)[] all = [.. Split(attributes).Select(a => (a, false)), .. Split(states).Select(s => (s, true))];
        return new KindFacts(kind, [.. all.Select((a, i) => Attribute(kind, a.Text, a.IsState, i))], supply, null);
    }

    private static string[] Split(string text) => text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    // "form: bowl jug plate", or "owner: players".
    private static AttributeFacts Attribute(Kind kind, string text, bool isState, int index)
    {
        string[] parts = text.Split(':', StringSplitOptions.TrimEntries);
        var attribute = new Attribute(parts[0], kind, isState, index, null);
        bool holdsPlayer = parts[1] == "players";
        string[] values = holdsPlayer ? [] : parts[1].Split(' ');
        return new AttributeFacts(attribute, [.. values.Select((v, i) => new AttributeValue(v, v + "s", attribute, i, null, null))], holdsPlayer);
    }

    private static CardTable Cards(Kind kind, params string[] names) =>
        new(kind, [], [.. names.Select((n, i) => new CardRow(new Card(n, kind, i, null), 1, [], 0, null, null))]);

    private static Supply Each(KindFacts kind, params (string Form, long Count)[] counts) => new(
        null,
        [
            .. from value in kind.Attributes[0].Values
               from glaze in kind.Attributes[1].Values
               select new SupplyRow([value, glaze], counts.First(c => c.Form == value.Name).Count),
        ]);

    private static ImmutableArray<BoardLine> Lines(ImmutableArray<string> labels) => [.. labels.Select(l => new BoardLine(l, []))];

    private static Sheet Kiln(int up, string missing, ImmutableArray<string> variants)
    {
        KindFacts bare = Kind("ware", "ware", KindFamily.Piece, new Supply(null, []), "form: bowl jug plate lamp; glaze: ash iron copper", "wear: whole cracked");
        KindFacts ware = bare with { Supply = Each(bare, ("bowl", 8), ("jug", 6), ("plate", 6), ("lamp", 4)) };
        KindFacts stick = Kind("stick", "sticks", KindFamily.Piece, new Supply(30, []));
        KindFacts commission = Kind("commission", "commissions", KindFamily.Card, new Supply(null, []));
        KindFacts mark = Kind("guild mark", "guild marks", KindFamily.Card, new Supply(null, []));
        var chamber = new Place("chamber", PlaceForm.Board, true, 0, null);
        BoardFacts board = TestBoard.Of(chamber, 5, up, missing) with { MostInSpace = 1, Holds = [ware.Kind], IsUpright = true };
        return new Sheet
        {
            Game = "Kiln Night",
            FewestPlayers = 2,
            MostPlayers = 4,
            VariantsOn = variants,
            Kinds = [ware, stick, commission, mark],
            CardTables = [Cards(commission.Kind, [.. Enumerable.Range(1, 20).Select(i => $"Commission {i}")]), Cards(mark.Kind, "Glazer", "Stoker", "Trimmer", "Broker")],
            Boards = [board with { Families = [new LineFamily("bay", "bays", chamber, LineForm.Columns, Lines(board.Columns), null), new LineFamily("tier", "tiers", chamber, LineForm.Rows, Lines(board.Rows), null)] }],
            Places =
            [
                At("drying", PlaceForm.Row, false, 1, [ware, stick], 3), At("sticks", PlaceForm.Heap, true, 2, [stick]), At("shards", PlaceForm.Heap, true, 3, [ware]),
                At("deck", PlaceForm.Deck, false, 4, [commission]), At("accepted", PlaceForm.Heap, true, 5, [commission]), At("mark", PlaceForm.Heap, true, 6, [mark]),
                At("display", PlaceForm.Row, false, 7, [commission], 4),
            ],
            Marks = [new Mark("round", Sort.Number, false, 1, 9, 0, null), new Mark("has passed", Sort.Truth, true, null, null, 1, null)],
            Signs = [.. Signs(ware, "b:bowl j:jug p:plate l:lamp a:ash i:iron c:copper !:cracked")],
            Tree = new OutlineMapping(Nowhere.Whole, []),
            Names = new Vocabulary(),
        };
    }

    private static Sheet StackGame()
    {
        KindFacts stone = Kind("stone", "stones", KindFamily.Piece, new Supply(20, [], EachPlayer: true), "colour: red blue", "side: front back; heat: cold hot");
        KindFacts pawn = Kind("pawn", "pawns", KindFamily.Piece, new Supply(4, []), "", "holder: players");
        KindFacts die = Kind("fire die", "fire dice", KindFamily.Die, new Supply(3, []), "", "face: 1 2 3 crescent");
        KindFacts card = Kind("card", "cards", KindFamily.Card, new Supply(null, []));
        CardTable cards = Cards(card.Kind, "7 of clubs", "Glazer's licence", "Fox, the");
        var field = new Place("field", PlaceForm.Board, false, 0, null);
        return new Sheet
        {
            Game = "Stacks",
            FewestPlayers = 2,
            MostPlayers = 2,
            SeatNames = ["Black", "White"],
            Kinds = [stone, pawn, die, card],
            CardTables = [cards],
            Boards = [TestBoard.Of(field, 3, 3, "B2")],
            Places =
            [
                At("hand", PlaceForm.Hand, true, 1, [card]), At("heap", PlaceForm.Heap, true, 2, [stone, pawn, die]), At("dice", PlaceForm.Row, false, 3, [die], 2),
                At("bag", PlaceForm.Bag, false, 4, []),
            ],
            Marks =
            [
                new Mark("leader", Sort.Player, false, null, null, 0, null), new Mark("goal", Sort.Space, false, null, null, 1, null),
                new Mark("trump", Sort.ValueOf(stone.Attributes[0].Attribute), true, null, null, 2, null),
            ],
            Signs = [.. Signs(stone, "r:red b:blue k:back h:hot"), new DrawingSign('s', stone.Kind), new DrawingSign('w', pawn.Kind), new DrawingSign('7', cards.Rows[0].Card)],
            Tree = new OutlineMapping(Nowhere.Whole, []),
            Names = new Vocabulary(),
        };
    }

    private static PlaceFacts At(string name, PlaceForm form, bool eachPlayer, int index, KindFacts[] holds, int slots = 0) =>
        new(new Place(name, form, eachPlayer, index, null), [.. holds.Select(h => h.Kind)], slots, null, null);

    private static IEnumerable<DrawingSign> Signs(KindFacts kind, string signs) =>
        signs.Split(' ').Select(s => new DrawingSign(s[0], kind.Attributes.SelectMany(a => a.Values).Last(v => v.Name == s[2..])));
}
