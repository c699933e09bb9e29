using System.CommandLine;
using Rostrum.Cli.Screen;

namespace Rostrum.Cli.Arguments;

/// <summary>How a command is used, made from the same table that parses it.</summary>
internal static class HelpText
{
    private const int NameWidth = 20;

    private const string Completion = """
        Completion in bash (put this into ~/.bashrc; it also completes positions):
          _rostrum() { mapfile -t COMPREPLY < <(rostrum "[suggest:$COMP_POINT]" "$COMP_LINE"); }
          complete -F _rostrum rostrum
        """;

    /// <summary>The help of a command, at most 80 columns, a line end behind the last line.</summary>
    public static string Of(Command command)
    {
        var paper = new Paper();
        paper.Wrapped(Usage(command), 0, hanging: 4);
        paper.Line();
        paper.Wrapped(command.Description ?? "", 2);
        paper.Line();
        foreach (Command inner in command.Subcommands)
        {
            paper.Pair(inner.Name, inner.Description ?? "", NameWidth);
        }

        foreach (Argument argument in command.Arguments)
        {
            paper.Pair($"<{argument.Name}>", argument.Description ?? "", NameWidth);
        }

        foreach (Option option in OptionsOf(command))
        {
            paper.Pair(LabelOf(option), option.Description ?? "", NameWidth);
        }

        paper.Line();
        paper.Raw(command is IHasExample shown ? $"Example:\n  {shown.Example}" : Completion);
        return paper.ToString();
    }

    /// <summary>The words that call a command, such as <c>rostrum check</c>.</summary>
    public static string NameOf(Command command) => command is RootCommand ? "rostrum" : $"rostrum {command.Name}";

    /// <summary>The options that a command takes: its own, then those that every command takes.</summary>
    public static IEnumerable<Option> OptionsOf(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(p => p.Options).Where(o => o.Recursive));

    private static string Usage(Command command)
    {
        IEnumerable<string> arguments = command.Arguments.Select(a => a.Arity.MinimumNumberOfValues > 0 ? $"<{a.Name}>" : $"[<{a.Name}>]");
        IEnumerable<string> options = command is RootCommand ? ["<command>", "…"] : command.Options.Select(o => o.Required ? LabelOf(o) : $"[{LabelOf(o)}]{(o.Arity.MaximumNumberOfValues > 1 ? "…" : "")}");
        return string.Join(' ', [NameOf(command), .. arguments, .. options]);
    }

    private static string LabelOf(Option option) => option.HelpName is null ? option.Name : $"{option.Name} {option.HelpName}";
}
