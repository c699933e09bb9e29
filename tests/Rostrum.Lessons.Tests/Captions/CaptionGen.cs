using CsCheck;
using Rostrum.Lessons.Captions;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>Makes up caption files.</summary>
internal static class CaptionGen
{
    private static readonly Gen<string> TextLine = Gen.OneOf(
        "Take a jug.", "<v Anna>I place", "a &amp; b", "&lt;i>", "one<00:00:01.200><c> word</c>", "é石🎲", "NOTE x", "STYLE", "WEBVTT", "- yes", "-> -- >", "{\\an8}up", "42",
        "  two  blanks ", "<i>", "</b>", "00:00:01.000", "1 < 2 & 3", "\uFEFF");

    private static readonly Gen<string> Id = Gen.OneOf("", "1", " x ", "NOTE", "STYLE", "-- >", "a → b", "00:01.000");

    private static readonly Gen<TimeSpan> Time = Gen.Long[0, 400_000_000].Select(ms => TimeSpan.FromMilliseconds(ms));

    private static readonly Gen<double> Percent = Gen.OneOf(Gen.Int[0, 100].Select(i => (double)i), Gen.Double[0, 100], Gen.Const(1e-7));

    private static readonly Gen<CueSettings> PlacedSettings =
        from line in Gen.OneOf(Percent, Gen.OneOf(-1, 18446744073709552000.0, 1e34))
        from lineAlign in Gen.Enum<CueLineAlign>()
        from position in Percent
        from positionAlign in Gen.Enum<CuePositionAlign>()
        select CueSettings.None with { Line = line, SnapsToLines = line is < 0 or > 100, LineAlign = lineAlign, Position = position, PositionAlign = positionAlign };

    private static readonly Gen<CueSettings> Settings =
        from placed in Gen.OneOf(Gen.Const(CueSettings.None), PlacedSettings)
        from vertical in Gen.Enum<CueVertical>()
        from size in Gen.OneOf(Gen.Const(100.0), Percent)
        from align in Gen.Enum<CueAlign>()
        from region in Gen.OneOf<string?>(null, null, "low")
        select placed with { Vertical = vertical, SizePercent = size, Align = align, Region = region };

    private static readonly Gen<CaptionBlock> Cue =
        from id in Id
        from start in Time
        from end in Time
        from settings in Settings
        from text in TextLine.Array[0, 3]
        select (CaptionBlock)new Cue(id, start, end, settings, string.Join('\n', text));

    private static readonly Gen<CaptionBlock> Note = Gen.OneOf<CaptionBlock>(new CaptionNote("NOTE"), new CaptionNote("NOTE made at\nthe bench"), new CaptionNote("NOTE\tx\n "));

    private static readonly Gen<CaptionBlock> Sheet = Gen.OneOf<CaptionBlock>(
        new CaptionStyle("::cue {\n  color: lime\n}"), new CaptionNote("NOTE x"), new CaptionRegion("id:low width:40%") { Id = "low", WidthPercent = 40 });

    private static readonly CaptionBlock Low = new CaptionRegion("id:low") { Id = "low" };

    /// <summary>WebVTT files as a careful author writes them, in any order of times.</summary>
    public static Gen<CaptionFile> WebVtt { get; } =
        from header in Gen.OneOf("", " - Kiln Night", "\nKind: captions\nLanguage: en", "\tx --> y\nz")
        from sheets in Sheet.Array[0, 3]
        from blocks in Gen.OneOf(Cue, Cue, Note).Array[0, 6]
        from last in Cue
        select new CaptionFile(CaptionFormat.WebVtt, header, [Low, .. sheets, .. blocks, last]);

    /// <summary>SubRip files, numbered from 1.</summary>
    public static Gen<CaptionFile> SubRip { get; } =
        Gen.Select(Time, Time, TextLine.Where(l => l != "\uFEFF").Array[0, 3], Gen.OneOf<CueRectangle?>(null, new CueRectangle(40, 600, -20, 50))).Array[1, 6].Select(cues => CaptionFile.Of(
            CaptionFormat.SubRip,
            cues.Select((c, i) => new Cue($"{i + 1}", c.Item1, c.Item2, CueSettings.None with { Rectangle = c.Item4 }, string.Join('\n', c.Item3)))));

    /// <summary>Files of pieces that mean something, in any order.</summary>
    public static Gen<string> Soup { get; } = Gen.OneOf(
        Gen.OneOf("\n", "\n\n", "\r", "\r\n", " ", "-->", " --> ", "->", "WEBVTT", "NOTE", "STYLE", "REGION", "id:low", " region:low", " line:1", "5", "words", "<c>", "&amp;", "\0", "\uFEFF", "\u2028"),
        Gen.OneOf("00:01.000", "00:00:02.000", "00:00:03,000", "99:59:59.999", "0:01.000", "00:01.000 --> 00:02.000\n", "\n\n00:00:03,000 --> 00:00:04,000\n", "\n\n00:00:03.000 --> 00:00:04.000\n"))
        .Array[0, 40].Select(string.Concat);
}
