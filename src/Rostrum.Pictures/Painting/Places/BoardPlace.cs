namespace Rostrum.Pictures;

/// <summary>A board with its place in the scene.</summary>
/// <param name="Board">What it shows.</param>
/// <param name="Measures">Lengths of the picture.</param>
/// <param name="Names">Where its spaces are named.</param>
internal abstract record BoardPlace(BoardPicture Board, TableMeasures Measures, SpaceNames Names)
{
    /// <summary>The place of a board whose upper left corner is not known yet.</summary>
    public static BoardPlace Of(BoardPicture board, TableMeasures measures, SpaceNames names, TableView view) => board.Form switch
    {
        BoardForm.Hexes => new HexPlace(board, measures, names),
        BoardForm.Map => new MapPlace(board, measures, names),
        BoardForm.Ring => new RingPlace(board, measures, names),
        BoardForm.Track => new TrackPlace(board, measures, names),
        _ => new SquarePlace(board, measures, names, view),
    };

    /// <summary>The upper left corner of its frame.</summary>
    public Point Corner { get; init; }

    /// <summary>Width and height with the frame.</summary>
    public abstract (double Width, double Height) Size { get; }

    /// <summary>The board with its frame.</summary>
    public Box Framed => new(Corner.X, Corner.Y, Size.Width, Size.Height);

    /// <summary>What labels need outside the frame.</summary>
    public virtual Surroundings Outside => default;

    /// <summary>How its spaces are seen; only squares stand upright.</summary>
    public virtual TableView View => TableView.Above;

    /// <summary>The frame.</summary>
    public abstract PathData Frame { get; }

    /// <summary>Where things lie or stand in a space.</summary>
    public abstract Box Niche(int space);

    /// <summary>The part of the niche that pieces take.</summary>
    public abstract Box Room(int space);

    /// <summary>The shape of a space, its edges moved outwards.</summary>
    public abstract SceneNode Shape(int space, Paint paint, double grown = 0);

    /// <summary>The ground of a space without what lies on it.</summary>
    public virtual IEnumerable<SceneNode> Ground(int space, Tone tone) => [Shape(space, new Paint(tone))];

    /// <summary>Where a mark of a space has its tag: the upper left corner of the space.</summary>
    public virtual Point TagCorner(int space) => new(Niche(space).X, Niche(space).Y);

    /// <summary>The middle of the numbers that are printed on a space.</summary>
    public abstract Point NumbersAt(int space);

    /// <summary>Whether the name of a space stands on it where it is free.</summary>
    public abstract bool NamesFreeSpaces { get; }

    /// <summary>What lies on the frame below the spaces: lines of a map.</summary>
    public virtual IEnumerable<SceneNode> Below => [];

    /// <summary>What lies on the frame above the spaces: lines round areas, names of holes.</summary>
    public virtual IEnumerable<SceneNode> Above => [];

    /// <summary>True where a piece on several spaces is drawn as one; elsewhere it is drawn on each of them.</summary>
    public virtual bool DrawsBodies => false;

    /// <summary>A piece that lies on several spaces.</summary>
    public virtual IEnumerable<SceneNode> Body(BodyPicture body) => [];

    /// <summary>Names of spaces, rows and columns beside the spaces.</summary>
    public abstract IEnumerable<SceneNode> Labels { get; }

    /// <summary>What has no room on the board and is told on the slip: words that can follow the name of the board.</summary>
    public virtual IEnumerable<string> Notes => Areas.Notes.Concat(NumberNotes);

    /// <summary>Its areas.</summary>
    public AreaPlates Areas => new(this);

    /// <summary>The spaces beside a space.</summary>
    public abstract IEnumerable<int> Sides(int space);

    /// <summary>Where the label of an area could stand.</summary>
    public virtual IEnumerable<PlateSpot> PlateSpots(AreaPicture area) => [];

    /// <summary>Radius of the ring round a printed number.</summary>
    protected double NumberRadius => NumberMarks.Radius(Measures);

    /// <summary>Whether printed numbers stand on the spaces themselves.</summary>
    protected virtual bool HasNumbersOnSpaces => Board.NumberNames.Count > 0;

    /// <summary>Whether numbers stand on a space.</summary>
    public bool BearsNumbers(int space) => HasNumbersOnSpaces && Board.Spaces[space].Numbers.Any(number => number is not null);

    /// <summary>Room for pieces round the middle of a space; where numbers are printed, above them.</summary>
    /// <param name="space">The space.</param>
    /// <param name="width">The most that a piece may measure.</param>
    /// <param name="height">The most that a stack may measure.</param>
    protected Box RoomIn(int space, double width, double height)
    {
        Point centre = Niche(space).Centre;
        double top = centre.Y - (height / 2);
        double bottom = BearsNumbers(space) ? NumbersAt(space).Y - NumberRadius : centre.Y + (height / 2);
        return new Box(centre.X - (width / 2), top, width, bottom - top);
    }

    private IEnumerable<string> NumberNotes => Board.NumberNames.Count switch
    {
        0 => [],
        1 => [$"printed numbers: {Board.NumberNames[0]}."],
        _ => [$"printed numbers, from the left: {string.Join(", ", Board.NumberNames)}."],
    };
}

/// <summary>What labels need on each side of a frame.</summary>
internal readonly record struct Surroundings(double Left, double Right, double Above, double Below);

/// <summary>A place for the label of an area.</summary>
/// <param name="Part">Which of the parts that lie apart it belongs to, from 0.</param>
/// <param name="Centre">The middle of the label.</param>
/// <param name="Widest">The most that the label may measure there.</param>
internal readonly record struct PlateSpot(int Part, Point Centre, double Widest);
