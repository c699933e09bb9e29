using BenchmarkDotNet.Running;
using Rostrum.Benchmarks;

// Without arguments: our own rounds in processor time, as docs/performance.md quotes them.
// write-large FOLDER: the game of 1,000 clauses and cards as files, so that the command can be measured on it.
// messages: how well slips in the shipped texts are told.
// Anything else: BenchmarkDotNet, such as --filter '*Tally*'.
switch (args)
{
    case []:
        Rounds.Run(Console.Out);
        break;
    case ["messages", .. var wishes]:
        return Messages.Run(Console.Out, wishes);
    case ["write-large", var folder]:
        LargeSheet.Write(folder);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Rounds).Assembly).Run(args, new InProcessConfig());
        break;
}

return 0;
