using System.Globalization;
using System.Text;

namespace Rostrum.Lessons.Page;

/// <summary>Gathers the style sheet of a page: colours, embedded typeface, then our own rules.</summary>
internal static class PageStyle
{
    /// <summary>The style sheet of the lesson page.</summary>
    public static string ForLesson(PageAssets assets) => Gather(assets, "ground", "slips", "lesson");

    /// <summary>The style sheet of the player aid.</summary>
    public static string ForAid(PageAssets assets) => Gather(assets, "ground", "aid");

    /// <summary>The style sheet of a pack's list of files.</summary>
    public static string ForIndex(PageAssets assets) => Gather(assets with { PictureStyle = "" }, "ground", "lesson", "index");

    /// <summary>The style sheet of the teleprompter, which is dark whatever the reader's machine asks for.</summary>
    public static string ForPrompter(PageAssets assets) => Gather("", assets, "prompter");

    private static string Gather(PageAssets assets, params ReadOnlySpan<string> parts) => Gather(PageTheme.Css() + assets.PictureStyle, assets, parts);

    private static string Gather(string colours, PageAssets assets, params ReadOnlySpan<string> parts)
    {
        var css = new StringBuilder(colours);
        foreach (PageFont font in assets.Fonts)
        {
            css.Append(FontFace(font));
        }

        foreach (string part in parts)
        {
            css.Append(Read(part));
        }

        return css.ToString();
    }

    private static string FontFace(PageFont font)
    {
        (string mime, string format) = FormatOf(font.Bytes.AsSpan());
        string bytes = Convert.ToBase64String(font.Bytes.AsSpan());
        string style = font.IsItalic ? "italic" : "normal";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"@font-face {{ font-family: \"Rostrum Page\"; font-weight: {font.Weight}; font-style: {style}; font-display: block; src: url(data:{mime};base64,{bytes}) format(\"{format}\"); }}\n");
    }

    /// <summary>Tells the four font formats by their first four bytes (OpenType specification; WOFF 1.0; WOFF 2.0).</summary>
    private static (string Mime, string Format) FormatOf(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [(byte)'w', (byte)'O', (byte)'F', (byte)'2', ..] => ("font/woff2", "woff2"),
        [(byte)'w', (byte)'O', (byte)'F', (byte)'F', ..] => ("font/woff", "woff"),
        [(byte)'O', (byte)'T', (byte)'T', (byte)'O', ..] => ("font/otf", "opentype"),
        [0, 1, 0, 0, ..] or [(byte)'t', (byte)'r', (byte)'u', (byte)'e', ..] => ("font/ttf", "truetype"),
        _ => throw new ArgumentException("A font is neither TrueType, OpenType, WOFF nor WOFF2."),
    };

    private static string Read(string part)
    {
        using Stream stream = typeof(PageStyle).Assembly.GetManifestResourceStream($"Rostrum.Lessons.Page.{part}.css")
            ?? throw new InvalidOperationException($"The style sheet {part}.css is not in the assembly.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
