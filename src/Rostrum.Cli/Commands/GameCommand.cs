using System.Collections.Immutable;
using System.CommandLine;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Rulings.Games;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary>A command that asks something of a game.</summary>
internal abstract class GameCommand : Command, IHasExample
{
    private readonly Argument<string> _game = new("game") { Description = "The game: a folder with a sheet.yaml." };
    private readonly Option<string[]> _variants = new("--variant") { HelpName = "NAME", Description = "Switch a variant on; may be given again for another.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> _json = new("--json") { Description = "Answer in JSON, for scripts." };

    /// <summary>Puts the command together; what a command takes besides the game stands between it and the common options.</summary>
    protected GameCommand(Desk desk, string name, string description, string example, params IReadOnlyList<Symbol> more)
        : base(name, description)
    {
        Desk = desk;
        Example = example;
        Arguments.Add(_game);
        foreach (Symbol symbol in more)
        {
            Add(symbol);
        }

        Options.Add(_variants);
        Options.Add(_json);
        Action = new GameAction(Run);
    }

    /// <inheritdoc />
    public string Example { get; }

    /// <summary>Where the command reads and writes.</summary>
    protected Desk Desk { get; }

    /// <summary>Answers.</summary>
    /// <returns>The exit code.</returns>
    protected abstract int Answer(GameRequest request, ParseResult parse);

    /// <summary>Answers what needs no game.</summary>
    /// <returns>The exit code; null where a game is needed.</returns>
    protected virtual int? Aside(IdiomShelf shelf, ParseResult parse) => null;

    /// <summary>Lets the game be left out; <see cref="Aside"/> has to see to it.</summary>
    protected void NeedNoGame() => _game.Arity = ArgumentArity.ZeroOrOne;

    /// <summary>True where a game is named.</summary>
    protected bool IsGameNamed(ParseResult parse) => parse.GetValue(_game) is { Length: > 0 };

    /// <summary>The folder of the game that is named.</summary>
    protected string FolderOf(ParseResult parse) => GameFinder.FolderOf(parse.GetValue(_game)!);

    /// <summary>Gives problems in place of an answer.</summary>
    /// <returns><see cref="ExitCode.Findings"/>.</returns>
    protected int Report(ImmutableArray<Diagnostic> problems, bool json)
    {
        Show(problems, json);
        if (!json)
        {
            Desk.Say("there is no answer until these are mended.");
        }

        return ExitCode.Findings;
    }

    /// <summary>Shows problems: as data in JSON, else as talk.</summary>
    protected void Show(ImmutableArray<Diagnostic> problems, bool json)
    {
        if (json)
        {
            Desk.Write(ProblemsReport.Of(problems), r => r.ProblemsReport);
        }
        else
        {
            Desk.Show(ProblemScreen.Of(problems));
        }
    }

    /// <summary>The game that is named so far, for completion; null where there is none.</summary>
    protected Game? GameOf(ParseResult parse) => parse.GetValue(_game) is { Length: > 0 } path ? GameFinder.Open(path, Sheets.Idioms.IdiomLibrary.Empty).Value : null;

    private void Add(Symbol symbol)
    {
        switch (symbol)
        {
            case Argument argument:
                Arguments.Add(argument);
                break;
            case Option option:
                Options.Add(option);
                break;
        }
    }

    private int Run(ParseResult parse)
    {
        IdiomShelf shelf = IdiomShelf.Open();
        if (Aside(shelf, parse) is { } code)
        {
            return code;
        }

        Found<Game> game = GameFinder.Open(parse.GetValue(_game)!, shelf.Library);
        if (game.Value is null)
        {
            return Desk.Refuse(game.Complaint!);
        }

        var request = new GameRequest(game.Value, shelf.Problems, [.. parse.GetValue(_variants) ?? []], parse.GetValue(_json));
        return UnknownVariant(request) is { } complaint ? Desk.Refuse(complaint) : Answer(request, parse);
    }

    private static string? UnknownVariant(GameRequest request)
    {
        if (request.Variants.IsEmpty || request.Game.Sheet().Sheet is not { } sheet)
        {
            return null;
        }

        ImmutableArray<string> known = [.. sheet.Variants.Select(v => v.Name)];
        return request.Variants.FirstOrDefault(v => !known.Contains(v)) is { } unknown
            ? $"'{Prose.Clip(unknown)}' is no variant of {sheet.Game}. {Instead(unknown, known)}"
            : null;
    }

    private static string Instead(string unknown, ImmutableArray<string> known) => NearSpelling.Find(unknown, known) is { } near
        ? $"Did you mean '{near}'?"
        : known.IsEmpty ? "It has none." : $"There are {Prose.And(known.Select(k => $"'{k}'"))}.";
}

/// <summary>What a command was asked, every default resolved.</summary>
/// <param name="Game">The game, opened.</param>
/// <param name="IdiomProblems">What is wrong with the idiom library.</param>
/// <param name="Variants">The variants that the user wants on; known to the sheet where it can be read.</param>
/// <param name="Json">True for an answer in JSON.</param>
internal sealed record GameRequest(Game Game, ImmutableArray<Diagnostic> IdiomProblems, ImmutableArray<string> Variants, bool Json);
