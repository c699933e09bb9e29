using System.CommandLine;

namespace Rostrum.Cli.Arguments;

/// <summary>The option that says where something is written.</summary>
internal static class OutputOption
{
    /// <summary>The option <c>-o</c>; a command line without it is wrong.</summary>
    /// <param name="what">What it names: <c>FILE</c> or <c>FOLDER</c>.</param>
    /// <param name="description">For help.</param>
    public static Option<string> Named(string what, string description) => new("-o", "--output") { HelpName = what, Description = description, Required = true };

    /// <summary>The option <c>-o</c> of a command that answers without it as well.</summary>
    /// <param name="what">What it names: <c>FILE</c> or <c>FOLDER</c>.</param>
    /// <param name="description">For help.</param>
    public static Option<string> Optional(string what, string description) => new("-o", "--output") { HelpName = what, Description = description };
}
