using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>The best splits of one position: several clauses ask for the same one, each of them for every player.</summary>
/// <remarks>May be asked from several threads at once.</remarks>
internal sealed class SplitMemory
{
    /// <summary>Stands for the one who asks where it does not matter who that is.</summary>
    public const int Anybody = -1;

    private static readonly ConditionalWeakTable<Position, SplitMemory> Known = [];

    private readonly ConcurrentDictionary<Asked, Answer> _answers = [];

    /// <summary>What is known of a position.</summary>
    public static SplitMemory Of(Position position) => Known.GetValue(position, _ => new SplitMemory());

    /// <summary>The answer to a question; looked for where nobody asked before.</summary>
    /// <param name="worth">What a set is worth: a word, said of the set alone.</param>
    /// <param name="me">The 0-based seat that <c>me</c> is, or <see cref="Anybody"/>.</param>
    /// <param name="setting">Which readings are meant.</param>
    /// <param name="elements">What is split.</param>
    /// <param name="find">Works it out.</param>
    public Answer Ask(Term worth, int me, Setting setting, Value[] elements, Func<Answer> find) =>
        _answers.GetOrAdd(new Asked(worth, me, setting, [.. elements]), _ => find());

    /// <summary>A best split.</summary>
    /// <param name="Found">What it is worth, and its sets.</param>
    /// <param name="Touched">The open choices that it depended on, by id.</param>
    public sealed record Answer(SplitFound Found, ImmutableSortedSet<int> Touched);

    // Words look at nothing but the position and the elements that they are said of, so the same elements give the same.
    private sealed record Asked(Term Worth, int Me, Setting Setting, ImmutableArray<Value> Elements)
    {
        public bool Equals(Asked? other) => other is not null && ReferenceEquals(Worth, other.Worth) && Me == other.Me
            && Setting.Chosen.SequenceEqual(other.Setting.Chosen) && Elements.AsSpan().SequenceEqual(other.Elements.AsSpan());

        public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Worth), Me, Elements.Length, Elements.IsEmpty ? 0 : Elements[0].GetHashCode());
    }
}

/// <summary>A best split.</summary>
/// <param name="Worth">What it is worth, or its bounds.</param>
/// <param name="Sets">Its sets; empty where the worth is not certain.</param>
internal sealed record SplitFound(Value.Number Worth, ImmutableArray<(ImmutableArray<Value> Elements, long Worth)> Sets)
{
    /// <summary>Nothing was worked out.</summary>
    public static SplitFound Refused(string limit) => new(Value.Between(null, null, Blame.Of(GapKind.Limit, limit)), []);
}
