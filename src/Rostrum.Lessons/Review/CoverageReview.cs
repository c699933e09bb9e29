using System.Collections.Immutable;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Review;

/// <summary>A rule that somebody should say, with the ideas that tell it.</summary>
/// <param name="Clause">The clause.</param>
/// <param name="Ideas">Each idea with how much it tells of this rule and no other; in order, so that sums come out alike in every run.</param>
/// <param name="Pairs">Ideas that stand side by side in it.</param>
/// <param name="IsTie">True for a step of breaking ties.</param>
internal sealed record SpokenRule(ReadClause Clause, ImmutableSortedDictionary<string, double> Ideas, ImmutableArray<(string One, string Other)> Pairs, bool IsTie)
{
    /// <summary>Its section and name, as <see cref="ScriptWords"/> has them.</summary>
    public (string Section, string Name) Key => (IsTie ? ScriptWords.Ties : Clause.Section, Clause.Name);

    /// <summary>The idea of being equal, which all steps of a tie have.</summary>
    public static string Tie { get; } = Stems.Of("tie");

    /// <summary>The idea of winning.</summary>
    public static string Win { get; } = Stems.Of("win");

    /// <summary>Ideas that tell no step of a tie from the others.</summary>
    public static ImmutableHashSet<string> OfTies { get; } = [Tie, Win];

    /// <summary>What all its ideas weigh together.</summary>
    public double Weight { get; } = Ideas.Values.Sum();
}

/// <summary>Whether a rule was said.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Said">How much of it was said at its best place, 0 to 1.</param>
/// <param name="At">The token at which that place begins; -1 where nothing of it was said.</param>
/// <param name="Features">What is known of it, for <see cref="RuleWeights"/>.</param>
/// <param name="NeverSaid">How sure it is that it was never said, 0 to 1.</param>
internal sealed record HeardRule(SpokenRule Rule, double Said, int At, double[] Features, double NeverSaid)
{
    /// <summary>True where the script says it and the passage was left out.</summary>
    public bool IsLeftOutOfScript { get; init; }
}

/// <summary>Looks for each rule of the sheet in what was said: the places where most of its telling ideas stand together.</summary>
internal sealed class CoverageReview
{
    private static readonly string[] Sections = ["Laws", "Scoring", "End of the game"];

    // A rule is spread over so many words: told in a sentence, in a breath, explained at length.
    private static readonly int[] Windows = [12, 24, 48];

    private const double OfLeftOut = 0.9;
    private const double LeastOfWords = 0.1;

    private const int Together = 7;
    private const int TieReach = 44;
    private const int BeforeTie = 8;

    // Who names the thing otherwise says at least whether more or fewer of it win.
    private const double OfComparison = 0.6;

    private static readonly HashSet<string> More = ["more", "most", "higher", "bigger", "larger", "extra"];

    private static readonly HashSet<string> Fewer = ["fewer", "fewest", "less", "least", "lower", "smaller"];

    private static readonly string Share = Stems.Of("share");

    private static readonly HashSet<string> Shared = ["share", "shared", "shares", "sharing", "together", "both", "joint", "jointly", "split", "friends", "draw", "hands", "peace", "winners", "remis"];

    private readonly ScriptPassages? _script;
    private readonly ImmutableArray<SpokenToken> _tokens;
    private readonly Dictionary<string, int[]> _places;
    private readonly ImmutableArray<SpokenRule> _rules;
    private readonly string[][] _ideas;

    /// <summary>The rules of a sheet and what was said.</summary>
    public CoverageReview(Statements statements, ImmutableArray<SpokenToken> tokens, ScriptPassages? script = null)
    {
        _script = script;
        _tokens = tokens;
        _rules = RulesOf(statements);
        _ideas = [.. tokens.Select(t => RuleIdeas.Of(t).ToArray())];
        _places = _ideas.SelectMany((ideas, i) => ideas.Select(idea => (Idea: idea, At: i))).GroupBy(p => p.Idea).ToDictionary(g => g.Key, g => g.Select(p => p.At).ToArray(), StringComparer.Ordinal);
    }

    /// <summary>True for a section whose clauses are rules that have to be said.</summary>
    public static bool IsRule(string section) => section == ScriptWords.Ties || Sections.Contains(section);

    /// <summary>Every rule with how much of it was said.</summary>
    public IEnumerable<HeardRule> All() =>
        _rules.Select(Heard).GroupBy(r => r.Rule.Key).Select(g => ByScript(g.MinBy(r => r.NeverSaid)!, g.First().Rule));

