using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>boards</c>.</summary>
internal static class BoardsSection
{
    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the boards", "field: {of: each player, squares: 5 across 4 up}"))
        {
            if (OutlineAsk.Mapping(context, entry, "what the board is like", "{of: each player, squares: 5 across 4 up}") is { } mapping)
            {
                OutlineAsk.CheckKeys(context, mapping, "boards");
                ReadBoard(context, entry.Key, mapping);
            }
        }
    }

    private static void ReadBoard(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        var place = new Place(Prose.Fold(key.Text), PlaceForm.Board, OutlineAsk.IsOfEachPlayer(context, mapping), context.Declared.Boards.Count, key.Span);
        context.Declare(place);
        BoardShape? read = BoardShapeReader.Read(context, key, mapping);
        SpaceNoun noun = Noun(context, place, mapping);
        BoardShape shape = read ?? BoardShape.None;
        (int? most, ImmutableArray<Kind> kinds) = Holds(context, mapping);
        var spaces = shape.Spaces.Select((s, i) => new BoardSpace(new SpaceName(s.Name, place, i, s.At), s.Column, s.Row)).ToImmutableArray();
        foreach (BoardSpace space in spaces)
        {
            DeclareSpace(context, space.Name);
        }

        var parts = new BoardPartsReader(context, place, shape);
        Touching neighbours = Neighbours(context, mapping, shape.Layout);
        bool wraps = Wraps(context, mapping, shape) || mapping.Find("ring") is not null;
        context.Declared.Boards[place] = new BoardFacts(place, spaces, shape.Columns, shape.Rows, [.. Families(context, place, shape), .. parts.Areas(mapping.Find("areas")?.Value)], noun)
        {
            Layout = shape.Layout,
            Holes = shape.Holes,
            HoleNames = [.. new HolesReader(context, place, shape, neighbours, wraps).Read(mapping.Find("holes")?.Value)],
            Ways = shape.Ways,
            Spots = shape.Spots,
            Regions = [.. parts.Regions(mapping.Find("regions")?.Value, context.SeatNames)],
            Links = [.. parts.Links(mapping.Find("links")?.Value)],
            Values = [.. parts.Values(mapping.Find("values")?.Value)],
            IsUpright = IsUpright(context, mapping),
            Neighbours = neighbours,
            MostInSpace = most,
            Holds = kinds,
            Wraps = wraps,
            Cite = context.Cite(mapping),
        };
    }

    // Spaces of two boards may share a name: `B2` is then the space of the board that is asked.
    private static void DeclareSpace(LoadContext context, SpaceName space)
    {
        if (context.Declared.Names.Find(space.Name).All(s => s.Symbol is SpaceName))
        {
            context.Declared.Names.Add(space.Name, space);
        }
    }

    private static bool IsUpright(LoadContext context, OutlineMapping mapping) => OutlineAsk.OneOf(context, mapping, "stands", "a way in which a board stands", ["flat", "upright"]) == 1;

    // Every row is there, as long as the others and without gaps, and begins half a step to one side of the next, the last of the first.
    private static bool Interlocks(int[][] rows, int count) =>
        count % 2 == 0 && rows.Length == count && rows.Select((columns, i) => columns.Length == rows[0].Length
            && columns[0] == (rows[0][0] + i) % 2 && columns[^1] - columns[0] == 2 * (columns.Length - 1)).All(fits => fits);

    private static bool Wraps(LoadContext context, OutlineMapping mapping, BoardShape shape)
    {
        bool wraps = OutlineAsk.OneOf(context, mapping, "wraps", "'yes' or 'no'", ["no", "yes"]) == 1;
        bool fits = shape.Layout switch
        {
            BoardLayout.Hexes => Interlocks([.. shape.Spaces.GroupBy(s => s.Row).OrderBy(r => r.Key).Select(r => r.Select(s => s.Column).Order().ToArray())], shape.Rows.Length),
            BoardLayout.Points => false,
            _ => true,
        };
        if (wraps && !fits)
        {
            context.Problems.Add(BoardProblems.CannotWrap(mapping.Find("wraps")!.Value.Span, shape.Layout));
        }

        return wraps && fits;
    }

    private static SpaceNoun Noun(LoadContext context, Place place, OutlineMapping mapping)
    {
        string noun = mapping.Find("spaces")?.Value is OutlineScalar given ? Prose.Fold(given.Text) : "space";
        string plural = mapping.Find("plural")?.Value is OutlineScalar many ? Prose.Fold(many.Text) : Prose.Plural(noun);
        var symbol = new SpaceNoun(noun, plural, place, mapping.Find("spaces")?.Value.Span ?? place.DeclaredAt);
        if (noun == "space" || context.Declared.Names.Find(noun).Any(s => s.Symbol is SpaceNoun))
        {
            context.Declared.Names.Add(noun, symbol);
        }
        else
        {
            context.Declare(symbol, plural);
        }

        return symbol;
    }

    private static IEnumerable<LineFamily> Families(LoadContext context, Place place, BoardShape shape)
    {
        foreach ((LineForm form, string name) in shape.LineNames.OrderBy(n => n.Key))
        {
            if (shape.Layout == BoardLayout.Points || (shape.Layout == BoardLayout.Hexes && form == LineForm.Columns))
            {
                continue;
            }

            var family = new LineFamily(name, Prose.Plural(name), place, form, BoardLines.Of(shape, form), place.DeclaredAt);
            context.Declare(family, family.Plural);
            yield return family;
        }
    }

    private static Touching Neighbours(LoadContext context, OutlineMapping mapping, BoardLayout layout)
    {
        string[] known = layout == BoardLayout.Squares ? ["sides", "corners", "sides and corners"] : ["sides"];
        return (Touching)OutlineAsk.OneOf(context, mapping, "neighbours", layout == BoardLayout.Squares ? "a way in which spaces touch" : "a way in which spaces of this board touch", known);
    }

    // `holds: 1 ware`, `holds: 2 foxes or hens`, `holds: 3`; pieces are declared before boards
    private static (int? Most, ImmutableArray<Kind> Kinds) Holds(LoadContext context, OutlineMapping mapping)
    {
        const string Wanted = "how many a space holds, such as '1 ware' or '2 foxes or hens'";
        if (mapping.Find("holds")?.Value is not { } node || OutlineAsk.Text(context, node, Wanted) is not { } scalar)
        {
            return (null, []);
        }

        string number = Prose.WordsOf(scalar.Text).FirstOrDefault() ?? "";
        if (OutlineAsk.NumberIn(number) is not ({ } most and >= 1 and <= 1000))
        {
            context.Problems.Add(SheetProblems.WantedNumber(scalar.Span, scalar.Text, Wanted));
            return (null, []);
        }

        int behind = scalar.Text.IndexOf(number, StringComparison.Ordinal) + number.Length;
        return ((int)most, [.. KindWords.Read(context, scalar, behind)]);
    }
}
