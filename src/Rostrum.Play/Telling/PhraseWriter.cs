using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>Says an option in the one spelling of its action: the phrase of the sheet with the shortest names in its gaps that tell a candidate from the others.</summary>
internal sealed class PhraseWriter(CoursePlan plan)
{
    private readonly TableLayout _layout = plan.Layout;
    private readonly PlayNames _names = new(plan);

    /// <summary>The phrases of all options of a decision, in their order.</summary>
    public ImmutableArray<string> All(TableState state, ImmutableArray<Option> options) => [.. options.Select(o => Phrase(state, o, options))];

    /// <summary>The phrase of one of several options.</summary>
    public string Phrase(TableState state, Option option, ImmutableArray<Option> options) => option.Alternative switch
    {
        CallAlternative call => Filled(state, option, call, options) + (option.Power is { } power ? $" by {power.Power.Name}" : ""),
        EndingAlternative ending => ending.Words,
        StepAlternative step => Prose.Begun(step.Step.Sentence.TrimEnd('.')),
        _ => $"next {_names.Of(state, option.Chosen[0], SortKind.Thing, [.. options.Select(o => o.Chosen[0])])}",
    };

    private string Filled(TableState state, Option option, CallAlternative call, ImmutableArray<Option> options)
    {
        Option[] alike = [.. options.Where(o => o.Alternative is CallAlternative other && ReferenceEquals(other.Action, call.Action))];
        return string.Join(' ', call.Action.Facts.Action.Phrase.Parts.Select(p => p.IsGap ? Gap(state, option, call, p.Words, alike) : p.Words));
    }

    private string Gap(TableState state, Option option, CallAlternative call, string gap, Option[] alike)
    {
        int at = call.Action.Facts.Choices.IndexOf(call.Action.Facts.Choices.First(c => c.Name == gap));
        ActionChoice choice = call.Action.Facts.Choices[at];
        if (option.Sets[at] is not { } set)
        {
            return _names.Of(state, option.Chosen[at], choice.Sort.Kind, [.. alike.Select(o => o.Chosen[at]).Distinct()]);
        }

        SortKind element = choice.Sort.Element?.Kind ?? SortKind.Any;
        int[] all = [.. alike.SelectMany(o => o.Sets[at]!).Distinct()];
        return set.Length == 0 ? "none" : Prose.And(set.Select(e => _names.Of(state, e, element, all)));
    }
}
