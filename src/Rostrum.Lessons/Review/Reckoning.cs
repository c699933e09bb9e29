using System.Collections.Immutable;

namespace Rostrum.Lessons.Review;

/// <summary>A number that follows from others said just before it.</summary>
/// <param name="At">Which token.</param>
/// <param name="Right">What it has to be.</param>
/// <param name="Told">Why, as a sentence: <c>Seven times six is 42.</c></param>
/// <param name="IsRight">True where it is said so.</param>
internal sealed record ReckonedNumber(int At, long Right, string Told, bool IsRight);

/// <summary>Numbers that are reckoned aloud: <c>seven times six, 42</c>, and rows of equal steps: <c>the third, the sixth, the ninth</c>. They hold whatever the game is.</summary>
internal sealed class Reckoning
{
    private const int MostBetween = 4;
    private const long MostFactor = 100_000;
    private const int MostInRow = 3;
    private const int FewestOfSteps = 4;
    private const int FewestPlain = 5;
    private const int FewestOfOnes = 6;

    // Further off it is another number and no slip.
    private const double LeastAlike = 0.6;
    private const double MostAlike = 1.6;

    private static readonly HashSet<string> Joining = ["is", "are", "makes", "make", "that's", "that", "it's", "equals", "gives", "so", "which", "comes", "to", "all", "in", "altogether", "therefore", "you", "get"];

    private readonly ImmutableArray<SpokenToken> _tokens;
    private readonly HashSet<int> _operands = [];
    private readonly List<ReckonedNumber> _found = [];

    /// <summary>Reckons along.</summary>
    public Reckoning(ImmutableArray<SpokenToken> tokens, ImmutableArray<Statement> statements)
    {
        _tokens = tokens;
        for (int i = 0; i < tokens.Length; i++)
        {
            Multiply(i);
        }

        FindRows(statements);
    }

    /// <summary>What was reckoned, right and wrong.</summary>
    public IReadOnlyList<ReckonedNumber> Found => _found;

    /// <summary>Numbers that are multiplied or were reckoned rightly: they state nothing else.</summary>
    public IEnumerable<int> Settled => _operands.Concat(_found.Where(f => f.IsRight).Select(f => f.At));

    private void Multiply(int at)
    {
        if (_tokens[at].Amount is not { } one || Factor(at) is not { } by || _tokens[by.At].Amount is not { } other || Math.Max(one, other) > MostFactor || Math.Min(one, other) < 1)
        {
            return;
        }

        _operands.UnionWith(by.IsTimes ? [at, by.At] : []);
        int result = Enumerable.Range(by.End, MostBetween + 1).FirstOrDefault(i => i < _tokens.Length && _tokens[i].Amount is not null, -1);
        if (result < 0 || Enumerable.Range(by.End, result - by.End).Count(i => !Joining.Contains(_tokens[i].Text)) > (by.IsTimes ? 1 : 0))
        {
            return;
        }

        long right = one * other;
        double alike = (double)_tokens[result].Amount!.Value / Math.Max(1, right);
        if (alike is >= LeastAlike and <= MostAlike)
        {
            _found.Add(new ReckonedNumber(result, right, $"{one} times {other} is {right}.", _tokens[result].Amount == right));
        }
    }

    // 'Seven times six', or 'twelve pits and four in each'.
    private (int At, int End, bool IsTimes)? Factor(int at)
    {
        if (at + 2 < _tokens.Length && _tokens[at + 1].Text == "times")
        {
            return (at + 2, at + 3, true);
        }

        int other = Enumerable.Range(at + 1, MostBetween).FirstOrDefault(i => i + 2 < _tokens.Length && _tokens[i].Amount is not null, -1);
        return other >= 0 && _tokens[other + 1].Text is "in" or "on" or "for" && _tokens[other + 2].Text is "each" or "every" ? (other, other + 3, false) : null;
    }

    private void FindRows(ImmutableArray<Statement> statements)
    {
        var row = new List<int>();
        foreach (int i in Enumerable.Range(0, _tokens.Length).Where(i => _tokens[i] is { Number: > 0, IsTakenBack: false }))
        {
            if (row.Count > 0 && !GoesOn(row[^1], i))
            {
                JudgeRow(row, statements);
                row.Clear();
            }

            row.Add(i);
        }

        JudgeRow(row, statements);
    }

    // Nothing stands between but small words and what is counted, the same each time.
    private bool GoesOn(int from, int to) => to - from <= MostInRow && _tokens[from].IsOrdinal == _tokens[to].IsOrdinal && _tokens[to].Number > _tokens[from].Number
        && Enumerable.Range(from + 1, to - from - 1).All(i => _tokens[i].Text is "and" or "then" or "the" or "or" or "bell" or "number" || _tokens[i].Stem.Length == 0);

    private void JudgeRow(List<int> row, ImmutableArray<Statement> statements)
    {
        long[] said = [.. row.Select(i => _tokens[i].Number!.Value)];
        if (said.Length < FewestOfSteps || IsOfSheet(said, statements))
        {
            return;
        }

        for (int k = 0; k < said.Length; k++)
        {
            int[] others = [.. Enumerable.Range(0, said.Length).Where(i => i != k)];
            long step = (said[others[^1]] - said[others[0]]) / (others[^1] - others[0]);
            bool isRow = step > 0 && others.All(i => said[i] == said[others[0]] + (step * (i - others[0])));
            int fewest = step == 1 ? FewestOfOnes : said[others[0]] == step * (others[0] + 1) || _tokens[row[0]].IsOrdinal ? FewestOfSteps : FewestPlain;
            long right = said[others[0]] + (step * (k - others[0]));
            if (isRow && said.Length >= fewest && right != said[k] && right > 0)
            {
                _found.Add(new ReckonedNumber(row[k], right, $"The others go up by {step} each time, so this one is {right}.", false));
                return;
            }
        }
    }

    // A table may go up by two, two and three.
    private static bool IsOfSheet(long[] said, ImmutableArray<Statement> statements) =>
        statements.GroupBy(s => (s.Clause.Section, s.Clause.Name)).Any(clause =>
        {
            long[] numbers = [.. clause.SelectMany(s => s.Slots).Select(s => s.Value).Distinct()];
            return said.All(numbers.Contains);
        });
}
