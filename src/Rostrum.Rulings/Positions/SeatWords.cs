using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>How the seats of a game are called: by the names that the sheet gives them, else <c>seat 1</c>, <c>seat 2</c> …</summary>
/// <param name="sheet">Gives the names.</param>
internal sealed class SeatWords(Sheet sheet)
{
    /// <summary>How many seats a position may have where the sheet does not say.</summary>
    private const int MostWithoutLimit = 20;

    /// <summary>The names that the sheet gives.</summary>
    public ImmutableArray<string> Names { get; } = sheet.SeatNames;

    /// <summary>The most seats.</summary>
    public int Most { get; } = sheet.MostPlayers ?? Math.Max(sheet.SeatNames.Length, MostWithoutLimit);

    /// <summary>Why there are no more.</summary>
    public string WhyNoMore => sheet.MostPlayers is { } most
        ? $"the game is for at most {Rostrum.Text.Prose.Count(most, "player", "players")}"
        : $"a position has at most {Most} seats";

    /// <summary>The name of a 0-based seat.</summary>
    public string NameOf(int seat) => seat < Names.Length ? Names[seat] : string.Create(CultureInfo.InvariantCulture, $"seat {seat + 1}");

    /// <summary>The 1-based number of the seat that some words name, or null where they name none; it may be beyond <see cref="Most"/>.</summary>
    public int? NumberOf(string words)
    {
        string folded = Prose.Fold(words);
        for (int i = 0; i < Names.Length; i++)
        {
            if (string.Equals(Names[i], folded, StringComparison.OrdinalIgnoreCase))
            {
                return i + 1;
            }
        }

        bool isSeat = folded.StartsWith("seat ", StringComparison.OrdinalIgnoreCase);
        return isSeat && int.TryParse(folded.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
    }
}
