using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>end</c>: understood and read back now, carried out once whole turns are played.</summary>
internal static class EndSection
{
    internal static readonly ImmutableArray<string> Follows = ["at once", "finish the round", "one more round", "every other player once more", "out"];
    internal static readonly ImmutableArray<string> Winners = ["me", "opponent", "everyone", "nobody"];

    public static ImmutableArray<EndRule> Read(LoadContext context, OutlineNode section)
    {
        var ends = ImmutableArray.CreateBuilder<EndRule>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the ends of the game"))
        {
            if (OutlineAsk.Mapping(context, entry, "when the game ends and what follows") is not { } mapping)
            {
                continue;
            }

            OutlineAsk.CheckKeys(context, mapping, "end");
            string name = Prose.Fold(entry.Key.Text);
            FormulaReader reader = context.Formulas(new Scope());
            Term? condition = mapping.Find("if") is { } given ? reader.Value(given.Value, Sort.Truth, name) : null;
            Choice? choice = ForkReader.OfWording(context, mapping, name);
            ends.Add(new EndRule(
                name, OutlineAsk.Prose(mapping, "says"), ClauseParts.CiteOrWarn(context, mapping, entry.Key, name), choice, condition,
                Words(context, mapping, "then", Follows), Words(context, mapping, "winner", Winners), entry.Key.Span, reader.Scope.FrameSize));
        }

        return ends.ToImmutable();
    }

    private static string? Words(LoadContext context, OutlineMapping mapping, string key, ImmutableArray<string> known)
    {
        if (mapping.Find(key) is not { } entry)
        {
            return null;
        }

        string words = ClauseParts.Words(entry.Value);
        if (!known.Contains(words) && !OutlineAsk.IsLeftOut(entry.Value))
        {
            context.Problems.Add(SheetProblems.UnknownWord(entry.Value.Span, words, key == "then" ? "something that can follow" : "somebody who can win", known));
        }

        return words;
    }
}
