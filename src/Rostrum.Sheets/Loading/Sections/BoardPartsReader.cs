using System.Collections.Immutable;
using Rostrum.Sheets.Drawings;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Rostrum.Text.Tables;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads what a board says of its spaces: <c>areas</c>, <c>regions</c>, <c>links</c>, <c>values</c>, and the further columns of a map's file.</summary>
/// <param name="context">Receives messages and names.</param>
/// <param name="board">The board.</param>
/// <param name="shape">Its spaces.</param>
internal sealed class BoardPartsReader(LoadContext context, Place board, BoardShape shape)
{
    private readonly SpaceIndex _spaces = new(shape.Spaces.Select(s => s.Name));
    private readonly string _what = $"a space of '{board.Name}'";

    /// <summary><c>areas: {field: {north: a1 to a6, south: b1 to b6}}</c>, and columns of words.</summary>
    public IEnumerable<LineFamily> Areas(OutlineNode? node)
    {
        foreach (OutlineEntry family in Entries(node, "the areas of the board", "field: {north: a1 to a6, south: b1 to b6}"))
        {
            var lines = ImmutableArray.CreateBuilder<BoardLine>();
            var areaOf = new Dictionary<int, string>();
            foreach (OutlineEntry area in OutlineAsk.Entries(context, family.Value, "the areas with their spaces", "north: a1 to a6"))
            {
                lines.Add(new BoardLine(Prose.Fold(area.Key.Text), Spaces(area.Value)));
                ReportOverlap(area.Value.Span, lines[^1], areaOf);
            }

            yield return Declared(Prose.Fold(family.Key.Text), lines.ToImmutable(), family.Key.Span);
        }

        foreach (MapColumn column in shape.Further.Where(c => !IsOfNumbers(c)))
        {
            ReportHardlyNumbers(column);
            var lines = column.Cells.Select((c, i) => (Label: Prose.Fold(c.Text), Space: i)).Where(c => c.Label.Length > 0)
                .GroupBy(c => c.Label).Select(g => new BoardLine(g.Key, [.. g.Select(c => c.Space)]));
            yield return Declared(Prose.Fold(column.Header.Text), [.. lines], column.Header.Span);
        }
    }

    /// <summary><c>regions: {store: {South: A, North: B}}</c>.</summary>
    public IEnumerable<Region> Regions(OutlineNode? node, ImmutableArray<string> seats)
    {
        if (board.EachPlayer && node is not null && !OutlineAsk.IsLeftOut(node))
        {
            context.Problems.Add(BoardProblems.RegionsOfEachPlayer(node.Span, board.Name));
        }

        foreach (OutlineEntry entry in Entries(node, "the parts of the board that belong to players", "store: {South: A, North: B}"))
        {
            var ofSeat = new ImmutableArray<int>?[seats.Length];
            foreach (OutlineEntry part in OutlineAsk.Entries(context, entry.Value, "the players with their spaces", $"{seats[0]}: {_spaces.Names.FirstOrDefault("a1")}"))
            {
                int seat = seats.ToList().FindIndex(s => s.Equals(Prose.Fold(part.Key.Text), StringComparison.OrdinalIgnoreCase));
                ImmutableArray<int> spaces = Spaces(part.Value);
                if (seat < 0)
                {
                    context.Problems.Add(SheetProblems.UnknownWord(part.Key.Span, part.Key.Text, "a seat", seats));
                }
                else
                {
                    ofSeat[seat] = spaces;
                }
            }

            if (Array.FindIndex(ofSeat, s => s is null) is >= 0 and var missing && !OutlineAsk.IsLeftOut(entry.Value))
            {
                context.Problems.Add(SheetProblems.Missing(entry.Key.Span, entry.Key.Text, seats[missing], $"{seats[missing]}: {_spaces.Names.FirstOrDefault("a1")}"));
            }

            var region = new Region(Prose.Fold(entry.Key.Text), board, [.. ofSeat.Select(s => s ?? [])], entry.Key.Span);
            context.Declare(region);
            yield return region;
        }
    }

