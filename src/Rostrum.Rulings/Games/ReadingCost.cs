using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Sheets.Loading;

namespace Rostrum.Rulings.Games;

/// <summary>What it costs to read a sheet once more, in characters and without a clock: what is told about a sheet must be the same on every machine.</summary>
internal static partial class ReadingCost
{
    // A space of a board costs as much as so many characters of a sheet: its neighbours, lines and areas are worked out.
    private const int CharactersASpace = 40;

    private const long MostSpaces = 1_000_000;

    /// <summary>How many readings of a game's sheet may be made to tell causes from what follows; at least one.</summary>
    /// <param name="game">The game.</param>
    /// <param name="characters">What all of them may cost.</param>
    /// <param name="most">However little one costs.</param>
    public static int Readings(Game game, long characters, int most) => (int)Math.Clamp(characters / (Of(game) + 1), 1, most);

    // A sheet that is wrong may hide its boards and files from whoever reads it as a sheet: they are looked for as words too.
    private static long Of(Game game)
    {
        string sheet = game.Folder.Read(SheetReader.FileName).Text?.Content ?? "";
        IEnumerable<string> files = NamedFile().Matches(sheet).Select(m => m.Groups["name"].Value.Trim()).Distinct();
        long spaces = Math.Max(Squares().Matches(sheet).Sum(SpacesIn), (game.Sheet().Sheet?.Boards ?? []).Sum(b => (long)b.Spaces.Length));
        return sheet.Length + files.Sum(f => (game.Folder.Read(f).Text?.Content ?? "").Sum(SignCost)) + (CharactersASpace * spaces);
    }

    // Each row of a table is a space or a card.
    private static long SignCost(char c) => c == '\n' ? CharactersASpace : 1;

    private static long SpacesIn(Match board) => Math.Min(MostSpaces, Number(board.Groups["across"]) * Number(board.Groups["up"]));

    private static long Number(Group digits) => long.Parse(digits.ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\bfile: *(?<name>[^,}\r\n]+)")]
    private static partial Regex NamedFile();

    [GeneratedRegex(@"\b(?<across>[0-9]{1,6}) across (?<up>[0-9]{1,6}) up\b")]
    private static partial Regex Squares();
}
