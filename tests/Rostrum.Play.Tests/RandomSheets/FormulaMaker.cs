using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Makes formulas of which each is well typed, and asks nothing that a player cannot see.</summary>
/// <param name="picks">What is drawn.</param>
/// <param name="words">Of what may be spoken.</param>
/// <param name="deepest">How many formulas stand within each other at the most.</param>
internal sealed class FormulaMaker(Picks picks, TableWords words, int deepest = 3)
{
    private static readonly ImmutableArray<string> Letters = ["x", "y", "z", "w", "v", "u"];

    /// <summary>A truth.</summary>
    /// <param name="known">The names at hand.</param>
    /// <param name="depth">How deep it stands already.</param>
    public string Truth(ImmutableArray<Known> known, int depth = 0)
    {
        if (depth < deepest && picks.Percent(35))
        {
            return picks.Below(4) switch
            {
                0 => $"({Truth(known, depth + 1)}) and ({Truth(known, depth + 1)})",
                1 => $"({Truth(known, depth + 1)}) or ({Truth(known, depth + 1)})",
                2 => $"not ({Truth(known, depth + 1)})",
                _ => Quantified(known, depth),
            };
        }

        string?[] leaves = [OfSpace(known), OfSpace(known), OfThing(known), OfPlayer(known), OfMark(known), OfChoice(known), Compared(known, depth), Quantified(known, depth)];
        return picks.OrNone(leaves.OfType<string>())!;
    }

    private string Compared(ImmutableArray<Known> known, int depth) =>
        $"{Number(known, depth + 1)} is {picks.Of("", "at least ", "at most ", "more than ", "less than ")}{Number(known, depth + 2)}";

    private string Quantified(ImmutableArray<Known> known, int depth)
    {
        (string set, Known letter) = Set(known);
        known = Inside(known);
        string where = About(known.Add(letter), letter, depth + 1);
        return picks.Below(3) switch
        {
            0 => $"any({letter.Name} in {set} where {where})",
            1 => $"no({letter.Name} in {set} where {where})",
            _ => $"all({letter.Name} in {set}, {where})",
        };
    }

    // A truth in which a letter stands, perhaps with more: a letter that is never used is an error.
    private string About(ImmutableArray<Known> known, Known letter, int depth)
    {
        string about = Leaf(known, letter);
        return depth < deepest && picks.Percent(30) ? $"({about}) {picks.Of("and", "or")} ({Truth(known, depth + 1)})" : about;
    }

    private string Leaf(ImmutableArray<Known> known, Known letter) => letter.Sort switch
    {
        SortKind.Space => OfSpace(known, letter)!,
        SortKind.Thing => OfThing(known, letter)!,
        SortKind.Slot => $"{letter.Name} is {picks.Of("", "not ")}empty",
        _ => OfPlayer(known, letter)!,
    };

    private string? OfSpace(ImmutableArray<Known> known, Known? about = null)
    {
        if ((about ?? picks.OrNone(known.Where(k => k.Sort == SortKind.Space))) is not { } space)
        {
            return null;
        }

        Known? other = picks.OrNone(known.Where(k => k.Sort == SortKind.Space && k.Name != space.Name && k.Board == space.Board));
        string?[] all =
        [
            $"{space.Name} is empty",
            $"{space.Name} is not empty",
            $"{space.Name} shows {picks.Of("", "", "not ")}{ALook()}",
            $"height of {space.Name} is {picks.Of("at least", "at most", "more than")} {picks.From(0, 2)}",
            $"order of {space.Name} is {picks.Of("at least", "at most")} {picks.From(1, 6)}",
            other is null ? null : $"{space.Name} is {picks.Of("", "not ")}next to {other.Name}",
            other is null ? null : $"{space.Name} is {picks.Of("", "not ")}{other.Name}",
            space.Board!.Values is { } values ? $"{values} of {space.Name} is {picks.Of("at least 2", "not nothing", "nothing")}" : null,
            space.Board.HasRows ? $"{space.Name} is in {space.Board.Name} row 1 of {space.Board.Mine}" : null,
            words.Words.Where(w => w.Of == SortKind.Space && w.Gives == SortKind.Truth && w.Board == space.Board).Select(w => $"{space.Name} is {w.Name}").FirstOrDefault(),
            words.Marks.Where(m => m.Of == space.Board && m.Sort == SortKind.Truth).Select(m => $"{space.Name} is {m.Name}").FirstOrDefault(),
            words.Marks.Where(m => m.Of == space.Board && m.Sort == SortKind.Number).Select(m => $"{m.Name} of {space.Name} is at least {picks.From(1, 2)}").FirstOrDefault(),
        ];
        return picks.OrNone(all.OfType<string>());
    }

