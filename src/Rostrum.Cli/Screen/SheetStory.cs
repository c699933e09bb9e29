using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Cli.Screen;

/// <summary>A sheet read back, with what its variants would change.</summary>
/// <param name="Title">The game, and the variants that are on.</param>
/// <param name="Clauses">In the order in which one would teach them.</param>
/// <param name="Sources">The sources; empty where one section only is wanted.</param>
/// <param name="Variants">The variants that are not on.</param>
internal sealed record SheetStory(string Title, ImmutableArray<ReadClause> Clauses, ImmutableArray<RuleSource> Sources, ImmutableArray<VariantStory> Variants);

/// <summary>What a variant changes.</summary>
/// <param name="Name">The variant.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Differences">New, changed and gone clauses; no other clause changes.</param>
/// <param name="Rest">What stays the same, by what is written.</param>
internal sealed record VariantStory(string Name, string? Says, ImmutableArray<ReadDifference> Differences, ReadRest Rest)
{
    /// <summary>The story of a variant.</summary>
    public static VariantStory Of(VariantFacts variant, Sheet sheet, Sheet with)
    {
        ImmutableArray<ReadDifference> differences = SheetReadBack.Differences(sheet, with);
        return new VariantStory(variant.Name, variant.Says, differences, ReadRest.Of(sheet, with, differences));
    }
}
