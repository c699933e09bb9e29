using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Page;
using Rostrum.Text;

namespace Rostrum.Lessons.Prompter;

/// <summary>Writes the teleprompter: one file that needs nothing else and no network.</summary>
/// <remarks>Its one script is ours and is named to the browser by its hash, so that no other ever runs in the page. Without a script the words stand there and are moved by
/// hand. The same script of a lesson gives the same text; the result is HTML that also reads as XML.</remarks>
public static class PrompterWriter
{
    private const int MostOfDirection = 120;

    private static readonly string Code = Read("prompter.js");

    private static readonly (string Keys, string Does)[] Keys =
    [
        ("Space", "start, stop"),
        ("← →", "slower, faster"),
        ("↑ ↓", "a passage back, a passage on"),
        ("Page Up, Down", "a topic back, a topic on"),
        ("+ −", "larger, smaller letters"),
        ("M", "mirror, for the glass in front of a lens"),
        ("L", "light or dark"),
    ];

    /// <summary>The page as HTML.</summary>
    /// <param name="script">What is spoken.</param>
    /// <param name="assets">The typeface to embed, if any.</param>
    /// <exception cref="ArgumentException">A font is none.</exception>
    public static string Write(PrompterScript script, PageAssets assets)
    {
        ArgumentNullException.ThrowIfNull(script);
        ArgumentNullException.ThrowIfNull(assets);
        var page = new Markup();
        PageShell.Begin(page, script.Language, $"{script.Title}: teleprompter", "", PageStyle.ForPrompter(assets), HashOf(Code));
        page.Open("body").Line();
        PrompterBar.Write(page, script.WordsAMinute);
        page.Open("main", ("id", "script"), ("data-pace", script.WordsAMinute.ToString(CultureInfo.InvariantCulture)), ("tabindex", "-1")).Line();
        WriteHead(page, script);
        for (int i = 0; i < script.Topics.Length; i++)
        {
            WriteTopic(page, script.Topics[i], i);
        }

        page.Leaf("p", "The end", ("class", "quiet end")).Line().Close().Line()
            .Open("script").Trusted(Code).Close().Line().Close().Line().Close().Line();
        return page.ToString();
    }

    /// <summary>How a browser names a script that it may run: <c>sha256-…</c> (W3C, Content Security Policy Level 3, 2.3.1).</summary>
    internal static string HashOf(string code) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(code)))}";

    private static void WriteHead(Markup page, PrompterScript script)
    {
        string who = script.Presenter.Length > 0 ? $"{script.Presenter}. " : "";
        page.Open("header").Line().Leaf("h1", script.Title).Line()
            .Leaf("p", $"{who}Nothing on this page is spoken, nor any words of this size later on.", ("class", "quiet")).Line()
            .Leaf("noscript", "Without its script this page does not move by itself: scroll by hand.").Line()
            .Open("dl", ("class", "quiet keys")).Line();
        foreach ((string keys, string does) in Keys)
        {
            page.Open("div").Leaf("dt", keys).Leaf("dd", does).Close().Line();
        }

        page.Close().Line().Close().Line();
    }

    private static void WriteTopic(Markup page, PrompterTopic topic, int index)
    {
        string id = $"topic-{index + 1}";
        page.Open("section", ("aria-labelledby", id)).Line()
            .Open("h2", ("id", id)).Text(topic.Title).Text(" ").Leaf("span", FilmTime.Write(topic.Start), ("class", "quiet")).Close().Line();
        foreach (PrompterBlock block in topic.Blocks)
        {
            WriteBlock(page, block);
        }

        page.Close().Line();
    }

    private static void WriteBlock(Markup page, PrompterBlock block)
    {
        switch (block)
        {
            case PrompterBlock.Spoken spoken:
                WritePassage(page, "p", spoken.Said);
                break;
            case PrompterBlock.List list:
                page.Open(list.IsNumbered ? "ol" : "ul").Line();
                foreach (PrompterPassage item in list.Items)
                {
                    WritePassage(page, "li", item);
                }

                page.Close().Line();
                break;
            case PrompterBlock.Heading heading:
                page.Leaf("h3", heading.Words).Line();
                break;
            case PrompterBlock.Direction direction:
                page.Open("p", ("class", "quiet shot"), ("data-words", "0"), ("data-hold", direction.HoldSeconds.ToString(CultureInfo.InvariantCulture)))
                    .Leaf("b", direction.Kind).Text($" {direction.Words}").Close().Line();
                break;
        }
    }

    private static void WritePassage(Markup page, string tag, PrompterPassage passage)
    {
        page.Open(tag, ("data-words", passage.Words.ToString(CultureInfo.InvariantCulture)));
        foreach (PrompterRun run in passage.Runs)
        {
            WriteRun(page, run);
        }

        page.Close().Line();
    }

    // A direction comes before its words, so that it is seen in time and no full stop is torn from them.
    private static void WriteRun(Markup page, PrompterRun run)
    {
        if (run.Direction.Length > 0)
        {
            page.Leaf("span", Prose.Clip(run.Direction, MostOfDirection), ("class", "quiet in")).Text(" ");
        }

        if (run.IsStressed)
        {
            page.Leaf("strong", run.Words);
        }
        else if (run.IsWrong)
        {
            page.Leaf("span", run.Words, ("class", "wrong"));
        }
        else
        {
            page.Text(run.Words);
        }
    }

    private static string Read(string name)
    {
        using Stream stream = typeof(PrompterWriter).Assembly.GetManifestResourceStream($"Rostrum.Lessons.Prompter.{name}")
            ?? throw new InvalidOperationException($"{name} is not in the assembly.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
