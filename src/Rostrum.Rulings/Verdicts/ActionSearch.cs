using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Whether a player has a legal way to do an action: goes through its choices, later ones after earlier ones, and asks the laws.</summary>
internal sealed class ActionSearch
{
    private const int MostWays = 2_000;

    private readonly Position _position;
    private readonly ActionFacts _action;
    private readonly ImmutableArray<Value> _given;
    private readonly Setting _setting;
    private readonly ISet<int> _touched;
    private readonly ILookup<int, Law> _laws;
    private readonly bool _hasPowers;
    private int _ways;

    /// <summary>A search.</summary>
    /// <param name="position">What lies where.</param>
    /// <param name="seat">Who would do it, 0-based.</param>
    /// <param name="action">The action.</param>
    /// <param name="given">The values of its first choices; the others may be chosen freely.</param>
    /// <param name="setting">Which readings are meant.</param>
    /// <param name="touched">Gathers the open choices on which the answer depended.</param>
    public ActionSearch(Position position, int seat, ActionName action, ImmutableArray<Value> given, Setting setting, ISet<int> touched)
    {
        (_position, _given, _setting, _touched) = (position with { Me = seat }, given, setting, touched);
        _action = position.Sheet.Actions[action.Index];
        _hasPowers = position.Sheet.Powers.Any(p => p.For is null || ReferenceEquals(p.For, action));
        _laws = position.Sheet.Laws.Where(l => l.Binds.Contains(action)).ToLookup(NeededChoices);
    }

    /// <summary>One way, in the words of the phrase's gaps; null where none was found.</summary>
    public string? Found { get; private set; }

    /// <summary>Yes, no, or unknown with its causes.</summary>
    public Value.Truth Exists() => Try([]);

    // How many choices must be made before a law can be asked.
    private int NeededChoices(Law law)
    {
        Term[] terms = [.. law.Bodies.Select(b => b[law.Binds.IndexOf(_action.Action)]).SelectMany(b => b.Truths).SelectMany(TermParts.All)];
        bool isLast = _hasPowers || terms.Any(t => t is Term.Idiomatic) || law.Bodies.Any(b => b[law.Binds.IndexOf(_action.Action)].Demands.Any(d => d.Kind is DemandKind.MustLeave or DemandKind.MustNotLeave));
        HashSet<int> slots = [.. terms.OfType<Term.Variable>().Select(v => v.Slot)];
        return isLast ? _action.Choices.Length : Enumerable.Range(0, _action.Choices.Length).Where(i => slots.Contains(_action.Choices[i].Slot)).Select(i => i + 1).DefaultIfEmpty(0).Max();
    }

    private Value.Truth Try(ImmutableArray<Value?> chosen)
    {
        var proposal = new Proposal(_action, _position, [.. chosen, .. Enumerable.Repeat<Value?>(null, _action.Choices.Length - chosen.Length)], []);
        if (_hasPowers && chosen.Length == _action.Choices.Length)
        {
            return Noted(proposal, ByJudge(proposal));
        }

        var judge = new LawJudge(proposal, _setting, _touched);
        Value.Truth kept = _hasPowers ? Value.Yes : Kept(judge, chosen.Length);
        if (kept.Is == Kleene.No)
        {
            return kept;
        }

        if (chosen.Length < _action.Choices.Length)
        {
            return Evaluator.And(kept, Next(proposal, chosen));
        }

        return Noted(proposal, Evaluator.And(kept, judge.HoldsEnough(_position)));
    }

    private Value.Truth Noted(Proposal proposal, Value.Truth kept)
    {
        _ways++;
        if (kept.Is == Kleene.Yes && Found is null)
        {
            var naming = new Naming(_position.Sheet, _position.Me);
            Value[] frame = proposal.Frame(new Evaluator(_position, _position.Me, _setting, _touched), 0);
            Found = string.Join(' ', _action.Action.Phrase.Parts.Select(p => p.IsGap ? naming.Of(frame[_action.Choices.First(c => c.Name == p.Words).Slot]) : p.Words.Trim()));
        }

        return kept;
    }

    private Value.Truth ByJudge(Proposal proposal)
    {
        Judgement judged = new ActionJudge(proposal, _setting, _touched).JudgeAlone();
        return judged.Is == Kleene.Unknown ? Value.Maybe(judged.Why) : Value.Of(judged.Is == Kleene.Yes);
    }

    private Value.Truth Kept(LawJudge judge, int choices)
    {
        Value.Truth kept = Value.Yes;
        foreach (Law law in _laws[choices])
        {
            kept = Evaluator.And(kept, judge.Keeps(_position, law));
            if (kept.Is == Kleene.No)
            {
                break;
            }
        }

        return kept;
    }

    private Value.Truth Next(Proposal proposal, ImmutableArray<Value?> chosen)
    {
        ActionChoice choice = _action.Choices[chosen.Length];
        if (choice.Amount == ChoiceAmount.Given && chosen.Length >= _given.Length)
        {
            return Try(chosen.Add(null));
        }

        var evaluator = new Evaluator(_position, _position.Me, _setting, _touched);
        Value.Many domain = Evaluator.AsMany(evaluator.Evaluate(choice.From, proposal.Frame(evaluator, 0)));
        if (chosen.Length < _given.Length)
        {
            Value value = _given[chosen.Length];
            Value.Truth isThere = choice.Amount == ChoiceAmount.One ? Evaluator.Belongs(value, domain) : Value.Yes;
            return isThere.Is == Kleene.No ? isThere : Evaluator.And(isThere, Try(chosen.Add(value)));
        }

        Value.Truth any = domain.More == 0 ? Value.No : Value.Maybe(domain.WhyUnknown);
        foreach ((Value candidate, Value.Truth isThere) in Candidates(choice, domain))
        {
            if (_ways > MostWays)
            {
                return Evaluator.Or(any, Value.Maybe(Blame.Of(GapKind.Limit, $"more than {MostWays:N0} ways to do '{_action.Action.Phrase.InWords}' are not gone through")));
            }

            any = Evaluator.Or(any, Evaluator.And(isThere, Try(chosen.Add(candidate))));
            if (any.Is == Kleene.Yes)
            {
                break;
            }
        }

        return any;
    }

    private static IEnumerable<(Value Candidate, Value.Truth IsThere)> Candidates(ActionChoice choice, Value.Many domain)
    {
        if (choice.Amount == ChoiceAmount.One)
        {
            return domain.Members.DistinctBy(m => Likeness(m.Value)).Select(m => (m.Value, new Value.Truth(m.Is, m.Blame)));
        }

        (int fewest, long most) = choice.Amount switch
        {
            ChoiceAmount.Exactly => ((int)choice.Number, choice.Number),
            ChoiceAmount.UpTo => (0, choice.Number),
            ChoiceAmount.Some => (1, domain.Members.Length),
            _ => (0, domain.Members.Length),
        };
        return Subsets.Of([.. domain.Members], fewest, (int)Math.Min(most, domain.Members.Length)).Select(set => (
            (Value)Value.Certain(set.Select(m => m.Value), isList: true),
            set.Aggregate(Value.Yes, (sum, m) => Evaluator.And(sum, new Value.Truth(m.Is, m.Blame)))));
    }

    // Things of one look in one place without an order are one and the same; on a board or in a row each lies for itself.
    private static object Likeness(Value value) => value is Value.ThingAt { Spot.Kind: SpotKind.Outside, Thing.Card: null } thing ? thing with { Index = 0 } : value;
}
