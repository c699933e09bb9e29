using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Looks, what lies in something, and tests against looks.</content>
internal sealed partial class Binder
{
    private Term BindLookTerm(Syntax.Looks syntax) => new Term.LookOf(BindLook(syntax), From(syntax));

    /// <summary>The look that words tell.</summary>
    public Look BindLook(Syntax.Looks syntax)
    {
        var build = new LookBuilder();
        foreach (Syntax.Name part in syntax.Parts)
        {
            if (!part.Senses.Any(s => build.TryAdd(s.Symbol)))
            {
                problems.Add(Placed(FormulaProblems.NotALook(part.Span, part.Words, part.Senses[0].Symbol)));
            }
        }

        if (build.Clash is { } clash)
        {
            problems.Add(Placed(FormulaProblems.Contradiction(syntax.Span, clash.First.Name, clash.Second.Name)));
        }

        LookOwner owner = syntax.Owner switch
        {
            Owner.My => LookOwner.Mine,
            Owner.Their => LookOwner.Theirs,
            _ => LookOwner.Anyone,
        };
        return build.Build(owner, string.Join(' ', syntax.Parts.Select(InWords)));
    }

    // A parameter of an idiom is told in the words of the clause that uses it.
    private static string InWords(Syntax.Name part) =>
        part.Senses.Select(s => s.Symbol).OfType<LookName>().FirstOrDefault()?.Look.Words ?? part.Words;

    private Term BindPartOf(Syntax.PartOf part)
    {
        Look look = BindLook(part.Look);
        Term container = Bind(part.Container);
        Sort? element = ElementOf(look, container);
        if (element is null)
        {
            problems.Add(Placed(FormulaProblems.WrongSort(part.Container.Span, container.Sort, Sort.Place)));
            return Broken(part, Sort.SetOf(Sort.Any));
        }

        bool isOrdered = container.Sort.Kind is not (SortKind.Set or SortKind.Any);
        var within = new Term.Within(look, container, isOrdered ? Sort.ListOf(element) : Sort.SetOf(element), From(part));
        return part.IsOnly ? new Term.TheOnly(within, element, From(part)) : within;
    }

    // The look that a formula names by itself; null for anything else, and for spaces.
    private static Look? LookOf(Term term) => term switch
    {
        Term.LookOf { Look: { Kind: not null, SpotNoun: null } } named => named.Look,
        Term.Value value => new Look(value.Which.Attribute.Kind, [value.Which], null, LookOwner.Anyone, [], value.Which.Name),
        _ => null,
    };

    // The place that holds such things is named, or the lines to add where there is none.
    private Diagnostic WithoutPlace(Look look, Syntax syntax)
    {
        Kind kind = look.Kind!;
        Place? place = declared.Places.Values.FirstOrDefault(p => p.Holds.Contains(kind))?.Place ?? declared.Boards.Keys.FirstOrDefault();
        if (place is { EachPlayer: false } && place.Name == kind.Plural && look.Owner != LookOwner.Anyone)
        {
            return FormulaProblems.NotOwned(syntax.Span, place.Name);
        }

        string many = LookWords.Many(look with { Owner = LookOwner.Anyone });
        return FormulaProblems.LookWithoutPlace(syntax.Span, syntax.Span.Text, many, kind, place is null ? null : place.EachPlayer ? $"my {place.Name}" : place.Name, declared.Places.Keys.Any(p => p.DeclaredAt is not null));
    }

    private static Sort? ElementOf(Look look, Term container)
    {
        Sort sort = container.Sort;
        if (look.SpotNoun is not null)
        {
            Sort spot = look.SpotNoun is SlotNoun ? Sort.Slot : Sort.Space;
            bool holdsSpots = sort.Kind is SortKind.Place or SortKind.Line or SortKind.Any or SortKind.Fit || (sort.IsMany && sort.Element!.Fits(spot));
            return holdsSpots ? spot : null;
        }

        bool holdsThings = sort.Kind is SortKind.Place or SortKind.Line or SortKind.Space or SortKind.Slot or SortKind.Any or SortKind.Fit
            || (sort.IsMany && sort.Element!.Kind is SortKind.Space or SortKind.Slot or SortKind.Thing or SortKind.Line or SortKind.Any);
        return holdsThings ? Sort.ThingOf(look.Kind) : null;
    }

