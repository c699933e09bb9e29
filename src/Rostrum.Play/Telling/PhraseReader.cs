using System.Collections.Immutable;
using Rostrum.Play.Course;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Telling;

/// <summary>Finds the option that words say, or why they say none.</summary>
internal sealed class PhraseReader(CoursePlan plan)
{
    private const int MostExamples = 6;

    /// <summary>Reads words at the decision at which a machine waits.</summary>
    /// <param name="machine">The machine; its state is that of the decision.</param>
    /// <param name="options">The legal options.</param>
    /// <param name="words">The words.</param>
    public PhraseReading Read(Machine machine, ImmutableArray<Option> options, string words)
    {
        var phrases = new DecisionPhrases(plan, machine.State, options);
        string[] said = SaidWords.Of(words);
        if (options.FirstOrDefault(o => SaidWords.Of(phrases.Of(o)).AsSpan().SequenceEqual(said)) is { } exact)
        {
            return new PhraseReading(exact, null);
        }

        Option[] fitting = [.. options.Where(o => SaidWords.Say(said, phrases.Parts(o).AsSpan()))];
        return fitting switch
        {
            [var only] => new PhraseReading(only, null),
            [] => new PhraseReading(null, WhyNot(machine, options, phrases, words, said)),
            _ => new PhraseReading(null, new Refusal($"'{words}' may be {Prose.Or(fitting.Take(MostExamples).Select(o => $"'{phrases.Of(o)}'"))}; say which.", [Here(machine)])),
        };
    }

    private Refusal WhyNot(Machine machine, ImmutableArray<Option> options, DecisionPhrases phrases, string words, string[] said)
    {
        CallAlternative[] meant = [.. plan.Code[machine.State.Numbers[Slots.Step]].Alternatives.SelectMany(a => a.Calls(machine.Finder))
            .Where(c => SaidWords.Fit(said, c.Action.Facts.Action.Phrase.Parts.AsSpan()))];
        Candidate[] candidates = [.. meant.SelectMany(c => machine.Finder.Candidates(c, o => SaidWords.Say(said, phrases.Parts(o).AsSpan())))];
        if (candidates.MinBy(c => c.Broken.Length) is { } nearest)
        {
            return ByLaws(nearest);
        }

        string instead = Instead(options, phrases, words);
        if (meant.Length > 0)
        {
            return new Refusal($"'{words}' is not what may be chosen.{instead}", [.. meant.Select(c => Of(c.Action.Facts)).Distinct()]);
        }

        ActionFacts? elsewhere = plan.Sheet.Actions.FirstOrDefault(a => SaidWords.Fit(said, a.Action.Phrase.Parts.AsSpan()));
        return new Refusal(elsewhere is null ? $"'{words}' names nothing that can be done here.{instead}" : $"'{elsewhere.Action.Name}' is not at hand here.{instead}", [Here(machine)]);
    }

    private static Refusal ByLaws(Candidate candidate)
    {
        ActionFacts action = ((CallAlternative)candidate.Option.Alternative).Action.Facts;
        return candidate.Broken.IsEmpty
            ? new Refusal(candidate.IsOverfull ? "More would lie there than may." : "It is not at hand here.", [Of(action)])
            : new Refusal(string.Join(' ', candidate.Broken.Select(l => Prose.Ended(SaysOf(l.Law, action)))), [.. candidate.Broken.Select(l => new RefusedBy(l.Law.Name, SaysOf(l.Law, action), l.Law.Cite))]);
    }

    private static string SaysOf(Law law, ActionFacts action) => law.Says ?? law.Bodies[0][law.Binds.IndexOf(action.Action)].Formula;

    private static RefusedBy Of(ActionFacts action) => new(action.Action.Name, action.Says ?? action.Action.Phrase.InWords, action.Cite);

    private RefusedBy Here(Machine machine) => BlockAt(machine);

    /// <summary>The block in which the machine waits, as what refuses words that have no place there.</summary>
    public RefusedBy BlockAt(Machine machine)
    {
        string block = plan.Blocks[machine.State.Numbers[Slots.Step]];
        return plan.Sheet.Actions.FirstOrDefault(a => a.Action.Name == block) is { } action ? Of(action)
            : new RefusedBy(block, null, plan.Sheet.Blocks.FirstOrDefault(b => b.Name == block)?.Cite ?? plan.Sheet.Hooks.FirstOrDefault(h => h.Key == block)?.Cite);
    }

    private static string Bare(string words) => string.Join(' ', SaidWords.Of(words));

    private static string Instead(ImmutableArray<Option> options, DecisionPhrases phrases, string words)
    {
        string[] all = [.. options.Select(phrases.Of).Distinct()];
        string more = all.Length > MostExamples ? $", and {all.Length - MostExamples} more" : "";
        string near = NearSpelling.Find(Bare(words), all.Select(Bare)) is { } found ? $" Did you mean '{all.First(p => Bare(p) == found)}'?" : "";
        return $"{near} Possible: {string.Join(", ", all.Take(MostExamples).Select(p => $"'{p}'"))}{more}.";
    }
}

/// <summary>What words say at a decision.</summary>
/// <param name="Option">The option; null where they say none.</param>
/// <param name="Refusal">Why they say none; null where they do.</param>
internal sealed record PhraseReading(Option? Option, Refusal? Refusal);
