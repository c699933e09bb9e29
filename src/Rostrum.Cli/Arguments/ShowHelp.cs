using System.CommandLine;
using System.CommandLine.Invocation;

namespace Rostrum.Cli.Arguments;

/// <summary>Shows how a command is used.</summary>
internal sealed class ShowHelp : SynchronousCommandLineAction
{
    /// <inheritdoc />
    public override bool ClearsParseErrors => true;

    /// <inheritdoc />
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.Write(HelpText.Of(parseResult.CommandResult.Command));
        return ExitCode.Fine;
    }
}
