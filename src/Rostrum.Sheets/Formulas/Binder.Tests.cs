using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Tests with <c>is</c>.</content>
internal sealed partial class Binder
{
    private Term BindTest(Syntax.Test test)
    {
        Term subject = Bind(test.Subject);
        Term bound = test.Tail switch
        {
            "nothing" => Operation(Op.IsNothing, Sort.Truth, test, subject),
            "at least" => Compare(Op.AtLeast, test, subject),
            "at most" => Compare(Op.AtMost, test, subject),
            "more than" => Compare(Op.MoreThan, test, subject),
            "less than" => Compare(Op.LessThan, test, subject),
            "between" => Operation(Op.Between, Sort.Truth, test, AsNumber(subject, test.Subject), BindNumber(test.Operands[0]), BindNumber(test.Operands[1])),
            "next to" when HoleIn(test.Operands[0]) is { } hole => Operation(Op.In, Sort.Truth, test, AsSort(subject, test.Subject, Sort.Space), RoundAnyones(hole, test.Operands[0])),
            "next to" => Operation(Op.NextTo, Sort.Truth, test, AsSort(subject, test.Subject, Sort.Space), Expect(test.Operands[0], Sort.Space)),
            "in" => BindIn(test, subject),
            _ => BindIs(test, subject),
        };
        if (!test.IsNegated)
        {
            return bound;
        }

        return test.Tail == "nothing" ? Operation(Op.Not, Sort.Truth, test, bound) : UnlessNothing(subject, bound, test);
    }

    private Term Compare(Op id, Syntax.Test test, Term subject) =>
        Operation(id, Sort.Truth, test, AsNumber(subject, test.Subject), BindNumber(test.Operands[0]));

    private Term AsNumber(Term term, Syntax syntax) =>
        term.Sort.Kind == SortKind.Value && declared.HasNumbers(term.Sort.Of) ? term : AsSort(term, syntax, Sort.Number);

    private Term AsSort(Term term, Syntax syntax, Sort wanted)
    {
        if (term.Sort.Fits(wanted))
        {
            return term;
        }

        problems.Add(Placed(FormulaProblems.WrongSort(syntax.Span, term.Sort, wanted)));
        return Broken(syntax, wanted);
    }

    private Term BindIn(Syntax.Test test, Term subject)
    {
        Term container = Bind(test.Operands[0]);
        bool isPlaceForThing = container.Sort.Kind is SortKind.Place or SortKind.Space or SortKind.Slot or SortKind.Line && subject.Sort.Fits(Sort.Thing);
        if (!isPlaceForThing)
        {
            container = AsMany(container, test.Operands[0]);
            if (container.Sort.Element is { } element && !subject.Sort.Fits(element))
            {
                problems.Add(Placed(FormulaProblems.WrongSort(test.Operands[0].Span, container.Sort, Sort.SetOf(subject.Sort))));
            }
        }

        return Operation(Op.In, Sort.Truth, test, subject, container);
    }

    private Term BindIs(Syntax.Test test, Term subject)
    {
        if (subject.Sort.Kind == SortKind.Thing)
        {
            if (test.Operands.All(o => IsLookSyntax(o) || Numeral(o) is not null))
            {
                ImmutableArray<Look> looks = [.. test.Operands.Select(LookIn).OfType<Look>()];
                return new Term.Matches(subject, looks, false, From(test));
            }
        }

        if (test.Operands.FirstOrDefault(o => !IsTrait(o, subject.Sort) && IsSpaceAgainst(subject, o)) is { } look)
        {
            problems.Add(Placed(FormulaProblems.SpaceAgainstLook(look.Span, IsWord(test))));
            return Broken(test, Sort.Truth);
        }

        ImmutableArray<Term> choices = [.. test.Operands.Select(o => BindChoice(test, subject, o))];
        return choices.Length == 1 ? choices[0] : Operation(Op.Or, Sort.Truth, test, [.. choices]);
    }

    private static bool IsSpaceAgainst(Term subject, Syntax choice) =>
        subject.Sort.Kind is SortKind.Space or SortKind.Slot or SortKind.Line or SortKind.Place && TellsThing(choice);

    // A numeral among the values of an attribute, such as a face of a die or the rank of a card.
    private Syntax.Name? Numeral(Syntax choice)
    {
        if (choice is not Syntax.Number number)
        {
            return null;
        }

        string digits = number.Amount.ToString(System.Globalization.CultureInfo.InvariantCulture);
        ImmutableArray<NameSense> values = [.. declared.Names.Find(digits).Where(s => s.Symbol is AttributeValue)];
        return values.IsEmpty ? null : new Syntax.Name(digits, values, number.Span);
    }

    private static bool IsLookSyntax(Syntax syntax) => syntax switch
    {
        Syntax.Looks => true,
        Syntax.Name name => name.Senses.Any(s => s.Symbol is Kind or AttributeValue or Card or AdjectiveName or Word { Subjects.Length: 1 } or LookName),
        _ => false,
    };

