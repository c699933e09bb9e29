namespace Rostrum.Sheets.Model;

/// <summary>The families of sorts of the sheet language.</summary>
public enum SortKind
{
    /// <summary>Not known because something else is wrong; agrees with everything, so that one mistake gives one message.</summary>
    Any,

    /// <summary>Only the value <c>nothing</c>.</summary>
    Nothing,

    /// <summary>A number; numbers are always whole.</summary>
    Number,

    /// <summary>Yes, no or unknown.</summary>
    Truth,

    /// <summary>One of the values of an attribute, such as <c>copper</c>.</summary>
    Value,

    /// <summary>Words that tell a thing, such as <c>whole jug</c>.</summary>
    Look,

    /// <summary>A piece, a card or a die.</summary>
    Thing,

    /// <summary>A space of a board.</summary>
    Space,

    /// <summary>A slot of a row.</summary>
    Slot,

    /// <summary>A place that holds things.</summary>
    Place,

    /// <summary>A player.</summary>
    Player,

    /// <summary>A direction on a board.</summary>
    Direction,

    /// <summary>A line of a board, such as a row or a column.</summary>
    Line,

    /// <summary>A drawing: a pattern on a card.</summary>
    Drawing,

    /// <summary>One way in which a drawing lies on a board.</summary>
    Fit,

    /// <summary>Words that nothing is done with.</summary>
    Text,

    /// <summary>Several of one sort, none twice, in no order.</summary>
    Set,

    /// <summary>Several of one sort in an order.</summary>
    List,
}

/// <summary>What a formula gives: a number, a truth, a space, a set of things and so on.</summary>
/// <param name="Kind">The family.</param>
/// <param name="Element">What a set or a list holds; null otherwise.</param>
/// <param name="Of">The attribute of a value or the kind of a thing, where it is known.</param>
public sealed record Sort(SortKind Kind, Sort? Element = null, Named? Of = null)
{
    /// <summary>Agrees with everything.</summary>
    public static Sort Any { get; } = new(SortKind.Any);

    /// <summary>Only <c>nothing</c>.</summary>
    public static Sort Nothing { get; } = new(SortKind.Nothing);

    /// <summary>A number.</summary>
    public static Sort Number { get; } = new(SortKind.Number);

    /// <summary>A truth.</summary>
    public static Sort Truth { get; } = new(SortKind.Truth);

    /// <summary>A look.</summary>
    public static Sort Look { get; } = new(SortKind.Look);

    /// <summary>A thing of any kind.</summary>
    public static Sort Thing { get; } = new(SortKind.Thing);

    /// <summary>A space.</summary>
    public static Sort Space { get; } = new(SortKind.Space);

    /// <summary>A slot.</summary>
    public static Sort Slot { get; } = new(SortKind.Slot);

    /// <summary>A place.</summary>
    public static Sort Place { get; } = new(SortKind.Place);

    /// <summary>A player.</summary>
    public static Sort Player { get; } = new(SortKind.Player);

    /// <summary>A direction.</summary>
    public static Sort Direction { get; } = new(SortKind.Direction);

    /// <summary>A line.</summary>
    public static Sort Line { get; } = new(SortKind.Line);

    /// <summary>A drawing.</summary>
    public static Sort Drawing { get; } = new(SortKind.Drawing);

    /// <summary>A fit of a drawing.</summary>
    public static Sort Fit { get; } = new(SortKind.Fit);

    /// <summary>Words.</summary>
    public static Sort Text { get; } = new(SortKind.Text);

    /// <summary>A value of this attribute.</summary>
    public static Sort ValueOf(Named? attribute) => new(SortKind.Value, null, attribute);

    /// <summary>A thing of this kind.</summary>
    public static Sort ThingOf(Named? kind) => new(SortKind.Thing, null, kind);

    /// <summary>A set of these.</summary>
    public static Sort SetOf(Sort element) => new(SortKind.Set, element);

    /// <summary>A list of these.</summary>
    public static Sort ListOf(Sort element) => new(SortKind.List, element);

    /// <summary>True for a set or a list.</summary>
    public bool IsMany => Kind is SortKind.Set or SortKind.List;

    /// <summary>True where a formula of this sort may stand where the other sort is wanted. Nothing is converted; <c>nothing</c> may stand
    /// for any single thing, and a list may stand for a set.</summary>
    public bool Fits(Sort wanted)
    {
        if (Kind == SortKind.Any || wanted.Kind == SortKind.Any || (Kind == SortKind.Nothing && !wanted.IsMany))
        {
            return true;
        }

        if (wanted.IsMany)
        {
            return IsMany && (Kind == wanted.Kind || wanted.Kind == SortKind.Set) && Element!.Fits(wanted.Element!);
        }

        return Kind == wanted.Kind;
    }

    /// <summary>The sort that covers both, for the branches of <c>if … otherwise</c> and the items of a list; null where there is none.</summary>
    public Sort? Join(Sort other)
    {
        if (Kind is SortKind.Any or SortKind.Nothing)
        {
            return other;
        }

        if (other.Kind is SortKind.Any or SortKind.Nothing)
        {
            return this;
        }

        if (IsMany && other.IsMany)
        {
            Sort? element = Element!.Join(other.Element!);
            return element is null ? null : new Sort(Kind == other.Kind ? Kind : SortKind.Set, element);
        }

        return Kind != other.Kind ? null : ReferenceEquals(Of, other.Of) ? this : new Sort(Kind);
    }

    /// <summary>In words for messages: <c>a number</c>, <c>a set of spaces</c>, <c>a value of glaze</c>.</summary>
    public string InWords => Kind switch
    {
        SortKind.Any => "anything",
        SortKind.Nothing => "nothing",
        SortKind.Value when Of is not null => $"a value of {Of.Name}",
        SortKind.Thing when Of is not null => Rostrum.Text.Prose.A(Of.Name),
        SortKind.Set => $"a set of {Element!.Many}",
        SortKind.List => $"a list of {Element!.Many}",
        _ => Rostrum.Text.Prose.A(Kind.ToString().ToLowerInvariant()),
    };

    private string Many => Kind switch
    {
        SortKind.Any or SortKind.Nothing => "anything",
        SortKind.Set or SortKind.List => $"{Kind.ToString().ToLowerInvariant()}s of {Element!.Many}",
        _ => Kind.ToString().ToLowerInvariant() + "s",
    };
}
