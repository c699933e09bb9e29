using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads maps: <c>points</c>, a list of lines in which neighbours touch, and <c>file</c>, a table with one row a space.</summary>
internal static class MapShapeReader
{
    private static readonly string[] OwnColumns = ["name", "next to", "across", "up", "cite", "says"];

    /// <summary>The board of lines of points.</summary>
    public static BoardShape? Points(LoadContext context, OutlineNode node)
    {
        var spaces = new List<ShapeSpace>();
        var index = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        var ways = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach ((OutlineScalar line, string[] names) in Lines(context, node))
        {
            foreach (string name in names)
            {
                if (index.TryAdd(name, spaces.Count))
                {
                    spaces.Add(new ShapeSpace(name, spaces.Count, 0, line.Span));
                }
            }

            ReportDoubled(context, line, names);
            ways.Add([.. names.Select(n => index[n])]);
        }

        ReportNear(context, spaces, ways);
        return Checked(context, node.Span, new BoardShape(BoardLayout.Points, [.. spaces]) { Ways = ways.ToImmutable() });
    }

    // Commas part names of several words within a line; several lines stand in brackets or behind dashes.
    private static IEnumerable<(OutlineScalar Line, string[] Names)> Lines(LoadContext context, OutlineNode node)
    {
        string[] parts = node is OutlineScalar one ? one.Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries) : [];
        if (parts.Length > 1 && parts.All(p => Prose.WordsOf(p).Length > 1))
        {
            context.Problems.Add(BoardProblems.LinesWithoutBrackets(node.Span, $"[{string.Join(", ", parts)}]"));
            return parts.Select(p => ((OutlineScalar)node, SpaceList.NamesOfPoints(p).ToArray()));
        }

        return OutlineAsk.Items(context, node, "the lines of points, such as '- a7 d7 g7'").Select(l => (l, SpaceList.NamesOfPoints(l.Text).ToArray()));
    }

    // A point that stands in one line only, one letter from another name, is most likely that one.
    private static void ReportNear(LoadContext context, List<ShapeSpace> spaces, IEnumerable<ImmutableArray<int>> ways)
    {
        int[] uses = new int[spaces.Count];
        foreach (int space in ways.SelectMany(w => w))
        {
            uses[space]++;
        }

        foreach (ShapeSpace space in spaces.Where(s => s.Name.Length > 3 && !s.Name.Any(char.IsDigit) && uses[s.Column] == 1))
        {
            if (spaces.FirstOrDefault(o => o != space && o.Name.Length > 2 && NearSpelling.IsOneOff(space.Name, o.Name) && (o.Column < space.Column || uses[o.Column] > 1)) is { } other)
            {
                context.Problems.Add(BoardProblems.NearlyOnePoint(space.At, space.Name, other.Name));
            }
        }
    }

    /// <summary>The board of a file.</summary>
    public static BoardShape? File(LoadContext context, OutlineScalar file)
    {
        FolderReading reading = context.Folder.Read(file.Text.Trim());
        if (reading.Text is not { } text)
        {
            context.Problems.Add(SheetProblems.NotReadable(file.Span, file.Text, reading.Refusal));
            return null;
        }

        if (CsvReader.Read(text, context.Problems) is not { } table)
        {
            return null;
        }

        if (ColumnOf(table, "name") is not { } nameAt)
        {
            context.Problems.Add(SheetProblems.NoNameColumn(table.Header[0].Span, "spaces"));
            return null;
        }

        ImmutableArray<ShapeSpace> spaces = [.. table.Rows.Select((r, i) => new ShapeSpace(Prose.Fold(r.Cells[nameAt].Text), i, 0, r.Cells[nameAt].Span))];
        foreach (ShapeSpace space in spaces.Where(s => s.Name.Length == 0))
        {
            context.Problems.Add(BoardProblems.SpaceWithoutName(space.At));
        }

        return Checked(context, file.Span, new BoardShape(BoardLayout.Points, spaces)
        {
            Ways = [.. Joins(context, table, spaces)],
            Spots = Spots(context, table),
            Further = [.. Enumerable.Range(0, table.Header.Length).Where(c => !OwnColumns.Contains(table.Header[c].Text, StringComparer.OrdinalIgnoreCase) && table.Header[c].Text.Length > 0)
                .Select(c => new MapColumn(table.Header[c], [.. table.Rows.Select(r => r.Cells[c])]))],
        });
    }

    private static int? ColumnOf(CsvTable table, string name) =>
        Enumerable.Range(0, table.Header.Length).Where(c => table.Header[c].Text.Equals(name, StringComparison.OrdinalIgnoreCase)).Select(c => (int?)c).FirstOrDefault();

    private static BoardShape? Checked(LoadContext context, SourceSpan at, BoardShape shape)
    {
        if (shape.Spaces.Length is > 0 and <= BoardShapeReader.MostSpaces)
        {
            return shape;
        }

        context.Problems.Add(shape.Spaces.IsEmpty
            ? SheetProblems.WantedText(at, "the lines of points, such as '- a7 d7 g7'")
            : SheetProblems.MoreRowsThanAllowed(at, "spaces", BoardShapeReader.MostSpaces));
        return null;
    }

    // It is enough to say of one of the two that it is next to the other.
    private static IEnumerable<ImmutableArray<int>> Joins(LoadContext context, CsvTable table, ImmutableArray<ShapeSpace> spaces)
    {
        if (ColumnOf(table, "next to") is not { } nextTo)
        {
            yield break;
        }

        var names = new SpaceIndex(spaces.Select(s => s.Name));
        var seen = new HashSet<(int, int)>();
        for (int i = 0; i < table.Rows.Length; i++)
        {
            CsvCell cell = table.Rows[i].Cells[nextTo];
            foreach (int other in SpaceList.Read(context, cell.Text, cell.SpanOf, names, "a space of this map"))
            {
                if (other == i)
                {
                    context.Problems.Add(BoardProblems.NextToItself(cell.Span, names.Names[i]));
                }
                else if (seen.Add((Math.Min(i, other), Math.Max(i, other))))
                {
                    yield return [i, other];
                }
            }
        }
    }

    private static ImmutableArray<MapSpot> Spots(LoadContext context, CsvTable table) =>
        ColumnOf(table, "across") is { } across && ColumnOf(table, "up") is { } up
            ? [.. table.Rows.Select(r => new MapSpot(Length(context, r.Cells[across]), Length(context, r.Cells[up])))]
            : [];

    private static double Length(LoadContext context, CsvCell cell)
    {
        if (double.TryParse(cell.Text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double length) && Math.Abs(length) <= 10_000)
        {
            return length;
        }

        context.Problems.Add(SheetProblems.WantedNumber(cell.Span, cell.Text, "where the space is drawn"));
        return 0;
    }

    // A line may end where it began, and is closed then; any other point twice in it is a slip.
    private static void ReportDoubled(LoadContext context, OutlineScalar line, string[] names)
    {
        string[] open = names.Length > 2 && names[0].Equals(names[^1], StringComparison.OrdinalIgnoreCase) ? names[..^1] : names;
        if (open.GroupBy(n => n, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            context.Problems.Add(BoardProblems.PointTwiceInLine(line.Span, twice.Key));
        }
    }
}
