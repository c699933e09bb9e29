using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Reads the formulas of one clause: plain ones, gaps (<c>not modelled</c>), forks (<c>readings</c>, <c>conflict</c>) and idioms used as values.</summary>
/// <param name="context">The sheet that is being read.</param>
/// <param name="scope">The letters at hand.</param>
/// <param name="names">The names at hand.</param>
/// <param name="through">The places that brought the words in; empty for words of the sheet.</param>
internal sealed class FormulaReader(LoadContext context, Scope scope, Vocabulary names, ImmutableArray<SourceSpan> through)
{
    private Vocabulary _names = names;

    /// <summary>The names at hand, letters of the clause included.</summary>
    public Vocabulary Names => _names;

    /// <summary>The letters at hand.</summary>
    public Scope Scope => scope;

    private Binder Binder => new(context.Declared, scope, context.Problems, through);

    /// <summary>A value of a sort; what is wrong with it is reported, and then it stands as a part with a mistake.</summary>
    /// <param name="node">The formula, gap, fork or idiom.</param>
    /// <param name="wanted">The sort.</param>
    /// <param name="owner">The clause, for answers about gaps and forks.</param>
    public Term Value(OutlineNode node, Sort wanted, string owner)
    {
        switch (node)
        {
            case OutlineScalar scalar:
                return Formula(FormulaText.Of(scalar), wanted, owner);
            case OutlineMapping mapping when mapping.Find("idiom") is not null:
                return IdiomExpander.Value(context, mapping, wanted, owner) ?? Mistake(node, wanted);
            case OutlineMapping mapping when ForkReader.OfValue(context, mapping, owner) is { } fork:
                return Fork(fork.Choice, [.. fork.Values.Select(v => Value(v, wanted, owner))], mapping.Span);
            case OutlineMapping mapping when mapping.Find("means") is { } means:
                return Value(means.Value, wanted, owner);
            default:
                context.Problems.Add(SheetProblems.WantedText(node.Span, "a formula"));
                return Mistake(node, wanted);
        }
    }

    /// <summary>A formula in words.</summary>
    public Term Formula(FormulaText text, Sort wanted, string owner)
    {
        if (GapReader.Read(text, wanted, owner, context.Problems) is { } gap)
        {
            return gap;
        }

        Syntax syntax = new FormulaParser(text, _names, context.Problems).ReadAll();
        if (syntax is Syntax.Broken)
        {
            return new Term.NotYet("a part with a mistake in it", wanted, new Origin(syntax.Span, through));
        }

        return wanted.Kind switch
        {
            SortKind.Any => Binder.Bind(syntax),
            SortKind.Truth => Binder.BindTruth(syntax),
            _ => Binder.Expect(syntax, wanted),
        };
    }

    /// <summary>A number as it is, and several things by how many they are.</summary>
    /// <param name="text">The formula.</param>
    /// <param name="owner">The clause, for answers about gaps.</param>
    public Term Count(FormulaText text, string owner)
    {
        Term term = Formula(text, Sort.Any, owner);
        if (term.Sort.Kind is SortKind.Number or SortKind.Any)
        {
            return term;
        }

        bool holdsMany = term.Sort.IsMany || term.Sort.Kind is SortKind.Place or SortKind.Line or SortKind.Space or SortKind.Slot;
        Term wanted = Formula(text, holdsMany ? Sort.SetOf(Sort.Any) : Sort.Number, owner);
        return holdsMany && wanted is not Term.NotYet ? Counted(wanted) : wanted;
    }

    private Term.Apply Counted(Term many)
    {
        Sort element = many.Sort.Element ?? Sort.Any;
        int slot = scope.Push(null, element).Slot;
        scope.Pop();
        return new Term.Apply(Model.Operations.Of(Op.Count), new Pick(slot, "it", many, null, element), [], Sort.Number, many.Origin);
    }

    /// <summary>What is gone through; its letter stays at hand until <see cref="EndPick"/>.</summary>
    public (Pick Pick, PickSyntax Syntax)? BeginPick(FormulaText text)
    {
        if (new FormulaParser(text, _names, context.Problems).ReadAllAsPick() is not { } syntax)
        {
            return null;
        }

        Pick pick = Binder.BeginPick(syntax);
        if (syntax.Letter is { } letter)
        {
            Declare(letter);
        }

        return (pick, syntax);
    }

    /// <summary>Ends the pick begun last.</summary>
    public void EndPick(PickSyntax syntax) => Binder.EndPick(syntax);

    /// <summary>The look that words tell; null (with a message) where they tell none.</summary>
    public Look? Look(FormulaText text) =>
        new FormulaParser(text, _names, context.Problems).ReadAllAsLook() is Syntax.Looks looks ? Binder.BindLook(looks) : null;

    /// <summary>Makes a letter known to the formulas that follow.</summary>
    public void Declare(LetterName letter)
    {
        _names = _names.Inner();
        _names.Add(letter.Name, letter);
    }

    /// <summary>Named alternatives as one term.</summary>
    public Term Fork(Choice choice, ImmutableArray<Term> alternatives, SourceSpan at)
    {
        Sort sort = alternatives.Aggregate(Sort.Any, (sum, a) => sum.Join(a.Sort) ?? sum);
        return new Term.Fork(choice, alternatives, sort, new Origin(at, through));
    }

    private Term.NotYet Mistake(OutlineNode node, Sort wanted) => new("a part with a mistake in it", wanted, new Origin(node.Span, through));
}
