using System.Collections.Immutable;
using Rostrum.Cli.Catalogue;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows idioms: a few with what is filled in and a clause to be copied, many by name and sentence.</summary>
internal static class IdiomScreen
{
    /// <summary>How many are shown whole.</summary>
    public const int Few = 5;

    private const int NameWidth = 30;
    private const int KeyWidth = 16;

    /// <summary>The text.</summary>
    public static string Of(ImmutableArray<IdiomEntry> entries)
    {
        var paper = new Paper();
        foreach (IGrouping<string, IdiomEntry> section in entries.GroupBy(e => e.Section))
        {
            if (section.First() != entries[0])
            {
                paper.Line();
            }

            paper.Line(section.Key);
            paper.Line(new string('-', DisplayText.WidthOf(section.Key)));
            foreach (IdiomEntry entry in section)
            {
                Show(paper, entry, isWhole: entries.Length <= Few, isFirst: entry == section.First());
            }
        }

        return paper.ToString();
    }

    private static void Show(Paper paper, IdiomEntry entry, bool isWhole, bool isFirst)
    {
        if (!isWhole)
        {
            paper.Pair(entry.Idiom.Name, entry.Says, NameWidth);
            return;
        }

        if (!isFirst)
        {
            paper.Line();
        }

        paper.Edges(entry.Idiom.Name, entry.Use switch { "score" => "scores", "law" => "a law", _ => "a condition" });
        paper.Wrapped(entry.Says, 4);
        foreach (IdiomParameter parameter in entry.Idiom.Parameters)
        {
            string otherwise = parameter.Otherwise is { } usual ? $"; left out: {Prose.Fold(usual.Text)}" : "";
            paper.Pair($"  {parameter.Name}", parameter.Wanted + otherwise, KeyWidth);
        }

        paper.Line();
        paper.Raw(string.Join('\n', entry.Clause.Split('\n').Select(l => $"    {l}")));
    }
}
