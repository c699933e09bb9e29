using System.Collections.Immutable;
using Rostrum.Cli.Disk;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;

namespace Rostrum.Cli.Catalogue;

/// <summary>The idioms in the order of <c>docs/idioms.md</c>, to be looked through and searched.</summary>
internal static class IdiomCatalogue
{
    // The beginning of a word is enough where it is not too short.
    private const int LeastBeginning = 4;

    /// <summary>Every idiom; those of which the page does not tell come last.</summary>
    public static ImmutableArray<IdiomEntry> Of(IdiomShelf shelf)
    {
        string section = "";
        var entries = ImmutableArray.CreateBuilder<IdiomEntry>();
        foreach (string line in shelf.Page.Split('\n').Select(l => l.Trim()))
        {
            section = line.StartsWith("## ", StringComparison.Ordinal) ? line[3..] : section;
            if (line.StartsWith("### ", StringComparison.Ordinal) && shelf.Library.Find(line[4..]) is { } idiom)
            {
                entries.Add(new IdiomEntry(section, idiom));
            }
        }

        IEnumerable<Idiom> others = shelf.Library.All.Except(entries.Select(e => e.Idiom));
        return [.. entries, .. others.Select(i => new IdiomEntry("Others", i))];
    }

    /// <summary>Those that speak of every word.</summary>
    /// <param name="all">The idioms.</param>
    /// <param name="words">What is looked for; singular and plural, capital and small letters are the same.</param>
    public static ImmutableArray<IdiomEntry> Find(ImmutableArray<IdiomEntry> all, string words)
    {
        string[] wanted = [.. IdiomEntry.WordsIn(words)];
        return wanted.Length == 0 ? [] : [.. all.Where(e => wanted.All(w => e.Findable.Any(f => f == w || (w.Length >= LeastBeginning && f.StartsWith(w, StringComparison.Ordinal)))))];
    }

    /// <summary>What to say where nothing was found: the nearest spelling of a word that no idiom speaks of.</summary>
    public static string Nothing(ImmutableArray<IdiomEntry> all, string words)
    {
        string[] known = [.. all.SelectMany(e => e.Findable).Distinct().Order(StringComparer.Ordinal)];
        string? strange = IdiomEntry.WordsIn(words).FirstOrDefault(w => Find(all, w).IsEmpty);
        string instead = strange is null ? "Look for fewer words at once."
            : NearSpelling.Find(strange, known) is { } near ? $"Did you mean '{near}'?"
            : "'rostrum read --idioms' lists all.";
        return $"No idiom speaks of '{Prose.Clip(strange ?? words)}'. {instead}";
    }
}
