using System.Globalization;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads what stands below the word REGION: "collect WebVTT region settings".</summary>
internal static class WebVttRegion
{
    /// <summary>Reads a region; what it does not say keeps its value.</summary>
    public static CaptionRegion Read(string written)
    {
        var region = new CaptionRegion(written);
        foreach ((string name, string value) in WebVttSettings.Pairs(written))
        {
            region = name switch
            {
                "id" => region with { Id = value },
                "width" => region with { WidthPercent = WebVttSettings.Percent(value) ?? region.WidthPercent },
                "lines" => region with { Lines = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int lines) ? lines : region.Lines },
                "regionanchor" => region with { Pin = Point(value) ?? region.Pin },
                "viewportanchor" => region with { PinnedTo = Point(value) ?? region.PinnedTo },
                "scroll" => region with { ScrollsUp = region.ScrollsUp || value == "up" },
                _ => region,
            };
        }

        return region;
    }

    private static PercentPoint? Point(string value)
    {
        int comma = value.IndexOf(',', StringComparison.Ordinal);
        return comma >= 0 && WebVttSettings.Percent(value[..comma]) is { } x && WebVttSettings.Percent(value[(comma + 1)..]) is { } y
            ? new PercentPoint(x, y)
            : null;
    }
}
