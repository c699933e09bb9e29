using System.Collections.Immutable;
using System.Xml.Linq;
using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>Texts that would break out of a page if anything forgot to escape them.</summary>
public sealed class HostileTextTests
{
    private const string Evil = "\"'><script>alert(1)</script><img src=x onerror=alert(1)>&amp;]]>--><!--\u0000\u202e</style></details>";

    private static readonly LessonPage Page = new(Evil, Evil, Evil, Evil, Evil)
    {
        Language = Evil,
        Lead = Evil,
        Opening = SampleDrawing.Chamber with { Caption = Evil, TextAlternative = Evil, File = Evil },
        OpeningSlipId = "opening",
        Topics =
        [
            new(Evil, Evil,
            [
                new PageBlock.Subheading(Evil), new PageBlock.Paragraph(Runs), new PageBlock.List(false, [Runs]), new PageBlock.Quote(Runs, Evil),
            ]),
        ],
        Slips = [Slip("opening"), Slip(Evil), new("plain", Evil, new SlipAnswer.Fact(Evil), new(FigureKind.OwnLog, Evil)) { Cite = Evil }],
        Sources = [new(Evil, Evil, 1, Evil)],
        Questions = [new(Evil, Evil, Evil, [new(Evil, Evil, true)], Evil) { Variant = Evil }],
        Claims = new(1, 1, 1, 1, [Evil]),
        UnofficialNote = Evil,
    };

    private static ImmutableArray<PageRun> Runs =>
    [
        new PageRun.Text(Evil), new PageRun.Emphasis(Evil), new PageRun.Strong(Evil), new PageRun.Code(Evil), new PageRun.Link(Evil, Evil),
        new PageRun.Link("press", "javascript:alert(1)"), new PageRun.Value(Evil, Evil, ValueStatus.Wrong) { Note = Evil },
    ];

    private static readonly XElement Root = Parsed.Html(LessonPageWriter.Write(Page, PageAssets.None));

    [Fact]
    public void Text_never_becomes_an_element() => Assert.DoesNotContain(Root.Descendants(), element => element.Name.LocalName is "script" or "img");

    [Fact]
    public void Text_never_becomes_an_attribute() =>
        Assert.DoesNotContain(Root.Descendants().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));

    [Fact]
    public void Text_is_shown_as_it_was_written() =>
        Assert.Equal(Evil.Replace('\u0000', '\ufffd').Replace('\u202e', '\ufffd'), Root.Descendants("h1").Single().Value);

    [Fact]
    public void Address_that_runs_code_is_shown_without_a_link() =>
        Assert.DoesNotContain(Root.Descendants("a"), link => link.Value == "press");

    [Fact]
    public void Player_aid_escapes_everything()
    {
        var aid = new PlayerAid(Evil, Evil, Evil, [new(Evil, [new(Evil, Evil)])], Evil) { Language = Evil };

        XElement root = Parsed.Html(PlayerAidWriter.Write(aid, PageAssets.None));

        Assert.DoesNotContain(root.Descendants(), element => element.Name.LocalName is "script" or "img");
        Assert.Equal($"{Evil}\u00a0{Evil}".Replace('\u0000', '\ufffd').Replace('\u202e', '\ufffd'), root.Descendants("li").Single().Value);
    }

    private static PageSlip Slip(string id) => new(id, Evil, new SlipAnswer.Verdict(Evil, SlipTone.No), new(FigureKind.Simulated, Evil))
    {
        Cite = Evil,
        Where = Evil,
        Figure = SampleDrawing.Chamber with { Caption = Evil },
        Reasons = [new(Evil, Evil, Evil, Evil)],
        Lines = [new(Evil, -1) { Cite = Evil, Because = [new(Evil, -1)] }],
        Readings = [new(Evil, Evil, Evil)],
        NotModelled = [Evil],
        NotGiven = [Evil],
    };
}
