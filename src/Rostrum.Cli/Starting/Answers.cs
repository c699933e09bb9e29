using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Text;

namespace Rostrum.Cli.Starting;

/// <summary>Understands what somebody answers when he starts a sheet.</summary>
internal static partial class Answers
{
    private const int LongestName = 80;
    private const int MostPlayers = 20;
    private const int MostKinds = 12;
    private const int MostPieces = 9999;

    /// <summary>The ideas of scoring by the words that choose them, with what they are.</summary>
    public static ImmutableArray<(string Word, ScoreIdea Idea, string Says)> Ideas { get; } =
    [
        ("each", ScoreIdea.Each, "each piece scores so many points"),
        ("table", ScoreIdea.Table, "the number of pieces scores by a table: 1, 3, 6, 10"),
        ("sets", ScoreIdea.Sets, "each set of one piece of every kind scores"),
        ("rows", ScoreIdea.Rows, "each full row of the board scores"),
        ("neighbours", ScoreIdea.Neighbours, "a piece scores for what stands beside it on the board"),
    ];

    /// <summary>The name of a game.</summary>
    public static Found<string> Name(string words) => Folded(words) switch
    {
        "" => Found<string>.None("The game needs a name."),
        { Length: > LongestName } => Found<string>.None($"The name of the game is longer than {LongestName} characters."),
        var name when name.Any(c => char.IsControl(c) || char.IsSurrogate(c) || CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse)
            => Found<string>.None("The name of the game holds a sign that nobody sees; write it in letters, digits and plain signs."),
        var name => Found<string>.Of(name),
    };

    /// <summary>How many play: <c>2 to 4</c>, <c>2-4</c>, <c>3</c>.</summary>
    public static Found<int[]> Players(string words)
    {
        int[] numbers = [.. Regex.Split(Folded(words), @"\s*(?:-|–|to)\s*").Select(p => Prose.NumberOf(p) ?? NumberOf(p))];
        return numbers is [> 0] or [> 0, > 0] && numbers[0] <= numbers[^1] && numbers[^1] <= MostPlayers
            ? Found<int[]>.Of([numbers[0], numbers[^1]])
            : Found<int[]>.None($"'{Prose.Clip(words)}' does not say how many play: write '2 to 4', or one number from 1 to {MostPlayers}.");
    }

    /// <summary>The pieces: <c>coin 30, lamp 12</c>; <c>30 coins</c>; <c>Münze/Münzen 30</c>.</summary>
    public static Found<ImmutableArray<NewPiece>[]> Pieces(string words)
    {
        Found<NewPiece>[] pieces = [.. words.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Take(MostKinds + 1).Select(Piece)];
        string? complaint = pieces.Length == 0 ? "A game needs pieces: write 'coin 30, lamp 12'."
            : pieces.Length > MostKinds ? $"That are more than {MostKinds} kinds of pieces: begin with those that score, and add the others to the sheet."
            : pieces.FirstOrDefault(p => p.Value is null)?.Complaint
            ?? (pieces.SelectMany(p => new[] { p.Value!.Name, p.Value.Plural }.Distinct()).GroupBy(n => n.ToUpperInvariant()).FirstOrDefault(g => g.Count() > 1) is { } twice
                ? $"'{twice.First()}' stands there twice: give each kind of piece its own name." : null);
        return complaint is null ? Found<ImmutableArray<NewPiece>[]>.Of([[.. pieces.Select(p => p.Value!)]]) : Found<ImmutableArray<NewPiece>[]>.None(complaint);
    }

    /// <summary>The board: <c>squares 5 across 4 up</c>, <c>5x4</c>, <c>hexes rows of 3 4 3</c>, <c>hexes radius 2</c>, <c>none</c>.</summary>
    /// <returns>An empty list for none.</returns>
    public static Found<NewBoard[]> Board(string words)
    {
        string folded = Folded(words).ToLowerInvariant();
        Match sides = Sides().Match(folded);
        Match hexes = Hexes().Match(folded);
        return folded is "none" or "no" or "-" ? Found<NewBoard[]>.Of([])
            : sides.Success ? Found<NewBoard[]>.Of([new NewBoard(sides.Groups["kind"].Value == "hexes" ? "hexes" : "squares", $"{sides.Groups["across"].Value} across {sides.Groups["up"].Value} up")])
            : hexes.Success ? Found<NewBoard[]>.Of([new NewBoard("hexes", hexes.Groups["shape"].Value)])
            : Found<NewBoard[]>.None($"'{Prose.Clip(words)}' is no board: write 'squares 5 across 4 up', 'hexes rows of 3 4 5 4 3', 'hexes radius 2' or 'none'.");
    }

