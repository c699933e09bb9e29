using System.CommandLine;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum rule</c>: whether an action is legal or a truth holds, and why.</summary>
internal sealed class RuleCommand : PositionCommand
{
    private readonly Argument<string> _words;

    /// <summary>The command at a desk.</summary>
    public RuleCommand(Desk desk)
        : this(desk, new Argument<string>("words") { Description = "An action or a truth in the words of the sheet, between quotes." })
    {
    }

    private RuleCommand(Desk desk, Argument<string> words)
        : base(desk, "rule", "Rules on an action ('place copper jug on B2') or a truth ('Commission 12 is met'), with every reason and its page.", "rostrum rule games/kiln-night copper-ash \"place copper jug on B2\"", "The seat that acts, from 1; else the one that the position says.", words) => _words = words;

    /// <inheritdoc />
    protected override int Answer(PositionRequest request, ParseResult parse)
    {
        string words = parse.GetValue(_words)!;
        Position position = request.Seen;
        RulingAnswer answer = Ruling.On(position, words);
        if (answer.Ruling is not { } ruling)
        {
            Show(answer.Problems, request.Json);
            return ExitCode.WrongUsage;
        }

        if (request.Json)
        {
            Desk.Write(RuleReport.Of(request.Position.Sheet.Game, request.Position.Name, words, ruling), r => r.RuleReport);
        }
        else
        {
            Desk.Write(RulingScreen.Of(words, Heading(request.Heading, position), ruling));
        }

        return ruling is Ruling.Legal or Ruling.Yes ? ExitCode.Fine : ExitCode.Findings;
    }

    // Who acts matters where several sit at the table.
    private static string Heading(string heading, Position position) => position is { Seats: > 1, IsTurnSaid: true }
        ? $"{heading}, turn of {new PositionWords(position.Sheet, -1).Seat(position.Me)}"
        : heading;
}