    private string? OfThing(ImmutableArray<Known> known, Known? about = null)
    {
        if ((about ?? picks.OrNone(known.Where(k => k.Sort == SortKind.Thing))) is not { } thing)
        {
            return null;
        }

        KindWords kind = thing.Kind!;
        string?[] all =
        [
            kind.Attribute is null ? null : $"{thing.Name} is {picks.Of("", "not ")}{picks.Of(kind.Values)}",
            kind.Attribute is null ? null : $"{kind.Attribute} of {thing.Name} is {picks.Of(kind.Values)} or {picks.Of(kind.Values)}",
            kind.State is null ? null : $"{thing.Name} is {picks.Of(kind.StateValues)}",
            kind.IsOwned ? $"owner of {thing.Name} is {picks.Of("", "not ")}me" : null,
            kind.Name == "die" ? $"face of {thing.Name} is at least {picks.From(1, 3)}" : null,
            $"{thing.Name} is a {kind.Name}",
        ];
        return picks.OrNone(all.OfType<string>());
    }

    private string? OfPlayer(ImmutableArray<Known> known, Known? about = null)
    {
        if ((about ?? picks.OrNone(known.Where(k => k.Sort == SortKind.Player))) is not { } player)
        {
            return null;
        }

        string?[] all =
        [
            $"{player.Name} is {picks.Of("", "not ")}me",
            $"{player.Name} is left of me",
            words.Marks.Where(m => m.IsEach && m.Sort == SortKind.Truth).Select(m => $"{m.Name} of {player.Name} is {picks.Of("yes", "no")}").FirstOrDefault(),
            words.Marks.Where(m => m.IsEach && m.Sort == SortKind.Number).Select(m => $"{m.Name} of {player.Name} is at least {picks.From(1, 3)}").FirstOrDefault(),
            words.Places.Where(p => p.IsEach).Select(p => $"count({p.Name} of {player.Name}) is more than {picks.From(0, 2)}").FirstOrDefault(),
        ];
        return picks.OrNone(all.OfType<string>());
    }

    private string? OfMark(ImmutableArray<Known> known) => picks.OrNone(words.Marks.Where(m => m.Of is null)) switch
    {
        { Sort: SortKind.Truth } mark => $"my {mark.Name} is {picks.Of("yes", "no")}",
        { Sort: SortKind.Player } mark => $"{mark.Name} is {picks.Of("me", "nothing", "not nothing", "not me")}",
        { Sort: SortKind.Number } mark => $"{(mark.IsEach ? "my " : "")}{mark.Name} is {picks.Of("at least", "less than", "")} {picks.From(0, 4)}",
        _ => null,
    };

    private string? OfChoice(ImmutableArray<Known> known) => picks.OrNone(known.Where(k => k.Sort is SortKind.Number or SortKind.Truth)) switch
    {
        { Sort: SortKind.Number } number => $"{number.Name} is {picks.Of("at least", "at most", "")} {picks.From(1, 3)}",
        { } truth => $"{truth.Name} is {picks.Of("yes", "no")}",
        _ => null,
    };

    /// <summary>A number.</summary>
    /// <param name="known">The names at hand.</param>
    /// <param name="depth">How deep it stands already.</param>
    public string Number(ImmutableArray<Known> known, int depth = 0)
    {
        if (depth >= deepest || picks.Percent(30))
        {
            return Plain(known);
        }

        return picks.Below(12) switch
        {
            0 => $"{Plain(known)} + {Plain(known)}",
            1 => $"{Plain(known)} - {Plain(known)}",
            2 => $"{picks.From(2, 3)} times {Plain(known)}",
            3 => $"({Number(known, depth + 1)} if {Truth(known, depth + 1)} otherwise {picks.From(0, 2)})",
            4 => $"{picks.Of("down", "up", "nearest")}({Number(known, depth + 1)}, by {picks.From(2, 3)})",
            5 or 6 => Summed(known, depth),
            7 => words.Tables.Count > 0 ? $"prize of {Plain(known)}" : Plain(known),
            8 => Different(known),
            9 => $"count({Groups(known, depth)})",
            _ => Counted(known, depth),
        };
    }

    private string Plain(ImmutableArray<Known> known)
    {
        Known? space = picks.OrNone(known.Where(k => k.Sort == SortKind.Space));
        string?[] all =
        [
            picks.From(0, 3).ToString(CultureInfo.InvariantCulture),
            known.Where(k => k.Sort == SortKind.Number).Select(k => k.Name).FirstOrDefault(),
            space is null ? null : $"height of {space.Name}",
            space is null ? null : $"order of {space.Name}",
            words.Marks.Where(m => m is { Sort: SortKind.Number, Of: null }).Select(m => m.IsEach ? $"my {m.Name}" : m.Name).FirstOrDefault(),
            words.Words.Where(w => w is { Of: SortKind.Space, Gives: SortKind.Number } && w.Board == space?.Board).Select(w => $"{w.Name} of {space!.Name}").FirstOrDefault(),
            words.Words.Where(w => w is { Of: SortKind.Player, Gives: SortKind.Number }).Select(w => $"{w.Name} of me").FirstOrDefault(),
            words.Places.Count > 0 ? $"count({picks.Of(words.Places) switch { var p when p.Form == PlaceForm.Row => $"{p.Holds.Plural} in {p.Mine}", var p => p.Mine }})" : null,
        ];
        return picks.OrNone(all.OfType<string>())!;
    }

