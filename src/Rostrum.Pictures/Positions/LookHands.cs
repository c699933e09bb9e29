using Rostrum.Sheets.Model;

namespace Rostrum.Pictures.Positions;

/// <summary>Gives out silhouettes and colours. What bears the name of one gets it: a hut looks like a hut, what is red is red. All others take
/// theirs in a fixed order, each once until all are given.</summary>
internal sealed class LookHands(Sheet sheet)
{
    /// <summary>The colour of what nobody coloured.</summary>
    public const string Plain = "chalk";

    /// <summary>The silhouette of what looks as the sheet says.</summary>
    public const string Plainest = "disc";

    // Neighbours in these lists differ most, in grey too.
    private static readonly string[] AllOutlines = [Plainest, "square", "wedge", "drum", "hex", "figure", "kite", "hut", "tile", "rod", "plate", "bowl", "lamp", "jug"];
    private static readonly string[] AllColours = [Plain, "sea", "sun", "rust", "moss", "plum", "sky", "copper", "slate", "rose", "pine", "sand", "iron", "ash", "soot"];
    private static readonly string[] AllEmblems = ["spot", "bars", "ring", "cross", "peak", "stripes", "moon", "dots", "star", "wave", "gem", "arch"];

    private static readonly string[] UsualSeats = ["sea", "rust", "sun", "plum", "pine", "slate"];

    private readonly string[] _outlines = Free(sheet, AllOutlines, sheet.Appearance.Outlines, OutlineNamed);
    private readonly string[] _colours = Free(sheet, [.. AllColours.Except(sheet.Kinds.Any(IsOwned) ? SeatColours(sheet) : [])], sheet.Appearance.Colours, ColourNamed);
    private int _nextOutline;
    private int _nextColour;

    /// <summary>The silhouettes of a kind: one, or one for each value.</summary>
    public LookPick Outlines(Kind kind, AttributeFacts? by) =>
        new(by?.Attribute, [.. Bearers(kind, by).Select(b => OutlineNamed(b.Name) ?? (IsTold(b) ? Plainest : _outlines[_nextOutline++ % _outlines.Length]))]);

    // To a value that the sheet forgot, or gave a silhouette that there is none of, falls one that no other has.
    private bool IsTold(Named named) => sheet.Appearance.Outlines.Any(o => ReferenceEquals(o.Of, named) && OutlineNamed(o.Drawn) is not null);

    /// <summary>The colours of a kind: one, or one for each value.</summary>
    public LookPick Colours(Kind kind, AttributeFacts? by) =>
        new(by?.Attribute, [.. Bearers(kind, by).Select(b => ColourNamed(b.Name) ?? _colours[_nextColour++ % _colours.Length])]);

    /// <summary>The colours of the players: those that their seats are called by; the others have the usual ones that are left, while there are any.</summary>
    public static string[] SeatColours(Sheet sheet)
    {
        string?[] named = [.. sheet.SeatNames.Select(ColourNamed)];
        var left = new Queue<string>(UsualSeats.Except(named.OfType<string>()));
        return [.. Enumerable.Range(0, Math.Max(named.Length, UsualSeats.Length)).Select(ColourOf)];

        string ColourOf(int seat) => named.ElementAtOrDefault(seat) ?? (left.TryDequeue(out string? next) ? next : UsualSeats[seat % UsualSeats.Length]);
    }

    /// <summary>True for a kind whose things belong to players, so that they have the colours of these.</summary>
    public static bool IsOwned(KindFacts facts) => facts.Supply.EachPlayer || facts.Attributes.Any(a => a.HoldsPlayer);

    /// <summary>An emblem for each value.</summary>
    public static LookPick Emblems(AttributeFacts by)
    {
        string[] others = [.. AllEmblems.Except(by.Values.Select(v => v.Name))];
        return new LookPick(by.Attribute, [.. by.Values.Select((v, i) => AllEmblems.Contains(v.Name) ? v.Name : others[i % others.Length])]);
    }

    /// <summary>The colour that a word means: one of the catalogue, or the nearest to an everyday one; null for other words.</summary>
    public static string? ColourNamed(string word) => word.ToLowerInvariant() switch
    {
        "white" => "chalk",
        "grey" or "gray" or "silver" => "slate",
        "yellow" or "gold" => "sun",
        "orange" => "copper",
        "pink" => "rose",
        "red" => "rust",
        "green" => "moss",
        "blue" => "sea",
        "purple" or "violet" => "plum",
        "brown" => "iron",
        "black" => "soot",
        var name => PieceColours.TryFind(name, out PieceColour? colour) ? colour.Name : null,
    };

    private static string? OutlineNamed(string word) => Pictures.Outlines.TryFind(word, out Outline? outline) ? outline.Name : null;

    private static IEnumerable<Named> Bearers(Kind kind, AttributeFacts? by) => by is null ? [kind] : by.Values;

    // A sheet that uses every name itself lets the others share them.
    private static string[] Free(Sheet sheet, string[] all, IEnumerable<(Named Of, string Drawn)> told, Func<string, string?> named)
    {
        IEnumerable<string?> borne = sheet.Kinds.SelectMany(k => k.Attributes.SelectMany(a => a.Values).Append<Named>(k.Kind)).Select(n => named(n.Name));
        string[] free = [.. all.Except(told.Select(t => t.Drawn)).Except(borne.OfType<string>())];
        return free.Length > 0 ? free : all;
    }
}
