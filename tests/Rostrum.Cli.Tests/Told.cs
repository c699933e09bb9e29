using System.Text.Json;

namespace Rostrum.Cli.Tests;

/// <summary>Carries out a command line in this process and keeps what it said.</summary>
/// <param name="Code">The exit code.</param>
/// <param name="Output">The data.</param>
/// <param name="Talk">The talk.</param>
internal sealed record Told(int Code, string Output, string Talk)
{
    /// <summary>The data, which must be JSON.</summary>
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>Carries out a command line with nothing on standard input.</summary>
    public static Told By(params string[] args) => With(TextReader.Null, args, TestContext.Current.CancellationToken);

    /// <summary>Carries out a command line with words on standard input.</summary>
    public static Told From(string input, params string[] args) => With(new StringReader(input), args, TestContext.Current.CancellationToken);

    /// <summary>Carries out a command line for somebody who types these words.</summary>
    public static Told Typed(string input, params string[] args) => With(new StringReader(input), args, TestContext.Current.CancellationToken, isTerminal: true);

    /// <summary>Carries out a command line.</summary>
    public static Told With(TextReader input, string[] args, CancellationToken stop, bool isTerminal = false)
    {
        using var output = new StringWriter();
        using var talk = new StringWriter();
        int code = RostrumCommand.Run(args, input, output, talk, isTerminal, stop);
        return new Told(code, output.ToString(), talk.ToString());
    }
}
