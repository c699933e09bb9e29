using System.Xml.Linq;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Reads what the writers wrote, as XML.</summary>
internal static class Parsed
{
    public static XElement Html(string html) => XDocument.Parse(html, LoadOptions.PreserveWhitespace).Root!;

    public static IEnumerable<XElement> WithClass(XElement root, string name) =>
        root.Descendants().Where(element => element.Attribute("class")?.Value.Split(' ').Contains(name) == true);
}