    /// <summary><c>links: {opposite: a1-b6 a2-b5}</c>, or <c>{opposite: {a1: b6}}</c>; each goes both ways.</summary>
    public IEnumerable<Link> Links(OutlineNode? node)
    {
        foreach (OutlineEntry entry in Entries(node, "the links from space to space", "opposite: a1-b6 a2-b5"))
        {
            var to = new int?[_spaces.Names.Length];
            foreach ((int one, int other, SourceSpan at) in Pairs(entry.Value))
            {
                if (SlipOf(one, other, to, at) is { } slip)
                {
                    context.Problems.Add(slip);
                    continue;
                }

                (to[one], to[other]) = (other, one);
            }

            var link = new Link(Prose.Fold(entry.Key.Text), board, [.. to], entry.Key.Span);
            context.Declare(link);
            yield return link;
        }
    }

    /// <summary><c>values: {reward: {a1: 3, b2 b3: 5}}</c>, a drawing with numbers in its cells, and columns of numbers.</summary>
    public IEnumerable<PrintedValue> Values(OutlineNode? node)
    {
        foreach (OutlineEntry entry in Entries(node, "the numbers on the spaces", "reward: {a1: 3, b2 b3: 5}"))
        {
            var on = new long?[_spaces.Names.Length];
            foreach ((int space, long number, SourceSpan at) in Numbers(entry.Value))
            {
                if (on[space] is { } before && before != number)
                {
                    context.Problems.Add(BoardProblems.ValueTwice(at, _spaces.Names[space], before, number));
                }

                on[space] ??= number;
            }

            yield return DeclaredValue(Prose.Fold(entry.Key.Text), [.. on], entry.Key.Span);
        }

        foreach (MapColumn column in shape.Further.Where(IsOfNumbers))
        {
            yield return DeclaredValue(Prose.Fold(column.Header.Text), [.. column.Cells.Select(c => OutlineAsk.NumberIn(c.Text))], column.Header.Span);
        }
    }

    private ImmutableArray<OutlineEntry> Entries(OutlineNode? node, string what, string example) =>
        node is null ? [] : OutlineAsk.Entries(context, node, what, example);

    private ImmutableArray<int> Spaces(OutlineNode node) => SpaceList.Read(context, node, _spaces, _what);

    private static bool IsOfNumbers(MapColumn column) => column.Cells.All(c => c.Text.Length == 0 || OutlineAsk.NumberIn(c.Text) is not null);

    private void ReportHardlyNumbers(MapColumn column)
    {
        CsvCell[] words = [.. column.Cells.Where(c => c.Text.Length > 0 && OutlineAsk.NumberIn(c.Text) is null)];
        if (2 * words.Length < column.Cells.Count(c => c.Text.Length > 0))
        {
            context.Problems.Add(BoardProblems.HardlyANumber(words[0].Span, words[0].Text, column.Header.Text));
        }
    }

    private LineFamily Declared(string name, ImmutableArray<BoardLine> lines, SourceSpan at)
    {
        var family = new LineFamily(name, Prose.Plural(name), board, LineForm.Areas, lines, at);
        context.Declare(family, family.Plural);
        return family;
    }

    private PrintedValue DeclaredValue(string name, ImmutableArray<long?> on, SourceSpan at)
    {
        var value = new PrintedValue(name, board, on, at);
        context.Declare(value);
        return value;
    }

    // `field of s` must be one area.
    private void ReportOverlap(SourceSpan at, BoardLine area, Dictionary<int, string> areaOf)
    {
        int[] shared = [.. area.Spaces.Where(s => !areaOf.TryAdd(s, area.Label))];
        if (shared.Length > 0)
        {
            context.Problems.Add(BoardProblems.SpaceInTwoAreas(at, _spaces.Names[shared[0]], areaOf[shared[0]], area.Label));
        }
    }

