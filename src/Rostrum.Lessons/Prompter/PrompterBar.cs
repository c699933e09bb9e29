using System.Globalization;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Prompter;

/// <summary>Writes what stands beside the script: what is left, the mark at the reading line, the buttons.</summary>
internal static class PrompterBar
{
    private static readonly (string Id, string Words, bool IsSwitch)[] Buttons =
    [
        ("run", "Start", true), ("slower", "Slower", false), ("faster", "Faster", false), ("smaller", "Smaller", false), ("larger", "Larger", false),
        ("mirror", "Mirror", true), ("light", "Light", true), ("steps", "In steps", true), ("keys", "Letter keys", true),
    ];

    /// <summary>Everything; hidden until the script of the page runs, because nothing of it works without.</summary>
    public static void Write(Markup page, int wordsAMinute)
    {
        page.Open("div", ("class", "status"), ("hidden", "hidden")).Line()
            .Leaf("span", "", ("id", "topic")).Text(" ").Leaf("span", "", ("id", "left")).Text(" ")
            .Leaf("span", string.Create(CultureInfo.InvariantCulture, $"{wordsAMinute} words a minute"), ("id", "pace")).Line().Close().Line()
            .Leaf("div", "", ("class", "mark"), ("aria-hidden", "true"), ("hidden", "hidden")).Line()
            .Open("div", ("class", "bar"), ("role", "group"), ("aria-label", "Teleprompter"), ("hidden", "hidden")).Line();
        foreach ((string id, string words, bool isSwitch) in Buttons)
        {
            page.Leaf("button", words, ("type", "button"), ("id", id), ("aria-pressed", isSwitch ? "false" : null)).Line();
        }

        page.Close().Line();
    }
}
