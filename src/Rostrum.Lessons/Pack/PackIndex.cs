using System.Collections.Immutable;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Page;
using Rostrum.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>Writes the first page of a pack: what lies in it, and what to do with each file.</summary>
internal static class PackIndex
{
    /// <summary>Its name in the pack.</summary>
    public const string FileName = "index.html";

    private static readonly ImmutableArray<(string Title, ImmutableArray<(string Name, string Does)> Files)> Groups =
    [
        ("Before the camera",
        [
            ("notes.md", "Read it first. What to say about your copy, what the check found, questions for the publisher. It stays with you."),
            ("teleprompter.html", "Open it on the screen at the lens. The space bar starts and stops it; the arrow keys change the pace. For a glass, press M."),
        ]),
        ("At the cut",
        [
            ("shots.otio", "Open it in your editing program: the shots in order, green markers where a number, a page or an arrow goes onto the picture, red ones where something is filmed again. The times are estimates."),
            (PictureNames.Folder, "Every shot as a drawing: in the folder “dark” for the film, where a light picture would dazzle; the others for pages, “.svg” for print."),
            ("chapters.ffmeta", "Puts the chapters into the video:`ffmpeg -i film.mp4 -i chapters.ffmeta -map 0 -map_chapters 1 -c copy film-with-chapters.mp4"),
            ("chapters.xml", "The same for Matroska:`mkvmerge -o film.mkv --chapters chapters.xml film.mp4"),
        ]),
        ("Below the video",
        [
            ("description.txt", "Paste it below the video. What stands in square brackets is for you to fill in or to take away."),
            ("chapters.txt", "The chapters alone, for a description that you have already."),
            ("captions.vtt", "Your captions, cleaned and broken into lines that can be read; word for word what you gave. Upload them."),
            ("captions.srt", "The same for platforms that want SubRip."),
        ]),
        ("For those who watch",
        [
            ("lesson.html", "The lesson as a page to publish, together with the folder “pictures”."),
            ("hand-out-a4.pdf", "The player aid to print, with drawings, on A4."),
            ("hand-out-letter.pdf", "The same on US Letter."),
            ("player-aid.html", "The player aid as a page, which can be read aloud by a machine."),
        ]),
    ];

    /// <summary>The page as HTML.</summary>
    /// <param name="lesson">The lesson's page, for its names.</param>
    /// <param name="files">The names of all other files.</param>
    /// <param name="times">Where the times of the chapters come from.</param>
    /// <param name="assets">The typeface to embed.</param>
    public static string Write(LessonPage lesson, IEnumerable<string> files, ChapterTimes times, PageAssets assets)
    {
        string[] names = [.. files];
        var page = new Markup();
        PageShell.Begin(page, lesson.Language, $"{lesson.Title}: the pack", "", PageStyle.ForIndex(assets));
        page.Open("body").Line()
            .Open("header", ("class", "masthead packed")).Open("div", ("class", "masthead-in")).Open("div").Line()
            .Leaf("p", lesson.Game, ("class", "game")).Line()
            .Leaf("h1", lesson.Title).Line()
            .Leaf("p", "What lies in this pack, and what to do with each file. This page is for you.", ("class", "lead")).Line()
            .Close().Close().Close().Line()
            .Open("main", ("class", "table packed")).Line();
        foreach ((string title, ImmutableArray<(string Name, string Does)> group) in Groups)
        {
            Group(page, title, [.. group.Where(f => names.Any(n => f.Name == n || (f.Name.EndsWith('/') && n.StartsWith(f.Name, StringComparison.Ordinal))))], title == "Below the video" ? Says(times) : "");
        }

        page.Close().Line().Close().Line().Close().Line();
        return page.ToString();
    }

    private static void Group(Markup page, string title, ImmutableArray<(string Name, string Does)> files, string says)
    {
        if (files.IsEmpty)
        {
            return;
        }

        string id = Prose.Fold(title).Replace(' ', '-').ToLowerInvariant();
        page.Open("section", ("class", "topic wide"), ("aria-labelledby", id)).Open("div", ("class", "text")).Line()
            .Leaf("h2", title, ("id", id)).Line();
        if (says.Length > 0)
        {
            page.Leaf("p", says).Line();
        }

        page.Open("dl", ("class", "files")).Line();
        foreach ((string name, string does) in files)
        {
            page.Open("div").Open("dt").Leaf("a", name.TrimEnd('/'), ("href", name)).Close().Open("dd");
            Does(page, does.Split('`'));
            page.Close().Close().Line();
        }

        page.Close().Line().Close().Close().Line();
    }

    // Words, and behind a '`' a command to type, whose words are not broken.
    private static void Does(Markup page, string[] parts)
    {
        page.Text(parts[0]);
        foreach (string command in parts[1..])
        {
            page.Text(" ").Open("code");
            foreach (string word in command.Split(' '))
            {
                page.Leaf("span", word).Text(" ");
            }

            page.Close();
        }
    }

    private static string Says(ChapterTimes times) => times switch
    {
        ChapterTimes.Given => "The times of the chapters are those that you gave.",
        ChapterTimes.Heard => "The times of the chapters were found in your captions. Look at each once.",
        _ => "The times of the chapters are estimates from the words. When the video is cut, make the pack again with “--captions” and its caption file, or with “--times” and a list of your own.",
    };
}