    private Diagnostic? SlipOf(int one, int other, int?[] to, SourceSpan at)
    {
        ImmutableArray<string> names = _spaces.Names;
        return one == other ? BoardProblems.NoLink(at, $"{names[one]}-{names[other]}", board.Name)
            : to[one] is { } before && before != other ? BoardProblems.LinkedTwice(at, names[one], names[before], names[other])
            : to[other] is { } earlier && earlier != one ? BoardProblems.LinkedTwice(at, names[other], names[earlier], names[one])
            : null;
    }

    private IEnumerable<(int One, int Other, SourceSpan At)> Pairs(OutlineNode node)
    {
        if (node is OutlineMapping mapping)
        {
            return from entry in mapping.Entries
                   from one in SpaceList.Read(context, entry.Key, _spaces, _what)
                   from other in Spaces(entry.Value)
                   select (one, other, entry.Key.Span);
        }

        return OutlineAsk.Items(context, node, "the links, such as 'a1-b6 a2-b5'").SelectMany(PairsIn);
    }

    private IEnumerable<(int One, int Other, SourceSpan At)> PairsIn(OutlineScalar scalar)
    {
        foreach (string pair in Prose.WordsOf(scalar.Text).Select(w => w.Trim(',')).Where(w => w.Length > 0))
        {
            int start = scalar.Text.IndexOf(pair, StringComparison.Ordinal);
            SourceSpan at = scalar.SpanOf(start, pair.Length);
            (int One, int Other)? found = Enumerable.Range(1, Math.Max(0, pair.Length - 1)).Where(i => pair[i] == '-' && i + 1 < pair.Length)
                .Select(i => _spaces.Find(pair[..i]) is { } one && _spaces.Find(pair[(i + 1)..]) is { } other ? (one, other) : ((int, int)?)null).FirstOrDefault(p => p is not null);
            if (found is { } link)
            {
                yield return (link.One, link.Other, at);
                continue;
            }

            context.Problems.Add(BoardProblems.NoLink(at, pair, board.Name));
        }
    }

    private IEnumerable<(int Space, long Number, SourceSpan At)> Numbers(OutlineNode node)
    {
        if (node is OutlineScalar drawing && !OutlineAsk.IsLeftOut(node))
        {
            return Drawn(DrawingText.Read(drawing, context.Problems));
        }

        return from entry in Entries(node, "the spaces with their numbers", "a1: 3")
               let number = OutlineAsk.Number(context, entry.Value, "the number on the space")
               where number is not null
               from space in SpaceList.Read(context, entry.Key, _spaces, _what)
               select (space, number.Value, entry.Key.Span);
    }

    // A drawing of the whole board: cells in the order of its spaces, row by row; `.` and `-` bear no number.
    private IEnumerable<(int Space, long Number, SourceSpan At)> Drawn(DrawingText drawing)
    {
        int rows = Math.Max(1, shape.Rows.Length);
        if (!drawing.Rows.IsEmpty && drawing.Rows.Length != rows)
        {
            context.Problems.Add(BoardProblems.RowsOfValues(drawing.Span, drawing.Rows.Length, rows));
            yield break;
        }

        for (int i = 0; i < drawing.Rows.Length; i++)
        {
            int row = drawing.Rows.Length - 1 - i;
            int[] spaces = [.. Enumerable.Range(0, _spaces.Names.Length).Where(s => shape.Spaces[s].Row == row)];
            DrawnCell[] cells = [.. drawing.Rows[i].Cells.Where(c => c.Text is not ("-" or "#"))];
            if (cells.Length != spaces.Length)
            {
                context.Problems.Add(BoardProblems.ValuesDoNotFit(drawing.Rows[i].LabelSpan.To(drawing.Rows[i].Cells.Select(c => c.Span).LastOrDefault(drawing.Rows[i].LabelSpan)), cells.Length, spaces.Length));
                continue;
            }

            for (int c = 0; c < cells.Length; c++)
            {
                if (OutlineAsk.NumberIn(cells[c].Text) is { } number)
                {
                    yield return (spaces[c], number, cells[c].Span);
                }
                else if (cells[c].Text != ".")
                {
                    context.Problems.Add(SheetProblems.WantedNumber(cells[c].Span, cells[c].Text, "the number on the space"));
                }
            }
        }
    }
}
