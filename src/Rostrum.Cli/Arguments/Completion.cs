using System.CommandLine;
using System.Globalization;

namespace Rostrum.Cli.Arguments;

/// <summary>Makes the question of a shell, <c>[suggest:30] "rostrum tally games/…"</c>, fit for the parser.</summary>
/// <remarks>The parser knows the program by the name of its file only; a shell asks by the word that was typed, which may be a path or a link.</remarks>
internal static class Completion
{
    private const string Head = "[suggest";

    /// <summary>The words with the typed name of the program replaced by the one that the parser knows; other words as they are.</summary>
    public static IReadOnlyList<string> Adapted(IReadOnlyList<string> args)
    {
        if (args is not [var directive, var line] || !directive.StartsWith(Head, StringComparison.Ordinal))
        {
            return args;
        }

        int typed = line.IndexOf(' ', StringComparison.Ordinal) is var blank and >= 0 ? blank : line.Length;
        string known = RootCommand.ExecutableName;
        bool hasSpot = int.TryParse(directive.AsSpan(Head.Length).Trim(":]"), NumberStyles.None, CultureInfo.InvariantCulture, out int spot);
        int moved = Math.Max(0, (hasSpot ? spot : line.Length) + known.Length - typed);
        return [$"{Head}:{moved.ToString(CultureInfo.InvariantCulture)}]", known + line[typed..]];
    }
}
