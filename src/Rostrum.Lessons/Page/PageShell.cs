namespace Rostrum.Lessons.Page;

/// <summary>Writes what every page begins with.</summary>
internal static class PageShell
{
    /// <summary>Nothing but what the page itself carries may be shown; a reader's program enforces it.</summary>
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

    /// <summary>Opens <c>html</c> and writes the whole head; the caller opens <c>body</c> and closes both.</summary>
    public static void Begin(Markup page, string language, string title, string description, string css)
    {
        page.Trusted("<!DOCTYPE html>").Line().Open("html", ("lang", language)).Line().Open("head").Line()
            .Void("meta", ("charset", "utf-8")).Line()
            .Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line()
            .Void("meta", ("http-equiv", "Content-Security-Policy"), ("content", Policy)).Line()
            .Void("meta", ("name", "referrer"), ("content", "no-referrer")).Line()
            .Leaf("title", title).Line();
        if (description.Length > 0)
        {
            page.Void("meta", ("name", "description"), ("content", description)).Line();
        }

        page.Open("style").Line().Trusted(css).Close().Line().Close().Line();
    }
}
