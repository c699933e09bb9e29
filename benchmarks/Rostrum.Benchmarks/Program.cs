using BenchmarkDotNet.Running;
using Rostrum.Benchmarks;

// What `./rostrum bench NAME` runs; without a name it lists them. Exit codes as those of the command: 0, or 2 for a name that is not known.
switch (args)
{
    case []:
        Console.Out.WriteLine("answers    how fast answers come, beside a scorer written by hand (a minute)");
        Console.Out.WriteLine("counting   how long exact counts of whole games take by their sheets, beside rules written by hand (minutes)");
        Console.Out.WriteLine("growth     how the time of each operation over boards and sets grows with their size (a minute)");
        Console.Out.WriteLine("messages   how well one slip in a shipped sheet or position is told; bench messages [NUMBER] [--worst] [--silent] [--slip NUMBER] (minutes)");
        Console.Out.WriteLine("pack       how long the whole pack of Kiln Night takes (a minute)");
        Console.Out.WriteLine("review     how many planted slips of spoken lessons the review finds, and how many of its findings are right; bench review [SET] [--each] (seconds)");
        Console.Out.WriteLine("           bench review demo [free]: each number of the demo recording changed, found or not; bench review read: the same for the script read aloud; bench review long: time and memory for an hour of speech");
        Console.Out.WriteLine("           bench review along [SET] [--each]: lessons with a script and with bullets, spoken along the one and freely from the other");
        Console.Out.WriteLine("           bench review fit, bench review fit rules: the weights of numbers and rules, fitted on the lessons for tuning; bench review games: whether other games are refused");
        Console.Out.WriteLine("script     how long the check of a script of 5,000 words takes (seconds)");
        Console.Out.WriteLine("statistics BenchmarkDotNet over the same answers; its own words may follow, such as --filter '*Tally*'");
        return 0;
    case ["answers"]:
        Rounds.Run(Console.Out);
        return 0;
    case ["counting"]:
        Counting.Run(Console.Out);
        return 0;
    case ["growth"]:
        Growth.Run(Console.Out);
        return 0;
    case ["messages", .. var wishes]:
        return Messages.Run(Console.Out, wishes);
    case ["pack"]:
        Packs.Run(Console.Out);
        return 0;
    case ["review", "fit", "rules"]:
        return RuleFit.Run(Console.Out);
    case ["review", "fit"]:
        return ReviewFit.Run(Console.Out);
    case ["review", "demo"]:
        return ReviewDemo.Changes(Console.Out, isFree: false);
    case ["review", "demo", "free"]:
        return ReviewDemo.Changes(Console.Out, isFree: true);
    case ["review", "games"]:
        return OtherGames.Run(Console.Out);
    case ["review", "read"]:
        return ReviewDemo.Read(Console.Out);
    case ["review", "long"]:
        return ReviewDemo.Long(Console.Out);
    case ["review", "along", .. var wishes]:
        return ReviewBench.Along(Console.Out, wishes);
    case ["review", .. var wishes]:
        return ReviewBench.Run(Console.Out, wishes);
    case ["script"]:
        Scripts.Run(Console.Out);
        return 0;
    case ["statistics", .. var words]:
        BenchmarkSwitcher.FromAssembly(typeof(Rounds).Assembly).Run(words, new InProcessConfig());
        return 0;
    case ["write-large", var folder]:
        // The game of 1,000 clauses and cards as files, so that eng/measure.sh can measure the command on it.
        LargeSheet.Write(folder);
        return 0;
    case ["write-cards", var folder]:
        LargeSheet.WriteCards(folder);
        return 0;
    default:
        Console.Error.WriteLine($"There is no benchmark '{args[0]}'. Known are 'answers', 'counting', 'growth', 'messages', 'pack', 'review', 'script' and 'statistics'.");
        return 2;
}
