using System.Collections.Immutable;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Model;

/// <summary>A game's rules as data: the typed tree that every executor walks. Complete on construction, never patched.</summary>
public sealed record Sheet
{
    /// <summary>The game's name.</summary>
    public required string Game { get; init; }

    /// <summary>The fewest players; null where the sheet does not say.</summary>
    public int? FewestPlayers { get; init; }

    /// <summary>The most players; null where the sheet does not say.</summary>
    public int? MostPlayers { get; init; }

    /// <summary>The names of the seats, clockwise; empty where they have none.</summary>
    public ImmutableArray<string> SeatNames { get; init; } = [];

    /// <summary>The variants that this reading has on, in the order in which they were laid over the base.</summary>
    public ImmutableArray<string> VariantsOn { get; init; } = [];

    /// <summary>All variants that the sheet offers.</summary>
    public ImmutableArray<VariantFacts> Variants { get; init; } = [];

    /// <summary>The sources, in the order of the sheet.</summary>
    public ImmutableArray<RuleSource> Sources { get; init; } = [];

    /// <summary>The kinds of pieces, dice and cards.</summary>
    public ImmutableArray<KindFacts> Kinds { get; init; } = [];

    /// <summary>The cards.</summary>
    public ImmutableArray<CardTable> CardTables { get; init; } = [];

    /// <summary>The boards.</summary>
    public ImmutableArray<BoardFacts> Boards { get; init; } = [];

    /// <summary>The places that are no boards.</summary>
    public ImmutableArray<PlaceFacts> Places { get; init; } = [];

    /// <summary>The marks.</summary>
    public ImmutableArray<Mark> Marks { get; init; } = [];

    /// <summary>What is said of the marks, by <see cref="Mark.Index"/>.</summary>
    public ImmutableArray<MarkFacts> MarkFacts { get; init; } = [];

    /// <summary>What the letters of drawings stand for.</summary>
    public ImmutableArray<DrawingSign> Signs { get; init; } = [];

    /// <summary>How the pieces are drawn.</summary>
    public Appearance Appearance { get; init; } = Appearance.None;

    /// <summary>The words, by <see cref="Word.Index"/>.</summary>
    public ImmutableArray<WordMeaning> Meanings { get; init; } = [];

    /// <summary>The tables, by <see cref="Table.Index"/>.</summary>
    public ImmutableArray<TableFacts> Tables { get; init; } = [];

    /// <summary>The constants.</summary>
    public ImmutableArray<NumberConstant> Numbers { get; init; } = [];

    /// <summary>The actions and blocks, by <see cref="ActionName.Index"/>.</summary>
    public ImmutableArray<ActionFacts> Actions { get; init; } = [];

    /// <summary>The laws.</summary>
    public ImmutableArray<Law> Laws { get; init; } = [];

    /// <summary>The powers.</summary>
    public ImmutableArray<Power> Powers { get; init; } = [];

    /// <summary>The ends.</summary>
    public ImmutableArray<EndRule> Ends { get; init; } = [];

    /// <summary>The scoring clauses.</summary>
    public ImmutableArray<ScoreClause> Score { get; init; } = [];

    /// <summary>The tie-breaks, in order, as the author wrote them.</summary>
    public ImmutableArray<string> Ties { get; init; } = [];

    /// <summary>The same, understood: an entry for each of <see cref="Ties"/> that is modelled.</summary>
    public ImmutableArray<TieBreak> TieBreaks { get; init; } = [];

    /// <summary>Which total wins.</summary>
    public Aim Aim { get; init; } = Aim.Highest;

    /// <summary>Who has the next turn, asked of the player <c>me</c> whose turn has just ended; null where turns go clockwise.</summary>
    public Term? NextToPlay { get; init; }

    /// <summary>How many frame positions <see cref="NextToPlay"/> needs.</summary>
    public int NextToPlayFrame { get; init; }

    /// <summary>The teams; empty where everybody plays for himself.</summary>
    public ImmutableArray<Team> Teams { get; init; } = [];

    /// <summary>The rating ladder: (lowest total, name), lowest first; the first step has no lower limit.</summary>
    public ImmutableArray<RatingStep> Rating { get; init; } = [];

    /// <summary>Where the rules give the rating; null where the sheet names no page.</summary>
    public Citation? RatingCite { get; init; }

    /// <summary>What variants take off or add before rating: (variant, points).</summary>
    public ImmutableArray<(string Variant, long Points)> RatingCredit { get; init; } = [];

    /// <summary>The facts.</summary>
    public ImmutableArray<Fact> Facts { get; init; } = [];

    /// <summary>Every reading and conflict, by <see cref="Choice.Id"/>.</summary>
    public ImmutableArray<Choice> Choices { get; init; } = [];

    /// <summary>What the author left out, in the author's words.</summary>
    public ImmutableArray<string> NotModelled { get; init; } = [];

    /// <summary>Questions for the publisher.</summary>
    public ImmutableArray<OpenQuestion> Questions { get; init; } = [];

    /// <summary>Other steps: set-up, turn, closing, course.</summary>
    public ImmutableArray<Block> Blocks { get; init; } = [];

