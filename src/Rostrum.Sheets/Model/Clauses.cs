using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>The use of an idiom by a clause.</summary>
/// <param name="Name">The idiom's name.</param>
/// <param name="Sentence">What it reads back as, with the clause's own words in it.</param>
/// <param name="Source">The idiom's file.</param>
public sealed record IdiomUse(string Name, string Sentence, SourceSpan Source);

/// <summary>What every clause has.</summary>
/// <param name="Name">Its name, unique in its section.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Choice">Its readings or conflict; null where it has one meaning.</param>
/// <param name="At">Where it stands.</param>
/// <param name="FrameSize">How many frame positions its formulas need.</param>
public abstract record Clause(string Name, string? Says, Citation? Cite, Choice? Choice, SourceSpan At, int FrameSize);

/// <summary>A clause that scores.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Choice">Its readings; null where it has one meaning.</param>
/// <param name="Bodies">One meaning, or one for each alternative of <paramref name="Choice"/>.</param>
/// <param name="At">Where it stands.</param>
/// <param name="FrameSize">How many frame positions its formulas need.</param>
public sealed record ScoreClause(string Name, string? Says, Citation? Cite, Choice? Choice, ImmutableArray<ScoreBody> Bodies, SourceSpan At, int FrameSize)
    : Clause(Name, Says, Cite, Choice, At, FrameSize);

/// <summary>One meaning of a scoring clause.</summary>
/// <param name="Each">What gives a line of its own; null where the clause is one number.</param>
/// <param name="Points">The points of an element, or of the clause.</param>
/// <param name="AtLeast">The least that the clause gives; null for no limit.</param>
/// <param name="AtMost">The most that the clause gives; null for no limit.</param>
/// <param name="Idiom">The idiom that says it; null for a formula of the sheet.</param>
/// <param name="Formula">The meaning as it reads back, for a formula of the sheet.</param>
public sealed record ScoreBody(Pick? Each, Term Points, Term? AtLeast, Term? AtMost, IdiomUse? Idiom, string Formula);

/// <summary>A clause that says what is allowed.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Choice">Its readings; null where it has one meaning.</param>
/// <param name="Binds">The actions that it binds; never empty.</param>
/// <param name="Bodies">One meaning, or one for each alternative of <paramref name="Choice"/>; each with one meaning for each action of <paramref name="Binds"/>.</param>
/// <param name="At">Where it stands.</param>
/// <param name="FrameSize">How many frame positions its formulas need.</param>
public sealed record Law(string Name, string? Says, Citation? Cite, Choice? Choice, ImmutableArray<ActionName> Binds, ImmutableArray<ImmutableArray<LawBody>> Bodies, SourceSpan At, int FrameSize)
    : Clause(Name, Says, Cite, Choice, At, FrameSize);

/// <summary>One meaning of a law for one action.</summary>
/// <param name="Demands">What it demands and forbids; never empty.</param>
/// <param name="Unless">Where it does not hold; null for none.</param>
/// <param name="Formula">The meaning as it reads back.</param>
public sealed record LawBody(ImmutableArray<LawDemand> Demands, Term? Unless, string Formula)
{
    /// <summary>The idiom that says it; null for formulas of the sheet.</summary>
    public IdiomUse? Idiom { get; init; }

    /// <summary>Every truth that it asks: its demands, then where it does not hold.</summary>
    public IEnumerable<Term> Truths => Demands.Select(d => d.Truth).Concat(Unless is null ? [] : [Unless]);
}

/// <summary>One demand of a law.</summary>
/// <param name="Kind">When it is asked, and what must come out.</param>
/// <param name="Truth">What is asked.</param>
public sealed record LawDemand(DemandKind Kind, Term Truth);

/// <summary>When a demand is asked, and what must come out.</summary>
public enum DemandKind
{
    /// <summary>Before the action, must be yes.</summary>
    Needs,

    /// <summary>Before the action, must be no.</summary>
    Forbids,

    /// <summary>After the action, must be yes.</summary>
    MustLeave,

    /// <summary>After the action, must be no.</summary>
    MustNotLeave,
}

/// <summary>A power: it offers, at a price, what breaks only the laws that it lifts.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Lifts">The names of the laws; empty for any one law.</param>
/// <param name="For">The action; null for any.</param>
/// <param name="If">When it is at hand; null for always.</param>
/// <param name="Price">What it costs.</param>
/// <param name="At">Where it stands.</param>
/// <param name="FrameSize">How many frame positions its formulas need.</param>
public sealed record Power(string Name, string? Says, Citation? Cite, ImmutableArray<string> Lifts, ActionName? For, Term? If, ImmutableArray<Step> Price, SourceSpan At, int FrameSize)
    : Clause(Name, Says, Cite, null, At, FrameSize)
{
    /// <summary>How often it may be used in the span of <see cref="LimitPer"/>; null for any number of times.</summary>
    public int? LimitTimes { get; init; }

    /// <summary>The span that the limit is of.</summary>
    public LimitPer LimitPer { get; init; }
}

