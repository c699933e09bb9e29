using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Evaluation;

/// <summary>Which alternative of each choice is meant. The followed one always wins; an open one is the first unless it is set here.</summary>
/// <param name="Chosen">Choice id to alternative, both 0-based.</param>
internal sealed record Setting(ImmutableSortedDictionary<int, int> Chosen)
{
    /// <summary>Every open choice at its first alternative.</summary>
    public static Setting First { get; } = new(ImmutableSortedDictionary<int, int>.Empty);

    /// <summary>This setting with one choice at another alternative.</summary>
    public Setting With(Choice choice, int alternative) => new(Chosen.SetItem(choice.Id, alternative));

    /// <summary>The alternative that is meant, 0-based.</summary>
    public int Of(Choice choice) => choice.Followed ?? (Chosen.TryGetValue(choice.Id, out int alternative) ? alternative : 0);
}
