namespace Rostrum.Pictures;

/// <summary>A board whose spaces are round.</summary>
internal abstract record DiscPlace(BoardPicture Board, TableMeasures Measures, SpaceNames Names) : BoardPlace(Board, Measures, Names)
{
    /// <summary>The middle of a space.</summary>
    public abstract Point Centre(int space);

    /// <summary>Radius of a space.</summary>
    protected double Radius => Measures.Shelf * 0.44;

    public override Box Niche(int space)
    {
        Point centre = Centre(space);
        return new Box(centre.X - Radius, centre.Y - Radius, 2 * Radius, 2 * Radius);
    }

    public override Box Room(int space) => RoomIn(space, Measures.Shelf * 0.58, Measures.Shelf * 0.72);

    public override Point NumbersAt(int space) => Centre(space).Moved(0, Measures.Shelf * 0.25);

    public override SceneNode Shape(int space, Paint paint, double grown = 0) => new SceneNode.Circle(Centre(space), Radius + grown, paint);

    public override IEnumerable<SceneNode> Ground(int space, Tone tone) =>
        [new SceneNode.Circle(Centre(space).Moved(0, Measures.PlankHeight / 2), Radius, new Paint(Tones.Plank)), Shape(space, new Paint(tone))];

    public override Point TagCorner(int space) => Centre(space).Moved(-Radius * 0.8, -Radius * 0.7);
}
