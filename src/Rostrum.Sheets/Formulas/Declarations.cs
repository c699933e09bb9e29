using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;

namespace Rostrum.Sheets.Formulas;

/// <summary>What is declared in a sheet while it is read: what the binder of formulas asks for.</summary>
internal sealed class Declarations
{
    /// <summary>The names.</summary>
    public Vocabulary Names { get; } = KernelNames.Fresh();

    public Dictionary<Kind, KindFacts> Kinds { get; } = [];

    public Dictionary<Place, BoardFacts> Boards { get; } = [];

    public Dictionary<Place, PlaceFacts> Places { get; } = [];

    /// <summary>The fewest and most players; null where the sheet does not say.</summary>
    public (int? Fewest, int? Most) Players { get; set; }

    /// <summary>The blocks that steps may call; null where they are not known.</summary>
    public IReadOnlyCollection<string>? Blocks { get; set; }

    /// <summary>The names of the ends that steps may call; null where they are not known.</summary>
    public IReadOnlyCollection<string>? Ends { get; set; }

    /// <summary>The readings and conflicts met so far.</summary>
    public List<Choice> Choices { get; } = [];

    /// <summary>Gives the meaning of a word, bound on demand; null inside a circle.</summary>
    public Func<Word, Term?> MeaningOf { get; set; } = _ => null;

    /// <summary>Gives what is known of the choices of an action, which are read on demand; null where nothing is.</summary>
    public Func<ActionName, KnownChoices?> ChoicesOf { get; set; } = _ => null;

    /// <summary>Gives the sort of a table's entries.</summary>
    public Func<Table, Sort> EntrySort { get; set; } = _ => Sort.Number;

    /// <summary>True for a game of exactly two.</summary>
    public bool IsForTwo => Players is { Fewest: 2, Most: 2 };

    /// <summary>Registers a fork.</summary>
    public Choice AddChoice(Func<int, Choice> make)
    {
        Choice choice = make(Choices.Count);
        Choices.Add(choice);
        return choice;
    }

    /// <summary>The attribute with this name of a kind, or null.</summary>
    public AttributeFacts? AttributeOf(Model.Attribute attribute) =>
        Kinds.TryGetValue(attribute.Kind, out KindFacts? facts) ? facts.Attributes.FirstOrDefault(a => ReferenceEquals(a.Attribute, attribute)) : null;

    /// <summary>What the values of an attribute give: numbers where all of them are numerals.</summary>
    public Sort SortOf(Model.Attribute attribute)
    {
        AttributeFacts? facts = AttributeOf(attribute);
        if (facts is { HoldsPlayer: true })
        {
            return Sort.Player;
        }

        return facts is { Values.Length: > 0 } && facts.Values.All(v => v.Number is not null) ? Sort.Number : Sort.ValueOf(attribute);
    }

    /// <summary>True where some of the attribute's values are numerals.</summary>
    public bool HasNumbers(Named? attribute) =>
        attribute is Model.Attribute a && (AttributeOf(a)?.Values.Any(v => v.Number is not null) ?? false);

    /// <summary>The kind of thing that a place holds, where it holds only one.</summary>
    public Kind? OnlyKindIn(Place place) =>
        Places.TryGetValue(place, out PlaceFacts? facts) && facts.Holds.Length == 1 ? facts.Holds[0] : null;
}
