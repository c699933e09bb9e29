using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Cli.Arguments;

/// <summary>The option that names a seat.</summary>
internal static class SeatOption
{
    /// <summary>The option <c>--seat</c>; 0 where it is not given.</summary>
    /// <param name="description">For help.</param>
    public static Option<int> Named(string description) => new("--seat") { HelpName = "N", Description = description, CustomParser = Number };

    private static int Number(ArgumentResult result)
    {
        string written = result.Tokens[0].Value;
        if (int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out int seat) && seat > 0)
        {
            return seat;
        }

        result.AddError($"'{Prose.Clip(written)}' is no seat: write a number from 1.");
        return 0;
    }
}
