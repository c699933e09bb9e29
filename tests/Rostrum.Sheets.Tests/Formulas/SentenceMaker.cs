namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Makes random sentences of a grammar, and remembers which of its forks were taken.</summary>
internal sealed class SentenceMaker(IReadOnlyDictionary<string, GrammarPart> rules, IReadOnlyDictionary<string, string[]> classes, int seed)
{
    private const int Deepest = 15;
    private readonly Random _random = new(seed);
    private readonly Dictionary<string, int> _shortest = Shortest(rules);
    private readonly HashSet<(GrammarPart Fork, int Way)> _taken = new(new ByReference());

    /// <summary>One sentence of a rule.</summary>
    public string Make(string rule) => string.Join(' ', Words(rules[rule], Deepest)).Replace("( ", "(", StringComparison.Ordinal).Replace(" )", ")", StringComparison.Ordinal);

    /// <summary>The forks that no sentence took so far, told by their rule and way.</summary>
    public IEnumerable<string> NotTaken => rules.SelectMany(r => r.Value.All
        .SelectMany(part => Enumerable.Range(0, Ways(part)).Where(way => !_taken.Contains((part, way))).Select(way => $"{r.Key}: way {way} of {Tell(part)}")));

    private IEnumerable<string> Words(GrammarPart part, int depth) => part switch
    {
        GrammarPart.Words words => [words.Said],
        GrammarPart.Class { Name: "PHRASE" } => Phrase(depth),
        GrammarPart.Class known => [classes[known.Name][_random.Next(classes[known.Name].Length)]],
        GrammarPart.Rule rule => Words(rules[rule.Name], depth - 1),
        GrammarPart.Row row => [.. row.Parts.SelectMany(p => Words(p, depth))],
        GrammarPart.Choice choice => Words(choice.Options[Way(choice, depth)], depth),
        GrammarPart.Maybe maybe => Way(maybe, depth) == 0 ? [] : Words(maybe.Inside, depth),
        GrammarPart.Many many => Repeat(many, depth),
        _ => throw new InvalidOperationException(),
    };

    private IEnumerable<string> Repeat(GrammarPart.Many many, int depth)
    {
        int times = Way(many, depth) == 0 ? 0 : 1 + _random.Next(2);
        return Enumerable.Range(0, times).SelectMany(_ => Words(many.Inside, depth)).ToArray();
    }

    private string[] Phrase(int depth) => _random.Next(3) switch
    {
        0 => ["lay", .. Words(rules["sum"], depth - 1)],
        1 => ["lay", .. Words(rules["sum"], depth - 1), "on", .. Words(rules["sum"], depth - 1)],
        _ => ["use the kiln on", .. Words(rules["sum"], depth - 1)],
    };

    private int Way(GrammarPart fork, int depth)
    {
        int[] open = [.. Enumerable.Range(0, Ways(fork)).Where(w => Cost(fork, w, _shortest) < depth)];
        int cheapest = Enumerable.Range(0, Ways(fork)).MinBy(w => Cost(fork, w, _shortest));
        int[] ways = open.Length == 0 ? [cheapest] : open;
        if (fork is not GrammarPart.Choice && _taken.Contains((fork, 1)) && _random.Next(3) > 0)
        {
            return 0;
        }

        int[] fresh = [.. ways.Where(w => !_taken.Contains((fork, w)))];
        int way = fresh.Length > 0 ? fresh[_random.Next(fresh.Length)] : ways[_random.Next(ways.Length)];
        _taken.Add((fork, way));
        return way;
    }

    private static int Ways(GrammarPart part) => part switch
    {
        GrammarPart.Choice choice => choice.Options.Length,
        GrammarPart.Maybe or GrammarPart.Many => 2,
        _ => 0,
    };

    private static int Cost(GrammarPart fork, int way, Dictionary<string, int> shortest) => fork switch
    {
        GrammarPart.Choice choice => Depth(choice.Options[way], shortest),
        _ => way == 0 ? 0 : Depth(fork.Inner.First(), shortest),
    };

    private static int Depth(GrammarPart part, Dictionary<string, int> shortest) => part switch
    {
        GrammarPart.Rule rule => Math.Min(1000, 1 + shortest.GetValueOrDefault(rule.Name, 1000)),
        GrammarPart.Class { Name: "PHRASE" } => Math.Min(1000, 1 + shortest.GetValueOrDefault("sum", 1000)),
        GrammarPart.Row row => row.Parts.Select(p => Depth(p, shortest)).DefaultIfEmpty(0).Max(),
        GrammarPart.Choice choice => choice.Options.Min(o => Depth(o, shortest)),
        _ => 0,
    };

    private static Dictionary<string, int> Shortest(IReadOnlyDictionary<string, GrammarPart> rules)
    {
        var shortest = new Dictionary<string, int>();
        for (int round = 0; round <= rules.Count; round++)
        {
            foreach ((string name, GrammarPart part) in rules)
            {
                shortest[name] = Depth(part, shortest);
            }
        }

        return shortest;
    }

    private static string Tell(GrammarPart part) => string.Join(' ', part.All.Select(p => p switch
    {
        GrammarPart.Words words => $"\"{words.Said}\"",
        GrammarPart.Class known => known.Name,
        GrammarPart.Rule rule => rule.Name,
        _ => "",
    }).Where(t => t.Length > 0).Take(8));

    /// <summary>A fork is the one place in the grammar, not every place that looks the same.</summary>
    private sealed class ByReference : IEqualityComparer<(GrammarPart Fork, int Way)>
    {
        public bool Equals((GrammarPart Fork, int Way) x, (GrammarPart Fork, int Way) y) => ReferenceEquals(x.Fork, y.Fork) && x.Way == y.Way;

        public int GetHashCode((GrammarPart Fork, int Way) pair) => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.Fork), pair.Way);
    }
}
