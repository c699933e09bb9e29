using System.Collections.Immutable;

namespace Rostrum.Rulings.Evaluation;

/// <summary>One question of a sweep, and what follows from nothing but the order of the elements.</summary>
/// <param name="Element">The element that is come to.</param>
/// <param name="Place">Its place in the front.</param>
/// <param name="Enters">True where the element is come to with this question.</param>
/// <param name="Others">The places of the elements before it that it is joined with: of a walk one, whose join may be used or not; of a bare way all.</param>
/// <param name="Other">The element whose join with <paramref name="Element"/> is asked about; -1 where none is.</param>
/// <param name="Leaving">The places whose elements leave the front after it.</param>
/// <param name="Come">How many elements have been come to, this one included.</param>
internal sealed record SweepQuestion(int Element, int Place, bool Enters, ImmutableArray<int> Others, int Other, ImmutableArray<int> Leaving, int Come);

/// <summary>The questions of a sweep over a part, one after the other.</summary>
internal static class SweepPlan
{
    /// <summary>The questions; null where the front is too wide.</summary>
    /// <param name="part">A connected part of two elements or more.</param>
    /// <param name="isBare">True to ask of each element whether it is on the way; false to ask of each join.</param>
    public static ImmutableArray<SweepQuestion>? Of(Graph part, bool isBare)
    {
        ulong[] near = part.Masks();
        int[] order = SweepOrder.Cheapest(near, out int mostOpen);
        if (mostOpen > SweepState.MostPlaces)
        {
            return null;
        }

        var questions = ImmutableArray.CreateBuilder<SweepQuestion>();
        var places = new Dictionary<int, int>();
        ulong come = 0;
        for (int i = 0; i < order.Length; i++)
        {
            int element = order[i];
            int[] before = [.. Graph.Elements(near[element] & come)];
            places[element] = Enumerable.Range(0, SweepState.MostPlaces).First(p => !places.ContainsValue(p));
            come |= 1UL << element;
            int[] done = [.. places.Keys.Where(e => (near[e] & ~come) == 0).Order()];
            questions.AddRange(Asked(element, before, places, [.. done.Select(e => places[e])], i + 1, isBare));
            Array.ForEach(done, e => places.Remove(e));
        }

        return questions.ToImmutable();
    }

    private static IEnumerable<SweepQuestion> Asked(int element, int[] before, Dictionary<int, int> places, ImmutableArray<int> leaving, int come, bool isBare)
    {
        int place = places[element];
        if (isBare || before.Length == 0)
        {
            yield return new SweepQuestion(element, place, true, [.. before.Select(b => places[b])], -1, leaving, come);
            yield break;
        }

        for (int i = 0; i < before.Length; i++)
        {
            yield return new SweepQuestion(element, place, i == 0, [places[before[i]]], before[i], i == before.Length - 1 ? leaving : [], come);
        }
    }
}
