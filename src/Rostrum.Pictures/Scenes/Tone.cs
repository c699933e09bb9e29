namespace Rostrum.Pictures;

/// <summary>A colour by what it is for; a <see cref="Palette"/> says which colour that is.</summary>
/// <param name="Name">Lower-case words with hyphens, such as <c>board-back</c>; in a page it is the custom property <c>--rostrum-board-back</c>.</param>
public readonly record struct Tone(string Name)
{
    /// <summary>The custom property that stands for the tone in a page.</summary>
    public string CssProperty => "--rostrum-" + Name;
}
