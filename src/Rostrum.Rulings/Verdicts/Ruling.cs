using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>What the rules say about one proposed action, or whether a truth holds. Closed: the records below and no more.</summary>
public abstract record Ruling
{
    private Ruling()
    {
    }

    /// <summary>What was taken for granted, such as <c>a copper jug in your carried</c>; usually empty.</summary>
    public ImmutableArray<string> Assumed { get; init; } = [];

    /// <summary>The verdict in one word: <c>legal</c>, <c>illegal</c>, <c>unsettled</c>, <c>yes</c> or <c>no</c>.</summary>
    public abstract string Verdict { get; }

    /// <summary>Every law allows the action, or a power offers it.</summary>
    /// <param name="Because">Why, as a sentence; with a power, which one and what it lifts.</param>
    /// <param name="Price">What a power costs; null where none is needed.</param>
    public sealed record Legal(string Because, string? Price) : Ruling
    {
        /// <summary>The laws that bind the action and are kept, in the order of the sheet; empty where none binds it.</summary>
        public ImmutableArray<KeptLaw> Kept { get; init; } = [];

        /// <inheritdoc />
        public override string Verdict => "legal";
    }

    /// <summary>At least one law forbids the action.</summary>
    /// <param name="Breaches">Every law that is broken, in the order of the sheet; never empty.</param>
    public sealed record Illegal(ImmutableArray<Breach> Breaches) : Ruling
    {
        /// <inheritdoc />
        public override string Verdict => "illegal";
    }

    /// <summary>A truth holds.</summary>
    /// <param name="Because">The witness, as a sentence.</param>
    /// <param name="Spaces">The names of the spaces that it points at.</param>
    public sealed record Yes(string Because, ImmutableArray<string> Spaces) : Ruling
    {
        /// <inheritdoc />
        public override string Verdict => "yes";
    }

    /// <summary>A truth does not hold.</summary>
    /// <param name="Because">What is missing, as a sentence.</param>
    /// <param name="Spaces">The names of the spaces that it points at.</param>
    public sealed record No(string Because, ImmutableArray<string> Spaces) : Ruling
    {
        /// <inheritdoc />
        public override string Verdict => "no";
    }

    /// <summary>The sources are silent or disagree, or a fact is missing: a presenter must say what they assume.</summary>
    /// <param name="Readings">The verdict of each alternative of each open choice that matters; may be empty.</param>
    /// <param name="NotGiven">What the position does not say and the ruling would need; may be empty.</param>
    /// <param name="NotModelled">What the sheet does not say and the ruling would need; may be empty.</param>
    /// <remarks>The three are never all empty.</remarks>
    public sealed record Unsettled(ImmutableArray<RulingReading> Readings, ImmutableArray<string> NotGiven, ImmutableArray<string> NotModelled) : Ruling
    {
        /// <inheritdoc />
        public override string Verdict => "unsettled";
    }

    /// <summary>The reason in one line; for an illegal action every breach as <paramref name="breach"/> tells it.</summary>
    public string Reason(Func<Breach, string> breach) => this switch
    {
        Legal legal => legal.Because,
        Illegal illegal => string.Join("; ", illegal.Breaches.Select(breach)),
        Yes yes => yes.Because,
        No no => no.Because,
        Unsettled open => string.Join("; ", open.Readings.Select(r => $"{r.Verdict} if {r.Name}").Concat(open.NotGiven).Concat(open.NotModelled)),
        _ => "",
    };

    /// <summary>Rules on words: an action as its phrase says it, such as <c>place copper jug on B2</c>, or a truth, such as <c>Commission 12 is met</c>.</summary>
    /// <param name="position">What lies where; the action is that of <see cref="Position.Me"/>.</param>
    /// <param name="words">The words.</param>
    /// <returns>The ruling; or none, and what is wrong with the words.</returns>
    public static RulingAnswer On(Position position, string words)
    {
        ArgumentNullException.ThrowIfNull(position);
        ArgumentNullException.ThrowIfNull(words);
        return WordsRuling.On(position, words);
    }
}

/// <summary>A ruling, or what is wrong with the words that asked for it.</summary>
/// <param name="Ruling">The ruling; null where the words could not be understood.</param>
/// <param name="Problems">What is wrong with the words; empty where there is a ruling.</param>
public sealed record RulingAnswer(Ruling? Ruling, ImmutableArray<Diagnostic> Problems);

/// <summary>A law that an action breaks.</summary>
/// <param name="Clause">The name of the law; of the action where what was chosen is not among its choices.</param>
/// <param name="Says">The author's sentence, else the law's formula.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
/// <param name="Because">What breaks it, as a sentence.</param>
/// <param name="Spaces">The names of the spaces that the reason points at; may be empty.</param>
public sealed record Breach(string Clause, string Says, Citation? Cite, string Because, ImmutableArray<string> Spaces)
{
    /// <summary>The citation in words; <c>no page</c> where there is none.</summary>
    public string CiteInWords => Citation.Tell(Cite);
}

/// <summary>A law that an action keeps.</summary>
/// <param name="Clause">Its name.</param>
/// <param name="Says">The author's sentence, else the law's formula.</param>
/// <param name="Cite">Where the rules say so; null where the sheet names no page.</param>
public sealed record KeptLaw(string Clause, string Says, Citation? Cite)
{
    /// <summary>The citation in words; <c>no page</c> where there is none.</summary>
    public string CiteInWords => Citation.Tell(Cite);
}

/// <summary>The verdict by one alternative of an open choice.</summary>
/// <param name="Clause">The clause, word or table whose meaning forks.</param>
/// <param name="Name">The name of the alternative.</param>
/// <param name="Verdict"><c>legal</c>, <c>illegal</c>, <c>unsettled</c>, <c>yes</c> or <c>no</c>.</param>
public sealed record RulingReading(string Clause, string Name, string Verdict);