    /// <summary>Yes or no.</summary>
    public static Found<string> YesOrNo(string words) => Folded(words).ToLowerInvariant() switch
    {
        "yes" or "y" => Found<string>.Of("yes"),
        "no" or "n" => Found<string>.Of("no"),
        _ => Found<string>.None($"'{Prose.Clip(words)}' is neither yes nor no."),
    };

    /// <summary>An idea of scoring by its word or by its number in <see cref="Ideas"/>, from 1.</summary>
    public static Found<string> Score(string words)
    {
        string folded = Folded(words).ToLowerInvariant();
        int number = NumberOf(folded);
        string[] known = [.. Ideas.Select(i => i.Word)];
        return number >= 1 && number <= known.Length ? Found<string>.Of(known[number - 1])
            : known.Contains(folded) ? Found<string>.Of(folded)
            : Found<string>.None($"'{Prose.Clip(words)}' is no idea of scoring here. {(NearSpelling.Find(folded, known) is { } near ? $"Did you mean '{near}'?" : $"There are {Prose.And(known.Select(k => $"'{k}'"))}.")}");
    }

    private static Found<NewPiece> Piece(string words)
    {
        Match match = Counted().Match(Folded(words));
        if (!match.Success)
        {
            return Found<NewPiece>.None($"'{Prose.Clip(words)}' does not say how many there are: write the name and the number, such as 'coin 30'.");
        }

        string[] names = [.. match.Groups["name"].Value.Split('/').Select(Folded)];
        int count = NumberOf(match.Groups["count"].Value);
        string? complaint = count is < 1 or > MostPieces ? $"Of '{Prose.Clip(names[0])}' there must be from 1 to {MostPieces}."
            : names.Length > 2 || !names.All(n => Plain().IsMatch(n)) ? $"'{Prose.Clip(match.Groups["name"].Value)}' is no name of a piece: use words of letters and digits, and a '/' before the plural if it is an unusual one, such as 'lily/lilies 20'."
            : names.FirstOrDefault(n => n.Length > LongestName) is { } name ? $"'{Prose.Clip(name)}' is too long for a name." : null;
        return complaint is not null ? Found<NewPiece>.None(complaint)
            : names.Length == 2 ? Found<NewPiece>.Of(new NewPiece(names[0], names[1], count))
            : Found<NewPiece>.Of(Named(names[0], count));
    }

    // `30 coins` names several, `coin 30` one of them. Other scripts know no English plural.
    private static NewPiece Named(string name, int count) => name switch
    {
        _ when !char.IsAsciiLetter(name[^1]) => new NewPiece(name, name, count),
        [.. var stem, 'i', 'e', 's'] when stem.Length > 1 => new NewPiece(stem + "y", name, count),
        [.. var stem, 'e', 's'] when stem.Length > 1 && (stem.EndsWith("ch", StringComparison.Ordinal) || stem.EndsWith("sh", StringComparison.Ordinal) || stem[^1] is 'x') => new NewPiece(stem, name, count),
        [.., 's' or 'u' or 'i', 's'] => new NewPiece(name, Prose.Plural(name), count),
        [.. var stem, 's'] when stem.Length > 2 => new NewPiece(stem, name, count),
        _ => new NewPiece(name, Prose.Plural(name), count),
    };

    private static string Folded(string words) => Prose.Fold(words);

    private static int NumberOf(string digits) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : 0;

    [GeneratedRegex(@"^(?:(?<count>[0-9]{1,9})\s*[x×]?\s+(?<name>.*\S)|(?<name>.*[^\s:=×])\s*(?:[:=×]\s*|\s[x×]?\s*)(?<count>[0-9]{1,9}))$")]
    private static partial Regex Counted();

    [GeneratedRegex(@"^[\p{L}\p{Nd}](?:[\p{L}\p{M}\p{Nd}']|[ -](?=[\p{L}\p{Nd}]))*$")]
    private static partial Regex Plain();

    [GeneratedRegex(@"^(?:(?<kind>squares|hexes)?:?\s*)?(?<across>[1-9][0-9]?)(?:\s*[x×]\s*|\s+across\s+)(?<up>[1-9][0-9]?)(?:\s+up)?$")]
    private static partial Regex Sides();

    [GeneratedRegex(@"^hexes:?\s+(?<shape>radius [1-9][0-9]?|rows of (?:[1-9][0-9]? ){0,30}[1-9][0-9]?)$")]
    private static partial Regex Hexes();
}
