using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>facts</c>: a value, <c>is</c> with one, or what several sources say and which of them is followed.</summary>
internal static class FactsSection
{
    public static ImmutableArray<Fact> Read(LoadContext context, OutlineNode section) =>
        [.. OutlineAsk.Entries(context, section, "the facts", "sticks: 30").Select(e => Read(context, e)).OfType<Fact>()];

    private static Fact? Read(LoadContext context, OutlineEntry entry)
    {
        string name = Prose.Fold(entry.Key.Text);
        switch (entry.Value)
        {
            case OutlineScalar value:
                return Valued(name, value.Text, entry.Key);
            case OutlineMapping mapping:
                OutlineAsk.CheckKeys(context, mapping, "facts");
                return Told(context, entry.Key, name, mapping);
            default:
                context.Problems.Add(SheetProblems.WantedText(entry.Value.Span, $"what '{name}' is"));
                return null;
        }
    }

    private static Fact? Told(LoadContext context, OutlineScalar key, string name, OutlineMapping mapping)
    {
        var given = mapping.Find("is")?.Value as OutlineScalar;
        (Choice Choice, ImmutableArray<OutlineNode> Values)? fork = ForkReader.OfValue(context, mapping, name);
        string? words = fork is { } several ? Followed(context, given, several.Choice, several.Values) : given?.Text;
        if (words is null)
        {
            context.Problems.Add(SheetProblems.WantedText(key.Span, $"'is:' with what '{name}' is, or 'conflict:' with what each source says"));
            return null;
        }

        Citation? cite = fork is null ? ClauseParts.CiteOrWarn(context, mapping, key, name) : context.Cite(mapping) ?? fork.Value.Choice.Cite;
        return Valued(name, words, key) with { Of = OutlineAsk.Prose(mapping, "of"), Cite = cite, Choice = fork?.Choice };
    }

    // What is followed; all of them where nothing is. An `is` that says something else would leave two answers.
    private static string? Followed(LoadContext context, OutlineScalar? given, Choice choice, ImmutableArray<OutlineNode> values)
    {
        string[] words = [.. values.Select(ClauseParts.Words)];
        if (words.Contains(""))
        {
            return null;
        }

        string told = choice.Followed is { } followed ? words[followed] : Prose.Or(words.Select((w, i) => $"{w} if {choice.Names[i]}"));
        if (given is not null && Prose.Fold(given.Text) != told)
        {
            context.Problems.Add(SheetProblems.TwoValues(given.Span, given.Text, told));
        }

        return told;
    }

    private static Fact Valued(string name, string words, OutlineScalar key) => new(name, OutlineAsk.NumberIn(words), Prose.Fold(words), null, null, key.Span);
}
