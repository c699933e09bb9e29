using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>What the worth of a set depends on, as its words say: perhaps on nothing but how many elements it has and what each of them is.</summary>
internal sealed class WorthReads
{
    private readonly Sheet _sheet;
    private readonly HashSet<Word> _words = [];
    private readonly HashSet<Column> _columns = [];
    private readonly HashSet<Rostrum.Sheets.Model.Attribute> _attributes = [];

    /// <summary>Looks through a formula and every word that it says.</summary>
    public WorthReads(Sheet sheet, Term worth)
    {
        _sheet = sheet;
        IsOfElements = Allows(worth);
    }

    /// <summary>True where it depends on the kinds of the elements and on what the properties below tell of them alone: not on where they
    /// lie, which card each is, in which order they come, or anything outside the set. So elements that agree in these can stand for each other.</summary>
    public bool IsOfElements { get; }

    /// <summary>The columns of cards that it looks at.</summary>
    public IReadOnlySet<Column> Columns => _columns;

    /// <summary>The attributes that it looks at; meant only where <see cref="LooksAtOwners"/> and the face of a die are not asked, which look at all.</summary>
    public IReadOnlySet<Rostrum.Sheets.Model.Attribute> Attributes => _attributes;

    /// <summary>True where it looks at whose the elements are, or at any attribute without its name.</summary>
    public bool LooksAtOwners { get; private set; }

    /// <summary>True where it looks at who is asked; meant only where <see cref="IsOfElements"/>.</summary>
    public bool LooksAtMe { get; private set; }

    /// <summary>True where it looks at which side of a card is seen.</summary>
    public bool LooksAtFaces { get; private set; }

    // Forms that are not named here, such as a place, a space, a named card, look at more.
    private bool Allows(Term? term) => term switch
    {
        null or Term.Number or Term.Constant or Term.Truth or Term.Nothing or Term.Value or Term.Text or Term.Variable or Term.Seat or Term.StartPlayer or Term.Counter or Term.NotModelled => true,
        Term.Me => NotesMe(),
        Term.Apply apply => AllowsOperation(apply.Operation.Id) && AllowsPick(apply.Pick) && apply.Arguments.All(Allows),
        Term.Matches matches => Allows(matches.Subject) && !matches.AsksTop && matches.Looks.All(AllowsLook),
        Term.Call call => call.Subjects.All(Allows) && AllowsWord(call.Word),
        Term.If choice => Allows(choice.Condition) && Allows(choice.Then) && Allows(choice.Otherwise),
        Term.Filtered filtered => AllowsPick(filtered.Through),
        Term.Property property => Allows(property.Subject) && Notes(property.Attribute),
        Term.CardCell cell => Allows(cell.Subject) && AllowsColumn(cell.Column),
        Term.LookUp lookUp => Allows(lookUp.Key) && _sheet.Tables[lookUp.Table.Index].Versions.All(AllowsVersion),
        Term.Within within => Allows(within.Container) && AllowsLook(within.Look),
        Term.MarkOf mark => mark.Mark.EachSpaceOf is null && Allows(mark.Owner),
        Term.Listed listed => listed.Items.All(Allows),
        Term.Fork fork => fork.Alternatives.All(Allows),
        Term.Joining joining => Allows(joining.Holds),
        Term.Idiomatic idiom => Allows(idiom.Inner),
        _ => false,
    };

    private bool AllowsOperation(Op id)
    {
        LooksAtOwners |= id is Op.OwnerOf or Op.FaceOf;
        return IsOfElementsOnly(id);
    }

    private static bool IsOfElementsOnly(Op id) => id is (>= Op.And and <= Op.In) or (>= Op.AtLeast and <= Op.Between) or (>= Op.Plus and <= Op.Different)
        or Op.Most or Op.Least or Op.Together or Op.OrderOf or Op.OwnerOf or Op.FaceOf or Op.Groups or Op.LongestWay or Op.MostPairs
        or (>= Op.Difference and <= Op.Nearest) or Op.ThingsIn;

    private bool AllowsPick(Pick? pick) => pick is null || (Allows(pick.Domain) && Allows(pick.Where));

    private bool AllowsLook(Look look)
    {
        LooksAtOwners |= look.Owner != LookOwner.Anyone;
        LooksAtMe |= look.Owner != LookOwner.Anyone;
        LooksAtFaces |= look.Traits.Any(t => t.Word is null);
        _attributes.UnionWith(look.Values.Select(v => v.Attribute));
        return look.Card is null && look.SpotNoun is null
            && look.Traits.All(t => t.Word is { } word ? AllowsWord(word) : t.Adjective is Adjective.FaceUp or Adjective.FaceDown);
    }

    private bool NotesMe() => LooksAtMe = true;

    private bool Notes(Rostrum.Sheets.Model.Attribute attribute)
    {
        _attributes.Add(attribute);
        return true;
    }

    private bool AllowsColumn(Column column)
    {
        _columns.Add(column);
        return true;
    }

    private bool AllowsVersion(TableVersion version) => version.Rows.All(r => Allows(r.Entry)) && Allows(version.BeyondTerm);

    // A word is looked at once; one inside itself is refused by the sheet.
    private bool AllowsWord(Word word) => !_words.Add(word) || Allows(_sheet.Meanings[word.Index].Body);
}
