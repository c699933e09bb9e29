using BenchmarkDotNet.Running;
using Rostrum.Benchmarks;

// Without arguments: our own rounds in processor time, as docs/performance.md quotes them.
// growth: how the time of each operation over boards and sets grows with their size.
// write-large FOLDER: the game of 1,000 clauses and cards as files, so that the command can be measured on it.
// Anything else: BenchmarkDotNet, such as --filter '*Tally*'.
switch (args)
{
    case []:
        Rounds.Run(Console.Out);
        break;
    case ["growth"]:
        Growth.Run(Console.Out);
        break;
    case ["write-large", var folder]:
        LargeSheet.Write(folder);
        break;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Rounds).Assembly).Run(args, new InProcessConfig());
        break;
}
