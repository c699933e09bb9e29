using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Steps;

/// <summary>Messages about steps, phrases and choices: shape (ROS019x), names (ROS0214, ROS023x), sorts (ROS032x).</summary>
internal static class StepProblems
{
    public static Diagnostic OldWord(SourceSpan at, string old, string today) => new(
        "ROS0190", Severity.Error, at, $"The step '{old}' is now called '{today}'.", $"Write '{today}'.")
    {
        Fix = Fix.Replace(at, today),
    };

    public static Diagnostic NoSteps(SourceSpan at, string head) => new(
        "ROS0191", Severity.Error, at,
        head.Length == 0 ? "Here should stand a step." : $"'{Prose.Clip(head)}' has no steps under it.",
        head.Length == 0 ? "Write a step such as 'move a jug from my carried to box', or 'nothing'." : "Put ':' behind it and write its steps below, a little further in, each behind '- '.");

    public static Diagnostic StepsBelow(SourceSpan at, string step) => new(
        "ROS0192", Severity.Error, at, $"'{Prose.Clip(step)}' is a step by itself and cannot hold other steps.", "Write the other steps in lines of their own, each behind '- '.");

    public static Diagnostic OtherwiseAlone(SourceSpan at) => new(
        "ROS0193", Severity.Error, at, "There is no 'if' right before this 'otherwise'.", "Put 'otherwise' right behind the steps of an 'if'.");

    public static Diagnostic HowMany(SourceSpan at, string what) => new(
        "ROS0194", Severity.Error, at, $"The step does not say how many of '{Prose.Clip(what)}' are moved.", "Write 'a', 'all' or a number before it.")
    {
        Fix = new Fix("write 'all'", FixGrade.Choice, [new TextEdit(at.Part(0, 0), "all ")]),
    };

    public static Diagnostic PhraseShape(SourceSpan at, string what, string mend) => new(
        "ROS0195", Severity.Error, at, $"{Prose.Sentence(what)}.", mend);

    public static Diagnostic PhraseIsStep(SourceSpan at, string phrase, string step) => new(
        "ROS0196", Severity.Error, at, $"'{Prose.Clip(phrase)}' begins like the step '{step}', so the two could not be told apart.", "Begin the phrase with another word.");

    /// <param name="at">The name.</param>
    /// <param name="word">The name as written, which is the beginning of a step.</param>
    /// <param name="instead">A name that would do; null for none.</param>
    public static Diagnostic NameIsStep(SourceSpan at, string word, string? instead) => new(
        "ROS0196", Severity.Error, at, $"Steps begin with '{word}', so no action can be called '{word}'.",
        $"Give it another name{(instead is null ? "" : $", such as '{instead}'")}, and write that wherever the action is named: in its phrase, in steps, under 'binds', behind 'before' and 'after'.");

    public static Diagnostic GapWithoutChoice(SourceSpan at, string gap, string? near) => new(
        "ROS0197", Severity.Error, at, $"The phrase has a gap for '{gap}', but nothing of that name is chosen.",
        near is null ? $"Add '{gap}' under 'choose', or take the gap out." : $"Did you mean '{near}'?")
    {
        Fix = near is null ? null : Fix.Replace(at, near),
    };

    public static Diagnostic ChoiceWithoutGap(SourceSpan at, string choice, string phrase) => new(
        "ROS0197", Severity.Error, at, $"'{choice}' is chosen, but the phrase '{Prose.Clip(phrase)}' has no gap for it.", $"Put '({choice})' into the phrase.");

    public static Diagnostic WantedChoices(SourceSpan at) => new(
        "ROS0198", Severity.Error, at, "Here should stand what is chosen, each with a name and a colon.", "Write it like 'what: a ware in my carried'.");

    public static Diagnostic ChoiceName(SourceSpan at, string name, string word) => new(
        "ROS0199", Severity.Error, at, $"The name '{name}' holds the word '{word}', which formulas need for themselves.", "Give the choice a name without that word.");

    public static Diagnostic UnknownStep(SourceSpan at, string found, string? near) => new(
        "ROS0214", Severity.Error, at, $"'{Prose.Clip(found)}' is no step and no action.",
        near is null ? "Begin with an action's own words, or with a step such as 'move', 'deal', 'shuffle' or 'if'." : $"Did you mean '{near}'?")
    {
        Fix = near is null ? null : Fix.Replace(at, near, FixGrade.Choice),
    };

    public static Diagnostic NoSuchBlock(SourceSpan at, string block) => new(
        "ROS0214", Severity.Error, at, $"This sheet has no '{block}', so it cannot be done here.", $"Write its steps under '{block}', at the margin of the sheet, or leave the step out.");

    public static Diagnostic NameInUse(SourceSpan at, string name, Named other) => new(
        "ROS0238", Severity.Error, at, $"'{name}' is {other.Role} already, so 'let' cannot name something else so.", "Choose another name.")
    {
        Related = other.DeclaredAt is { } first ? [new RelatedPlace(first, $"'{other.Name}' is declared here")] : [],
    };

    public static Diagnostic UnusedName(SourceSpan at, string name) => new(
        "ROS0239", Severity.Error, at, $"'{name}' is named by 'let' and never used.", $"Use '{name}' in a step below, or leave out this step.");

    public static Diagnostic NotAMark(SourceSpan at, Sort found) => new(
        "ROS0320", Severity.Error, at, $"A mark should stand here, but this is {found.InWords}.", "Name a mark that is declared under 'marks', such as 'my coins'.");

    public static Diagnostic NeverChanges(SourceSpan at, Model.Attribute attribute, string value) => new(
        "ROS0321", Severity.Error, at, $"'{value}' is a value of {attribute.Name}, and the {attribute.Name} of a thing never changes.",
        $"Declare {attribute.Name} under 'states' of '{attribute.Kind.Name}', or change to a value of a state.");

    public static Diagnostic NotUnseen(SourceSpan at, Place place) => new(
        "ROS0322", Severity.Error, at, $"Everything in '{place.Name}' is seen, so nothing is dealt from there.", "Write 'move', and say which things.");

    public static Diagnostic NothingToFlip(SourceSpan at, Kind kind) => new(
        "ROS0323", Severity.Error, at, $"{Prose.Sentence(Prose.A(kind.Name))} cannot be turned over: it has no state of two values.",
        $"Give '{kind.Name}' one, such as 'states: {{side: [light, dark]}}'; 'flip' then goes from one to the other. Or write 'change … to' and the value.");
}
