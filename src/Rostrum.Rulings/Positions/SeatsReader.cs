using System.Globalization;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Finds out how many sit at the table, and whose turn it is.</summary>
internal sealed class SeatsReader(PositionReading reading, OutlineMapping tree)
{
    /// <summary>The 0-based seat whose block an entry is; null for an entry of the table, -1 (with a message) for a seat that cannot be.</summary>
    public int? SeatOf(OutlineEntry entry)
    {
        int? number = reading.Seats.NumberOf(entry.Key.Text);
        if (number is null)
        {
            return null;
        }

        if (number >= 1 && number <= reading.Seats.Most)
        {
            return number - 1;
        }

        reading.Problems.Add(PositionProblems.SeatBeyond(entry.Key.Span, number.Value, reading.Seats.Most, reading.Seats.WhyNoMore));
        return -1;
    }

    /// <summary>How many sit at the table: what <c>players</c> says, else as many as are mentioned, but no fewer than the game is for.</summary>
    public int Count()
    {
        int mentioned = tree.Entries.Select(e => SeatOf(e) ?? -1).Append(Me()).Max() + 1;
        if (tree.Find("players") is { } entry && Players(entry.Value) is { } players)
        {
            if (mentioned > players)
            {
                reading.Problems.Add(PositionProblems.SeatBeyond(entry.Value.Span, mentioned, players, $"this line says that {players} play"));
            }

            return Math.Max(mentioned, players);
        }

        return Math.Max(mentioned, reading.Sheet.FewestPlayers ?? 1);
    }

    /// <summary>How many sit at the table once owners and marks have been read too.</summary>
    /// <param name="seats">What <see cref="Count"/> said.</param>
    public int WithOwners(int seats)
    {
        if (reading.HighestOwner is not { } owner || owner.Seat < seats)
        {
            return seats;
        }

        if (tree.Find("players") is not null)
        {
            reading.Problems.Add(PositionProblems.SeatBeyond(owner.At, owner.Seat + 1, seats, $"'players' says that {seats} play"));
        }

        return owner.Seat + 1;
    }

    /// <summary>True where <see cref="Me"/> is no guess: it is said, or only the first seat is spoken of.</summary>
    public bool IsTurnSaid(int seats) => seats == 1 || tree.Find("turn of") is not null
        || tree.Entries.Select(e => reading.Seats.NumberOf(e.Key.Text)).OfType<int>().ToArray() is [1];

    /// <summary>The 0-based seat whose turn it is; seat 1 where nothing is said.</summary>
    public int Me()
    {
        if (tree.Find("turn of") is not { } entry)
        {
            return 0;
        }

        string words = entry.Value is OutlineScalar text ? text.Text : "";
        int? number = reading.Seats.NumberOf(words);
        if (number >= 1 && number <= reading.Seats.Most)
        {
            return number.Value - 1;
        }

        reading.Problems.Add(number is { } beyond
            ? PositionProblems.SeatBeyond(entry.Value.Span, beyond, reading.Seats.Most, reading.Seats.WhyNoMore)
            : PositionProblems.UnknownSeat(entry.Value.Span, words, reading.Seats.Names));
        return 0;
    }

    private int? Players(OutlineNode value)
    {
        string words = value is OutlineScalar text ? text.Text.Trim() : "";
        bool isNumber = int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out int digits);
        int? number = isNumber ? digits : Prose.NumberOf(words);
        if (number is null or < 1)
        {
            reading.Problems.Add(PositionProblems.WantedNumber(value.Span, words, "'players'"));
            return null;
        }

        if (number > reading.Seats.Most)
        {
            reading.Problems.Add(PositionProblems.SeatBeyond(value.Span, number.Value, reading.Seats.Most, reading.Seats.WhyNoMore));
            return null;
        }

        if (number < (reading.Sheet.FewestPlayers ?? 1))
        {
            reading.Problems.Add(PositionProblems.PlayersOutside(value.Span, number.Value, PlayersOfTheGame()));
        }

        return number;
    }

    private string PlayersOfTheGame() => reading.Sheet.MostPlayers is { } most
        ? most == reading.Sheet.FewestPlayers ? $"{most}" : $"{reading.Sheet.FewestPlayers} to {most}"
        : $"{reading.Sheet.FewestPlayers} or more";
}
