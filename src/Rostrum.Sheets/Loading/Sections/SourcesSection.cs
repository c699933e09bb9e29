using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>sources</c>, <c>players</c>, <c>seats</c> and <c>numbers</c>.</summary>
internal static class SourcesSection
{
    private static readonly string[] Dates = ["d MMMM yyyy", "d MMM yyyy", "MMMM d, yyyy", "MMMM yyyy", "MMM yyyy", "yyyy", "yyyy-MM-dd", "yyyy-MM"];

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the sources", "book: {title: Rulebook, pages: 12}"))
        {
            string name = Prose.Fold(entry.Key.Text);
            if (entry.Value is OutlineScalar title)
            {
                context.AddSource(new RuleSource(name, Prose.Fold(title.Text), null, null, entry.Key.Span));
            }
            else if (entry.Value is OutlineMapping mapping)
            {
                OutlineAsk.CheckKeys(context, mapping, "sources");
                context.AddSource(Source(context, name, mapping, entry.Key));
            }
            else
            {
                context.Problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "the title and pages of a source"));
            }
        }
    }

    public static void ReadNumbers(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the numbers"))
        {
            if (OutlineAsk.Number(context, entry.Value, "a number") is { } amount)
            {
                var number = new NumberConstant(Prose.Fold(entry.Key.Text), amount, entry.Key.Span);
                context.Numbers.Add(number);
                context.Declare(number);
            }
        }
    }

    /// <summary>The names of the seats, clockwise.</summary>
    public static ImmutableArray<string> Seats(LoadContext context, OutlineNode section)
    {
        ImmutableArray<OutlineScalar> names = OutlineAsk.Items(context, section, "the names of the seats");
        for (int i = 0; i < names.Length; i++)
        {
            context.Declare(new SeatName(Prose.Fold(names[i].Text), i, names[i].Span));
        }

        return [.. names.Select(n => Prose.Fold(n.Text))];
    }

    /// <summary><c>2</c>, <c>2 to 4</c>.</summary>
    public static (int? Fewest, int? Most) Players(LoadContext context, OutlineNode value)
    {
        if (OutlineAsk.Text(context, value, "how many play, such as '2 to 4'") is not { } scalar)
        {
            return (null, null);
        }

        string[] ends = Prose.Fold(scalar.Text).Split(" to ", 2);
        (long? low, long? high) = (OutlineAsk.NumberIn(ends[0]), OutlineAsk.NumberIn(ends[^1]));
        if (low is >= 1 and <= 99 && high >= low && high <= 99)
        {
            return ((int)low, (int)high);
        }

        context.Problems.Add(SheetProblems.WantedPlayers(scalar.Span, scalar.Text));
        return (null, null);
    }

    private static bool IsDate(string words) =>
        DateOnly.TryParseExact(words, Dates, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static RuleSource Source(LoadContext context, string name, OutlineMapping mapping, OutlineScalar key)
    {
        string title = OutlineAsk.Prose(mapping, "title") ?? Rostrum.Text.Prose.Sentence(name);
        int? pages = mapping.Find("pages") is { } p ? (int?)OutlineAsk.Number(context, p.Value, "a number of pages", least: 1) : null;
        int? rank = mapping.Find("rank") is { } r ? (int?)OutlineAsk.Number(context, r.Value, "a rank, where 1 weighs most,", least: 1) : null;
        if (mapping.Find("date")?.Value is OutlineScalar date && !IsDate(Rostrum.Text.Prose.Fold(date.Text)))
        {
            context.Problems.Add(SheetProblems.NoDate(date.Span, date.Text));
        }

        return new RuleSource(name, title, pages, rank, key.Span)
        {
            Printing = OutlineAsk.Prose(mapping, "printing"),
            Date = OutlineAsk.Prose(mapping, "date"),
        };
    }
}
