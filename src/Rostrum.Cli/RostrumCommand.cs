using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Commands;

namespace Rostrum.Cli;

/// <summary>The command <c>rostrum</c>: the one door for the program and for tests.</summary>
public static class RostrumCommand
{
    /// <summary>When this variable of the environment is set, a fault of Rostrum is told with all details, as with <c>--trace</c>.</summary>
    public const string TraceVariable = "ROSTRUM_TRACE";

    /// <summary>Carries out one command line.</summary>
    /// <param name="args">The words behind <c>rostrum</c>.</param>
    /// <param name="input">Standard input; read only where a position is <c>-</c>, and by <c>new</c> at a terminal.</param>
    /// <param name="output">Receives data, and nothing else.</param>
    /// <param name="talk">Receives everything said to the user.</param>
    /// <param name="isTerminal">True where somebody sits at standard input and types.</param>
    /// <param name="stop">Cancelled by Ctrl-C.</param>
    /// <returns>0 fine, 1 findings, 2 wrong usage or output that cannot be written, 3 a fault of Rostrum, 130 stopped.</returns>
    public static int Run(IReadOnlyList<string> args, TextReader input, TextWriter output, TextWriter talk, bool isTerminal = false, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(args);
        var desk = new Desk(input, output, talk, args.TakeWhile(a => a != "--").Contains("--json"), isTerminal, stop);
        try
        {
            int code = Carry(args, desk);
            desk.Flush();
            return code;
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            talk.Write("rostrum: stopped\n");
            talk.Flush();
            return ExitCode.Stopped;
        }
        catch (UnwritableOutputException problem)
        {
            return Refuse(desk, problem, talk);
        }
#pragma warning disable CA1031 // The outermost door: whatever went wrong, the user gets a sentence instead of a stack.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return OurFault.Tell(talk, fault is AggregateException { InnerExceptions: [var only] } ? only : fault, args.Contains("--trace") || Environment.GetEnvironmentVariable(TraceVariable) is { Length: > 0 });
        }
    }

    // Where standard output itself takes nothing, there is only the talk left.
    private static int Refuse(Desk desk, UnwritableOutputException problem, TextWriter talk)
    {
        try
        {
            return desk.Refuse(problem.Message);
        }
        catch (UnwritableOutputException)
        {
            talk.Write($"rostrum: {problem.Message}\n");
            talk.Flush();
            return ExitCode.WrongUsage;
        }
    }

    private static int Carry(IReadOnlyList<string> args, Desk desk)
    {
        RootCommand root = Root(desk);
        ParseResult parse = root.Parse(Completion.Adapted(args), new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        IReadOnlyList<string> complaints = parse.Action is null or ParseErrorAction or GameAction ? WrongUsage.Of(parse) : [];
        if (complaints.Count > 0)
        {
            return desk.Refuse([.. complaints, $"'{HelpText.NameOf(parse.CommandResult.Command)} --help' shows how it is used."]);
        }

        return parse.Invoke(new InvocationConfiguration { Output = desk.Output, Error = desk.Talk, EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
    }

    private static RootCommand Root(Desk desk)
    {
        var root = new RootCommand("The second pair of eyes for people who teach tabletop games on camera.")
        {
            new NewCommand(desk),
            new CheckCommand(desk),
            new ReadCommand(desk),
            new TallyCommand(desk),
            new RuleCommand(desk),
            new CountCommand(desk),
            new PlayCommand(desk),
            new ThreatsCommand(desk),
            new DrawCommand(desk),
            new LessonCommand(desk),
            new ReviewCommand(desk),
            new PackCommand(desk),
            new PublishCommand(desk),
        };
        root.Options.Add(new Option<bool>("--trace") { Description = "If Rostrum itself fails, show where.", Recursive = true });
        root.Options.OfType<HelpOption>().Single().Action = new ShowHelp();
        root.Options.OfType<HelpOption>().Single().Description = "Show how it is used.";
        root.Options.OfType<VersionOption>().Single().Description = "Show the version.";
        return root;
    }
}
