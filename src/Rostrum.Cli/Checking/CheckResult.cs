using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Cli.Checking;

/// <summary>What came of checking a game.</summary>
/// <param name="Game">Its name; that of its folder where the sheet could not be read.</param>
/// <param name="Problems">Everything that was found: sheet, positions, lesson, idioms.</param>
/// <param name="Positions">How many positions there are.</param>
/// <param name="Expectations">How many expectations they hold.</param>
/// <param name="ExpectationsHeld">How many of these the sheet meets.</param>
/// <param name="IsSheetSound">False where the sheet has errors, so that positions wait.</param>
internal sealed record CheckResult(string Game, ImmutableArray<Diagnostic> Problems, int Positions, int Expectations, int ExpectationsHeld, bool IsSheetSound)
{
    /// <summary>How many variants were not checked one by one, because there are so many; usually 0.</summary>
    public int VariantsLeft { get; init; }

    /// <summary>How many errors there are, those included that no list keeps.</summary>
    public int Errors => Problems.Where(p => p.Severity == Severity.Error).Sum(p => 1 + p.Further);

    /// <summary>How many warnings there are.</summary>
    public int Warnings => Problems.Where(p => p.Severity == Severity.Warning).Sum(p => 1 + p.Further);

    /// <summary>One line, such as <c>Kiln Night: 73 positions, 403 expectations hold; no errors, 1 warning</c>.</summary>
    public string Summary
    {
        get
        {
            string held = ExpectationsHeld == Expectations
                ? $"{Prose.Count(Expectations, "expectation holds", "expectations hold")}"
                : $"{ExpectationsHeld} of {Prose.Count(Expectations, "expectation holds", "expectations hold")}";
            string positions = Prose.Count(Positions, "position", "positions");
            string table = IsSheetSound ? $"{positions}, {held}" : $"{positions} {(Positions == 1 ? "waits" : "wait")} until the sheet has no errors";
            string left = VariantsLeft == 0 ? "" : $"; {Prose.Count(VariantsLeft, "variant was", "variants were")} not checked: name them with --variant";
            return $"{Game}: {table}; {Prose.Count(Errors, "error", "errors")}, {Prose.Count(Warnings, "warning", "warnings")}{left}";
        }
    }
}
