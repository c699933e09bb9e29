using System.CommandLine;
using System.Text;
using Rostrum.Cli.Arguments;
using Rostrum.Cli.Disk;
using Rostrum.Cli.Reports;
using Rostrum.Cli.Screen;
using Rostrum.Cli.Starting;
using Rostrum.Text;

namespace Rostrum.Cli.Commands;

/// <summary><c>rostrum new</c>: a sheet that already answers.</summary>
internal sealed class NewCommand : Command, IHasExample
{
    private const int NameWidth = 24;

    private readonly Desk _desk;
    private readonly Argument<string> _folder = new("folder") { Description = "The folder that is made; one that holds a game is left alone." };
    private readonly NewOptions _options = new();
    private readonly Option<bool> _json = new("--json") { Description = "Answer in JSON, for scripts." };

    /// <summary>The command at a desk.</summary>
    public NewCommand(Desk desk)
        : base("new", "Starts a game: a sheet with remarks and a first position, which check, tally, rule, read, draw, count and play answer at once. At a terminal it asks, unless an option says something.")
    {
        _desk = desk;
        Arguments.Add(_folder);
        foreach (Option option in _options.All.Append<Option>(_json))
        {
            Options.Add(option);
        }

        Action = new GameAction(Run);
    }

    /// <inheritdoc />
    public string Example => "rostrum new lamp-market --pieces \"coin 30, lamp 12\" --score rows";

    private int Run(ParseResult parse)
    {
        string folder = parse.GetValue(_folder)!;
        if (NewFolder.Complaint(folder, []) is { } complaint)
        {
            return _desk.Refuse(complaint);
        }

        bool asks = _desk.IsTerminal && _options.All.Append<Option>(_json).All(o => parse.GetResult(o) is not { Implicit: false });
        Found<NewGame> game = new Questions(_desk, name => _options.All.Select(o => (o.Name, Value: parse.GetValue(o))).First(o => o.Name == name).Value, asks).Ask(NameOf(folder));
        Found<NewFiles> files = game.Value is null ? Found<NewFiles>.None(game.Complaint!) : NewFiles.Of(game.Value, IdiomShelf.Open(), _desk.Stop);
        if (files.Value is null || NewFolder.Complaint(folder, files.Value.Files.Select(f => f.Name)) is not null)
        {
            return _desk.Refuse(files.Complaint ?? NewFolder.Complaint(folder, files.Value!.Files.Select(f => f.Name))!);
        }

        NewFolder.Write(folder, [.. files.Value.Files.Select(f => (f.Name, Encoding.UTF8.GetBytes(f.Content)))]);
        Tell(folder, files.Value, parse.GetValue(_json));
        return ExitCode.Fine;
    }

    private void Tell(string folder, NewFiles made, bool json)
    {
        string game = folder.Any(c => !char.IsLetterOrDigit(c) && c is not ('-' or '_' or '.' or '/')) ? $"\"{folder}\"" : folder;
        string[] next = [$"rostrum tally {game} {NewFiles.Position}", $"rostrum rule {game} {NewFiles.Position} \"{made.Question}\"", $"rostrum read {game}", .. made.HasTurn ? [$"rostrum count {game} --plies 2", $"rostrum play {game}"] : Array.Empty<string>()];
        if (json)
        {
            _desk.Write(new NewReport(ReportJson.Format, folder, [.. made.Files.Select(f => new PackFileItem(f.Name, f.Says, Encoding.UTF8.GetByteCount(f.Content)))], next), r => r.NewReport);
            return;
        }

        var paper = new Paper();
        foreach ((string name, string says, _) in made.Files)
        {
            paper.Pair(name, says, NameWidth);
        }

        _desk.Write(paper.ToString());
        _desk.Tell("Try next:");
        foreach (string command in next)
        {
            _desk.Tell($"  {command}");
        }
    }

    // `lamp-market` is a game called Lamp Market to begin with.
    private static string NameOf(string folder)
    {
        string name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        string words = string.Join(' ', name.Split(['-', '_', '.', ' '], StringSplitOptions.RemoveEmptyEntries).Select(Prose.Sentence));
        return words.Any(char.IsLetterOrDigit) && Answers.Name(words).Value is { } usual ? usual : "New Game";
    }
}
