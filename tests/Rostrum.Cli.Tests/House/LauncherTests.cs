using System.Diagnostics;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests.House;

/// <summary>The launcher builds what is due, passes its words on and keeps the exit codes. Slow, because it may have to build.</summary>
public sealed class LauncherTests
{
    [Theory]
    [Trait("Category", "Slow")]
    [InlineData("tally games/kiln-night E1", 0, "total                                                       35")]
    [InlineData("check games/kiln-night", 0, "")]
    [InlineData("tally games/kiln-night nowhere", 2, "")]
    [InlineData("--nonsense", 2, "")]
    public async Task Launcher_passes_words_and_exit_codes_through(string words, int code, string said)
    {
        using Process run = Process.Start(new ProcessStartInfo(Path.Combine(TestFiles.Root, "rostrum"), words)
        {
            WorkingDirectory = TestFiles.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Task<string> talk = run.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string output = await run.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.True(run.ExitCode == code, await talk);
        Assert.Contains(said, output);
    }
}
