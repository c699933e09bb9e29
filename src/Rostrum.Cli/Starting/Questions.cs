using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Cli.Starting;

/// <summary>Puts a game together from what was said, asking for what was not where somebody sits at the terminal.</summary>
/// <param name="desk">Where it asks.</param>
/// <param name="said">What was said for each option, by its name; null where it was not said.</param>
/// <param name="asks">True to ask; false to take what is usual.</param>
internal sealed class Questions(Desk desk, Func<string, string?> said, bool asks)
{
    private const int MostTries = 5;
    private const int LongestAnswer = 1000;

    /// <summary>The game, or why there is none.</summary>
    /// <param name="folderName">The usual name of the game.</param>
    public Found<NewGame> Ask(string folderName)
    {
        Found<string> name = Answer("--game", "What is the game called?", folderName, Answers.Name);
        Found<int[]> players = Next(name, "--players", "How many play?", "2 to 4", Answers.Players);
        Found<ImmutableArray<NewPiece>[]> pieces = Next(players, "--pieces", "Which pieces are there, and how many of each?", "coin 30, lamp 12", Answers.Pieces);
        Found<NewBoard[]> board = Next(pieces, "--board", "Has each player a board? Such as 'squares 5 across 4 up', 'hexes rows of 3 4 3' or 'none'.", "squares 4 across 3 up", Answers.Board);
        bool isBare = board.Value is [];
        Found<string> heaps = isBare && said("--heaps") is null ? Found<string>.Of("yes") : Next(board, "--heaps", "Do players keep pieces in front of them?", "yes", Answers.YesOrNo);
        string ideas = string.Concat(Answers.Ideas.Select((i, n) => $"\n  {n + 1} {i.Word}: {i.Says}"));
        Found<string> score = Next(heaps, "--score", $"What scores first? A number or a word:{ideas}\n", "each", Answers.Score);
        Found<string> turn = Next(score, "--turn", "Shall whole games be played by it, with a turn and an end?", "yes", Answers.YesOrNo);
        return turn.Value is null ? Found<NewGame>.None(turn.Complaint!)
            : Whole(new NewGame(name.Value!, players.Value![0], players.Value[1], pieces.Value![0], board.Value!.FirstOrDefault(), heaps.Value == "yes", Answers.Ideas.First(i => i.Word == score.Value).Idea, turn.Value == "yes"));
    }

    private static Found<NewGame> Whole(NewGame game) => game switch
    {
        { Board: null, HasHeaps: false } => Found<NewGame>.None("Pieces have to lie somewhere: say '--heaps yes', or name a board."),
        { Board: null, Score: ScoreIdea.Rows or ScoreIdea.Neighbours } => Found<NewGame>.None("Rows and neighbours are those of a board: name one, such as '--board \"squares 5 across 4 up\"', or choose another idea of scoring."),
        { Score: ScoreIdea.Sets, Pieces.Length: 1 } => Found<NewGame>.None("A set needs two kinds of pieces or more: name another, or choose another idea of scoring."),
        _ => Found<NewGame>.Of(game),
    };

    private Found<T> Next<T, TBefore>(Found<TBefore> before, string option, string question, string usual, Func<string, Found<T>> read)
        where T : class
        where TBefore : class =>
        before.Value is null ? Found<T>.None(before.Complaint!) : Answer(option, question, usual, read);

    private Found<T> Answer<T>(string option, string question, string usual, Func<string, Found<T>> read)
        where T : class
    {
        if (said(option) is { } words)
        {
            return read(words);
        }

        for (int i = 0; asks && i < MostTries; i++)
        {
            desk.Ask($"{question} [{usual}] ");
            if (Line() is not { } line)
            {
                return Found<T>.None("Nothing was made, for the answers ended.");
            }

            Found<T> found = read(line.Trim().Length == 0 ? usual : line);
            if (found.Value is not null)
            {
                return found;
            }

            desk.Say(found.Complaint!);
        }

        return asks ? Found<T>.None($"Nothing was made. '{option}' says it as well.") : read(usual);
    }

    private string? Line()
    {
        try
        {
            return desk.Input.ReadLine() is { } line ? line.Length > LongestAnswer ? line[..LongestAnswer] : line : null;
        }
        catch (DecoderFallbackException)
        {
            return "";
        }
    }
}