    // Who reads the script says a rule in its words. Who tells it in others may say it in any, anywhere: then the rule's own words count too.
    private HeardRule ByScript(HeardRule rule, SpokenRule ofSheet) => _script?.Of(ofSheet, _rules) switch
    {
        null or (Passage.Unknown, _) => rule,
        (Passage.Said, var at) => rule with { NeverSaid = 0, At = at },
        (Passage.PerhapsLeftOut, _) when rule.NeverSaid < LeastOfWords => rule,
        _ => rule with { NeverSaid = Math.Max(rule.NeverSaid, OfLeftOut), IsLeftOutOfScript = true },
    };

    // What reads back as a formula is no sentence that anybody says.
    private static ImmutableArray<SpokenRule> RulesOf(Statements statements)
    {
        Statement[] basis = [.. statements.All.Where(s => s.Variant is null && Sections.Contains(s.Clause.Section))];
        ReadClause[] clauses = [.. basis.Select(s => s.Clause).Distinct()];
        (ReadClause Clause, string Says, bool IsTie)[] said =
        [
            .. basis.Where(s => s.Clause.Meaning is not null && s.Slots.All(n => n.Key is null)).Select(s => s.Clause).Distinct().Select(c => (c, Statements.Sentence(c), false)),
            .. from clause in clauses let passage = statements.Script.Passage((clause.Section, clause.Name)) where passage is not null select (clause, passage, false),
            .. clauses.Where(c => c is { Section: "Scoring", Name: "ties" }).SelectMany(TieSteps),
        ];
        string[][] inOrder = [.. said.Select(r => Statements.Spoken(r.Says).SelectMany(RuleIdeas.Of).ToArray())];
        string[][] ideas = [.. inOrder.Select(i => i.Distinct().ToArray())];
        Dictionary<string, int> all = said.Zip(ideas).GroupBy(r => r.First.Clause.Name).SelectMany(g => g.SelectMany(r => r.Second).Distinct()).GroupBy(i => i).ToDictionary(g => g.Key, g => g.Count());
        return
        [
            .. said.Select((r, i) => new SpokenRule(r.Clause, ideas[i].ToImmutableSortedDictionary(w => w, w => Math.Log(1 + ((double)said.Length / all[w])) * RuleIdeas.Weight(w) / Math.Sqrt(all[w]), StringComparer.Ordinal), PairsOf(inOrder[i]), r.IsTie)),
        ];
    }

    private static ImmutableArray<(string One, string Other)> PairsOf(string[] ideas)
    {
        string[] telling = [.. ideas.Where(i => i[0] != '~')];
        return [.. telling.Zip(telling.Skip(1)).Where(p => p.First != p.Second).Distinct()];
    }