/// <summary>The span in which a power may be used so often.</summary>
public enum LimitPer
{
    /// <summary>The whole game.</summary>
    Game,

    /// <summary>A round.</summary>
    Round,

    /// <summary>A turn.</summary>
    Turn,
}

/// <summary>A clause that ends the game.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">The author's sentence, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="Choice">Its readings or conflict.</param>
/// <param name="If">When it happens, asked of the player <c>me</c> whose turn it was; null where a step calls it.</param>
/// <param name="Then">What follows, in the author's words; null where the game is over at once.</param>
/// <param name="Winner">Who wins, in the author's words; null where the total decides.</param>
/// <param name="At">Where it stands.</param>
/// <param name="FrameSize">How many frame positions its formulas and steps need.</param>
public sealed record EndRule(string Name, string? Says, Citation? Cite, Choice? Choice, Term? If, string? Then, string? Winner, SourceSpan At, int FrameSize)
    : Clause(Name, Says, Cite, Choice, At, FrameSize)
{
    /// <summary>What follows once it happened.</summary>
    public EndFollow Follows { get; init; }

    /// <summary>Who wins.</summary>
    public EndWinner Wins { get; init; }

    /// <summary>The player, or the set or list of players, who win; null unless <see cref="Wins"/> is <see cref="EndWinner.Given"/>.</summary>
    public Term? WinnerTerm { get; init; }

    /// <summary>When it is asked.</summary>
    public EndMoment Moment { get; init; }

    /// <summary>The action or block before or after which it is asked; null for the other moments.</summary>
    public string? Block { get; init; }

    /// <summary>The last steps, carried out when it happens; empty for none.</summary>
    public ImmutableArray<Step> Steps { get; init; } = [];
}

/// <summary>What follows once an end happened.</summary>
public enum EndFollow
{
    /// <summary>The game is over.</summary>
    AtOnce,

    /// <summary>The round at hand is finished, so that everybody has had as many turns.</summary>
    FinishTheRound,

    /// <summary>The round at hand is finished, and one more is played.</summary>
    OneMoreRound,

    /// <summary>Every player but <c>me</c> has one more turn.</summary>
    EveryOtherPlayerOnceMore,

    /// <summary>The player <c>me</c> is out; the others play on.</summary>
    Out,
}

/// <summary>Who wins by an end.</summary>
public enum EndWinner
{
    /// <summary>The total decides, see <see cref="Aim"/>.</summary>
    ByTotal,

    /// <summary>The player whose turn it was.</summary>
    Me,

    /// <summary>The other one of two players.</summary>
    Opponent,

    /// <summary>All players together.</summary>
    Everyone,

    /// <summary>Nobody: a draw, or all lose.</summary>
    Nobody,

    /// <summary>Whom the formula gives, see <see cref="EndRule.WinnerTerm"/>.</summary>
    Given,
}

/// <summary>When an end is asked.</summary>
public enum EndMoment
{
    /// <summary>After the turn of each player.</summary>
    AfterEachTurn,

    /// <summary>After each round.</summary>
    AfterEachRound,

    /// <summary>After each action.</summary>
    AfterEachAction,

    /// <summary>Before an action or block, see <see cref="EndRule.Block"/>.</summary>
    BeforeBlock,

    /// <summary>After an action or block.</summary>
    AfterBlock,
}

/// <summary>A fact that a teacher says: a thing with a number or a name, and a page.</summary>
/// <param name="Name">What it is about.</param>
/// <param name="Number">The number; null for words.</param>
/// <param name="Words">The value as written.</param>
/// <param name="Of">What is counted, or null.</param>
/// <param name="Cite">Where the rules say so.</param>
/// <param name="At">Where it stands.</param>
public sealed record Fact(string Name, long? Number, string Words, string? Of, Citation? Cite, SourceSpan At)
{
    /// <summary>What several sources or readings say; null where there is one value. Where none is followed, <see cref="Words"/> tells all of them.</summary>
    public Choice? Choice { get; init; }
}

/// <summary>A question that the sources leave open, kept for the publisher.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Words">The question.</param>
/// <param name="Cite">Where the silence is.</param>
/// <param name="About">The clause, word, table or card whose readings it asks about, see <see cref="Choice.Owner"/>; null for none.</param>
/// <param name="At">Where it stands.</param>
public sealed record OpenQuestion(string Name, string Words, Citation? Cite, string? About, SourceSpan At);
