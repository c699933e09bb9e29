using Rostrum.Cli.Checking;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>check --json</c> writes.</summary>
internal sealed record CheckReport(int Format, string Game, int Positions, int Expectations, int ExpectationsHeld, int Errors, int Warnings, IReadOnlyList<ProblemItem> Problems)
{
    /// <summary>The report of a check.</summary>
    public static CheckReport Of(CheckResult result) => new(
        ReportJson.Format,
        result.Game,
        result.Positions,
        result.Expectations,
        result.ExpectationsHeld,
        result.Errors,
        result.Warnings,
        [.. result.Problems.Select(ProblemItem.Of)]);
}
