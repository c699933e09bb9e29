using System.Globalization;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Reads <c>cite: book 8</c>.</summary>
internal static class CitationReader
{
    private static readonly string[] PageWords = [" pages", " page", " pp.", " pp", " p.", " p", ",", ":"];

    /// <summary>The citation of a value; null (with a message) where it names no known source or page.</summary>
    public static Citation? Read(LoadContext context, OutlineNode value)
    {
        const string Wanted = "a source and a page, such as 'book 8'";
        if (value is OutlineEmpty)
        {
            context.Problems.Add(SheetProblems.WantedText(value.Span, Wanted));
        }

        // The first is the one that answers name; all are checked.
        return OutlineAsk.Items(context, value, Wanted).Select(s => Read(context, s.Text, s.Span)).ToArray().FirstOrDefault(c => c is not null);
    }

    // `book page`, `book p.`, `book,`
    private static string? WithoutPageWord(string name)
    {
        string? word = PageWords.FirstOrDefault(w => name.EndsWith(w, StringComparison.OrdinalIgnoreCase));
        return word is null ? null : name[..^word.Length].TrimEnd(' ', ',', ':');
    }

    /// <summary>The citation that some words make.</summary>
    public static Citation? Read(LoadContext context, string words, SourceSpan at)
    {
        string text = words.Trim();
        int digits = text.Length - text.AsSpan().TrimEnd("0123456789").Length;
        int blank = text.LastIndexOf(' ');
        int? page = null;
        string name = text;
        if (blank > 0 && int.TryParse(text[(blank + 1)..].TrimStart('p'), NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            (name, page) = (text[..blank].Trim(), number);
        }
        else if (blank > 0 && int.TryParse(text[^digits..], NumberStyles.None, CultureInfo.InvariantCulture, out int told))
        {
            (name, page) = (text[..^digits].Trim(), told);
        }

        if (page is not null && !context.Sources.ContainsKey(name) && WithoutPageWord(name) is { } bare && context.Sources.ContainsKey(bare))
        {
            context.Problems.Add(SheetProblems.PageInWords(at, text, $"{bare} {page}"));
            name = bare;
        }

        if (!context.Sources.TryGetValue(name, out RuleSource? source))
        {
            context.Problems.Add(SheetProblems.UnknownSource(at, name, NearSpelling.Find(name, context.Sources.Keys), context.Sources.Count == 0));
            return null;
        }

        if (page is { } p && source.Pages is { } pages && (p < 1 || p > pages))
        {
            context.Problems.Add(SheetProblems.NoSuchPage(at, source.Title, p, pages));
        }

        return new Citation(source, page, at);
    }
}
