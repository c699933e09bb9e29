using System.Text.RegularExpressions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Numbers;

/// <summary>The words of a game that help to tell a number that counts from one that belongs to a name.</summary>
internal sealed class GameWords
{
    private const string Number = @"(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)";
    private const string NotBefore = @"(?<!\b(?:each|every|a|an|any|per|the|this|that|your|his|her|their|my|another|next|last|first|starting|other|further)\s)";

    // Each is tried at each word of a lesson; a game with more cards than this says their names without numbers, or hears of a number too many.
    private const int MostNames = 2000;

    private static readonly string[] Labels =
    [
        "page", "p.", "chapter", "section", "step", "example", "figure", "part", "question", "number", "no.", "version", "episode", "video", "line", "seat", "player",
        "round", "turn", "phase", "stage", "level", "shot", "topic", "day", "card",
    ];

    private static readonly string[] Counted =
        ["point", "points", "turn", "turns", "round", "rounds", "action", "actions", "card", "cards", "die", "dice", "player", "players", "space", "spaces", "minute", "minutes"];

    private readonly Regex _names;
    private readonly HashSet<string> _counted;

    /// <summary>The words of a sheet.</summary>
    public GameWords(Sheet sheet)
    {
        LineFamily[] lines = [.. sheet.Boards.SelectMany(b => b.Families)];
        IEnumerable<string> singular = [.. Labels, .. lines.Select(l => l.Name), .. sheet.CardTables.Select(c => c.Kind.Name)];
        IEnumerable<string> plural = [.. Labels.Where(l => l[^1] != '.').Select(l => l + "s"), "pp.", .. lines.Select(l => l.Plural), .. sheet.CardTables.Select(c => c.Kind.Plural)];
        string chain = $@"(?:(?:\s*[,–-]\s*|\s(?:and|or|to)\s){Number})*";
        string titles = Any(TitlesOf(sheet).Where(t => Regex.IsMatch(t, $@"\p{{L}}.*\b{Number}\b|\b{Number}\b.*\p{{L}}", RegexOptions.IgnoreCase)));
        _names = new Regex(
            $@"\b(?:{titles})\b|{NotBefore}\b(?:(?:{Any(singular)})\s{Number}(?:[–-]{Number})?|(?:{Any(plural)})\s{Number}{chain})\b",
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
            TimeSpan.FromSeconds(20));
        _counted = new HashSet<string>(Counted.Concat(CountedIn(sheet).SelectMany(Prose.WordsOf)), StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Numbers with the name that they belong to: <c>page 5</c>, <c>tiers 2 and 3</c>, <c>Commission 12</c>.</summary>
    public IEnumerable<Match> NamesIn(string text) => _names.Matches(text);

    /// <summary>True where a word of the game is one of the next two: <c>one drying board</c>, <c>one more stick</c>.</summary>
    public bool Follow(string rest)
    {
        Match next = Regex.Match(rest, @"\A[\s-](?!(?:of|the|by|after|at|in|on|with|and|or|is|that)\b)(?<word>\p{L}+)(?:[\s-](?<word>\p{L}+))?", RegexOptions.CultureInvariant, TimeSpan.FromSeconds(20));
        return next.Groups["word"].Captures.Any(w => _counted.Contains(w.Value));
    }

    // The longest first, so that none hides behind its own beginning.
    private static string Any(IEnumerable<string> words) =>
        string.Join('|', words.Where(w => w.Length > 0).Take(MostNames).OrderByDescending(w => w.Length).Select(Regex.Escape).DefaultIfEmpty("(?!)"));

    private static IEnumerable<string> TitlesOf(Sheet sheet) =>
    [
        sheet.Game, .. sheet.Variants.Select(v => v.Name), .. sheet.Sources.Select(s => s.Title), .. sheet.CardTables.SelectMany(c => c.Rows).Select(r => r.Card.Name),
        .. sheet.Kinds.Select(k => k.Kind.Name), .. sheet.Places.Select(p => p.Place.Name), .. sheet.Boards.Select(b => b.Place.Name),
    ];

    private static IEnumerable<string> CountedIn(Sheet sheet) =>
    [
        .. sheet.Kinds.SelectMany(k => new[] { k.Kind.Name, k.Kind.Plural }),
        .. sheet.Kinds.SelectMany(k => k.Attributes).SelectMany(a => a.Values).SelectMany(v => new[] { v.Name, v.Plural }),
        .. sheet.Boards.SelectMany(b => b.Families.SelectMany(f => new[] { f.Name, f.Plural }).Append(b.Noun.Name).Append(b.Noun.Plural)),
        .. sheet.Places.Select(p => p.SlotNoun).OfType<SlotNoun>().SelectMany(s => new[] { s.Name, s.Plural }),
    ];
}
