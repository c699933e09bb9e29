using System.CommandLine;
using System.CommandLine.Invocation;

namespace Rostrum.Cli.Arguments;

/// <summary>What one of our own commands does, as opposed to help, version and completion.</summary>
/// <param name="run">Gives the exit code.</param>
internal sealed class GameAction(Func<ParseResult, int> run) : SynchronousCommandLineAction
{
    /// <inheritdoc />
    public override int Invoke(ParseResult parseResult) => run(parseResult);
}
