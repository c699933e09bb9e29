using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Catalogue;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum read</c>: the sheet read back as English.</summary>
internal sealed class ReadCommand : GameCommand
{
    private readonly Option<string?> _section;
    private readonly Option<string[]> _idioms;

    /// <summary>The command at a desk.</summary>
    public ReadCommand(Desk desk)
        : this(desk, new Option<string?>("--section") { HelpName = "NAME", Description = "Show one section only, such as Scoring." }, IdiomsOption())
    {
    }

    private ReadCommand(Desk desk, Option<string?> section, Option<string[]> idioms)
        : base(desk, "read", "Reads the sheet back as English: each clause with its page, what variants change, what is open or not modelled.", "rostrum read games/kiln-night --section Scoring", section, idioms)
    {
        (_section, _idioms) = (section, idioms);
        NeedNoGame();
    }

    /// <inheritdoc />
    protected override int? Aside(IdiomShelf shelf, ParseResult parse)
    {
        if (parse.GetResult(_idioms) is null)
        {
            return IsGameNamed(parse) ? null : Desk.Refuse("'rostrum read' needs <game> as well, or '--idioms'.", "'rostrum read --help' shows how it is used.");
        }

        ImmutableArray<IdiomEntry> all = IdiomCatalogue.Of(shelf);
        string words = string.Join(' ', parse.GetValue(_idioms) ?? []);
        ImmutableArray<IdiomEntry> found = words.Length == 0 ? all : IdiomCatalogue.Find(all, words);
        return found.IsEmpty ? Desk.Refuse(IdiomCatalogue.Nothing(all, words)) : Tell(found, parse.GetValue<bool>("--json"));
    }

    /// <inheritdoc />
    protected override int Answer(GameRequest request, ParseResult parse)
    {
        SheetReading reading = request.Game.Sheet(request.Variants);
        if (!reading.IsSound)
        {
            return Report(reading.Problems, request.Json);
        }

        SheetStory story = Story(request, reading.Sheet!);
        if (parse.GetValue(_section) is { } section)
        {
            string[] known = [.. story.Clauses.Select(c => c.Section).Distinct()];
            if (!known.Contains(section, StringComparer.OrdinalIgnoreCase))
            {
                string instead = NearSpelling.Find(section, known) is { } near ? $"Did you mean '{near}'?" : $"There are {Prose.And(known)}.";
                return Desk.Refuse($"There is no section '{Prose.Clip(section)}'. {instead}");
            }

            story = Only(story, section);
        }

        Tell(story, reading.Sheet!, request.Json);
        return ExitCode.Fine;
    }

    private int Tell(ImmutableArray<IdiomEntry> found, bool json)
    {
        if (json)
        {
            Desk.Write(new IdiomReport(ReportJson.Format, [.. found.Select(IdiomItem.Of)]), r => r.IdiomReport);
            return ExitCode.Fine;
        }

        Desk.Write(IdiomScreen.Of(found));
        string more = found.Length > IdiomScreen.Few ? "; 'rostrum read --idioms' with words of one of them shows how it is written" : "";
        Desk.Tell($"{Prose.Count(found.Length, "idiom", "idioms")}{more}");
        return ExitCode.Fine;
    }

    private static Option<string[]> IdiomsOption() => new("--idioms")
    {
        HelpName = "[WORD…]",
        Description = "Instead of a game, show the idioms that speak of these words, each with a clause to copy; all of them without words.",
        Arity = ArgumentArity.ZeroOrMore,
        AllowMultipleArgumentsPerToken = true,
    };

    private static SheetStory Story(GameRequest request, Sheet sheet) => new(
        string.Join(", ", [sheet.Game, .. sheet.VariantsOn]),
        SheetReadBack.Of(sheet),
        sheet.Sources,
        [
            .. from variant in sheet.Variants
               where !sheet.VariantsOn.Contains(variant.Name)
               let with = request.Game.Sheet(request.Variants.Add(variant.Name))
               where with.IsSound
               select VariantStory.Of(variant, sheet, with.Sheet!),
        ]);

    private static SheetStory Only(SheetStory story, string section) => story with
    {
        Clauses = [.. story.Clauses.Where(c => string.Equals(c.Section, section, StringComparison.OrdinalIgnoreCase))],
        Sources = [],
        Variants = [],
    };

    private void Tell(SheetStory story, Sheet sheet, bool json)
    {
        if (!json)
        {
            Desk.Write(ReadScreen.Of(story));
            return;
        }

        Desk.Write(
            new ReadReport(
                ReportJson.Format,
                sheet.Game,
                sheet.VariantsOn,
                [.. story.Clauses.Select(ClauseItem.Of)],
                [.. story.Variants.SelectMany(v => v.Differences.Select(d => DifferenceItem.Of(v.Name, d)))],
                [.. story.Variants.Select(v => new UnchangedItem(v.Name, v.Rest.Same, v.Rest.Untold))],
                [.. story.Sources.Select(SourceItem.Of)]),
            r => r.ReadReport);
    }
}
