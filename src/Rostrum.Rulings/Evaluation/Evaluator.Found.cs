using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <content>What took long to find is kept: the same question is asked again when it is told why.</content>
internal sealed partial class Evaluator
{
    private readonly Dictionary<Term.Apply, (Value[] Elements, object Found)> _found = new(ReferenceEqualityComparer.Instance);

    // Words look at nothing but the position and the elements that they are said of, so the same elements give the same.
    private T Remembered<T>(Term.Apply apply, Value[] elements, Func<T> find)
        where T : class
    {
        if (_found.TryGetValue(apply, out (Value[] Elements, object Found) known) && known.Elements.AsSpan().SequenceEqual(elements))
        {
            return (T)known.Found;
        }

        T found = find();
        _found[apply] = (elements, found);
        return found;
    }
}
