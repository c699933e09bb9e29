using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>marks</c>.</summary>
internal static class MarksSection
{
    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the marks", "coins: {holds: 0 to 20, of: each player}"))
        {
            OutlineScalar? holds = entry.Value switch
            {
                OutlineScalar scalar => scalar,
                OutlineMapping mapping => Holds(context, mapping),
                _ => null,
            };
            if (holds is null)
            {
                context.Problems.Add(SheetProblems.WantedText(entry.Value.Span, "what the mark holds, such as '0 to 20' or 'yes or no'"));
                continue;
            }

            (bool each, Place? board) = entry.Value is OutlineMapping m ? Whose(context, m) : (false, null);
            (Sort sort, long? low, long? high) = SortOfMark(context, holds);
            var mark = new Mark(Prose.Fold(entry.Key.Text), sort, each, low, high, context.Marks.Count, entry.Key.Span) { EachSpaceOf = board };
            context.Marks.Add(mark);
            context.Declare(mark);
        }
    }

    /// <summary>What is said of each mark beside what it holds, read once all names are known.</summary>
    public static ImmutableArray<MarkFacts> Facts(LoadContext context, OutlineNode? section, IReadOnlyCollection<ActionName> actions) =>
        [.. context.Marks.Select(mark => Facts(context, mark, (section as OutlineMapping)?.Entries.FirstOrDefault(e => e.Key.Span == mark.DeclaredAt)?.Value as OutlineMapping, actions))];

    private static MarkFacts Facts(LoadContext context, Mark mark, OutlineMapping? text, IReadOnlyCollection<ActionName> actions)
    {
        if (text is null)
        {
            return new MarkFacts(mark, null, null, 0);
        }

        FormulaReader reader = context.Formulas(new Scope());
        Term? starts = text.Find("starts") is { } first ? reader.Value(first.Value, mark.Sort, mark.Name) : null;
        return new MarkFacts(mark, Lasts(context, text, actions), starts, reader.Scope.FrameSize);
    }

    private static string? Lasts(LoadContext context, OutlineMapping text, IReadOnlyCollection<ActionName> actions)
    {
        if (text.Find("lasts")?.Value is not { } node || OutlineAsk.Text(context, node, "how long the mark lasts, such as 'turn'") is not { } scalar)
        {
            return null;
        }

        string words = Prose.Fold(scalar.Text);
        string[] known = ["turn", "round", .. ActionsSection.BlockKeys.Except(["turn"]), .. actions.Select(a => a.Name)];
        if (!known.Contains(words))
        {
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, words, "something that a mark can last", known));
            return null;
        }

        return words;
    }

    // `each player`, `the table`, `each hex`, `each space of board`
    private static (bool EachPlayer, Place? EachSpaceOf) Whose(LoadContext context, OutlineMapping mapping)
    {
        if (mapping.Find("of")?.Value is not OutlineScalar of || !Prose.Fold(of.Text).StartsWith("each ", StringComparison.Ordinal) || Prose.Fold(of.Text) == "each player")
        {
            return (OutlineAsk.IsOfEachPlayer(context, mapping), null);
        }

        string[] parts = Prose.Fold(of.Text)["each ".Length..].Split(" of ", 2);
        Place[] boards = [.. context.Declared.Names.Find(parts[0]).Select(s => s.Symbol).OfType<SpaceNoun>().Select(n => n.Board).Distinct()];
        if (boards.Length == 0 && parts[0] == "space")
        {
            boards = [.. context.Declared.Boards.Keys];
        }

        boards = parts.Length > 1 ? [.. boards.Where(b => b.Name == parts[1])] : boards;
        if (boards.Length != 1)
        {
            IEnumerable<string> known = context.Declared.Boards.Values.Select(b => $"each {b.Noun.Name} of {b.Place.Name}").Append("each player").Append("the table");
            context.Problems.Add(SheetProblems.UnknownWord(of.Span, of.Text, boards.Length == 0 ? "somebody or something that can have it" : "clear, for several boards have such spaces", known));
        }

        return (false, boards is [var only] ? only : null);
    }

    private static OutlineScalar? Holds(LoadContext context, OutlineMapping mapping)
    {
        OutlineAsk.CheckKeys(context, mapping, "marks");
        return mapping.Find("holds")?.Value as OutlineScalar;
    }

    private static (Sort Sort, long? Low, long? High) SortOfMark(LoadContext context, OutlineScalar holds)
    {
        string words = Prose.Fold(holds.Text);
        string[] ends = words.Split(" to ", 2);
        if (OutlineAsk.NumberIn(ends[0]) is { } low)
        {
            long? high = OutlineAsk.NumberIn(ends[^1]);
            if (high is null || high < low)
            {
                context.Problems.Add(SheetProblems.WantedNumber(holds.Span, words, "what the mark holds, from the lowest to the highest, such as '0 to 20',"));
            }

            return (Sort.Number, low, high);
        }

        if (SubjectSorts.Find(context, words) is { } sort)
        {
            return (sort, null, null);
        }

        if (words is "number" or "yes or no")
        {
            return (words == "number" ? Sort.Number : Sort.Truth, null, null);
        }

        context.Problems.Add(SheetProblems.UnknownWord(holds.Span, words, "something that a mark can hold", ["number", "yes or no", "player", "space", "0 to 20"]));
        return (Sort.Any, null, null);
    }
}
