using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Declares the names of a small sheet without reading one.</summary>
internal sealed class Declaring
{
    private readonly Dictionary<Word, Term> _meanings = [];

    public Declaring() => Declared = new Declarations { MeaningOf = word => _meanings[word] };

    public Declarations Declared { get; }

    public Kind Piece(string name, string plural, (string Name, bool IsState, string Values)[] attributes) =>
        Kind(name, plural, KindFamily.Piece, attributes);

    public Kind Die(string name, string plural, string faces) => Kind(name, plural, KindFamily.Die, [("face", true, faces)]);

    public Kind Cards(string name, string plural, string[] cards, (string Name, Sort Sort)[] columns)
    {
        Kind kind = Kind(name, plural, KindFamily.Card, []);
        for (int i = 0; i < cards.Length; i++)
        {
            Declared.Names.Add(cards[i], new Card(cards[i], kind, i, null));
        }

        for (int i = 0; i < columns.Length; i++)
        {
            Declared.Names.Add(columns[i].Name, new Column(columns[i].Name, kind, columns[i].Sort, i, null));
        }

        return kind;
    }

    public Place Board(string name, int across, int up, string column, string row, string space)
    {
        Place board = NewPlace(name, PlaceForm.Board, true);
        var noun = new SpaceNoun(space, Many(space), board, null);
        string[] columns = [.. Enumerable.Range(0, across).Select(i => ((char)('A' + i)).ToString())];
        string[] rows = [.. Enumerable.Range(1, up).Select(i => $"{i}")];
        BoardSpace[] spaces = [.. rows.Reverse().SelectMany((r, y) => columns.Select((c, x) => new BoardSpace(new SpaceName(c + r, board, (y * across) + x, null), x, up - 1 - y)))];
        LineFamily[] families = [new LineFamily(column, column + "s", board, LineForm.Columns, [.. columns.Select(c => new BoardLine(c, []))], null), new LineFamily(row, row + "s", board, LineForm.Rows, [.. rows.Select(r => new BoardLine(r, []))], null)];
        AddAll(noun, noun.Plural);
        Array.ForEach(families, f => AddAll(f, f.Plural));
        Array.ForEach(spaces, s => Declared.Names.Add(s.Name.Name, s.Name));
        Declared.Boards[board] = new BoardFacts(board, [.. spaces], [.. columns], [.. rows], [.. families], noun) { IsUpright = true };
        return board;
    }

    public void Row(string name, int slots, string noun, Kind[] holds)
    {
        Place row = NewPlace(name, PlaceForm.Row, false);
        var slot = new SlotNoun(noun, Many(noun), row, null);
        AddAll(slot, slot.Plural);
        Declared.Places[row] = new PlaceFacts(row, [.. holds], slots, slot, null);
    }

    public void Place(string name, PlaceForm form, bool eachPlayer, Kind[] holds)
    {
        Place place = NewPlace(name, form, eachPlayer);
        Declared.Places[place] = new PlaceFacts(place, [.. holds], 0, null, null);
    }

    public void Mark(string name, Sort sort, bool eachPlayer) => Declared.Names.Add(name, new Mark(name, sort, eachPlayer, 0, null, 0, null));

    public void Constant(string name, long amount) => Declared.Names.Add(name, new NumberConstant(name, amount, null));

    public void Table(string name) => Declared.Names.Add(name, new Table(name, 0, null));

    public void Word(string name, Sort gives, params (string Letter, Sort Sort)[] subjects)
    {
        var word = new Word(name, [.. subjects.Select(s => new Subject(s.Letter, s.Sort))], _meanings.Count, null);
        _meanings[word] = new Term.NotYet(name, gives, Origin.Of(new SourceText("words", name).Whole));
        Declared.Names.Add(name, word);
    }

    public void Action(string name, string? phrase)
    {
        ActionPhrase read = phrase is null ? PhraseReader.OfName(name) : new PhraseReader(new DiagnosticBag()).Read(BenchSheet.Text(phrase));
        Declared.Names.Add(name, new ActionName(name, read, 0, null));
    }

    private Kind Kind(string name, string plural, KindFamily family, (string Name, bool IsState, string Values)[] attributes)
    {
        var kind = new Kind(name, plural, family, null);
        AddAll(kind, plural);
        var facts = ImmutableArray.CreateBuilder<AttributeFacts>();
        foreach ((string attributeName, bool isState, string values) in attributes)
        {
            var attribute = new Attribute(attributeName, kind, isState, facts.Count, null);
            Declared.Names.Add(attributeName, attribute);
            facts.Add(new AttributeFacts(attribute, [.. values.Split(' ').Select((v, i) => Value(v, attribute, i))]));
        }

        Declared.Kinds[kind] = new KindFacts(kind, facts.ToImmutable(), new Supply(null, []), null);
        return kind;
    }

    private AttributeValue Value(string word, Attribute attribute, int index)
    {
        var value = new AttributeValue(word, word + "s", attribute, index, long.TryParse(word, out long number) ? number : null, null);
        AddAll(value, value.Plural);
        return value;
    }

    private Place NewPlace(string name, PlaceForm form, bool eachPlayer)
    {
        var place = new Place(name, form, eachPlayer, Declared.Places.Count + Declared.Boards.Count, null);
        Declared.Names.Add(name, place);
        return place;
    }

    private void AddAll(Named symbol, string plural)
    {
        Declared.Names.Add(symbol.Name, symbol);
        Declared.Names.Add(plural, symbol, isPlural: true);
    }

    private static string Many(string word) => word == "shelf" ? "shelves" : word + "s";
}
