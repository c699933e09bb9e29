namespace Rostrum.Cli.Reports;

/// <summary>What any command writes with <c>--json</c> where it ends with <see cref="ExitCode.WrongUsage"/>: why there is no answer.</summary>
internal sealed record RefusalReport(int Format, string Refused);
