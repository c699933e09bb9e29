using Rostrum.Text;

namespace Rostrum.Rulings.Games;

/// <summary>Messages about what a position expects: ROS0161 to ROS0164, ROS0215 and ROS0230.</summary>
internal static class GameProblems
{
    public static Diagnostic OtherPoints(SourceSpan at, string clause, string given, IEnumerable<string> because) => new(
        "ROS0161", Severity.Error, at, $"The position expects other points for '{clause}' than the sheet gives: {given}.",
        because.Any() ? $"The sheet counts so: {string.Join("; ", because)}." : "Change the expectation, the position or the sheet.");

    public static Diagnostic OtherVerdict(SourceSpan at, string phrase, string wanted, string given, string because) => new(
        "ROS0162", Severity.Error, at, $"'{Prose.Clip(phrase, 60)}' is expected to be {wanted}, and the sheet says {given}.",
        because.Length == 0 ? "Change the expectation, the position or the sheet." : $"The sheet's reason: {because}.");

    public static Diagnostic OtherLaws(SourceSpan at, string phrase, IEnumerable<string> broken, string because) => new(
        "ROS0163", Severity.Error, at, $"'{Prose.Clip(phrase, 60)}' breaks other laws than expected: {Prose.And(broken)}.", $"The sheet's reason: {because}.");

    public static Diagnostic NotUnderstood(SourceSpan at, string phrase, Diagnostic problem) => new(
        "ROS0164", Severity.Error, at, $"'{Prose.Clip(phrase, 60)}' cannot be answered: {problem.Message}", problem.Hint);

    public static Diagnostic DeclaredOtherwise(SourceSpan at, string declared, string written) => new(
        "ROS0215", Severity.Error, at, $"Here it is called '{Prose.Clip(declared)}', and elsewhere '{Prose.Clip(written)}'.", $"Write '{Prose.Clip(written)}' here, or '{Prose.Clip(declared)}' everywhere.")
    {
        Fix = Fix.Replace(at, written, FixGrade.Choice),
    };

    /// <summary>The problem, with a word of the language that its own words may be meant for.</summary>
    public static Diagnostic OtherSpelling(Diagnostic problem, string word) => problem with { Hint = $"Did you mean '{word}'?", Fix = Fix.Replace(problem.At, word, FixGrade.Choice) };

    public static Diagnostic UnknownClause(SourceSpan at, string clause, IEnumerable<string> known)
    {
        string? near = NearSpelling.Find(clause, known);
        return new("ROS0230", Severity.Error, at, $"No scoring clause is called '{Prose.Clip(clause)}'.", near is null ? KnownWords.Sentence(clause, known) : $"Did you mean '{near}'?")
        {
            Fix = near is null ? null : Fix.Replace(at, near),
        };
    }
}
