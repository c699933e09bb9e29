using System.Collections.Frozen;
using System.Xml;
using System.Xml.Linq;

namespace Rostrum.Lessons.Page;

/// <summary>Lets a drawing into a page only if it draws and does nothing else.</summary>
/// <remarks>
/// A drawing that is part of the page could run scripts, restyle the page or fetch things. So elements and style
/// properties are allowed by name, ids get a prefix of their own, classes and namespaces are dropped, and every
/// reference must stay inside the drawing.
/// </remarks>
internal static class DrawingGuard
{
    private static readonly FrozenSet<string> Elements = FrozenSet.ToFrozenSet(
    [
        "svg", "g", "defs", "title", "desc", "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text",
        "tspan", "use", "symbol", "linearGradient", "radialGradient", "stop", "clipPath", "mask", "pattern", "marker",
    ]);

    private static readonly FrozenSet<string> StyleProperties = FrozenSet.ToFrozenSet(
    [
        "fill", "fill-opacity", "fill-rule", "stroke", "stroke-width", "stroke-opacity", "stroke-dasharray", "stroke-linecap",
        "stroke-linejoin", "opacity", "font-family", "font-size", "font-weight", "font-style", "text-anchor",
        "dominant-baseline", "letter-spacing", "stop-color", "stop-opacity", "paint-order",
    ]);

    private static readonly FrozenSet<string> Dropped = FrozenSet.ToFrozenSet(["class", "role", "tabindex", "lang", "version"]);

    /// <summary>The drawing as markup that is safe inside a page.</summary>
    /// <param name="svg">The drawing as it was given.</param>
    /// <param name="prefix">Goes before every id in the drawing, so that two drawings never share one.</param>
    /// <exception cref="ArgumentException">It is not well-formed, or holds something that no drawing needs; the message names it.</exception>
    public static string Clean(string svg, string prefix)
    {
        XElement root = Parse(svg);
        Expect(root.Name.LocalName == "svg", "it does not begin with an svg element");
        XElement clean = Copy(root, prefix);
        clean.SetAttributeValue("aria-hidden", "true");
        clean.SetAttributeValue("focusable", "false");
        return clean.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Parse(string svg)
    {
        try
        {
            var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };
            using var reader = XmlReader.Create(new StringReader(svg), settings);
            return XElement.Load(reader, LoadOptions.PreserveWhitespace);
        }
        catch (XmlException problem)
        {
            throw new ArgumentException($"A drawing is refused: {problem.Message}", nameof(svg), problem);
        }
    }

    private static XElement Copy(XElement element, string prefix)
    {
        string name = element.Name.LocalName;
        Expect(Elements.Contains(name), $"it holds '{name}'");
        var copy = new XElement(name);
        foreach (XAttribute attribute in element.Attributes().Where(attribute => !IsDropped(attribute)))
        {
            copy.SetAttributeValue(attribute.Name.LocalName, Checked(attribute, prefix));
        }

        foreach (XNode node in element.Nodes())
        {
            switch (node)
            {
                case XElement child when child.Name.LocalName != "metadata":
                    copy.Add(Copy(child, prefix));
                    break;
                case XText text:
                    copy.Add(new XText(text.Value));
                    break;
            }
        }

        return copy;
    }

    private static bool IsDropped(XAttribute attribute) =>
        attribute.IsNamespaceDeclaration
        || Dropped.Contains(attribute.Name.LocalName)
        || attribute.Name.LocalName.StartsWith("aria-", StringComparison.Ordinal)
        || attribute.Name.LocalName.StartsWith("data-", StringComparison.Ordinal)
        || (attribute.Name.NamespaceName.Length > 0 && attribute.Name.LocalName != "href");

    private static string Checked(XAttribute attribute, string prefix)
    {
        string name = attribute.Name.LocalName;
        string value = attribute.Value;
        Expect(!name.StartsWith("on", StringComparison.OrdinalIgnoreCase), $"it reacts to something ('{name}')");
        Expect(!value.Contains('\\', StringComparison.Ordinal), $"'{name}' holds a backslash");
        return name switch
        {
            "id" => $"{prefix}-{value}",
            "href" => Local(value, prefix),
            "style" => Style(value, prefix),
            _ => Paint(name, value, prefix),
        };
    }

    private static string Local(string value, string prefix)
    {
        Expect(value.StartsWith('#'), "it refers to something outside itself");
        return $"#{prefix}-{value[1..]}";
    }

    private static string Style(string value, string prefix)
    {
        foreach (string property in value.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            string name = property.Split(':')[0].Trim();
            Expect(StyleProperties.Contains(name), $"its style sets '{name}'");
        }

        return Paint("style", value, prefix);
    }

    /// <summary>A value in which <c>url()</c> may only point to an id of the drawing.</summary>
    private static string Paint(string name, string value, string prefix)
    {
        const string Inside = "url(#";
        string left = value.Replace(Inside, "", StringComparison.Ordinal);
        Expect(!left.Contains("url", StringComparison.OrdinalIgnoreCase) || !left.Contains('('), $"'{name}' refers to something outside itself");
        Expect(!left.Contains("image", StringComparison.OrdinalIgnoreCase) || !left.Contains('('), $"'{name}' refers to an image");
        return value.Replace(Inside, $"{Inside}{prefix}-", StringComparison.Ordinal);
    }

    private static void Expect(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new ArgumentException($"A drawing is refused: {otherwise}.");
        }
    }
}
