using System.Collections.Immutable;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>What came of reading a sheet.</summary>
/// <param name="Sheet">The typed tree; null where the file could not be read at all. Where <paramref name="Problems"/> holds an error, parts of it stand
/// as mistakes, and nobody should answer from it.</param>
/// <param name="Problems">Everything that was found, causes before what follows from them.</param>
public sealed record SheetReading(Sheet? Sheet, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>True where answers may be given.</summary>
    public bool IsSound => Sheet is not null && !Problems.Any(p => p.Severity == Severity.Error);
}

/// <summary>Reads <c>sheet.yaml</c> of a game's folder into the typed tree.</summary>
public static class SheetReader
{
    /// <summary>The name of the sheet in its folder.</summary>
    public const string FileName = "sheet.yaml";

    /// <summary>Reads the sheet with some variants on.</summary>
    /// <param name="folder">The game's files.</param>
    /// <param name="idioms">The idiom library.</param>
    /// <param name="variants">The names of the variants that are on; empty for the base game. An unknown name is reported.</param>
    public static SheetReading Read(GameFolder folder, IdiomLibrary idioms, IReadOnlyCollection<string> variants)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var problems = new DiagnosticBag();
        FolderReading reading = folder.Read(FileName);
        if (reading.Text is not { } text)
        {
            problems.Add(SheetProblems.NotReadable(new SourceText(FileName, "").Whole, FileName, reading.Refusal));
            return new SheetReading(null, problems.InOrder());
        }

        if (OutlineReader.Read(text, SheetDialect.Sheets, problems) is not OutlineMapping { Entries.IsEmpty: false } tree)
        {
            if (problems.Count == 0)
            {
                problems.Add(SheetProblems.WantedEntries(text.Span(0, 0), "the sections of a rule sheet"));
            }

            return new SheetReading(null, problems.InOrder());
        }

        var context = new LoadContext(folder, idioms, problems);
        Sheet sheet = Assemble(context, tree, text, variants);
        return new SheetReading(sheet, CausesFirst.Of(problems, text, context.OfNames));
    }

    private static Sheet Assemble(LoadContext context, OutlineMapping tree, SourceText text, IReadOnlyCollection<string> wanted)
    {
        ImmutableArray<VariantFacts> variants = VariantReader.Read(tree, context.Problems);
        foreach (string unknown in wanted.Where(w => !variants.Any(v => v.Name == w)))
        {
            context.Problems.Add(SheetProblems.UnknownVariant(text.Span(0, 0), unknown, variants.Select(v => v.Name)));
        }

        ImmutableArray<VariantFacts> on = VariantReader.On(variants, wanted);
        OutlineMapping merged = VariantReader.Lay(tree, on, context.Problems);
        CheckTop(context, merged);
        return new SheetAssembly(context, merged).Assemble() with { Variants = variants, VariantsOn = [.. on.Select(v => v.Name)] };
    }

    private static void CheckTop(LoadContext context, OutlineMapping sheet)
    {
        foreach (OutlineEntry entry in sheet.Entries.Where(e => !SheetDialect.TopKeys.Contains(e.Key.Text) && !OutlineMerge.IsHook(e.Key.Text)))
        {
            context.Problems.Add(SheetProblems.UnknownKey(entry.Key.Span, entry.Key.Text, "a sheet", SheetDialect.TopKeys));
        }

        if (sheet.Find("rule sheet")?.Value is OutlineScalar format && format.Text.Trim() != "1")
        {
            context.Problems.Add(SheetProblems.WrongFormat(format.Span, format.Text));
        }
    }
}
