using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>The phrases of the options of one decision, with every other way in which each may be said.</summary>
/// <param name="plan">The game.</param>
/// <param name="state">Where the decision is due.</param>
/// <param name="options">The options among which names tell them apart.</param>
internal sealed class DecisionPhrases(CoursePlan plan, TableState state, ImmutableArray<Option> options)
{
    private readonly PlayNames _names = new(plan);
    private readonly Dictionary<(ActionPlan? Action, int Choice), int[]> _among = [];
    private readonly Dictionary<(ActionPlan? Action, int Choice, int Value), string> _shortest = [];
    private readonly Dictionary<(int Value, SortKind Sort), string[][]> _every = [];

    /// <summary>The phrase of an option in its one spelling.</summary>
    public string Of(Option option) => option.Alternative switch
    {
        CallAlternative call => Filled(option, call.Action) + (option.Powers.IsEmpty ? "" : $" by {Prose.And(option.Powers.Select(p => p.Power.Name))}"),
        EndingAlternative ending => ending.Words,
        StepAlternative step => Prose.Fold(step.Step.At.Text),
        NextAlternative next => $"next {Shortest(null, 0, option.Chosen[0], next.Sort)}",
        NextSetAlternative next => $"next {(option.Sets[0] is { Length: > 0 } set ? Prose.And(set.Select(e => Shortest(null, 0, e, next.Sort))) : "none")}",
        _ => "",
    };

    private string Filled(Option option, ActionPlan action) =>
        string.Join(' ', action.Facts.Action.Phrase.Parts.Select(p => p.IsGap ? Gap(option, action, ChoiceOf(action, p)) : p.Words));

    private static int ChoiceOf(ActionPlan action, PhrasePart gap) => action.Facts.Choices.IndexOf(action.Facts.Choices.First(c => c.Name == gap.Words));

    private string Gap(Option option, ActionPlan action, int at)
    {
        ActionChoice choice = action.Facts.Choices[at];
        return option.Sets[at] is not { } set ? Shortest(action, at, option.Chosen[at], choice.Sort.Kind)
            : set.Length == 0 ? "none" : Prose.And(set.Select(e => Shortest(action, at, e, choice.Sort.Element?.Kind ?? SortKind.Any)));
    }

    private string Shortest(ActionPlan? action, int choice, int value, SortKind sort)
    {
        if (!_shortest.TryGetValue((action, choice, value), out string? name))
        {
            _shortest[(action, choice, value)] = name = _names.Of(state, value, sort, Among(action, choice));
        }

        return name;
    }

    private int[] Among(ActionPlan? action, int choice)
    {
        if (!_among.TryGetValue((action, choice), out int[]? among))
        {
            IEnumerable<Option> alike = options.Where(o => action is null ? o.Alternative is NextAlternative or NextSetAlternative : o.Alternative is CallAlternative call && ReferenceEquals(call.Action, action));
            _among[(action, choice)] = among = [.. alike.SelectMany(o => o.Sets[choice] ?? [o.Chosen[choice]]).Distinct()];
        }

        return among;
    }

    /// <summary>An option part by part, each with every way to say it.</summary>
    public ImmutableArray<SaidPart> Parts(Option option) => option.Alternative switch
    {
        CallAlternative call => [.. call.Action.Facts.Action.Phrase.Parts.Select(p => Part(option, call.Action, p)), .. ByPower(option)],
        NextAlternative next => [SaidPart.Of("next"), new SaidPart([Every(option.Chosen[0], next.Sort)], IsSet: false)],
        NextSetAlternative next => [SaidPart.Of("next"), new SaidPart([.. option.Sets[0]!.Select(e => Every(e, next.Sort))], IsSet: true)],
        EndingAlternative => [new SaidPart([[["no"], ["done"]]], IsSet: false)],
        _ => [SaidPart.Of(Of(option))],
    };

    // The powers by which an option is legal need not be said; if they are, all of them, in any order.
    private static IEnumerable<SaidPart> ByPower(Option option) =>
        option.Powers switch
        {
            [] => [],
            [var only] => [new SaidPart([[[], SaidWords.Of($"by {only.Power.Name}")]], IsSet: false)],
            [var one, var other] => [new SaidPart([[[], SaidWords.Of($"by {one.Power.Name} and {other.Power.Name}"), SaidWords.Of($"by {other.Power.Name} and {one.Power.Name}")]], IsSet: false)],
            var several => [new SaidPart([[[], SaidWords.Of($"by {Prose.And(several.Select(p => p.Power.Name))}")]], IsSet: false)],
        };

    private SaidPart Part(Option option, ActionPlan action, PhrasePart part)
    {
        if (!part.IsGap)
        {
            return SaidPart.Of(part.Words);
        }

        int at = ChoiceOf(action, part);
        Sort sort = action.Facts.Choices[at].Sort;
        return option.Sets[at] is { } set ? new SaidPart([.. set.Select(e => Every(e, sort.Element?.Kind ?? SortKind.Any))], IsSet: true)
            : sort.Kind == SortKind.Fit ? new SaidPart([.. _names.Fit(option.Chosen[at]).Select(s => Every(s, SortKind.Space))], IsSet: true)
            : new SaidPart([Every(option.Chosen[at], sort.Kind)], IsSet: false);
    }

    private string[][] Every(int value, SortKind sort)
    {
        if (!_every.TryGetValue((value, sort), out string[][]? names))
        {
            _every[(value, sort)] = names = [.. _names.Every(state, value, sort).Distinct().Select(SaidWords.Of)];
        }

        return names;
    }
}
