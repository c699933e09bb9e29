using System.Globalization;

namespace Rostrum.Lessons.Captions.Reading;

/// <summary>Reads the settings behind the times of a cue: "parse the WebVTT cue settings".</summary>
/// <remarks>One deviation, which the test suite of the web platform asks for and players share: where the words behind the comma of
/// <c>line:100%,middle</c> or <c>position:1%,middle</c> are not known, the number before it counts all the same. The text of the standard would drop both.</remarks>
internal static class WebVttSettings
{
    /// <summary>Reads settings.</summary>
    /// <param name="written">What stands behind the times.</param>
    /// <param name="regions">The names of the regions so far.</param>
    public static CueSettings Read(string written, IReadOnlySet<string> regions)
    {
        CueSettings settings = CueSettings.None;
        foreach ((string name, string value) in Pairs(written))
        {
            settings = name switch
            {
                "region" => settings with { Region = regions.Contains(value) ? value : null },
                "vertical" => Vertical(settings, value),
                "line" => Line(settings, value),
                "position" => Position(settings, value),
                "size" => Size(settings, value),
                "align" => settings with { Align = AlignOf(value) ?? settings.Align },
                _ => settings,
            };
        }

        return settings;
    }

    /// <summary>The pairs of name and value, parted by a colon that is neither first nor last; anything else is left out.</summary>
    public static IEnumerable<(string Name, string Value)> Pairs(string written) =>
        from setting in Blanks.Split(written)
        let colon = setting.IndexOf(':', StringComparison.Ordinal)
        where colon > 0 && colon < setting.Length - 1
        select (setting[..colon], setting[(colon + 1)..]);

    /// <summary>A percentage: digits, perhaps a full stop and digits, and the sign; 0 to 100, else null.</summary>
    public static double? Percent(string value)
    {
        if (!value.EndsWith('%') || !IsPlainNumber(value[..^1]))
        {
            return null;
        }

        double percent = double.Parse(value[..^1], CultureInfo.InvariantCulture);
        return percent <= 100 ? percent : null;
    }

    private static CueSettings Vertical(CueSettings settings, string value)
    {
        CueVertical vertical = value switch
        {
            "rl" => CueVertical.GrowingLeft,
            "lr" => CueVertical.GrowingRight,
            _ => settings.Vertical,
        };

        // There are no vertical regions.
        return settings with { Vertical = vertical, Region = vertical == CueVertical.Horizontal ? settings.Region : null };
    }

    private static CueSettings Line(CueSettings settings, string value)
    {
        (string place, string align) = AtComma(value);
        bool isPercent = place.EndsWith('%');
        if ((isPercent ? Percent(place) : LineNumber(place)) is not { } number)
        {
            return settings;
        }

        CueLineAlign lineAlign = align switch
        {
            "start" => CueLineAlign.Start,
            "center" => CueLineAlign.Center,
            "end" => CueLineAlign.End,
            _ => settings.LineAlign,
        };
        return settings with { Line = number, SnapsToLines = !isPercent, LineAlign = lineAlign, Region = null };
    }

    private static CueSettings Position(CueSettings settings, string value)
    {
        (string place, string align) = AtComma(value);
        if (Percent(place) is not { } percent)
        {
            return settings;
        }

        CuePositionAlign positionAlign = align switch
        {
            "line-left" => CuePositionAlign.LineLeft,
            "center" => CuePositionAlign.Center,
            "line-right" => CuePositionAlign.LineRight,
            _ => settings.PositionAlign,
        };
        return settings with { Position = percent, PositionAlign = positionAlign };
    }

    private static CueSettings Size(CueSettings settings, string value) => Percent(value) is { } percent
        ? settings with { SizePercent = percent, Region = percent == 100 ? settings.Region : null }
        : settings;

    private static CueAlign? AlignOf(string value) => value switch
    {
        "start" => CueAlign.Start,
        "center" => CueAlign.Center,
        "end" => CueAlign.End,
        "left" => CueAlign.Left,
        "right" => CueAlign.Right,
        _ => null,
    };

    private static double? LineNumber(string place)
    {
        string digits = place.StartsWith('-') ? place[1..] : place;
        if (!IsPlainNumber(digits))
        {
            return null;
        }

        double number = double.Parse(place, CultureInfo.InvariantCulture);
        return double.IsFinite(number) ? number + 0.0 : null; // -0 is 0
    }

    // Digits, perhaps a full stop and more digits.
    private static bool IsPlainNumber(string text)
    {
        var scan = new LineScan(text);
        return scan.Digits().Length > 0 && (!scan.Take(".") || scan.Digits().Length > 0) && scan.IsAtEnd;
    }

    private static (string Before, string Behind) AtComma(string value) =>
        value.IndexOf(',', StringComparison.Ordinal) is var comma and >= 0 ? (value[..comma], value[(comma + 1)..]) : (value, "");
}
