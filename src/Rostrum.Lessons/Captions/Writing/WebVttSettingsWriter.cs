using System.Globalization;
using System.Numerics;
using System.Text;

namespace Rostrum.Lessons.Captions.Writing;

/// <summary>Writes the settings of a cue; those that have the value of "nothing said" are left out.</summary>
internal static class WebVttSettingsWriter
{
    // Beyond this, a double is a whole number and would be printed with an exponent.
    private const double Whole = 1e15;

    /// <summary>The settings, each with a blank before it.</summary>
    public static string Write(CueSettings settings)
    {
        var written = new StringBuilder();
        Add(written, "vertical", settings.Vertical switch
        {
            CueVertical.GrowingLeft => "rl",
            CueVertical.GrowingRight => "lr",
            _ => null,
        });
        Add(written, "line", Line(settings));
        Add(written, "position", Position(settings));
        Add(written, "size", settings.SizePercent == 100 ? null : $"{Number(settings.SizePercent)}%");
        Add(written, "align", settings.Align == CueAlign.Center ? null : settings.Align.ToString().ToLowerInvariant());

        // Last, because line, size and vertical take a cue out of its region.
        Add(written, "region", settings.Region);
        return written.ToString();
    }

    private static void Add(StringBuilder written, string name, string? value) => written.Append(value is null ? "" : $" {name}:{value}");

    private static string? Line(CueSettings settings) => settings.Line is not { } line
        ? null
        : $"{Number(line)}{(settings.SnapsToLines ? "" : "%")}" + settings.LineAlign switch
        {
            CueLineAlign.Center => ",center",
            CueLineAlign.End => ",end",
            _ => "",
        };

    private static string? Position(CueSettings settings) => settings.Position is not { } position
        ? null
        : $"{Number(position)}%" + settings.PositionAlign switch
        {
            CuePositionAlign.LineLeft => ",line-left",
            CuePositionAlign.Center => ",center",
            CuePositionAlign.LineRight => ",line-right",
            _ => "",
        };

    // The shortest digits that give the same number again, without an exponent.
    private static string Number(double number)
    {
        string shortest = number.ToString("R", CultureInfo.InvariantCulture);
        return shortest switch
        {
            _ when !shortest.Contains('E', StringComparison.Ordinal) => shortest,
            _ when Math.Abs(number) >= Whole => new BigInteger(number).ToString(CultureInfo.InvariantCulture),
            _ => number.ToString("F340", CultureInfo.InvariantCulture).TrimEnd('0').TrimEnd('.'),
        };
    }
}
