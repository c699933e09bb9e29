namespace Rostrum.Pictures;

/// <summary>Puts the names of areas on small plates of the board's wood; one whose name finds no room is told on the slip.</summary>
internal sealed class AreaPlates(BoardPlace place)
{
    private static readonly Tone[] Tints = [Tones.FirstArea, Tones.SecondArea, Tones.ThirdArea];

    private readonly int[] _tints = Tinted(place);

    /// <summary>The ground of a space: the tint of the first area that it lies in.</summary>
    public Tone TintOf(int space)
    {
        int area = place.Board.Areas.Select((each, at) => each.Spaces.Contains(space) ? at : -1).FirstOrDefault(at => at >= 0, -1);
        return area < 0 ? Tones.Back : TintOfArea(area);
    }

    /// <summary>The tint of an area, by its place among those of the board.</summary>
    public Tone TintOfArea(int area) => Tints[_tints[area]];

    /// <summary>The plates.</summary>
    public IEnumerable<SceneNode> Paint() => Set().SelectMany(area => area.Plates ?? []).SelectMany(Plate);

    /// <summary>A line for each area without a plate.</summary>
    public IEnumerable<string> Notes => Set().Where(each => each.Plates is null)
        .Select(each => $"{each.Area.Says}: {string.Join(", ", each.Area.Spaces.Select(space => place.Board.Spaces[space].Name))}.");

    // Each area takes the tint that fewest have, of those that no area beside it has.
    private static int[] Tinted(BoardPlace place)
    {
        var tints = new int[place.Board.Areas.Count];
        for (int area = 0; area < tints.Length; area++)
        {
            HashSet<int> beside = [.. place.Board.Areas[area].Spaces.SelectMany(place.Sides)];
            int[] taken = [.. Enumerable.Range(0, area).Where(other => place.Board.Areas[other].Spaces.Any(beside.Contains)).Select(other => tints[other])];
            tints[area] = Enumerable.Range(0, Tints.Length).Except(taken).DefaultIfEmpty(area % Tints.Length).MinBy(tint => tints.Take(area).Count(each => each == tint));
        }

        return tints;
    }

    // An area has a plate on each of its parts, or none at all.
    private List<(AreaPicture Area, List<SceneNode.Text>? Plates)> Set()
    {
        List<(AreaPicture, List<SceneNode.Text>?)> set = [];
        List<Box> taken = [];
        foreach (AreaPicture area in place.Board.Areas)
        {
            List<SceneNode.Text> plates = [];
            ILookup<int, PlateSpot> parts = place.PlateSpots(area).ToLookup(spot => spot.Part);
            foreach (IGrouping<int, PlateSpot> part in parts)
            {
                SceneNode.Text? free = part.Select(spot => (spot.Widest, Text: Text(area, spot)))
                    .Where(each => BoxOf(each.Text).Width <= each.Widest && !taken.Concat(plates.Select(BoxOf)).Any(box => Overlap(box, BoxOf(each.Text))))
                    .Select(each => each.Text).FirstOrDefault();
                plates.AddRange(free is null ? [] : [free]);
            }

            bool isTold = parts.Count > 0 && plates.Count == parts.Count;
            taken.AddRange(isTold ? plates.Select(BoxOf) : []);
            set.Add((area, isTold ? plates : null));
        }

        return set;
    }

    private SceneNode.Text Text(AreaPicture area, PlateSpot spot) =>
        new(spot.Centre.Moved(0, place.Measures.SmallSize * 0.34), area.Label, place.Measures.SmallSize, Tones.TagInk, TextAnchor.Middle, FontWeight.Bold);

    private static IEnumerable<SceneNode> Plate(SceneNode.Text text) =>
        [new SceneNode.Rectangle(BoxOf(text), new Paint(Tones.Frame, Tones.FrameEdge, Math.Max(1, text.Size * 0.08)), text.Size * 0.2), text];

    private static Box BoxOf(SceneNode.Text text)
    {
        double width = text.Width + (text.Size * 0.9);
        return new Box(text.At.X - (width / 2), text.At.Y - (text.Size * 1.0), width, text.Size * 1.32);
    }

    private static bool Overlap(Box one, Box other) => one.X < other.Right && other.X < one.Right && one.Y < other.Bottom && other.Y < one.Bottom;
}
