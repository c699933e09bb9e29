namespace Rostrum.Pictures;

/// <summary>Where a text begins, ends or has its middle.</summary>
public enum TextAnchor
{
    /// <summary>The given place is the left end.</summary>
    Start,

    /// <summary>The given place is the middle.</summary>
    Middle,

    /// <summary>The given place is the right end.</summary>
    End,
}

/// <summary>One thing to draw; later ones cover earlier ones.</summary>
public abstract record SceneNode
{
    private SceneNode()
    {
    }

    /// <summary>An upright rectangle.</summary>
    /// <param name="Box">Its edges.</param>
    /// <param name="Paint">Its colours.</param>
    /// <param name="Radius">Radius of the corners; 0 for sharp ones.</param>
    public sealed record Rectangle(Box Box, Paint Paint, double Radius = 0) : SceneNode;

    /// <summary>A circle.</summary>
    /// <param name="Centre">Its middle.</param>
    /// <param name="Radius">In scene units.</param>
    /// <param name="Paint">Its colours.</param>
    public sealed record Circle(Point Centre, double Radius, Paint Paint) : SceneNode;

    /// <summary>Any shape, polygons included.</summary>
    /// <param name="Data">Its contours; filled by the even-odd rule.</param>
    /// <param name="Paint">Its colours.</param>
    public sealed record Path(PathData Data, Paint Paint) : SceneNode;

    /// <summary>A straight line.</summary>
    /// <param name="From">One end.</param>
    /// <param name="To">The other end.</param>
    /// <param name="Paint">Only the stroke counts.</param>
    public sealed record Line(Point From, Point To, Paint Paint) : SceneNode;

    /// <summary>A straight line with a head at its end.</summary>
    /// <param name="From">Where it begins.</param>
    /// <param name="To">The tip of the head.</param>
    /// <param name="Tone">Colour of line and head.</param>
    /// <param name="Width">Width of the line; the head is 3.4 widths across and as long.</param>
    public sealed record Arrow(Point From, Point To, Tone Tone, double Width) : SceneNode
    {
        /// <summary>Where the line ends and the head begins.</summary>
        public Point Neck => Along(HeadLength);

        /// <summary>The three corners of the head, the tip first.</summary>
        public PathData Head
        {
            get
            {
                Point neck = Along(HeadLength);
                double length = double.Hypot(To.X - From.X, To.Y - From.Y);
                double x = -(To.Y - From.Y) / length * HeadLength / 2;
                double y = (To.X - From.X) / length * HeadLength / 2;
                return PathData.Polygon(To, neck.Moved(x, y), neck.Moved(-x, -y));
            }
        }

        private double HeadLength => 3.4 * Width;

        private Point Along(double beforeTip)
        {
            double length = double.Hypot(To.X - From.X, To.Y - From.Y);
            double share = beforeTip / length;
            return new Point(To.X - (share * (To.X - From.X)), To.Y - (share * (To.Y - From.Y)));
        }
    }

    /// <summary>One line of text in the shipped font.</summary>
    /// <param name="At">The anchor, on the base line.</param>
    /// <param name="Content">What it says; escaped by the writers, never read as markup.</param>
    /// <param name="Size">Height of an em in scene units.</param>
    /// <param name="Tone">Its colour.</param>
    /// <param name="Anchor">Which part of the text stands at the anchor.</param>
    /// <param name="Weight">Regular or bold.</param>
    public sealed record Text(Point At, string Content, double Size, Tone Tone, TextAnchor Anchor = TextAnchor.Start, FontWeight Weight = FontWeight.Regular) : SceneNode
    {
        /// <summary>Its width in scene units, by the shipped font.</summary>
        public double Width => ShippedFonts.Width(Content, Size, Weight);
    }

    /// <summary>Things that belong together.</summary>
    /// <param name="Id">Unique in the scene; letters, digits and hyphens.</param>
    /// <param name="Children">In drawing order.</param>
    public sealed record Group(string Id, ValueList<SceneNode> Children) : SceneNode;
}