    private Term BindShows(Syntax.Shows shows)
    {
        Term subject = Bind(shows.Subject);
        if (subject.Sort.Kind is not (SortKind.Space or SortKind.Slot or SortKind.Any or SortKind.Nothing))
        {
            problems.Add(Placed(FormulaProblems.WrongSort(shows.Subject.Span, subject.Sort, Sort.Space)));
            return Broken(shows, Sort.Truth);
        }

        ImmutableArray<Look> looks = [.. shows.Choices.Select(LookIn).OfType<Look>()];
        Term test = new Term.Matches(subject, looks, true, From(shows));
        return shows.IsNegated ? UnlessNothing(subject, test, shows) : test;
    }

    private Look? LookIn(Syntax syntax)
    {
        switch (syntax)
        {
            case Syntax.Looks looks:
                return BindLook(looks);
            case Syntax.Name name:
                return BindLook(new Syntax.Looks(Owner.None, [name], name.Span));
            case Syntax.Number when Numeral(syntax) is { } numeral:
                return BindLook(new Syntax.Looks(Owner.None, [numeral], numeral.Span));
            default:
                problems.Add(Placed(FormulaProblems.Expected(syntax.Span, Prose.Clip(syntax.Span.Text), "words that tell a thing, such as a kind or a value")));
                return null;
        }
    }

    // A test of nothing is no, `is not` included; only `is nothing` and `not (…)` see it.
    private Term UnlessNothing(Term subject, Term test, Syntax at)
    {
        Term isThere = Operation(Op.Not, Sort.Truth, at, Operation(Op.IsNothing, Sort.Truth, at, subject));
        return Operation(Op.And, Sort.Truth, at, isThere, Operation(Op.Not, Sort.Truth, at, test));
    }

    /// <summary>Gathers the parts of a look.</summary>
    private sealed class LookBuilder
    {
        private readonly ImmutableArray<AttributeValue>.Builder _values = ImmutableArray.CreateBuilder<AttributeValue>();
        private readonly ImmutableArray<Trait>.Builder _traits = ImmutableArray.CreateBuilder<Trait>();
        private Kind? _kind;
        private Card? _card;
        private Named? _spot;
        private LookOwner _owner = LookOwner.Anyone;

        /// <summary>Two values of one attribute, which nothing has.</summary>
        public (AttributeValue First, AttributeValue Second)? Clash { get; private set; }

        public bool TryAdd(Named symbol)
        {
            switch (symbol)
            {
                case LookName parameter:
                    Merge(parameter.Look);
                    return true;
                case Kind kind:
                    _kind = kind;
                    return true;
                case AttributeValue value:
                    AddValue(value);
                    return true;
                case Card card:
                    (_card, _kind) = (card, card.Kind);
                    return true;
                case SpaceNoun or SlotNoun:
                    _spot = symbol;
                    return true;
                case AdjectiveName adjective:
                    _traits.Add(new Trait(adjective.Adjective, null));
                    return true;
                case Word { Subjects.Length: 1 } word:
                    _traits.Add(new Trait(Adjective.Word, word));
                    return true;
                default:
                    return false;
            }
        }

        public Look Build(LookOwner owner, string words) =>
            new(_kind ?? _values.Select(v => v.Attribute.Kind).FirstOrDefault(), _values.ToImmutable(), _card, owner == LookOwner.Anyone ? _owner : owner, _traits.ToImmutable(), words) { SpotNoun = _spot };

        private void AddValue(AttributeValue value)
        {
            AttributeValue? other = _values.FirstOrDefault(v => ReferenceEquals(v.Attribute, value.Attribute) && !ReferenceEquals(v, value));
            if (other is not null)
            {
                Clash = (other, value);
            }

            _values.Add(value);
        }

        private void Merge(Look look)
        {
            _kind ??= look.Kind;
            _card ??= look.Card;
            _spot ??= look.SpotNoun;
            _owner = look.Owner;
            foreach (AttributeValue value in look.Values)
            {
                AddValue(value);
            }

            _traits.AddRange(look.Traits);
        }
    }
}
