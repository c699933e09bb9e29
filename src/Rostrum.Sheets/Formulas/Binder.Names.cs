using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>Names alone, with <c>my</c>, and nouns with <c>of</c>.</content>
internal sealed partial class Binder
{
    private Term BindName(Syntax.Name name)
    {
        foreach (NameSense sense in name.Senses.OrderBy(s => s.Symbol is StepName or CounterName))
        {
            if (BindSymbol(sense, name) is { } term)
            {
                return term;
            }
        }

        if (name.Senses.Select(s => s.Symbol).OfType<Place>().FirstOrDefault() is { } place)
        {
            problems.Add(Placed(FormulaProblems.WhoseIs(name.Span, name.Words)));
            return new Term.PlaceOf(place, new Term.Me(From(name)), From(name));
        }

        Named symbol = name.Senses[0].Symbol;
        problems.Add(Placed(symbol is Model.Attribute or Column or Mark or Table or LineFamily or Region or Link or PrintedValue or Word { Subjects.Length: 1 }
            ? FormulaProblems.OfWhat(name.Span, name.Words, symbol)
            : FormulaProblems.Expected(name.Span, name.Words, "something that can be asked or counted")));
        return Broken(name);
    }

    private Term? BindSymbol(NameSense sense, Syntax.Name name) => sense.Symbol switch
    {
        LetterName letter => BindLetter(letter, name),
        TermName parameter => BindParameter(parameter),
        LookName parameter => new Term.LookOf(parameter.Look, From(name)),
        NumberConstant number => new Term.Constant(number, From(name)),
        Card card => new Term.CardNamed(card, From(name)),
        SpaceName space => new Term.SpaceNamed(space, space.Board.EachPlayer ? new Term.Me(From(name)) : null, From(name)),
        Place { EachPlayer: false } place => new Term.PlaceOf(place, null, From(name)),
        Mark { EachPlayer: false, EachSpaceOf: null } mark => new Term.MarkOf(mark, null, From(name)),
        Word { Subjects.Length: 0 } word => Call(word, [], name),
        OperationName { Operation: { Id: Op.Players } op } => new Term.Apply(op, null, [], Sort.ListOf(Sort.Player), From(name)),
        OperationName { Operation: { Id: Op.Opponent } op } => BindOpponent(op, name),
        StepName step => Towards(step.Direction, name),
        StartPlayerName => new Term.StartPlayer(From(name)),
        CounterName counter => new Term.Counter(counter.Kind, From(name)),
        SeatName seat => new Term.Seat(seat.Index, From(name)),
        AttributeValue value => new Term.Value(value, From(name)),
        Kind or AdjectiveName or SpaceNoun or SlotNoun => BindLookTerm(new Syntax.Looks(Owner.None, [name], name.Span)),
        _ => null,
    };

    private Term BindParameter(TermName parameter)
    {
        scope.Need(parameter.FrameSize);
        return parameter.Term;
    }

    private Term BindLetter(LetterName letter, Syntax.Name name)
    {
        if (scope.Find(letter) is not { } entry)
        {
            return Broken(name);
        }

        entry.IsUsed = true;
        return new Term.Variable(entry.Slot, letter.Name, entry.Sort, From(name));
    }

    private Term BindOpponent(Operation operation, Syntax.Name name)
    {
        if (!declared.IsForTwo)
        {
            problems.Add(Placed(FormulaProblems.TheirNeedsTwo(name.Span, name.Words)));
        }

        return new Term.Apply(operation, null, [], Sort.Player, From(name));
    }

    private Term BindOwned(Syntax.Owned owned)
    {
        Term player = new Term.Me(From(owned));
        if (owned.Owner == Owner.Their)
        {
            if (!declared.IsForTwo)
            {
                problems.Add(Placed(FormulaProblems.TheirNeedsTwo(owned.Span, $"their {owned.What.Words}")));
            }

            player = Operation(Op.Opponent, Sort.Player, owned);
        }

        foreach (NameSense sense in owned.What.Senses)
        {
            if (OfPlayer(sense.Symbol, player, owned) is { } term)
            {
                return term;
            }
        }

        if (FormulaParser.TellsLook(owned.What.Senses))
        {
            return BindLookTerm(new Syntax.Looks(owned.Owner, [owned.What], owned.Span));
        }

        problems.Add(Placed(FormulaProblems.NotOwned(owned.Span, owned.What.Words)));
        return Broken(owned);
    }

