using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Reads the style sheets out of the assembly.</summary>
internal static class StyleSheets
{
    public static string Read(string part)
    {
        using Stream stream = typeof(LessonPage).Assembly.GetManifestResourceStream($"Rostrum.Lessons.Page.{part}.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
