using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Cli.Catalogue;

/// <summary>An idiom as somebody looks it up.</summary>
/// <param name="Section">The heading under which <c>docs/idioms.md</c> tells of it.</param>
/// <param name="Idiom">The idiom.</param>
internal sealed partial record IdiomEntry(string Section, Idiom Idiom)
{
    private const string Cite = "book 1";

    /// <summary>Where a sheet may use it: <c>score</c>, <c>condition</c> or <c>law</c>.</summary>
    public string Use => Idiom.Kind.ToString().ToLowerInvariant();

    /// <summary>What it answers, in the words of the trade; may be empty.</summary>
    public string Group => Idiom.Group;

    /// <summary>Its sentence with the keys in the places of what is filled in: <c>Each full ‹along› scores ‹points› points.</c></summary>
    public string Says => Prose.Sentence(Idiom.InNames);

    /// <summary>Its sentence filled in; empty where its file shows none.</summary>
    public string Example => Tried is { } tried ? Words(tried, "reads") : "";

    /// <summary>A clause that uses it, with its section: to be copied into a sheet, where only the names behind the colons have to be changed.</summary>
    public string Clause
    {
        get
        {
            string[] head = Use switch
            {
                "score" => ["score:", "  new clause:", $"    says: {Example}", $"    cite: {Cite}"],
                "law" => ["laws:", "  new law:", $"    says: {Example}", $"    cite: {Cite}", "    binds: place"],
                _ => ["words:", "  new word:"],
            };
            return string.Join('\n', [.. head, $"    idiom: {Idiom.Name}", .. Idiom.Parameters.Select(Line).Where(l => l.Length > 0)]);
        }
    }

    /// <summary>Every word by which it may be found, folded.</summary>
    public ImmutableArray<string> Findable => [.. WordsIn($"{Section} {Idiom.Name} {Group} {Idiom.Sentence} {Example}").Distinct()];

    /// <summary>Lower-case words without their plural endings.</summary>
    public static IEnumerable<string> WordsIn(string text) => Letters().Matches(text.ToLowerInvariant()).Select(m => Singular(m.Value));

    private OutlineMapping? Tried => (Idiom.Body.Find("tried")?.Value as OutlineSequence)?.Items.OfType<OutlineMapping>().FirstOrDefault();

    // What may be left out is left out, unless the example gives it.
    private string Line(IdiomParameter parameter)
    {
        string given = (Tried?.Find("with")?.Value as OutlineMapping)?.Find(parameter.Name)?.Value is { } value ? Prose.Fold(value is OutlineScalar text ? text.Text : value.Span.Text) : "";
        string? otherwise = parameter.Otherwise is { } usual ? Prose.Fold(usual.Text) : null;
        return given.Length > 0 ? $"    {parameter.Name}: {given}" : otherwise is null ? $"    {parameter.Name}: ?" : "";
    }

    private static string Singular(string word) => word switch
    {
        [.. var stem, 'i', 'e', 's'] when stem.Length > 1 => stem + "y",
        [.., 's', 's'] or [_, _, 's'] => word,
        [.. var stem, 's'] when stem.Length > 2 => stem,
        _ => word,
    };

    private static string Words(OutlineMapping mapping, string key) => mapping.Find(key)?.Value is OutlineScalar text ? Prose.Fold(text.Text) : "";

    [GeneratedRegex(@"[\p{L}\p{Nd}]+")]
    private static partial Regex Letters();
}
