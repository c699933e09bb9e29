using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>boards</c>.</summary>
internal static class BoardsSection
{
    private static readonly string[] Later = ["hexes", "points", "file", "regions", "areas", "links", "values"];

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the boards"))
        {
            if (entry.Value is not OutlineMapping mapping)
            {
                context.Problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "what the board is like, such as 'squares: 5 across 4 up'"));
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "boards");
            ReadBoard(context, entry.Key, mapping);
        }
    }

    private static void ReadBoard(LoadContext context, OutlineScalar key, OutlineMapping mapping)
    {
        var place = new Place(OutlineAsk.Fold(key.Text), PlaceForm.Board, IsOfEachPlayer(mapping), context.Declared.Boards.Count, key.Span);
        context.Declare(place);
        foreach (OutlineEntry later in mapping.Entries.Where(e => Later.Contains(e.Key.Text)))
        {
            context.Problems.Add(SheetProblems.NotYet(later.Key.Span, $"'{later.Key.Text}' of a board"));
        }

        BoardShape? shape = BoardShapeReader.Read(context, key, mapping);
        SpaceNoun noun = Noun(context, place, mapping);
        shape ??= new BoardShape([], [], [], null, null);
        var spaces = shape.Spaces.Select((s, i) => new BoardSpace(new SpaceName(s.Name, place, i, s.At), s.Column, s.Row)).ToList();
        foreach (BoardSpace space in spaces)
        {
            DeclareSpace(context, space.Name);
        }

        context.Declared.Boards[place] = new BoardFacts(place, [.. spaces], shape.Columns, shape.Rows, [.. Families(context, place, shape)], noun)
        {
            IsUpright = mapping.Find("stands")?.Value is OutlineScalar { Text: "upright" },
            Neighbours = Neighbours(context, mapping),
            MostInSpace = MostInSpace(context, mapping),
            Wraps = mapping.Find("wraps") is not null || mapping.Find("ring") is not null,
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

    private static bool IsOfEachPlayer(OutlineMapping mapping) => mapping.Find("of")?.Value is OutlineScalar of && OutlineAsk.Fold(of.Text) == "each player";

    private static SpaceNoun Noun(LoadContext context, Place place, OutlineMapping mapping)
    {
        string noun = mapping.Find("spaces")?.Value is OutlineScalar given ? OutlineAsk.Fold(given.Text) : "space";
        string plural = mapping.Find("plural")?.Value is OutlineScalar many ? OutlineAsk.Fold(many.Text) : OutlineAsk.PluralOf(noun);
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
        foreach ((string? name, bool columns) in ((string?, bool)[])[(shape.ColumnName, true), (shape.RowName, false)])
        {
            if (name is null)
            {
                continue;
            }

            var family = new LineFamily(name, OutlineAsk.PluralOf(name), place, columns, place.DeclaredAt);
            context.Declare(family, family.Plural);
            yield return family;
        }
    }

    private static Touching Neighbours(LoadContext context, OutlineMapping mapping)
    {
        if (mapping.Find("neighbours")?.Value is not OutlineScalar scalar)
        {
            return Touching.Sides;
        }

        switch (OutlineAsk.Fold(scalar.Text))
        {
            case "sides":
                return Touching.Sides;
            case "corners":
                return Touching.Corners;
            case "sides and corners":
                return Touching.SidesAndCorners;
            default:
                context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, scalar.Text, "a way in which spaces touch", ["sides", "corners", "sides and corners"]));
                return Touching.Sides;
        }
    }

    // `holds: 1 ware`, `holds: 3`
    private static int? MostInSpace(LoadContext context, OutlineMapping mapping)
    {
        if (mapping.Find("holds")?.Value is not OutlineScalar scalar)
        {
            return null;
        }

        string first = OutlineAsk.Fold(scalar.Text).Split(' ')[0];
        if (OutlineAsk.NumberIn(first) is { } most and >= 1 and <= 1000)
        {
            return (int)most;
        }

        context.Problems.Add(SheetProblems.WantedNumber(scalar.Span, scalar.Text, "how many a space holds, such as '1 ware'"));
        return null;
    }
}
