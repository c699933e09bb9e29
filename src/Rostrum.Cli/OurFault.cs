namespace Rostrum.Cli;

/// <summary>Says calmly that Rostrum itself failed.</summary>
internal static class OurFault
{
    /// <summary>Tells a fault.</summary>
    /// <param name="talk">Where to say it.</param>
    /// <param name="fault">What was thrown.</param>
    /// <param name="withDetails">True to show where it was thrown.</param>
    /// <returns><see cref="ExitCode.OurFault"/>.</returns>
    public static int Tell(TextWriter talk, Exception fault, bool withDetails)
    {
        talk.Write($"rostrum: Rostrum itself is at fault here, and your files are as they were: {fault.Message.ReplaceLineEndings(" ")}\n");
        talk.Write("rostrum: Report it where you got Rostrum, with this command line and the game's folder");
        talk.Write(withDetails ? $" and these lines:\n{fault}\n" : "; '--trace' adds where it happened.\n");
        talk.Flush();
        return ExitCode.OurFault;
    }
}