    private Term? OfPlayer(Named symbol, Term player, Syntax at) => symbol switch
    {
        Place { EachPlayer: true } or Place { Form: PlaceForm.Supply } => new Term.PlaceOf((Place)symbol, player, From(at)),
        Mark { EachPlayer: true } mark => new Term.MarkOf(mark, player, From(at)),
        Region region => new Term.RegionOf(region, player, From(at)),
        Word { Subjects.Length: 1 } word when Sort.Player.Fits(word.Subjects[0].Sort) => Call(word, [player], at),
        _ => null,
    };

    private Term BindOf(Syntax.Of of)
    {
        if (HoleIn(of.Argument) is { } hole && of.Noun.Senses.Any(s => s.Symbol is OperationName { Operation.Id: Op.NeighboursOf }))
        {
            return Round(hole, of.Argument);
        }

        Term argument = Bind(of.Argument);
        foreach (NameSense sense in of.Noun.Senses)
        {
            if (ApplyNoun(sense.Symbol, sense.IsPlural, of, argument) is { } term)
            {
                return term;
            }
        }

        problems.Add(Placed(FormulaProblems.WrongSort(of.Argument.Span, argument.Sort, WantedBy(of.Noun.Senses[0].Symbol))));
        return Broken(of);
    }

    private Term? ApplyNoun(Named symbol, bool isPlural, Syntax.Of of, Term argument)
    {
        Sort given = argument.Sort;
        switch (symbol)
        {
            case StepName step when given.Fits(Sort.Space):
                return Operation(Op.Step, Sort.Space, of, argument, Towards(step.Direction, of.Noun));
            case StepName { Direction.Name: "left" or "right" } side when given.Kind == SortKind.Player:
                return Operation(Op.SeatBeside, Sort.Player, of, argument, new Term.DirectionNamed(side.Direction, From(of.Noun)));
            case OperationName { Operation: { Form: OperationForm.Noun } operation }:
                return BindNounOperation(operation, of, argument);
            case LineFamily family:
                return BindFamily(family, of, argument);
            case Model.Attribute attribute when given.Fits(Sort.Thing):
                return BindProperty(attribute, of, argument);
            case Column column when given.Fits(Sort.Thing):
                return new Term.CardCell(column, argument, column.Sort, From(of));
            case Table table:
                return BindTable(table, of, argument);
            case Link link when given.Fits(Sort.Space):
                return new Term.LinkOf(link, argument, From(of));
            case PrintedValue value when given.Fits(Sort.Space):
                return new Term.PrintedOn(value, argument, From(of));
            case Mark { EachSpaceOf: not null } mark when given.Fits(Sort.Space):
                return new Term.MarkOf(mark, argument, From(of));
            case Place { EachPlayer: true } or Mark { EachPlayer: true } or Region when given.Fits(Sort.Player):
                return OfPlayer(symbol, argument, of);
            case Word { Subjects.Length: 1 } word when given.Fits(word.Subjects[0].Sort):
                return Call(word, [argument], of);
            default:
                return null;
        }
    }

    private Term? BindFamily(LineFamily family, Syntax.Of of, Term argument)
    {
        if (of.Label is { } label)
        {
            int index = family.IndexOf(label.Text);
            if (index < 0)
            {
                problems.Add(Placed(FormulaProblems.NoSuchLabel(label.Span, family.Name, label.Text, [.. family.Lines.Select(l => l.Label)], family.Form == LineForm.Areas)));
                return Broken(of, Sort.Line);
            }

            return new Term.LineOf(family, index, argument, From(of));
        }

        return argument.Sort.Kind switch
        {
            SortKind.Space => new Term.LineOf(family, null, argument, From(of)),
            SortKind.Place => new Term.LinesOf(family, argument, From(of)),
            SortKind.Any => Broken(of, Sort.ListOf(Sort.Line)),
            _ => null,
        };
    }

    private Term BindProperty(Model.Attribute attribute, Syntax.Of of, Term argument)
    {
        if (argument.Sort.Of is Kind kind && !ReferenceEquals(kind, attribute.Kind))
        {
            problems.Add(Placed(FormulaProblems.WrongSort(of.Argument.Span, argument.Sort, Sort.ThingOf(attribute.Kind))));
        }

        return new Term.Property(attribute, argument, declared.SortOf(attribute), From(of));
    }

