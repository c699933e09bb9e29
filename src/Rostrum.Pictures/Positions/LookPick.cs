using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Pictures.Positions;

/// <summary>One name of a catalogue for all things of a kind, or one for each value of an attribute.</summary>
/// <param name="By">The attribute; null for one name.</param>
/// <param name="Names">Never empty; with more values than names, they begin again.</param>
internal sealed record LookPick(Attribute? By, ImmutableArray<string> Names)
{
    /// <summary>The name for a thing; null where its value is not given.</summary>
    public string? For(Thing thing) => By is null ? Names[0] : thing.Values[By.Index] is { } value ? Names[value % Names.Length] : null;
}
