using System.Collections.Immutable;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Coverage;

/// <summary>The rules that a lesson has to say: those of the game, then what each variant adds or changes.</summary>
internal static class ClauseList
{
    // Each takes a reading of the whole sheet.
    private const int MostVariants = 40;

    /// <summary>All of them, in the order in which one would teach them.</summary>
    /// <remarks>Steps and tables without a sentence of their author are machinery of the sheet and no rules to be said.</remarks>
    public static ImmutableArray<LessonClause> Of(Game game, Sheet sheet)
    {
        ILookup<string, SaidNames> names = SaidNames.Of(sheet).ToLookup(n => n.Name, StringComparer.Ordinal);
        LessonClause[] own = [.. OfSheet(sheet, null)];
        LessonClause[] all = [.. own, .. sheet.Variants.Take(MostVariants).SelectMany(v => OfVariant(game, sheet, v))];
        ILookup<string, LessonClause> byName = all.ToLookup(c => c.Name, StringComparer.Ordinal);
        return [.. all.Select(c => c with
        {
            Key = byName[c.Name].Skip(1).Any() ? c.LongName : c.Name,
            Called = [.. names[c.Name].Where(n => n.Section == LessonClause.SectionOf(c.Sort)).SelectMany(n => n.Called)],
        })];
    }

    private static IEnumerable<LessonClause> OfSheet(Sheet sheet, string? variant) =>
    [
        .. sheet.Blocks.Where(b => b.Name != "course").Select(b => Course(sheet, b, variant)).OfType<LessonClause>(),
        .. sheet.Actions.Where(a => a.Says is not null).Select(a => new LessonClause(ClauseSort.Action, a.Action.Name, a.Says!, a.Cite, variant) { Calls = Calls(a.Steps) }),
        .. sheet.Laws.Select(l => new LessonClause(ClauseSort.Law, l.Name, l.Says ?? l.Bodies.FirstOrDefault().FirstOrDefault()?.Idiom?.Sentence ?? l.Name, l.Cite, variant)),
        .. sheet.Powers.Select(p => new LessonClause(ClauseSort.Power, p.Name, p.Says ?? p.Name, p.Cite, variant)),
        .. sheet.Ends.Select(e => new LessonClause(ClauseSort.End, e.Name, e.Says ?? e.Name, e.Cite, variant)),
        .. sheet.Score.Select(s => new LessonClause(ClauseSort.Score, s.Name, s.Says ?? s.Bodies.FirstOrDefault()?.Idiom?.Sentence ?? s.Name, s.Cite, variant)),
        .. sheet.Tables.Where(t => t.Says is not null).Select(t => new LessonClause(ClauseSort.Table, t.Table.Name, t.Says!, t.Cite, variant) { Rows = Rows(t) }),
        .. Ties(sheet, variant),
        .. Winning(sheet, variant),
        .. sheet.Choices.Where(c => c.IsOpen).GroupBy(c => c.Owner).Select(g => Reading(sheet, g.First(), variant)),
    ];

    private static LessonClause? Course(Sheet sheet, Block block, string? variant) =>
        (sheet.Tree.Find(block.Name)?.Value as OutlineMapping)?.Find("says")?.Value is OutlineScalar says
            ? new LessonClause(ClauseSort.Course, block.Name, Prose.Fold(says.Text), block.Cite, variant) { Calls = Calls(block.Steps) }
            : null;

    // The page of a tie-break is that of no clause; ties are never modelled with one.
    private static IEnumerable<LessonClause> Ties(Sheet sheet, string? variant) =>
        sheet.Ties.Select(t => Prose.Fold(t.Replace("my ", "", StringComparison.Ordinal))).Select(t => new LessonClause(ClauseSort.Tie, t, t, null, variant));

    private static IEnumerable<LessonClause> Winning(Sheet sheet, string? variant)
    {
        string? aim = sheet.Aim switch
        {
            { Kind: AimKind.LowestTotal } => "The lowest wins.",
            { Kind: AimKind.AtLeast, Target: { } least } => $"At least {least} wins.",
            { Kind: AimKind.MoreThan, Target: { } more } => $"More than {more} wins.",
            _ => null,
        };
        if (aim is not null)
        {
            yield return new LessonClause(ClauseSort.Aim, "aim", aim, null, variant);
        }

        if (!sheet.Rating.IsEmpty)
        {
            yield return new LessonClause(ClauseSort.Rating, "rating", string.Join(' ', sheet.Rating.Select(r => r.Name)), sheet.RatingCite, variant);
        }
    }

    private static LessonClause Reading(Sheet sheet, Choice choice, string? variant)
    {
        OpenQuestion? question = sheet.Questions.FirstOrDefault(q => q.About == choice.Owner);
        Citation? cite = question?.Cite ?? choice.Cite ?? sheet.Score.FirstOrDefault(s => s.Name == choice.Owner)?.Cite ?? sheet.Laws.FirstOrDefault(l => l.Name == choice.Owner)?.Cite;
        return new LessonClause(ClauseSort.Reading, $"readings of {choice.Owner}", question?.Words ?? string.Join(' ', choice.Says), cite, variant) { Readings = choice.Names };
    }

    // What differs from the game itself, or from what the variants give with which this one comes on by itself.
    private static IEnumerable<LessonClause> OfVariant(Game game, Sheet sheet, VariantFacts variant)
    {
        yield return new LessonClause(ClauseSort.Variant, variant.Name, variant.Says ?? variant.Name, null, null) { OnlyWith = variant.When };
        string[] on = [.. variant.When.IsEmpty ? [variant.Name] : variant.When];
        if (game.Sheet(on).Sheet is not { } with)
        {
            yield break;
        }

        var before = (variant.When.IsEmpty ? OfSheet(sheet, null) : variant.When.Select(w => game.Sheet(w).Sheet).OfType<Sheet>().SelectMany(s => OfSheet(s, null)))
            .ToLookup(c => (c.Sort, c.Name));
        foreach (LessonClause clause in OfSheet(with, variant.Name))
        {
            LessonClause[] old = [.. before[(clause.Sort, clause.Name)]];
            if (old.All(o => o.Says != clause.Says))
            {
                yield return clause with { Before = old.FirstOrDefault()?.Says, OnlyWith = variant.When };
            }
        }
    }

    private static ImmutableArray<string> Calls(ImmutableArray<Step> steps) =>
        [.. steps.SelectMany(s => s.All).Select(s => s.Action?.Name ?? s.Block).OfType<string>().Distinct()];

    private static ImmutableArray<ImmutableArray<long>> Rows(TableFacts table) =>
        [.. table.Versions.Select(v => v.Rows.Select(r => r.Entry).OfType<Term.Number>().Select(n => n.Amount).Where(n => n != 0).Distinct().ToImmutableArray())];
}
