namespace Rostrum.Sheets.Model;

/// <summary>Says a look in English: what comes before a noun first, the noun last.</summary>
/// <remarks>The first attribute of a kind is its noun (a jug), the others stand before it (a copper jug); without one the kind is the noun (copper ware),
/// and so it is where the sheet itself says the kind behind the value (a red button).</remarks>
public static class LookWords
{
    /// <summary>One of them: <c>whole bowl</c>.</summary>
    public static string One(Look look) => Words(look, isMany: false);

    /// <summary>Several: <c>whole bowls</c>.</summary>
    public static string Many(Look look) => Words(look, isMany: true);

    private static string Words(Look look, bool isMany)
    {
        ArgumentNullException.ThrowIfNull(look);
        if (look.Card is { } card)
        {
            return card.Name;
        }

        AttributeValue? noun = SaysKind(look) ? null : look.Values.FirstOrDefault(v => v.Attribute is { IsState: false, Index: 0 });
        IEnumerable<string> before = look.Values.Where(v => !ReferenceEquals(v, noun)).OrderByDescending(v => v.Attribute.Index).Select(v => v.Name)
            .Concat(look.Traits.Select(t => t.Word?.Name ?? Said(t.Adjective)));
        (string one, string many) = (noun, look.Kind, look.SpotNoun) switch
        {
            ({ } value, _, _) => (value.Name, value.Plural),
            (_, { } kind, _) => (kind.Name, kind.Plural),
            (_, _, SpaceNoun spot) => (spot.Name, spot.Plural),
            (_, _, SlotNoun slot) => (slot.Name, slot.Plural),
            _ => ("", ""),
        };
        string owner = look.Owner switch { LookOwner.Mine => "your ", LookOwner.Theirs => "their ", _ => "" };
        return owner + string.Join(' ', before.Append(isMany ? many : one).Where(w => w.Length > 0));
    }

    private static bool SaysKind(Look look) =>
        look.Kind is { } kind && new[] { kind.Name, kind.Plural }.Any(name => look.Words.EndsWith($" {name}", StringComparison.OrdinalIgnoreCase));

    private static string Said(Adjective adjective) => adjective switch
    {
        Adjective.FaceUp => "face-up",
        Adjective.FaceDown => "face-down",
        _ => adjective.ToString().ToLowerInvariant(),
    };
}