    private static IEnumerable<(ReadClause Clause, string Says, bool IsTie)> TieSteps(ReadClause ties)
    {
        int colon = ties.Says.IndexOf(':', StringComparison.Ordinal);
        return ties.Says[(colon + 1)..].TrimEnd('.').Split(", then ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(step => (ties with { Says = $"In a tie: {step}.", Name = step }, step == "shared" ? "tie shared victory" : $"tie {step}", true));
    }

    private HeardRule Heard(SpokenRule rule)
    {
        (double Said, int At)[] best = [.. Windows.Select(w => Best(rule, w))];
        (double said, int at) = best[^1];
        string[] telling = [.. rule.Ideas.OrderByDescending(i => i.Value).ThenBy(i => i.Key, StringComparer.Ordinal).Select(i => i.Key)];
        double anywhere = rule.Weight == 0 ? 1 : Part(rule, _places.ContainsKey);
        HashSet<string> there = at < 0 ? [] : [.. _ideas.Skip(best[1].At).Take(Windows[1]).SelectMany(i => i)];
        double owned = at < 0 ? 0 : best[1].Said - _rules.Where(r => r != rule).Select(r => Part(r, there.Contains)).DefaultIfEmpty(0).Max();
        double number = rule.Ideas.Keys.Where(RuleIdeas.IsNumber).Select(n => _places.ContainsKey(n) ? 1.0 : 0).DefaultIfEmpty(0.5).Average();
        SpokenRule rare = Rare(rule);
        (double Said, int At)[] told = [.. Windows.Take(2).Select(w => Best(rare, w))];
        double pairs = rule.Pairs.Length == 0 ? 0.5 : rule.Pairs.Average(p => AreTogether(p.One, p.Other) ? 1.0 : 0);
        double tie = rule.IsTie ? TieIsSaid(rule) : 0;
        double[] features =
        [
            1, best[0].Said, best[1].Said, best[2].Said, anywhere, owned, telling.Take(2).Count(_places.ContainsKey) / 2.0, Math.Min(telling.Length, 12) / 12.0, rule.IsTie ? 1 : 0,
            rule.Clause.Section == "Laws" ? 1 : 0, rule.Clause.Section == "End of the game" ? 1 : 0, number, Math.Max(0, 0.5 - best[2].Said), rule.IsTie ? 0 : best[1].Said * best[1].Said, tie,
            told[0].Said, told[1].Said, told[1].Said * rare.Weight / 10, rule.IsTie ? 0 : pairs, rare.Weight / 10, rule.IsTie ? 0 : pairs * told[1].Said,
        ];
        return new HeardRule(rule, said, at, features, RuleWeights.Confidence(features));
    }

    // An idea that is spoken of all the time tells little of where a rule is said.
    private SpokenRule Rare(SpokenRule rule) => rule with
    {
        Ideas = rule.Ideas.ToImmutableSortedDictionary(i => i.Key, i => i.Value * Math.Log(1 + ((double)_tokens.Length / (Windows[1] * ((_places.GetValueOrDefault(i.Key)?.Length ?? 0) + 1)))) / 2, StringComparer.Ordinal),
    };

    // Both ideas within a few words of each other, anywhere.
    private bool AreTogether(string one, string other) =>
        _places.TryGetValue(one, out int[]? first) && _places.TryGetValue(other, out int[]? second) && first.Any(f => second.Any(s => Math.Abs(f - s) <= Together && f != s));

    // Where equal players are spoken of, what tells them apart is named next.
    private double TieIsSaid(SpokenRule rule)
    {
        string[] things = [.. rule.Ideas.Keys.Where(i => i[0] is not ('~' or '#') && i != SpokenRule.Tie)];
        bool isShared = rule.Clause.Name == "shared";
        double best = 0;
        foreach (int at in Enumerable.Range(0, _tokens.Length).Where(IsTieSpokenOf))
        {
            int from = Math.Max(0, at - BeforeTie);
            HashSet<string> next = [.. _ideas.Skip(from).Take(TieReach).SelectMany(i => i)];
            HashSet<string> words = [.. _tokens.Skip(from).Take(TieReach).Select(t => t.Text)];
            bool isCompared = words.Overlaps(rule.Clause.Name.StartsWith("more", StringComparison.Ordinal) ? More : Fewer);
            double found = isShared ? (words.Overlaps(Shared) ? 1 : 0) : things.Length == 0 ? 1 : Math.Max(isCompared ? OfComparison : 0, things.Count(next.Contains) / (double)things.Length);
            best = Math.Max(best, found);
        }

        return best;
    }

    private bool IsTieSpokenOf(int at) => _tokens[at].Stem == SpokenRule.Tie || _tokens[at].Text is "separated" or "undecided"
        || (_tokens[at].Text == "both" && at + 1 < _tokens.Length && _tokens[at + 1].Stem == SpokenRule.Win) || (_tokens[at].Stem == Share && Enumerable.Range(at - 14, 14).Any(i => i >= 0 && (_tokens[i].Stem == SpokenRule.Win || _tokens[i].Text is "points" or "each")))
        || (_tokens[at].Text is "same" or "equally" && Enumerable.Range(at - 10, 24).Any(i => i >= 0 && i < _tokens.Length && (_tokens[i].Text is "wins" or "win" or "winner" or "most" or "points" or "total" or "score" or "number" or "both")));

    // The window in which most of the rule's ideas stand, by weight.
    private (double Said, int At) Best(SpokenRule rule, int window)
    {
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        (double met, double best, int at) = (0, 0, -1);
        for (int i = 0; i < _tokens.Length; i++)
        {
            if (i >= window)
            {
                foreach (string idea in _ideas[i - window])
                {
                    if (last.TryGetValue(idea, out int when) && when == i - window)
                    {
                        met -= rule.Ideas[idea];
                        last.Remove(idea);
                    }
                }
            }

            foreach (string idea in _ideas[i])
            {
                if (rule.Ideas.TryGetValue(idea, out double weight))
                {
                    met += last.ContainsKey(idea) ? 0 : weight;
                    last[idea] = i;
                }
            }

            if (met > best)
            {
                (best, at) = (met, last.Values.Min());
            }
        }

        return (rule.Weight == 0 ? 1 : best / rule.Weight, at);
    }

    // How much of a rule is among some ideas, by weight.
    private static double Part(SpokenRule rule, Predicate<string> isThere) => rule.Weight == 0 ? 0 : rule.Ideas.Where(i => isThere(i.Key)).Sum(i => i.Value) / rule.Weight;
}
