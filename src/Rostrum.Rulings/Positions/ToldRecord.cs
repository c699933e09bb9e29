using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Positions;

/// <summary>The record that a position file tells under <c>done</c>: what it does not list was not done.</summary>
/// <param name="deeds">What was done, in the order of the file: of one time, the last one is the latest.</param>
internal sealed class ToldRecord(ImmutableArray<Deed> deeds) : GameRecord
{
    /// <summary>What was done, in the order of the file.</summary>
    public ImmutableArray<Deed> Deeds => deeds;

    /// <summary>Whether the turn before belongs to the round at hand: not where the round began with the turn at hand.</summary>
    public required Kleene IsTurnBeforeInRound { get; init; }

    /// <summary>The seat whose turn it is, 0-based.</summary>
    public required int Me { get; init; }

    /// <summary>How many sit at the table.</summary>
    public required int Seats { get; init; }

    /// <summary>A record of a position.</summary>
    /// <param name="position">The position.</param>
    /// <param name="deeds">What was done, in the order of the file.</param>
    public static ToldRecord Of(Position position, ImmutableArray<Deed> deeds)
    {
        int? start = SheetIndex.Of(position.Sheet).SetsStartPlayer ? null : 0;
        Kleene isInRound = position.Sheet.NextToPlay is not null ? Kleene.Yes : start is { } first ? InRound(position.Me, first) : Kleene.Unknown;
        return new ToldRecord(deeds) { IsTurnBeforeInRound = isInRound, Me = position.Me, Seats = position.Seats };
    }

    /// <inheritdoc />
    internal override GameRecord StartedBy(int start) => IsTurnBeforeInRound != Kleene.Unknown ? this
        : new ToldRecord(deeds) { IsTurnBeforeInRound = InRound(Me, start), Me = Me, Seats = Seats };

    /// <inheritdoc />
    internal override Kleene Was(ActionName action, DoneWhen when, int? by)
    {
        Kleene[] falls = [.. Of(action, by).Select(d => IsIn(d, when))];
        return falls.Contains(Kleene.Yes) ? Kleene.Yes : falls.Contains(Kleene.Unknown) ? Kleene.Unknown : Kleene.No;
    }

    /// <inheritdoc />
    internal override Value Last(ActionName action, int choice, int? by)
    {
        if (Of(action, by).OrderByDescending(d => d.When).LastOrDefault() is not { } last)
        {
            return Value.None;
        }

        return last.Chosen[choice] is { IsSettled: true } chosen ? chosen
            : new Value.Unknown(Blame.Of(GapKind.NotGiven, $"'{last.Action.Choices[choice].Name}' of the last '{action.Name}'"));
    }

    private IEnumerable<Deed> Of(ActionName action, int? by) => deeds.Where(d => ReferenceEquals(d.Action.Action, action) && (by is null || d.Seat == by));

    private Kleene IsIn(Deed deed, DoneWhen when) => when switch
    {
        DoneWhen.Before => Kleene.Yes,
        DoneWhen.ThisRound when deed.When == DoneWhen.TurnBefore => InRound(deed),
        DoneWhen.RoundBefore when deed.When == DoneWhen.TurnBefore => Evaluator.Not(new Value.Truth(InRound(deed), Blame.None)).Is,
        DoneWhen.ThisRound => deed.When is DoneWhen.ThisTurn or DoneWhen.ThisRound ? Kleene.Yes : Kleene.No,
        _ => deed.When == when ? Kleene.Yes : Kleene.No,
    };

    // Two turns of one player that follow each other are of one round, unless nobody else plays.
    private Kleene InRound(Deed deed) => deed.Seat == Me && Seats > 1 ? Kleene.Yes : IsTurnBeforeInRound;

    private static Kleene InRound(int me, int start) => me == start ? Kleene.No : Kleene.Yes;
}

/// <summary>Something that was done.</summary>
/// <param name="Action">The action.</param>
/// <param name="When">The nearest time to which it belongs.</param>
/// <param name="Seat">Who did it, 0-based.</param>
/// <param name="Chosen">By choice of the action: what was chosen; null where the phrase does not say, not settled where it cannot be told from others.</param>
/// <param name="Words">The phrase.</param>
internal sealed record Deed(ActionFacts Action, DoneWhen When, int Seat, ImmutableArray<Value?> Chosen, string Words);
