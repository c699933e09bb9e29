using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <summary>What a turn puts before an action: <c>first possible of</c> lets it be done only where nothing that stands higher can be done.</summary>
/// <remarks>Looked at only where both are decided at the same moment, so that one position tells; an action that the turn offers in another way as well is free.</remarks>
internal sealed class TurnOrder(Proposal proposal, Setting setting, ISet<int> touched)
{
    private readonly List<ImmutableArray<Step>> _met = [];
    private readonly HashSet<ActionName> _walked = [];
    private readonly HashSet<string> _blocks = [];

    private Sheet Sheet => proposal.Position.Sheet;

    /// <summary>What comes first and can be done, whichever way the turn is taken; null where the action is free, or where nobody can say.</summary>
    public (ActionFacts Action, string Way)? ComesFirst()
    {
        foreach (Block block in Sheet.Blocks.Where(b => b.Name is "turn" or "course"))
        {
            Walk(block.Steps, []);
        }

        (ActionFacts, string)? first = null;
        foreach (ImmutableArray<Step> before in _met)
        {
            if (before.Select(Possible).FirstOrDefault(p => p is not null) is not { } possible)
            {
                return null;
            }

            first ??= possible;
        }

        return first;
    }

    // Steps one after the other: only the first is decided at the moment at which the list is entered.
    private void Walk(ImmutableArray<Step> steps, ImmutableArray<Step> before)
    {
        for (int i = 0; i < steps.Length; i++)
        {
            Walk(steps[i], i == 0 ? before : []);
        }
    }

    private void Walk(Step step, ImmutableArray<Step> before)
    {
        switch (step.Kind)
        {
            case StepKind.Call when step.Action is { } action:
                if (ReferenceEquals(action, proposal.Action.Action))
                {
                    _met.Add(before);
                }

                if (_walked.Add(action))
                {
                    Walk(Sheet.Actions[action.Index].Steps, []);
                }

                break;
            case StepKind.Call when _blocks.Add(step.Block!):
                Walk(Sheet.Blocks.FirstOrDefault(b => b.Name == step.Block)?.Steps ?? [], before);
                _blocks.Remove(step.Block!);
                break;
            case StepKind.FirstPossible:
                for (int i = 0; i < step.Inner.Length; i++)
                {
                    Walk(step.Inner[i], [.. before, .. step.Inner[..i]]);
                }

                break;
            case StepKind.OneOf or StepKind.InAnyOrder:
                foreach (Step inner in step.Inner)
                {
                    Walk(inner, before);
                }

                break;
            case not StepKind.Call:
                Walk(step.Inner, step.Kind is StepKind.May or StepKind.Must ? before : []);
                Walk(step.Otherwise, []);
                break;
        }
    }

    private (ActionFacts Action, string Way)? Possible(Step step)
    {
        switch (step.Kind)
        {
            case StepKind.Call when step.Action is { } action && step.Terms.Length == 0:
                var search = new ActionSearch(proposal.Position, proposal.Position.Me, action, [], setting, touched);
                return search.Exists().Is == Kleene.Yes ? (Sheet.Actions[action.Index], search.Found!) : null;
            case StepKind.OneOf or StepKind.FirstPossible or StepKind.May or StepKind.Must:
                return step.Inner.Select(Possible).FirstOrDefault(p => p is not null);
            default:
                return null;
        }
    }
}
