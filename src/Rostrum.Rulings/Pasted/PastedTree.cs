using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Pasted;

/// <summary>Puts what is pasted where the file of a position would have it: what a player owns below his seat, the rest at the margin.</summary>
/// <param name="sheet">Says what is whose.</param>
/// <param name="text">The pasted text.</param>
/// <param name="seat">The seat of what is pasted without one; from 1. It is his turn as well, unless the text says whose.</param>
internal sealed class PastedTree(Sheet sheet, SourceText text, int seat)
{
    private const string Turn = "turn of";

    /// <summary>A key that is not written, or written otherwise.</summary>
    public static OutlineScalar Key(SourceSpan at, string name) => new(at, name, OutlineStyle.Plain, at.Start);

    /// <summary>True for what every player has one of.</summary>
    public static bool IsOfSeat(Sheet sheet, OutlineEntry entry) => Names(sheet, eachPlayer: true).Contains(Prose.Fold(entry.Key.Text), StringComparer.OrdinalIgnoreCase);

    /// <summary>What belongs to the names of boards, at the margin and below seats.</summary>
    public static IEnumerable<OutlineNode> Boards(Sheet sheet, OutlineMapping outline) =>
        outline.Entries.Concat(outline.Entries.Select(e => e.Value).OfType<OutlineMapping>().SelectMany(m => m.Entries))
            .Where(e => sheet.Boards.Any(b => b.Place.Name.Equals(Prose.Fold(e.Key.Text), StringComparison.OrdinalIgnoreCase)))
            .Select(e => e.Value);

    /// <summary>The tree of a position.</summary>
    /// <param name="drawings">Each under the name of its board, with the seat of the line above.</param>
    /// <param name="others">Everything else, with the seat of the line above.</param>
    public OutlineMapping Of(IEnumerable<(int? Seat, OutlineEntry Entry)> drawings, IEnumerable<(int? Seat, OutlineEntry Entry)> others)
    {
        ILookup<bool, (int? Seat, OutlineEntry Entry)> parts = drawings.Concat(others).ToLookup(p => IsOfTable(p.Entry));
        IEnumerable<OutlineEntry> seats = parts[false].GroupBy(p => p.Seat ?? seat, p => p.Entry).Select(g => Seat(g.Key, [.. g]));
        OutlineEntry[] all = [.. parts[true].Select(p => p.Entry), .. seats];
        return new OutlineMapping(text.Whole, [.. all, .. seat == 1 || all.Any(e => e.Key.Text == Turn) ? [] : TurnOf()]);
    }

    // A name that nobody knows may be meant for anything; the places of a player are the likelier ones.
    private bool IsOfTable(OutlineEntry entry)
    {
        string name = Prose.Fold(entry.Key.Text);
        return PositionDialect.TopKeys.Contains(name) || Names(sheet, eachPlayer: false).Contains(name, StringComparer.OrdinalIgnoreCase);
    }

    private static OutlineEntry Seat(int number, ImmutableArray<OutlineEntry> entries)
    {
        SourceSpan at = entries[0].Key.Span;
        return new OutlineEntry(Key(at.Part(0, 0), NameOf(number)), new OutlineMapping(at, entries));
    }

    private OutlineEntry[] TurnOf() => [new(Key(text.Span(0, 0), Turn), Key(text.Span(0, 0), NameOf(seat)))];

    private static IEnumerable<string> Names(Sheet sheet, bool eachPlayer) =>
        sheet.Boards.Select(b => b.Place).Concat(sheet.Places.Select(p => p.Place)).Where(p => p.EachPlayer == eachPlayer).Select(p => p.Name)
            .Concat(sheet.Marks.Where(m => MarkLayout.IsOfSeat(m) == eachPlayer).Select(m => m.Name));

    private static string NameOf(int seat) => string.Create(CultureInfo.InvariantCulture, $"seat {seat}");
}