    private string Counted(ImmutableArray<Known> known, int depth)
    {
        (string set, Known letter) = Set(known);
        known = Inside(known);
        return picks.Percent(70) ? $"count({letter.Name} in {set} where {About(known.Add(letter), letter, depth + 1)})" : $"count({set})";
    }

    private string Summed(ImmutableArray<Known> known, int depth)
    {
        (string set, Known letter) = Set(known);
        known = Inside(known);
        string of = letter.Sort switch
        {
            SortKind.Space => letter.Board!.Values is { } values && picks.Percent(50) ? $"{values} of {letter.Name}" : $"{picks.Of("height", "order")} of {letter.Name}",
            SortKind.Player => words.Marks.Where(m => m is { IsEach: true, Sort: SortKind.Number }).Select(m => $"{m.Name} of {letter.Name}").FirstOrDefault() ?? $"order of {letter.Name}",
            SortKind.Thing when letter.Kind!.Name == "die" => $"face of {letter.Name}",
            _ => $"(1 if {Leaf(known, letter)} otherwise {picks.From(0, 2)})",
        };
        return $"{picks.Of("sum", "sum", "largest", "smallest")}({letter.Name} in {set}, {of})";
    }

    private string Different(ImmutableArray<Known> known)
    {
        KindWords? kind = picks.OrNone(words.Kinds.Where(k => k.Attribute is not null && k.Name == "stone"));
        return kind is null ? Plain(known) : $"different(x in {picks.Of(words.Boards).Mine} where x shows {A(kind.Name)}, {kind.Attribute} of top of x)";
    }

    private string Groups(ImmutableArray<Known> known, int depth)
    {
        BoardWords board = picks.Of(words.Boards);
        var letter = new Known(Free(known), SortKind.Space, board);
        return $"groups({letter.Name} in {board.Mine} where {About(Inside(known).Add(letter), letter, depth + 1)}, alike in {picks.Of("height of", "owner of top of")} {letter.Name})";
    }

    /// <summary>A set to go through, with the letter for its elements.</summary>
    private (string Set, Known Letter) Set(ImmutableArray<Known> known)
    {
        string letter = Free(known);
        Known? space = picks.OrNone(known.Where(k => k.Sort == SortKind.Space));
        switch (picks.Below(8))
        {
            case 0 or 1 when space is not null:
                return ($"neighbours of {space.Name}", new Known(letter, SortKind.Space, space.Board));
            case 2 when space?.Board is { HasRows: true } board:
                return ($"{board.Name} {picks.Of("row", "column")} of {space.Name}", new Known(letter, SortKind.Space, board));
            case 3:
                return ("players", new Known(letter, SortKind.Player));
            case 4 or 5 when picks.OrNone(words.Places.Where(p => p.IsSeen)) is { } place:
                return ($"{Look(place.Holds)} in {place.Mine}", new Known(letter, SortKind.Thing, Kind: place.Holds));
            case 6:
                KindWords kind = picks.Of(words.OnBoards.ToArray());
                return ($"{Look(kind)} in {picks.Of(words.Boards).Mine}", new Known(letter, SortKind.Thing, Kind: kind));
            default:
                BoardWords any = picks.Of(words.Boards);
                return (any.Mine, new Known(letter, SortKind.Space, any));
        }
    }

    /// <summary>Things of a kind, perhaps of one look.</summary>
    public string Look(KindWords kind)
    {
        string value = kind.Attribute is not null && picks.Percent(40) ? $"{picks.Of(kind.Values)} " : "";
        string state = kind.State is not null && picks.Percent(30) ? $"{picks.Of(kind.StateValues)} " : "";
        return $"{state}{value}{kind.Plural}";
    }

    private string ALook()
    {
        KindWords kind = picks.Of(words.OnBoards.ToArray());
        string value = kind.Attribute is not null && picks.Percent(40) ? $"{picks.Of(kind.Values)} " : kind.State is not null && picks.Percent(30) ? $"{picks.Of(kind.StateValues)} " : "";
        string whose = kind.IsOwned ? picks.Of("", "my ", words.Seats == 2 ? "their " : "my ") : "";
        return whose.Length > 0 ? $"{whose}{value}{kind.Name}" : A($"{value}{kind.Name}");
    }

    /// <summary>A name behind its article.</summary>
    public static string A(string name) => $"{("aeiou".Contains(name[0], StringComparison.Ordinal) ? "an" : "a")} {name}";

    // Where two are gone through, one inside the other, the outer one cannot be 'it'.
    private static ImmutableArray<Known> Inside(ImmutableArray<Known> known) => known.RemoveAll(k => k.Name == "it");

    private static string Free(ImmutableArray<Known> known) => Letters.First(l => known.All(k => k.Name != l));
}
