using System.Text.RegularExpressions;

namespace Rostrum.Text.Tables;

/// <summary>Knows the forms in which a spreadsheet writes what it took for a date: <c>1-2</c> becomes <c>01.02.2024</c> or <c>2-Mar</c>.</summary>
internal static partial class SpreadsheetDate
{
    private const string Months = "(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec|january|february|march|april|june|july|august|september|october|november|december)";

    /// <summary>True for a text that is a date and nothing else.</summary>
    public static bool Matches(string text) => text.Length is > 3 and < 30 && Form().IsMatch(text);

    [GeneratedRegex(
        @"^(?:\d{1,2}([./-])\d{1,2}\1(?:\d{4}|\d{2})|\d{4}([/-])\d{1,2}\2\d{1,2}|\d{1,2}[-. ]" + Months + @"\.?(?:[-. ](?:\d{4}|\d{2}))?|" + Months + @"\.?[-. ]\d{1,4})(?: 0{1,2}:00(?::00)?)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Form();
}
