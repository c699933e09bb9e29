using System.Globalization;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Speech;

namespace Rostrum.Lessons.Coverage;

/// <summary>Which topics of a script name which pages of the rules: <c>Page 5.</c></summary>
internal sealed partial class TopicPages(ScriptSpeech speech)
{
    private readonly ILookup<int, int> _topics = speech.Sentences
        .Where(s => !s.IsCaption)
        .SelectMany(s => Page().Matches(s.Words).Select(m => (Page: int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture), s.Topic)))
        .Distinct()
        .ToLookup(p => p.Page, p => p.Topic);

    /// <summary>The 0-based topics that name a page.</summary>
    public IEnumerable<int> Of(int page) => _topics[page];

    /// <summary>True where a topic names pages at all.</summary>
    public bool NamesAny(int topic) => _topics.Any(p => p.Contains(topic));

    [GeneratedRegex(@"\b[Pp]ages? (\d{1,4})\b")]
    private static partial Regex Page();
}
