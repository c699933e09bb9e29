using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Rostrum.Pictures;

/// <summary>Says in a finished PDF which language its texts are in.</summary>
/// <remarks>The drawing library cannot say it. The catalogue of the document is written once more behind the end, as ISO 32000-1, 7.5.6 (incremental updates)
/// has it; its entry <c>Lang</c> is that of table 28. A screen reader needs the language to pronounce the words.</remarks>
internal static partial class PdfLanguage
{
    /// <summary>The file with the language said.</summary>
    /// <param name="pdf">A whole file with a plain cross-reference table.</param>
    /// <param name="language">As BCP 47 writes it.</param>
    /// <exception cref="ArgumentException">The language is none.</exception>
    public static byte[] Said(byte[] pdf, string language)
    {
        if (!Tag().IsMatch(language))
        {
            throw new ArgumentException($"'{language}' is no language.", nameof(language));
        }

        // Latin-1 keeps every byte, so that places in the text are places in the file.
        string text = Encoding.Latin1.GetString(pdf);
        Match end = Need(Ending().Match(text));
        Match trailer = Need(Trailer().Match(text, text.LastIndexOf("trailer", StringComparison.Ordinal)));
        string root = Need(Root().Match(trailer.Groups["entries"].Value)).Groups["number"].Value;
        Match catalogue = Need(Regex.Match(text, $@"(?<=[\r\n]){root} 0 obj\s*<<(?<entries>[\s\S]*?)>>\s*endobj"));
        string update = Update(pdf.Length, root, catalogue.Groups["entries"].Value, language, trailer.Groups["entries"].Value, end.Groups["place"].Value);
        return [.. pdf, .. Encoding.Latin1.GetBytes(update)];
    }

    private static string Update(int length, string root, string catalogue, string language, string trailer, string before)
    {
        const string Gap = "\n";
        string whole = $"{Gap}{root} 0 obj\n<<{catalogue}\n/Lang ({language})>>\nendobj\n";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{whole}xref\n{root} 1\n{length + Gap.Length:0000000000} 00000 n \ntrailer\n<<{trailer}\n/Prev {before}>>\nstartxref\n{length + whole.Length}\n%%EOF\n");
    }

    private static Match Need(Match match) => match.Success ? match : throw new InvalidOperationException("The drawing library wrote a PDF of another form than it did.");

    [GeneratedRegex("^[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*$")]
    private static partial Regex Tag();

    [GeneratedRegex(@"startxref\s+(?<place>\d+)\s+%%EOF\s*$")]
    private static partial Regex Ending();

    [GeneratedRegex(@"trailer\s*<<(?<entries>[\s\S]*?)>>\s*startxref")]
    private static partial Regex Trailer();

    [GeneratedRegex(@"/Root (?<number>\d+) 0 R")]
    private static partial Regex Root();
}