    private Term BindChoice(Syntax.Test test, Term subject, Syntax choice)
    {
        if (IsTrait(choice, subject.Sort))
        {
            return BindTraits(test, subject, choice);
        }

        if (subject.Sort.Kind == SortKind.Value && choice is Syntax.Looks { Parts: [var only] })
        {
            choice = only;
        }

        Term other = PreferValue(choice, subject.Sort) ?? Bind(choice);
        if (subject.Sort is { Kind: SortKind.Value, Of: { } attribute } && other is Term.Value value && !ReferenceEquals(value.Which.Attribute, attribute))
        {
            problems.Add(Placed(FormulaProblems.NeverThat(choice.Span, attribute.Name, value.Which.Name)));
            return Broken(test, Sort.Truth);
        }

        return Same(test, subject, other, choice);
    }

    private Term Same(Syntax.Test test, Term subject, Term other, Syntax choice)
    {
        bool numeral = (subject.Sort.Kind == SortKind.Value && other.Sort.Kind == SortKind.Number && declared.HasNumbers(subject.Sort.Of))
            || (other.Sort.Kind == SortKind.Value && subject.Sort.Kind == SortKind.Number && declared.HasNumbers(other.Sort.Of));
        if (!numeral && subject.Sort.Join(other.Sort) is null)
        {
            bool isUncounted = other.Sort.Kind == SortKind.Number && (subject.Sort.IsMany || subject.Sort.Kind is SortKind.Place or SortKind.Line);
            problems.Add(Placed(isUncounted
                ? FormulaProblems.WrongSort(test.Subject.Span, subject.Sort, Sort.Number)
                : FormulaProblems.WrongSort(choice.Span, other.Sort, subject.Sort)));
            return Broken(test, Sort.Truth);
        }

        return Operation(Op.Same, Sort.Truth, test, subject, other);
    }

    // Where a name is both a value and something else, the value of the subject's own attribute is meant.
    private Term? PreferValue(Syntax choice, Sort subject)
    {
        if (choice is not Syntax.Name name || subject.Kind != SortKind.Value)
        {
            return null;
        }

        AttributeValue? value = name.Senses.Select(s => s.Symbol).OfType<AttributeValue>()
            .OrderByDescending(v => ReferenceEquals(v.Attribute, subject.Of)).FirstOrDefault();
        return value is null ? null : new Term.Value(value, From(name));
    }

    private static bool IsTrait(Syntax choice, Sort subject) => choice switch
    {
        Syntax.Looks looks => looks.Owner == Owner.None && looks.Parts.All(p => IsTraitName(p, subject)),
        Syntax.Name name => IsTraitName(name, subject),
        _ => false,
    };

    private static bool IsTraitName(Syntax.Name name, Sort subject) => name.Senses.Any(s => s.Symbol switch
    {
        AdjectiveName => subject.Kind is SortKind.Space or SortKind.Slot or SortKind.Line or SortKind.Place or SortKind.Set or SortKind.List or SortKind.Thing or SortKind.Any,
        Word { Subjects.Length: 1 } word => subject.Fits(word.Subjects[0].Sort),
        Mark { Sort.Kind: SortKind.Truth } mark => subject.Kind == (mark.EachPlayer ? SortKind.Player : mark.EachSpaceOf is null ? SortKind.Any : SortKind.Space),
        SpaceNoun => subject.Kind == SortKind.Space,
        SlotNoun => subject.Kind == SortKind.Slot,
        _ => false,
    });

    private Term BindTraits(Syntax.Test test, Term subject, Syntax choice)
    {
        ImmutableArray<Syntax.Name> parts = choice is Syntax.Looks looks ? looks.Parts : [(Syntax.Name)choice];
        var truths = ImmutableArray.CreateBuilder<Term?>();
        foreach (Syntax.Name part in parts)
        {
            Named symbol = part.Senses.Select(s => s.Symbol).First(s => s is AdjectiveName or Mark or Word { Subjects.Length: 1 } or SpaceNoun or SlotNoun);
            if (symbol is Word word)
            {
                truths.Add(Truthful(Call(word, [subject], part), part));
            }
            else if (symbol is Mark mark)
            {
                truths.Add(new Term.MarkOf(mark, subject, From(part)));
            }
            else if (symbol is AdjectiveName adjective)
            {
                var look = new Look(null, [], null, LookOwner.Anyone, [new Trait(adjective.Adjective, null)], adjective.Name);
                truths.Add(new Term.Matches(subject, [look], false, From(part)));
            }
        }

        return truths.Count == 1 ? truths[0]! : Operation(Op.And, Sort.Truth, test, truths.ToImmutable());
    }

    private Term Truthful(Term term, Syntax at)
    {
        if (term.Sort.Fits(Sort.Truth))
        {
            return term;
        }

        problems.Add(Placed(FormulaProblems.WantedTruth(at.Span, term.Sort)));
        return Broken(at, Sort.Truth);
    }

    private static bool TellsThing(Syntax choice) => choice switch
    {
        Syntax.Looks => true,
        Syntax.Name name => name.Senses.Any(s => s.Symbol is Kind or AttributeValue or Card or LookName),
        _ => false,
    };

    private static SourceSpan IsWord(Syntax.Test test)
    {
        SourceSpan subject = test.Subject.Span;
        string between = subject.Source.Content[subject.End..test.Operands[0].Span.Start];
        int at = between.IndexOf("is", StringComparison.OrdinalIgnoreCase);
        return at < 0 || test.IsNegated ? subject.Part(0, 0) : new SourceSpan(subject.Source, subject.End + at, 2);
    }
}
