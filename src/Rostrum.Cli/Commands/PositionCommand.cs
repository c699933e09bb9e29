using System.CommandLine;
using Rostrum.Cli.Arguments;
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
    private readonly Option<int> _seat;
    private readonly Option<string?> _board;

    /// <summary>Puts the command together; <paramref name="seat"/> tells what <c>--seat</c> means here, besides whose board a pasted drawing is.</summary>
    protected PositionCommand(Desk desk, string name, string description, string example, string seat, params IReadOnlyList<Symbol> more)
        : this(desk, name, description, example, PositionArgument(), SeatOption.Named($"{seat} What is pasted without a seat is this seat's."), BoardOption(), more)
    {
    }

    private PositionCommand(Desk desk, string name, string description, string example, Argument<string> position, Option<int> seat, Option<string?> board, IReadOnlyList<Symbol> more)
        : base(desk, name, description, example, [position, .. more, seat, board])
    {
        (_position, _seat, _board) = (position, seat, board);
        _position.CompletionSources.Add(context => GameOf(context.ParseResult)?.PositionNames.AsEnumerable() ?? []);
    }

    /// <summary>Answers for a position that is sound, as is its sheet.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Answer(PositionRequest request, ParseResult parse);

    /// <inheritdoc />
    protected sealed override int Answer(GameRequest request, ParseResult parse)
    {
        int seat = parse.GetValue(_seat);
        Found<OpenedPosition> found = new PositionOpener(Desk, request).Open(parse.GetValue(_position)!, Math.Max(seat, 1), parse.GetValue(_board));
        if (found.Value is not { } opened)
        {
            return Desk.Refuse(found.Complaint!);
        }

        if (opened is not { Position: { } position, File: { } file })
        {
            return Report([.. opened.Sheet.Problems, .. opened.Problems], request.Json);
        }

        if (!request.Json)
        {
            Desk.Show(ProblemScreen.Of(opened.Problems));
        }

        return seat > position.Seats
            ? Desk.Refuse($"There is no seat {seat}: the position has {Prose.Count(position.Seats, "seat", "seats")}.")
            : Answer(new PositionRequest(position, file, seat, request.Json), parse);
    }

    private static Argument<string> PositionArgument() => new("position") { Description = "A name in the game's positions, a path, or '-' for what is pasted or piped in: a position or only its drawing." };

    private static Option<string?> BoardOption() => new("--board") { HelpName = "NAME", Description = "Which board a drawing is that is pasted without a name." };
}

/// <summary>What a command was asked of a position.</summary>
/// <param name="Position">The position; its sheet has the wanted variants on.</param>
/// <param name="File">The file it comes from.</param>
/// <param name="Seat">The seat that the user names, from 1; 0 where he names none.</param>
/// <param name="Json">True for an answer in JSON.</param>
internal sealed record PositionRequest(Position Position, PositionFile File, int Seat, bool Json)
{
    /// <summary>The position, with the turn of the seat that the user names.</summary>
    public Position Seen => Seat > 0 ? Position with { Me = Seat - 1, IsTurnSaid = true } : Position;

    /// <summary>Game, variants that are on, and position, for a heading.</summary>
    public string Heading => Position.Name == PositionFinder.Pasted ? $"{Game}, {PositionFinder.Pasted}" : $"{Game}, position {Position.Name}";

    /// <summary>The game with its variants; of a position that says what it shows, viewers need no more.</summary>
    public string Title => File.Says is null ? Heading : Game;

    private string Game => string.Join(", ", [Position.Sheet.Game, .. Position.Sheet.VariantsOn]);
}
