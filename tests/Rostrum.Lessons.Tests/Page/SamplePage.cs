using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>
/// A page as a real lesson would fill it: parts of the Kiln Night lesson with its worked example E1
/// (games/kiln-night/rulebook.md, page 11). Game, presenter and words are invented.
/// </summary>
internal static partial class SamplePage
{
    public static LessonPage Whole { get; } = new("Kiln Night", "How to play Kiln Night", "Oona Tarrow", "25 November 2026", "first printing")
    {
        Lead = "You are a potter. Through a single night you load your own chamber of the village kiln. At dawn the chamber is fired, and you count what stays whole.",
        Opening = SampleDrawing.Chamber,
        OpeningSlipId = "E1/total",
        Topics = SampleTopics.All,
        Slips = [.. SampleSlips.Facts, .. SampleSlips.Rulings, .. SampleSlips.Tallies],
        Sources =
        [
            new("Publisher\u2019s note", "1 October 2026", 1, "whole note"),
            new("Rulebook", "first printing", 2, "1 to 9, 11, 12"),
            new("Player aid", "first printing", 3, "one page"),
            new("Commission cards", "first printing", 4, "card 11"),
        ],
        Questions = SampleQuestions.All,
        Claims = new(Right: 29, Wrong: 0, Unsettled: 1, Unasked: 0, ["\u201cA run of five scores 15\u201d: page 8 does not say. The lesson says so too."]),
        UnofficialNote = "Unofficial. Rules in our own words; check the rulebook.",
    };

    /// <summary>Words with values written as <c>[said](slip)</c>, <c>[said](slip wrong)</c> or <c>[said](slip open)</c>.</summary>
    public static ImmutableArray<PageRun> Runs(string words)
    {
        var runs = ImmutableArray.CreateBuilder<PageRun>();
        int at = 0;
        foreach (Match match in Values().Matches(words))
        {
            runs.Add(new PageRun.Text(words[at..match.Index]));
            runs.Add(new PageRun.Value(match.Groups["said"].Value, match.Groups["slip"].Value, StatusOf(match.Groups["status"].Value)));
            at = match.Index + match.Length;
        }

        runs.Add(new PageRun.Text(words[at..]));
        return runs.ToImmutable();
    }

    public static PageBlock Says(string words) => new PageBlock.Paragraph(Runs(words));

    private static ValueStatus StatusOf(string word) => word switch
    {
        "wrong" => ValueStatus.Wrong,
        "open" => ValueStatus.Unsettled,
        _ => ValueStatus.Right,
    };

    [GeneratedRegex(@"\[(?<said>[^\]]+)\]\((?<slip>[^) ]+)(?: (?<status>wrong|open))?\)")]
    private static partial Regex Values();
}
