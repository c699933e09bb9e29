using System.Collections.Immutable;
using Rostrum.Lessons.Coverage;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;

namespace Rostrum.Lessons.Published;

/// <summary>A rule of the sheet as it is now, in the form in which a video remembers it.</summary>
/// <param name="Key">Its name with its section before it, and before that the variant that brings it.</param>
/// <param name="Says">One sentence.</param>
/// <param name="Means">What it means as its author wrote it; may be empty.</param>
/// <param name="Reads">How its meaning reads back, where <paramref name="Says"/> is its author's own sentence; null where both are the same.</param>
/// <param name="Choice">Its readings or conflict; null where it has one meaning.</param>
/// <param name="Status">The choice in words; empty for none.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
internal sealed record RuleState(string Key, string Says, string Means, string? Reads, Choice? Choice, string Status, Citation? Cite)
{
    /// <summary>The clause as lessons know it; null for a word, number or table that only other rules use.</summary>
    public LessonClause? Clause { get; init; }

    /// <summary>True where its author gave it no sentence, so that what it reads back as is a formula.</summary>
    public bool IsFormula { get; init; }

    /// <summary>The name by which other rules call it; empty for a rule that none calls.</summary>
    public string CalledAs { get; init; } = "";

    /// <summary>Section and name as messages show them, such as <c>score/plates</c>.</summary>
    public static string KeyOf(LessonClause clause) => $"{(clause.Variant is { } variant ? $"{variant}/" : "")}{LessonClause.SectionOf(clause.Sort)}/{clause.Name}";
}

/// <summary>All rules of a game as they are now.</summary>
internal sealed class RuleStates
{
    private readonly Game _game;
    private readonly Sheet _sheet;
    private readonly Dictionary<string, (Sheet Sheet, ImmutableArray<ReadClause> Clauses)> _readBack = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RuleState> _byKey = new(StringComparer.Ordinal);

    /// <summary>The rules of a game.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    public RuleStates(Game game)
    {
        (_game, _sheet) = (game, game.Sheet().Sheet!);
        LessonClause[] clauses = [.. ClauseList.Of(game, _sheet)];
        string[] ties = [.. clauses.Where(c => c.Sort == ClauseSort.Tie && c.Variant is null).Select(c => c.Name)];
        IEnumerable<RuleState> open = _sheet.Choices.Where(c => !clauses.Any(k => k.Sort == ClauseSort.Reading && k.Variant is null && k.Name == ReadingsOf(c))).GroupBy(c => c.Owner).Select(g => Reading(g.First(), null));
        foreach (RuleState state in clauses.Select(c => Of(c, ties)).Concat(open).Concat(Helpers()))
        {
            _byKey.TryAdd(state.Key, state);
        }
    }

    /// <summary>All of them, in the order in which one would teach them, then what they use.</summary>
    public IEnumerable<RuleState> All => _byKey.Values;

    /// <summary>A rule by its name; null where there is none.</summary>
    public RuleState? Find(string key) => _byKey.GetValueOrDefault(key);

    /// <summary>The sources of the sheet in words: <c>Rulebook, first printing</c>.</summary>
    public ImmutableArray<(string Name, string Words)> Sources => [.. _sheet.Sources.Select(s => (s.Name, SourceInWords(s)))];

    /// <summary>A source with its printing and date in words.</summary>
    public static string SourceInWords(RuleSource source) =>
        $"{source.Title}{(source.Printing is { } printing ? $", {printing} printing" : "")}{(source.Date is { } date ? $", {date}" : "")}";

    private static string ReadingsOf(Choice choice) => $"readings of {choice.Owner}";

    private RuleState Of(LessonClause clause, string[] ties)
    {
        if (clause.Sort == ClauseSort.Reading)
        {
            return Reading(_sheet.Choices.FirstOrDefault(c => ReadingsOf(c) == clause.Name), clause);
        }

        (Sheet sheet, ImmutableArray<ReadClause> clauses) = ReadBackWith(clause);
        ReadClause? read = LessonClause.ToldIn(clause.Sort) is { } section ? clauses.FirstOrDefault(c => c.Section == section && c.Name == clause.Name) : null;
        string means = read is not null ? WrittenMeaning.Of(sheet, read) : clause.Sort == ClauseSort.Tie ? $"tie-break {Array.IndexOf(ties, clause.Name) + 1}" : "";
        return new RuleState(RuleState.KeyOf(clause), OneLine(clause.Says), OneLine(means), read?.Meaning, read?.Choice, StatusOf(read), CiteOf(clause.Cite, read)) { Clause = clause, CalledAs = clause.Sort == ClauseSort.Table ? clause.Name : "" };
    }

    // A choice that is decided has no rule of its own in a lesson; what was told as open has to be found again.
    private RuleState Reading(Choice? choice, LessonClause? clause)
    {
        ReadClause? owner = choice is null ? null : ReadBackOf("", []).Clauses.FirstOrDefault(c => c.Choice?.Id == choice.Id);
        string key = clause is null ? $"{LessonClause.SectionOf(ClauseSort.Reading)}/{ReadingsOf(choice!)}" : RuleState.KeyOf(clause);
        return new RuleState(key, OneLine(clause?.Says ?? owner?.Says ?? choice!.Owner), "", null, choice, StatusOf(owner), CiteOf(clause?.Cite ?? choice?.Cite, owner)) { Clause = clause };
    }

    // Words, numbers and tables without a sentence: nobody says them, but the rules that are said turn on them.
    private IEnumerable<RuleState> Helpers() =>
        from read in ReadBackOf("", []).Clauses
        where read.Section is "Words" or "Tables" || (read.Section == "Components" && _sheet.Numbers.Any(n => n.Name == read.Name))
        let name = read.Name.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? read.Name[..at].Trim() : read.Name
        select new RuleState($"{read.Section.ToLowerInvariant()}/{read.Name}", OneLine(read.Says), OneLine(WrittenMeaning.Of(_sheet, read)), read.Meaning, read.Choice, StatusOf(read), CiteOf(read.Cite, read))
        {
            CalledAs = name,
            IsFormula = read.Meaning is null,
        };

    private (Sheet Sheet, ImmutableArray<ReadClause> Clauses) ReadBackWith(LessonClause clause)
    {
        VariantFacts? variant = _sheet.Variants.FirstOrDefault(v => v.Name == clause.Variant);
        return variant is null ? ReadBackOf("", []) : ReadBackOf(variant.Name, variant.When.IsEmpty ? [variant.Name] : [.. variant.When]);
    }

    private (Sheet Sheet, ImmutableArray<ReadClause> Clauses) ReadBackOf(string name, string[] on)
    {
        if (!_readBack.TryGetValue(name, out (Sheet Sheet, ImmutableArray<ReadClause> Clauses) read))
        {
            Sheet sheet = _game.Sheet(on).Sheet ?? _sheet;
            _readBack[name] = read = (sheet, SheetReadBack.Of(sheet));
        }

        return read;
    }

    private static string StatusOf(ReadClause? read) => read is null or { Status: ClauseStatus.Settled } ? "" : OneLine(read.StatusInWords);

    // The source that decides weighs more than the one that is decided about.
    private static Citation? CiteOf(Citation? cite, ReadClause? read) => read?.Choice is { IsOpen: false, Cite: { } deciding } ? deciding : cite ?? read?.Cite;

    private static string OneLine(string words) => Film.OneLine.Of(words);
}
