using System.Collections.Immutable;
using Rostrum.Cli.Checking;
using Rostrum.Cli.Disk;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Cli.Starting;

/// <summary>The files with which a game starts.</summary>
/// <param name="Files">Names with contents; the sheet comes last, for it makes the folder a game.</param>
/// <param name="Question">Something to ask of the first position, in the words of <c>rule</c>.</param>
/// <param name="HasTurn">True where whole games are played by the sheet.</param>
internal sealed record NewFiles(ImmutableArray<(string Name, string Says, string Content)> Files, string Question, bool HasTurn)
{
    /// <summary>The name of the position.</summary>
    public const string Position = "first";

    /// <summary>Makes the files, and holds them against everything that <c>check</c> knows.</summary>
    /// <param name="game">What was said of the game.</param>
    /// <param name="shelf">The idioms.</param>
    /// <param name="stop">Cancelled by Ctrl-C.</param>
    /// <returns>The files, or why what was said makes no sheet, such as a name that formulas need for themselves.</returns>
    public static Found<NewFiles> Of(NewGame game, IdiomShelf shelf, CancellationToken stop)
    {
        string sheet = new NewSheet(game).Write();
        SheetReading reading = Open(shelf, (SheetReader.FileName, sheet)).Sheet();
        if (!reading.IsSound || !reading.Problems.IsEmpty)
        {
            return Complaint(reading.Problems);
        }

        var first = new FirstPosition(game, reading.Sheet!);
        string position = first.Write();
        string name = $"positions/{Position}.yaml";
        CheckResult check = new GameCheck(Open(shelf, (SheetReader.FileName, sheet), (name, position)), stop).Check([], []);
        string question = first.EmptySpace is { } space ? $"place {game.Pieces[0].Name} on {space}" : Truth(game);
        return check.Problems.IsEmpty
            ? Found<NewFiles>.Of(new NewFiles([(name, "a first position, with what it must score", position), (SheetReader.FileName, "the rule sheet, with remarks", sheet)], question, game.HasTurn))
            : Complaint(check.Problems);
    }

    private static string Truth(NewGame game) => game.HasHeaps ? $"count(my {game.Pieces[0].Heap}) is at least 2" : "1 is 1";

    private static Game Open(IdiomShelf shelf, params (string Name, string Content)[] files) => new(GameFolder.InMemory("new", files), shelf.Library);

    private static Found<NewFiles> Complaint(ImmutableArray<Diagnostic> problems) => Found<NewFiles>.None($"{problems[0].Message} {problems[0].Hint.Split('\n')[0]}");
}
