using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads a position file: text in, a value laid out by the sheet out, every problem told at once.</summary>
public static class PositionReader
{
    // That a drawing leaves out lines of its board.
    private const string LinesMissing = "ROS0134";

    /// <summary>The variants that a position file asks for, so that the right sheet can be loaded before the position is read.</summary>
    /// <param name="file">The file.</param>
    /// <param name="problems">Receives what is wrong with the outline and with the list itself; reading the same file again tells nothing twice.</param>
    /// <returns>In the order of the file; whether the sheet offers them is for the caller to ask.</returns>
    public static ImmutableArray<string> VariantsOf(SourceText file, DiagnosticBag problems) =>
        Variants(OutlineReader.Read(file, PositionDialect.Outline, problems), problems);

    /// <summary>Reads a position.</summary>
    /// <param name="sheet">The sheet with the position's variants on.</param>
    /// <param name="file">The file; the position is called by its name, folder and ending left out.</param>
    /// <param name="problems">Receives what is wrong, ids ROS0101 to ROS0123, ROS0131 to ROS0149, ROS0170 to ROS0176, ROS0221 to ROS0229, ROS0241 to ROS0244.</param>
    public static PositionFile Read(Sheet sheet, SourceText file, DiagnosticBag problems)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(problems);
        var about = new DiagnosticBag();
        OutlineMapping tree = OutlineReader.Read(file, PositionDialect.Outline, about);
        if (tree.Entries.IsEmpty && !about.HasErrors)
        {
            about.Add(PositionProblems.EmptyFile(file.Span(0, 0)));
        }

        return Read(sheet, file, tree, about, problems, isWhole: true);
    }

    /// <summary>Reads a position from a tree that was made of less than a file; what a drawing leaves out is not given.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="file">The text.</param>
    /// <param name="tree">What it says.</param>
    /// <param name="about">What is wrong with its outline.</param>
    /// <param name="problems">Receives what is wrong.</param>
    internal static PositionFile ReadPart(Sheet sheet, SourceText file, OutlineMapping tree, DiagnosticBag about, DiagnosticBag problems) =>
        Read(sheet, file, tree, about, problems, isWhole: false);

    private static PositionFile Read(Sheet sheet, SourceText file, OutlineMapping tree, DiagnosticBag about, DiagnosticBag problems, bool isWhole)
    {
        var reading = new PositionReading(sheet, about);
        Position position = Table(reading, tree, NameOf(file));
        SupplyCheck.Report(reading);
        Diagnostic[] told = [.. about.InOrder().Where(p => isWhole || p.Id != LinesMissing)];
        problems.AddRange(told);
        return new PositionFile(
            sheet,
            file,
            tree,
            told.Any(p => p.Severity == Severity.Error) ? null : position,
            tree.Find("expect") is { } expect ? new ExpectationReader(problems, reading.Seats, position.Seats).Read(expect.Value) : [],
            tree.Find("says")?.Value is OutlineScalar says ? Prose.Fold(says.Text) : null,
            Variants(tree, problems))
        {
            Spots = reading.Spots.ToImmutableDictionary(),
        };
    }

    private static Position Table(PositionReading reading, OutlineMapping tree, string name)
    {
        var seats = new SeatsReader(reading, tree);
        var draft = new PositionDraft(reading.Sheet, seats.Count());
        var table = new PlacesReader(reading, draft, null);
        var players = new Dictionary<int, PlacesReader>();
        foreach (OutlineEntry entry in tree.Entries.Where(e => !PositionDialect.TopKeys.Contains(e.Key.Text)))
        {
            switch (seats.SeatOf(entry))
            {
                case null:
                    table.Read(entry);
                    break;
                case >= 0 and int seat:
                    players.TryAdd(seat, new PlacesReader(reading, draft, seat));
                    ReadSeat(reading, entry, players[seat]);
                    break;
                default:
                    break;
            }
        }

        draft.Grow(seats.WithOwners(draft.Seats));
        Position position = draft.Finish(name, seats.Me()) with { IsTurnSaid = seats.IsTurnSaid(draft.Seats) };
        return tree.Find("done") is { } done ? position with { Record = new DoneReader(reading, position).Read(done.Value) } : position;
    }

    private static void ReadSeat(PositionReading reading, OutlineEntry entry, PlacesReader places)
    {
        switch (entry.Value)
        {
            case OutlineMapping mapping:
                foreach (OutlineEntry place in mapping.Entries)
                {
                    places.Read(place);
                }

                break;
            case OutlineEmpty:
                break;
            default:
                reading.Problems.Add(PositionProblems.WantedEntries(entry.Value.Span, $"the places of {entry.Key.Text}", "sticks: 4"));
                break;
        }
    }

    private static ImmutableArray<string> Variants(OutlineMapping tree, DiagnosticBag problems)
    {
        ImmutableArray<OutlineNode> items = tree.Find("variants")?.Value switch
        {
            OutlineSequence list => list.Items,
            { } single and not OutlineEmpty => [single],
            _ => [],
        };
        foreach (OutlineNode item in items.Where(i => i is not OutlineScalar))
        {
            problems.Add(PositionProblems.WantedEntries(item.Span, "a list of variants", "variants: [Climbing Chamber]"));
        }

        return [.. items.OfType<OutlineScalar>().Select(i => Prose.Fold(i.Text)).Where(n => n.Length > 0)];
    }

    private static string NameOf(SourceText file)
    {
        string name = file.Name[(file.Name.LastIndexOfAny(['/', '\\']) + 1)..];
        return name.EndsWith(".yaml", StringComparison.Ordinal) ? name[..^5] : name;
    }
}