    /// <summary>Steps before, after or instead of an action or block, in the order of the sheet.</summary>
    public ImmutableArray<Hook> Hooks { get; init; } = [];

    /// <summary>Every list of steps of the sheet: of actions, blocks, hooks, ends, prices and cells of cards.</summary>
    public IEnumerable<ImmutableArray<Step>> StepLists => Actions.Select(a => a.Steps).Concat(Blocks.Select(b => b.Steps)).Concat(Hooks.Select(h => h.Steps))
        .Concat(Ends.Select(e => e.Steps)).Concat(Powers.Select(p => p.Price)).Concat(CardSteps);

    /// <summary>Every step of the sheet, those inside others included.</summary>
    public IEnumerable<Step> AllSteps => StepLists.Where(l => !l.IsDefault).SelectMany(l => l).SelectMany(s => s.All);

    /// <summary>The steps in the cells of cards, one list for each cell and each of its readings.</summary>
    public IEnumerable<ImmutableArray<Step>> CardSteps => CardTables.SelectMany(t => t.Rows).SelectMany(r => r.Cells).SelectMany(StepsIn);

    private static IEnumerable<ImmutableArray<Step>> StepsIn(Term cell) => cell switch
    {
        Term.Text { Steps.IsEmpty: false } text => [text.Steps],
        Term.Fork fork => fork.Alternatives.SelectMany(StepsIn),
        _ => [],
    };

    /// <summary>The text tree after the variants were laid over it.</summary>
    public required OutlineMapping Tree { get; init; }

    /// <summary>The names that formulas may use.</summary>
    public required Formulas.Vocabulary Names { get; init; }

    /// <summary>What the binder of outside words asks for.</summary>
    internal Formulas.Declarations Scope { get; init; } = new();

    /// <summary>The board with this place.</summary>
    public BoardFacts Board(Place place) => Found(Boards, place, static (b, p) => ReferenceEquals(b.Place, p));

    /// <summary>What is said of this kind.</summary>
    public KindFacts KindOf(Kind kind) => Found(Kinds, kind, static (k, of) => ReferenceEquals(k.Kind, of));

    /// <summary>The cards of this kind.</summary>
    public CardTable Cards(Kind kind) => Found(CardTables, kind, static (c, of) => ReferenceEquals(c.Kind, of));

    // Asked for each thing of each formula, so nothing is allocated.
    private static T Found<T, TOf>(ImmutableArray<T> all, TOf of, Func<T, TOf, bool> isIt)
    {
        foreach (T one in all)
        {
            if (isIt(one, of))
            {
                return one;
            }
        }

        throw new InvalidOperationException("The sheet does not have it.");
    }
}

/// <summary>A variant that a sheet offers.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="When">The variants with which it comes on by itself; empty for none.</param>
/// <param name="After">The variant that is laid before it, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Tree">What it changes.</param>
public sealed record VariantFacts(string Name, string? Says, ImmutableArray<string> When, string? After, string? Cite, OutlineMapping Tree);

/// <summary>The cards of one kind with their cells.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The cards in order.</param>
public sealed record CardTable(Kind Kind, ImmutableArray<Column> Columns, ImmutableArray<CardRow> Rows);

/// <summary>A card with its cells.</summary>
/// <param name="Card">The card.</param>
/// <param name="Count">How many of it there are.</param>
/// <param name="Cells">By <see cref="Column.Index"/>; <see cref="Term.Nothing"/> for an empty cell.</param>
/// <param name="FrameSize">How many frame positions the cells need.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Says">The card in words: its sentence, or null.</param>
public sealed record CardRow(Card Card, int Count, ImmutableArray<Term> Cells, int FrameSize, Citation? Cite, string? Says)
{
    /// <summary>The values of the card's attributes, by <see cref="Attribute.Index"/>; -1 for an attribute that it lacks.</summary>
    public ImmutableArray<int> Values { get; init; } = [];
}

/// <summary>A letter or sign of drawings.</summary>
/// <param name="Sign">One character.</param>
/// <param name="Stands">A kind, a value or a card.</param>
public sealed record DrawingSign(char Sign, Named Stands);

/// <summary>A step of a rating ladder.</summary>
/// <param name="From">The lowest total; null for the step below all others.</param>
/// <param name="Name">Its name.</param>
public sealed record RatingStep(long? From, string Name);

/// <summary>How pieces are drawn: names from the catalogues of the picture room, by value or kind.</summary>
/// <param name="Outlines">The outline of things with this value or of this kind.</param>
/// <param name="Colours">The colour.</param>
/// <param name="Emblems">The emblem that tells a thing apart without colour.</param>
/// <param name="Flaws">What is drawn over a thing with this value, such as a crack.</param>
public sealed record Appearance(
    ImmutableArray<(Named Of, string Drawn)> Outlines,
    ImmutableArray<(Named Of, string Drawn)> Colours,
    ImmutableArray<(Named Of, string Drawn)> Emblems,
    ImmutableArray<(Named Of, string Drawn)> Flaws)
{
    /// <summary>Nothing is said.</summary>
    public static Appearance None { get; } = new([], [], [], []);
}
