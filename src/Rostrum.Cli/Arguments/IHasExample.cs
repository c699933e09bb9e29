namespace Rostrum.Cli.Arguments;

/// <summary>A command that can show itself at work.</summary>
internal interface IHasExample
{
    /// <summary>A command line that works as it stands in the project's folder.</summary>
    string Example { get; }
}
