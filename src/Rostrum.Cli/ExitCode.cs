namespace Rostrum.Cli;

/// <summary>How a command ends, for scripts.</summary>
internal static class ExitCode
{
    /// <summary>Fine; warnings included.</summary>
    public const int Fine = 0;

    /// <summary>There is something to look at: a sheet with errors, an illegal or unsettled ruling, a truth that does not hold, a wrong claim.</summary>
    public const int Findings = 1;

    /// <summary>Wrong usage, no such game or file, output that cannot be written.</summary>
    public const int WrongUsage = 2;

    /// <summary>A fault of Rostrum itself.</summary>
    public const int OurFault = 3;

    /// <summary>Stopped by Ctrl-C (128 and the number of the signal, as shells count).</summary>
    public const int Stopped = 130;
}
