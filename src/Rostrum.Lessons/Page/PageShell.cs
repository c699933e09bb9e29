namespace Rostrum.Lessons.Page;

/// <summary>Writes what every page begins with.</summary>
internal static class PageShell
{
    /// <summary>Nothing but what the page itself carries may be shown; a reader's program enforces it.</summary>
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; base-uri 'none'; form-action 'none'";

    private static string PolicyWith(string script) => script.Length == 0 ? Policy : $"{Policy}; script-src '{script}'";

    /// <summary>Opens <c>html</c> and writes the whole head; the caller opens <c>body</c> and closes both.</summary>
    /// <param name="page">Receives it.</param>
    /// <param name="language">Of the page.</param>
    /// <param name="title">For tabs and lists.</param>
    /// <param name="description">For those who find the page; empty for none.</param>
    /// <param name="css">Its style sheet.</param>
    /// <param name="script">The hash of the one script that may run, as <c>sha256-…</c>; empty for a page without any.</param>
    public static void Begin(Markup page, string language, string title, string description, string css, string script = "")
    {
        page.Trusted("<!DOCTYPE html>").Line().Open("html", ("lang", language)).Line().Open("head").Line()
            .Void("meta", ("charset", "utf-8")).Line()
            .Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line()
            .Void("meta", ("http-equiv", "Content-Security-Policy"), ("content", PolicyWith(script))).Line()
            .Void("meta", ("name", "referrer"), ("content", "no-referrer")).Line()
            .Leaf("title", title).Line();
        if (description.Length > 0)
        {
            page.Void("meta", ("name", "description"), ("content", description)).Line();
        }

        page.Open("style").Line().Trusted(css).Close().Line().Close().Line();
    }
}
