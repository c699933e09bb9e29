using System.CommandLine;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Screen;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary>A command that asks something of a position.</summary>
internal abstract class PositionCommand : GameCommand
{
    private readonly Argument<string> _position;

    /// <inheritdoc cref="GameCommand(Desk, string, string, string, IReadOnlyList{Symbol})"/>
    protected PositionCommand(Desk desk, string name, string description, string example, params IReadOnlyList<Symbol> more)
        : this(desk, name, description, example, PositionArgument(), more)
    {
    }

    private PositionCommand(Desk desk, string name, string description, string example, Argument<string> position, IReadOnlyList<Symbol> more)
        : base(desk, name, description, example, [position, .. more])
    {
        _position = position;
        _position.CompletionSources.Add(context => GameOf(context.ParseResult)?.PositionNames.AsEnumerable() ?? []);
    }

    /// <summary>Answers for a position that is sound, as is its sheet.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Answer(PositionRequest request, ParseResult parse);

    /// <inheritdoc />
    protected sealed override int Answer(GameRequest request, ParseResult parse)
    {
        Found<SourceText> text = PositionFinder.Find(request.Game, parse.GetValue(_position)!, Desk.Input);
        if (text.Value is null)
        {
            return Desk.Refuse(text.Complaint!);
        }

        OpenedPosition opened = request.Game.Open(text.Value, request.Variants);
        if (opened is not { Position: { } position, File: { } file })
        {
            return Report([.. opened.Sheet.Problems, .. opened.Problems], request.Json);
        }

        if (!request.Json)
        {
            Desk.Show(ProblemScreen.Of(opened.Problems));
        }

        return Answer(new PositionRequest(position, file, request.Json), parse);
    }

    private static Argument<string> PositionArgument() => new("position") { Description = "A name in the game's positions, a path, or '-' for standard input." };
}

/// <summary>What a command was asked of a position.</summary>
/// <param name="Position">The position; its sheet has the wanted variants on.</param>
/// <param name="File">The file it comes from.</param>
/// <param name="Json">True for an answer in JSON.</param>
internal sealed record PositionRequest(Position Position, PositionFile File, bool Json)
{
    /// <summary>Game, variants that are on, and position, for a heading.</summary>
    public string Heading => $"{Game}, position {Position.Name}";

    /// <summary>The game with its variants; of a position that says what it shows, viewers need no more.</summary>
    public string Title => File.Says is null ? Heading : Game;

    private string Game => string.Join(", ", [Position.Sheet.Game, .. Position.Sheet.VariantsOn]);
}
