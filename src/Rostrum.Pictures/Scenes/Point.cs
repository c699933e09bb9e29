namespace Rostrum.Pictures;

/// <summary>A place in a scene.</summary>
/// <param name="X">Scene units from the left edge.</param>
/// <param name="Y">Scene units from the top edge, growing downwards.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The point moved by an amount.</summary>
    public Point Moved(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>An upright rectangle.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Never negative.</param>
/// <param name="Height">Never negative.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>The right edge.</summary>
    public double Right => X + Width;

    /// <summary>The lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>The middle.</summary>
    public Point Centre => new(X + (Width / 2), Y + (Height / 2));

    /// <summary>The box with every edge moved outwards; inwards for a negative amount.</summary>
    public Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    /// <summary>The box moved by an amount.</summary>
    public Box Moved(double dx, double dy) => this with { X = X + dx, Y = Y + dy };
}
