using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Telling;

/// <content>What was found by looking for ways, pairs and sets.</content>
internal sealed partial class Teller
{
    private const int MostNames = 16;

    /// <summary>The way, the pairs or the sets that a number counts, and the spaces that they lie on; null for a formula that finds none of these.</summary>
    public Tale? Found(Term term, Value[] frame) => term switch
    {
        Term.Apply { Operation.Id: Op.LongestWay } way => TellWay(way, frame),
        Term.Apply { Operation.Id: Op.MostPairs } pairs => TellPairs(pairs, frame),
        Term.Apply { Operation.Id: Op.BestSplit } split => TellSplit(split, frame),
        _ => null,
    };

    private Tale TellWay(Term.Apply way, Value[] frame)
    {
        string measure = ((Term.Text)way.Argument(1)).Words;
        string which = measure switch
        {
            "walk" => "the longest walk",
            "bare" => "the longest way without a short cut",
            "span" => "the longest of the shortest ways",
            _ => "the largest group",
        };
        Value length = evaluator.Evaluate(way, frame);
        ImmutableArray<Value> elements = evaluator.WayOf(way, frame);
        if (elements.IsEmpty)
        {
            return Tale.Of(length is Value.Number { Low: 0, IsKnown: true } ? "there is none that counts" : $"{which} counts {naming.Of(length)}");
        }

        string[] names = [.. elements.Select(naming.Of)];
        string listed = measure == "group" ? Prose.And(names) : string.Join(", ", names);
        string told = names.Length <= MostNames ? $"is {listed}" : measure == "group" ? $"holds {names[0]}" : $"goes from {names[0]} to {names[^1]}";
        return new Tale($"{which} {told}: {HowMany(elements, way.Pick!)}", Spaces(elements));
    }

    private string HowMany(ImmutableArray<Value> elements, Pick pick)
    {
        if (elements[0] is Value.SpaceAt space)
        {
            SpaceNoun noun = evaluator.Position.Sheet.Boards[space.Board].Noun;
            return $"{elements.Length} {(elements.Length == 1 ? noun.Name : noun.Plural)}";
        }

        return Nouns.Of(pick) is { } look ? Nouns.Count(elements.Length, look)
            : Nouns.KindOf(pick) is { } kind ? Nouns.Count(elements.Length, kind) : $"{elements.Length} in all";
    }

    private Tale TellPairs(Term.Apply term, Value[] frame)
    {
        ImmutableArray<(Value One, Value Other)> pairs = evaluator.PairsOf(term, frame);
        string count = pairs.Length switch { 0 => "no pair", 1 => "1 pair", var many => $"{many} pairs" };
        string listed = Prose.And(pairs.Select(p => $"{naming.Of(p.One)} with {naming.Of(p.Other)}"));
        return new Tale(pairs.Length is 0 or > MostNames ? count : $"{count}: {listed}", Spaces(pairs.SelectMany(p => new[] { p.One, p.Other })));
    }

    private Tale TellSplit(Term.Apply term, Value[] frame)
    {
        (ImmutableArray<Value> Elements, long Worth)[] sets = [.. evaluator.SplitOf(term, frame).Where(s => s.Worth != 0)];
        string count = sets.Length switch { 0 => "no set that counts", 1 => "1 set", var many => $"{many} sets" };
        string listed = string.Join("; ", sets.Select(s => $"{SetInWords(s.Elements)} ({naming.Of(Value.Of(s.Worth))})"));
        return new Tale(sets.Length == 0 ? count : $"{count}: {listed}", Spaces(sets.SelectMany(s => s.Elements)));
    }

    /// <summary>The elements of a set in words; those that are called the same are counted: <c>two ash bowls and a copper jug</c>.</summary>
    public string SetInWords(ImmutableArray<Value> elements) =>
        Prose.And(elements.GroupBy(naming.Of).Select(g => g.Count() == 1 ? g.Key : $"{Prose.Word(g.Count())} {Prose.Plural(Bare(g.First()))}"));

    private string Bare(Value element) => element is Value.ThingAt thing ? naming.Look(thing.Thing) : naming.Of(element);

    private ImmutableArray<string> Spaces(IEnumerable<Value> elements) => [.. elements.SelectMany(e => naming.SpacesOf(e)).Distinct()];
}