    private Term? BindTable(Table table, Syntax.Of of, Term argument) =>
        argument.Sort.Kind is SortKind.Number or SortKind.Value or SortKind.Any or SortKind.Nothing
            ? new Term.LookUp(table, argument, declared.EntrySort(table), From(of))
            : null;

    private Term? BindNounOperation(Operation operation, Syntax.Of of, Term argument)
    {
        Parameter parameter = operation.Parameters[0];
        if (operation.Id is Op.SpacesOf or Op.ThingsIn or Op.SlotsOf)
        {
            return BindHolding(operation, of, argument);
        }

        if (parameter.Sort.IsMany)
        {
            argument = AsMany(argument, of.Argument);
        }

        if (operation.Id is Op.First or Op.Last && argument.Sort.Kind == SortKind.Set)
        {
            return null;
        }

        ReportOnPoints(operation.Id == Op.RimOf ? argument : null, of, "rim", "Name its outer spaces under 'areas', and ask 'is in' that area.");
        bool fits = operation.Id switch
        {
            Op.OwnerOf => argument.Sort.Kind is SortKind.Thing or SortKind.Space or SortKind.Place or SortKind.Any,
            Op.OrderOf => argument.Sort.Kind is SortKind.Line or SortKind.Slot or SortKind.Player or SortKind.Space or SortKind.Value or SortKind.Any,
            Op.FaceOf => argument.Sort.Fits(Sort.Thing),
            Op.NeighboursOf or Op.SidesOf or Op.CornersOf => argument.Sort.Fits(Sort.Space),
            _ => argument.Sort.Fits(parameter.Sort) || (parameter.Sort.Kind == SortKind.List && argument.Sort.IsMany),
        };
        return fits ? Operation(operation.Id, SortOfNoun(operation.Id, argument), of, argument) : null;
    }

    private Term? BindHolding(Operation operation, Syntax.Of of, Term argument)
    {
        bool fits = operation.Id switch
        {
            Op.SpacesOf => argument is Term.PlaceOf { Place.Form: PlaceForm.Board } || argument.Sort.Kind is SortKind.Line or SortKind.Fit or SortKind.Thing,
            Op.SlotsOf => argument is Term.PlaceOf { Place.Form: PlaceForm.Row },
            _ => argument.Sort.Kind is SortKind.Space or SortKind.Slot || argument is Term.PlaceOf { Place.Form: not (PlaceForm.Board or PlaceForm.Row) },
        };
        return !fits ? null
            : argument.Sort.Kind == SortKind.Thing && operation.Id == Op.SpacesOf ? Operation(Op.SpacesOf, Sort.ListOf(Sort.Space), of, argument)
            : AsMany(argument, of);
    }

    private Sort SortOfNoun(Op id, Term argument) => id switch
    {
        Op.First or Op.Last => argument.Sort.Element ?? Sort.Any,
        Op.OrderOf or Op.HeightOf or Op.AdvanceOf => Sort.Number,
        Op.TopOf => Sort.Thing,
        Op.OwnerOf => Sort.Player,
        Op.FaceOf => argument.Sort.Of is Kind kind && declared.Kinds[kind].Attributes is [var face, ..] ? declared.SortOf(face.Attribute) : Sort.Any,
        Op.NeighboursOf or Op.SidesOf or Op.CornersOf or Op.EdgeOf or Op.RimOf => Sort.SetOf(Sort.Space),
        _ => Sort.Space,
    };

    private static Sort WantedBy(Named symbol) => symbol switch
    {
        OperationName { Operation: var operation } => operation.Parameters[0].Sort,
        LineFamily or StepName or Link or PrintedValue or Mark { EachSpaceOf: not null } => Sort.Space,
        Model.Attribute attribute => Sort.ThingOf(attribute.Kind),
        Column column => Sort.ThingOf(column.Kind),
        Table => Sort.Number,
        Word { Subjects.Length: 1 } word => word.Subjects[0].Sort,
        _ => Sort.Player,
    };
}

/// <summary>A seat as a name.</summary>
internal sealed class SeatName(string name, int index, Rostrum.Text.SourceSpan? at) : Named(name, at)
{
    public int Index { get; } = index;

    public override string Role => "a seat";
}
