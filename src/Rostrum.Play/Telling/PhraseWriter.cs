using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Telling;

/// <summary>Says an option in the one spelling of its action: the phrase of the sheet with the shortest names in its gaps that tell a candidate from the others.</summary>
internal sealed class PhraseWriter(CoursePlan plan)
{
    /// <summary>The phrases of all options of a decision, in their order.</summary>
    public ImmutableArray<string> All(TableState state, ImmutableArray<Option> options)
    {
        var phrases = new DecisionPhrases(plan, state, options);
        return [.. options.Select(phrases.Of)];
    }

    /// <summary>The phrase of one of several options.</summary>
    public string Phrase(TableState state, Option option, ImmutableArray<Option> options) => new DecisionPhrases(plan, state, options).Of(option);
}
