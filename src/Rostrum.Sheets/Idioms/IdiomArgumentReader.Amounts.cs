using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <content>Numbers, what is counted, and other formulas.</content>
internal sealed partial class IdiomArgumentReader
{
    // The meaning of an idiom goes through fewer things than this, one inside the other; what a clause gives stands in the frame above them.
    private const int FirstSlot = 12;

    // Formulas that a clause gives know the choices of the action, for a law.
    private FormulaReader Open()
    {
        FormulaReader reader = action is null ? context.Formulas(new Scope()) : ActionScope.Open(context, action);
        reader.Scope.BeginAt(FirstSlot);
        return reader;
    }

    private IdiomArgument Number(IdiomParameter parameter, OutlineNode node)
    {
        FormulaReader reader = Open();
        Term term = reader.Value(node, Sort.Number, owner);
        long? plain = node is OutlineScalar scalar ? OutlineAsk.NumberIn(scalar.Text) : null;
        string words = node is OutlineScalar text ? Told(text) : "so many";
        return new IdiomArgument(parameter, Name(parameter, term, reader), words, words, plain);
    }

    private IdiomArgument? Formula(IdiomParameter parameter, OutlineScalar words, Sort wanted)
    {
        FormulaReader reader = Open();
        Term term = reader.Value(words, wanted, owner);
        string said = Told(words);
        return term is Term.NotYet ? null : new IdiomArgument(parameter, Name(parameter, term, reader), said, said, null);
    }

    private IdiomArgument? Amount(IdiomParameter parameter, OutlineScalar words)
    {
        FormulaReader reader = Open();
        string said = Told(words);
        return CountOf(reader, words) is { } count ? new IdiomArgument(parameter, Name(parameter, count, reader), said, said, OutlineAsk.NumberIn(words.Text)) : null;
    }

    private IdiomArgument? Amounts(IdiomParameter parameter, OutlineNode node)
    {
        FormulaReader reader = Open();
        ImmutableArray<OutlineScalar> items = OutlineAsk.Items(context, node, parameter.Wanted);
        ImmutableArray<Term> counts = [.. items.Select(i => CountOf(reader, i)).OfType<Term>()];
        if (counts.Length < items.Length || items.IsEmpty)
        {
            return null;
        }

        string said = Prose.And(items.Select(Told));
        var listed = new Term.Listed(counts, Sort.ListOf(Sort.Number), Origin.Of(node.Span));
        return new IdiomArgument(parameter, Name(parameter, listed, reader), said, said, null);
    }

    // A number as it is; several things by how many they are.
    private Term? CountOf(FormulaReader reader, OutlineScalar words)
    {
        Term term = reader.Value(words, Sort.Any, owner);
        if (term is Term.NotYet || term.Sort.Kind == SortKind.Number)
        {
            return term is Term.NotYet ? null : term;
        }

        Term many = reader.Value(words, Sort.SetOf(Sort.Any), owner);
        return many is Term.NotYet ? null : Count(many, reader.Scope);
    }

    private static Term.Apply Count(Term many, Scope scope)
    {
        Sort element = many.Sort.Element ?? Sort.Any;
        int slot = scope.Push(null, element).Slot;
        scope.Pop();
        return new Term.Apply(Operations.Of(Op.Count), new Pick(slot, "it", many, null, element), [], Sort.Number, many.Origin);
    }

    private static TermName Name(IdiomParameter parameter, Term term, FormulaReader reader) => new(parameter.As, term, reader.Scope.FrameSize);
}
