using System.Collections.Immutable;
using Rostrum.Lessons.Page;
using static Rostrum.Lessons.Tests.Page.SamplePage;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>The topics of the sample page, shortened from games/kiln-night/lesson.md.</summary>
internal static class SampleTopics
{
    public static ImmutableArray<PageTopic> All { get; } =
    [
        new("The aim", "the-aim",
        [
            Says("Whoever has most points wins. [One](fact:fewest-players) to [four](fact:most-players) of you play for about half an hour. The chamber that you see above is worth [35](E1/total) points. Later in this lesson we count all of them together."),
            new PageBlock.Paragraph(
            [
                new PageRun.Text("A word before we start. This demo game "), new PageRun.Emphasis("does not exist"),
                new PageRun.Text(" in shops. Nobody gave me a copy and nobody pays for this lesson. I teach the first printing, and I name the page "),
                new PageRun.Strong("wherever"), new PageRun.Text(" you may want to check me. Questions go "),
                new PageRun.Link("to me", "mailto:oona@example.org"), new PageRun.Text("."),
            ]),
        ]),
        new("What is on the table", "on-the-table",
        [
            Says("Page 2. Everything that you load is called ware: [72](fact:ware) in the crate. A ware has a form and a glaze. There are [four](fact:forms) forms: [24](fact:bowls-in-the-crate) bowls, [18](fact:jugs-in-the-crate) jugs, [18](fact:plates-in-the-crate) plates and [12](fact:lamps-in-the-crate) lamps. There are [three](fact:glazes) glazes: ash, iron and copper, equally many of each."),
            Says("Your chamber has [five](fact:bays) bays, A to E. Each bay has four tiers, and tier 1 is the lowest. That makes [twenty](fact:shelves) shelves. C2 is a shelf: bay C, tier 2."),
            new PageBlock.Subheading("Your turn in short"),
            new PageBlock.List(IsNumbered: true, [Runs("Carry one drying board: take its ware and its sticks."), Runs("Place both ware, in either order."), Runs("Lay one stick on each board that you left.")]),
        ]),
        new("Where a ware may stand", "where-a-ware-may-stand",
        [
            Says("Page 5. A ware goes on the lowest free shelf of a bay: on the floor, or on another ware. On an iron plate beside iron, a copper jug on B2 is [allowed](rule:copper-ash). Now I change a single ware."),
            SampleDrawing.CopperBesideAsh,
            Says("A2 is ash, and the copper jug is [not allowed](rule:copper-ash-near). The rule between them:"),
            new PageBlock.Quote(Runs("Copper never stands beside ash."), "book 5"),
            Says("Beside means left and right only. The rulebook does not say so on page 5, but the example on page 11 shows copper on top of ash."),
        ]),
        new("One night, counted", "one-night-counted",
        [
            Says("Back to our chamber. Bowls, [5](E1/bowls). Jugs, [4](E1/jugs). Plates score [three](fact:points-for-a-plate) each: [9](E1/plates). Lamps, [4](E1/lamps)."),
            SampleDrawing.Chamber with { Caption = "Four of one glaze" },
            Says("Glaze, [4](E1/glaze), and you may pick ash or iron. A full tier scores [three](fact:points-for-a-full-tier): [3](E1/full). Commission 12 is shown and Commission 6 is not: [7](E1/commissions) together. Shards, [minus 2](E1/shards). Sticks, [1](E1/sticks). Total, [35](E1/total)."),
        ]),
        new("What the rulebook leaves open", "left-open",
        [
            Says("A run of more than four bowls fits only the Climbing Chamber, and page 8 is silent about it. Some count on and give [15](run-of-five/bowls open). Agree before you play."),
        ]),
    ];
}
