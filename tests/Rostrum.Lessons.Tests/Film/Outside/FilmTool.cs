using System.Diagnostics;

namespace Rostrum.Lessons.Tests.Film.Outside;

/// <summary>A program of other people that reads what we write: <c>ffmpeg</c>, <c>ffprobe</c>, <c>mkvmerge</c>, <c>mkvextract</c>, <c>pdfinfo</c>, <c>pdffonts</c>, <c>pdftotext</c>.</summary>
internal static class FilmTool
{
    /// <summary>Set by <c>./test</c> to the reason where the programs are not there and cannot be installed; only then are these checks left out.</summary>
    public const string ReasonVariable = "ROSTRUM_NO_FILM_TOOLS";

    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(3);

    /// <summary>Runs a program to its end and gives what it wrote. Anything but success fails the test, a missing program too.</summary>
    /// <param name="name">The program.</param>
    /// <param name="folder">Where it runs.</param>
    /// <param name="arguments">Its arguments.</param>
    public static string Run(string name, string folder, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(Find(name), arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        Task<string> complained = process.StandardError.ReadToEndAsync();
        Assert.True(process.WaitForExit(Longest), $"'{name}' did not end.");
        Assert.True(process.ExitCode == 0, $"{name} {string.Join(' ', arguments)}: {process.ExitCode}\n{said.Result}\n{complained.Result}");
        return said.Result;
    }

    /// <summary>Where a program lies; a missing one fails the test, or skips it where there is a reason.</summary>
    /// <param name="name">The program.</param>
    public static string Find(string name)
    {
        string? reason = Environment.GetEnvironmentVariable(ReasonVariable);
        string? path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(folder => Path.Combine(folder, name)).FirstOrDefault(File.Exists);
        Assert.SkipWhen(path is null && reason is { Length: > 0 }, reason ?? "");
        Assert.True(path is not null, $"'{name}' is missing: run ./test, which installs it, or install the packages ffmpeg, mkvtoolnix and poppler-utils.");
        return path;
    }
}
