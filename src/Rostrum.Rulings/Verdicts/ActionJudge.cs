using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>What one setting of the readings says about an action.</summary>
/// <param name="Is">Whether it is legal.</param>
/// <param name="Breaches">What is broken; empty unless it is illegal.</param>
/// <param name="Why">Why nobody can say; no cause unless it is unsettled.</param>
/// <param name="Because">Why it is legal; empty otherwise.</param>
/// <param name="Price">What a power costs; null where none is needed.</param>
internal sealed record Judgement(Kleene Is, ImmutableArray<Breach> Breaches, Blame Why, string Because, string? Price)
{
    /// <summary>The laws that are kept; empty unless it is legal.</summary>
    public ImmutableArray<KeptLaw> Kept { get; init; } = [];
}

/// <summary>Judges an action under one setting of the readings: its choices, every law, the powers.</summary>
internal sealed partial class ActionJudge(Proposal proposal, Setting setting, ISet<int> touched)
{
    private readonly LawJudge _laws = new(proposal, setting, touched);
    private readonly ImmutableArray<Breach>.Builder _breaches = ImmutableArray.CreateBuilder<Breach>();
    private readonly List<Law> _broken = [];
    private readonly List<Law> _open = [];
    private readonly List<int> _openChoices = [];
    private Blame _why = Blame.None;

    private Position Position => proposal.Position;

    /// <summary>The judgement; all breaches are told, never only the first. What keeps every law is illegal all the same where the turn lets something else come first.</summary>
    public Judgement Judge()
    {
        Judgement judged = JudgeAlone();
        if (judged.Is != Kleene.Yes || new TurnOrder(proposal, setting, touched).ComesFirst() is not var (first, way))
        {
            return judged;
        }

        string says = $"{Prose.Sentence(first.Action.Name)} comes first where it can be done.";
        _breaches.Add(new Breach("turn", says, Position.Sheet.Blocks.First(b => b.Name is "turn" or "course").Cite ?? first.Cite, $"'{way}' can be done", []));
        return Illegal();
    }

    /// <summary>The judgement by choices, laws and powers, whatever the turn puts first. Where a law asks what the action leaves, and a step hangs on chance or on what is
    /// decided later, the action is never called legal.</summary>
    public Judgement JudgeAlone()
    {
        Judgement judged = JudgeWords();
        Step[] open = [.. proposal.Action.Steps.Where(s => !s.IsCarriedOut)];
        return judged.Is == Kleene.Yes && open.Length > 0 && _laws.AskAfterwards
            ? Unsettled(open.Aggregate(Blame.None, (sum, s) => sum + Blame.Of(GapKind.NotYet, $"what '{Prose.Begun(s.Sentence)}' does")))
            : judged;
    }

    private Judgement JudgeWords()
    {
        AskChoices();
        bool isChosenWrongly = _breaches.Count > 0;
        AskLaws();
        if (_breaches.Count == 0)
        {
            AskHolds();
        }

        if (_breaches.Count == 0)
        {
            return _open.Count == 0 && !_why.IsAny ? Legal() : OpenTogether();
        }

        return isChosenWrongly || _broken.Count == 0 ? Illegal() : Powered();
    }

    // What a board says that a space holds binds every action; where a law of the sheet is broken anyway, that law is told.
    private Value.Truth AskHolds()
    {
        Value.Truth holds = new Splitter().Decide(Position, _laws.HoldsEnough);
        _why += holds.Blame;
        int before = _breaches.Count;
        if (holds.Is == Kleene.No)
        {
            TellOverfull();
        }

        if (holds.Is == Kleene.No && _breaches.Count == before)
        {
            ActionFacts action = proposal.Action;
            _breaches.Add(new Breach(action.Action.Name, Says(action), action.Cite, "whatever is not given, more lies afterwards than there may", []));
        }

        return holds;
    }

    private void TellOverfull()
    {
        if (_laws.OverfullPlace(Position) is var (place, seat, held))
        {
            string limit = $"'{place.Place.Name}' holds {Prose.Count(place.Most!.Value, "thing", "things")} at the most.";
            _breaches.Add(new Breach(place.Place.Name, limit, place.Cite, $"afterwards {Prose.Count(held, "thing lies", "things lie")} in {_laws.Naming.Place(place.Place, seat)}", []));
        }

        if (_laws.Overfull(Position) is var (board, space, things))
        {
            string says = $"{Prose.Sentence(Prose.A(board.Noun.Name))} of '{board.Place.Name}' holds {Prose.Count(board.MostInSpace!.Value, "thing", "things")} at the most.";
            _breaches.Add(new Breach(board.Place.Name, says, board.Cite, $"afterwards {Prose.Count(things, "thing lies", "things lie")} on {_laws.Naming.Of(space)}", _laws.Naming.SpacesOf(space)));
        }
    }

