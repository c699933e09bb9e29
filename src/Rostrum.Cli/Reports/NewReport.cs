namespace Rostrum.Cli.Reports;

/// <summary>What <c>new --json</c> writes: the folder as the user named it, its files, commands to try next.</summary>
internal sealed record NewReport(int Format, string Folder, IReadOnlyList<PackFileItem> Files, IReadOnlyList<string> Next);
