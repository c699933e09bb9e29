using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>end</c>: understood and read back now, carried out once whole turns are played.</summary>
internal static class EndSection
{
    public static ImmutableArray<EndRule> Read(LoadContext context, OutlineNode section)
    {
        var ends = ImmutableArray.CreateBuilder<EndRule>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the ends of the game"))
        {
            if (entry.Value is not OutlineMapping mapping)
            {
                context.Problems.Add(SheetProblems.WantedEntries(entry.Value.Span, "when the game ends and what follows"));
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "end");
            string name = OutlineAsk.Fold(entry.Key.Text);
            FormulaReader reader = context.Formulas(new Scope());
            Term? condition = mapping.Find("if") is { } given ? reader.Value(given.Value, Sort.Truth, name) : null;
            Choice? choice = ForkReader.OfWording(context, mapping, name);
            ends.Add(new EndRule(
                name, OutlineAsk.Prose(mapping, "says"), ClauseParts.CiteOrWarn(context, mapping, entry.Key, name), choice, condition,
                Words(mapping, "then"), Words(mapping, "winner"), entry.Key.Span, reader.Scope.FrameSize));
        }

        return ends.ToImmutable();
    }

    private static string? Words(OutlineMapping mapping, string key) => mapping.Find(key) is { } entry ? ClauseParts.Words(entry.Value) : null;
}