    private void AskChoices()
    {
        for (int i = 0; i < proposal.Action.Choices.Length; i++)
        {
            int choice = i;
            if (proposal.Chosen[i] is not { } chosen || proposal.Action.Choices[i].Amount == ChoiceAmount.Given)
            {
                continue;
            }

            Value.Truth may = new Splitter().Decide(Position, p => _laws.MayChoose(p, choice));
            if (may.Is == Kleene.No)
            {
                ActionFacts action = proposal.Action;
                string because = proposal.Impossible.GetValueOrDefault(i) ?? NotAmong(chosen, action.Choices[i].Words);
                _breaches.Add(new Breach(action.Action.Name, Says(action), action.Cite, because, _laws.Naming.SpacesOf(chosen)));
            }
            else if (may.Is == Kleene.Unknown)
            {
                _openChoices.Add(i);
            }

            _why += may.Blame;
        }
    }

    private string NotAmong(Value chosen, string words)
    {
        Value[] named = chosen is Value.Many many ? [.. many.Members.Select(m => m.Value)] : [chosen];
        return named.Length > named.Distinct().Count()
            ? $"{_laws.Naming.Of(named.GroupBy(v => v).First(g => g.Count() > 1).Key)} is named twice"
            : $"{_laws.Naming.Of(chosen)} {(named.Length > 1 ? "are" : "is")} not what may be chosen ({words})";
    }

    private void AskLaws()
    {
        foreach (Law law in _laws.Laws)
        {
            Value.Truth kept = new Splitter().Decide(Position, p => _laws.Keeps(p, law));
            if (kept.Is == Kleene.No)
            {
                _broken.Add(law);
                Tale why = _laws.Why(Position, law);
                _breaches.Add(new Breach(law.Name, Says(law), law.Cite, why.Text, why.Spaces));
            }
            else if (kept.Is == Kleene.Unknown)
            {
                _open.Add(law);
                _why += kept.Blame;
            }
        }
    }

    private static string Says(ActionFacts action) => action.Says ?? action.Action.Phrase.InWords;

    private string Says(Law law) => law.Says ?? law.Bodies[0][law.Binds.IndexOf(proposal.Action.Action)].Formula;

    private Judgement Legal()
    {
        int count = _laws.Laws.Count();
        string because = count switch
        {
            0 => "no law forbids it",
            1 => "the law that binds it is kept",
            2 => "both laws that bind it are kept",
            _ => $"all {Prose.Word(count)} laws that bind it are kept",
        };
        return new Judgement(Kleene.Yes, [], Blame.None, because, null) { Kept = Kept() };
    }

    private ImmutableArray<KeptLaw> Kept() => [.. _laws.Laws.Except(_broken).Select(l => new KeptLaw(l.Name, Says(l), l.Cite))];

    private Judgement Illegal() => new(Kleene.No, _breaches.ToImmutable(), Blame.None, "", null);

    private static Judgement Unsettled(Blame why) => new(Kleene.Unknown, [], why, "", null);

    // Each choice and each law alone may be kept or not, and yet one or another of them is broken whatever the facts are.
    private Judgement OpenTogether()
    {
        if (_open.Count + _openChoices.Count < 2 || new Splitter().Decide(Position, KeepsAllOpen).Is != Kleene.No)
        {
            return Unsettled(_why);
        }

        ActionFacts action = proposal.Action;
        IEnumerable<(string Clause, string Says, Citation? Cite)> choices = _openChoices.Count == 0 ? [] : [(action.Action.Name, Says(action), action.Cite)];
        (string Clause, string Says, Citation? Cite)[] open = [.. choices, .. _open.Select(l => (l.Name, Says(l), l.Cite))];
        string names = Prose.Or(open.Select(o => $"'{o.Clause}'"));
        _breaches.AddRange(open.Select(o => new Breach(o.Clause, o.Says, o.Cite, $"whatever is not given, {names} is broken", [])));
        return Illegal();
    }

    private Value.Truth KeepsAllOpen(Position position) => _openChoices.Select(c => _laws.MayChoose(position, c))
        .Concat(_open.Select(l => _laws.Keeps(position, l)))
        .Aggregate(Value.Yes, Evaluator.And);

    // A power lifts laws, not what a place may hold.
    private Judgement Powered()
    {
        Judgement judged = WithPowers();
        return judged.Is == Kleene.No ? judged : AskHolds() switch
        {
            { Is: Kleene.No } => Illegal(),
            { Is: Kleene.Unknown } holds when judged.Is == Kleene.Yes => Unsettled(holds.Blame),
            _ => judged,
        };
    }
}
