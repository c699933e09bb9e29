namespace Rostrum.Pictures;

/// <summary>A document for paper, laid out already.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Subject">One sentence on what it holds.</param>
/// <param name="Language">Of its texts, as BCP 47 writes it: letters, digits and hyphens.</param>
/// <param name="Pages">At least one.</param>
public sealed record PaperDocument(string Title, string Subject, string Language, ValueList<PaperPage> Pages);

/// <summary>A page of paper. All lengths are points of 1/72 inch, from the upper left corner.</summary>
/// <param name="Width">Of the paper.</param>
/// <param name="Height">Of the paper.</param>
/// <param name="Nodes">Words and lines, from back to front.</param>
/// <param name="Pictures">Drawings, each in its place; none covers another or any words.</param>
public sealed record PaperPage(double Width, double Height, ValueList<SceneNode> Nodes, ValueList<PlacedScene> Pictures);

/// <summary>A drawing on a page.</summary>
/// <param name="Scene">The drawing.</param>
/// <param name="At">Its upper left corner on the page, in points.</param>
/// <param name="Scale">Points of a scene unit; above 0.</param>
public sealed record PlacedScene(Scene Scene, Point At, double Scale)
{
    /// <summary>The room that it takes.</summary>
    public Box Box => new(At.X, At.Y, Scene.Width * Scale, Scene.Height * Scale);
}
