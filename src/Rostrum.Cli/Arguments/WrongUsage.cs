using System.CommandLine;
using System.CommandLine.Parsing;
using Rostrum.Text;

namespace Rostrum.Cli.Arguments;

/// <summary>What is wrong with a command line, in sentences.</summary>
internal static class WrongUsage
{
    /// <summary>The sentences; empty for a command line that can be carried out.</summary>
    public static IReadOnlyList<string> Of(ParseResult parse)
    {
        Command command = parse.CommandResult.Command;
        if (command is RootCommand && parse.UnmatchedTokens.FirstOrDefault(t => !t.StartsWith('-')) is { } first)
        {
            return [NoCommand(command, first)];
        }

        // A positional argument swallows a misspelt option, and the errors that follow speak of the wrong word: look for those first.
        string[] misspelt = [.. MisspeltOptions(parse)];
        if (misspelt.Length > 0)
        {
            return misspelt;
        }

        if (command is RootCommand)
        {
            return [$"Say what to do: {Prose.Or(command.Subcommands.Select(c => c.Name))}."];
        }

        if (Missing(parse) is { Length: > 0 } missing)
        {
            return [$"'rostrum {command.Name}' needs {Prose.And(missing)} as well."];
        }

        if (command.Options.FirstOrDefault(o => o.Required && parse.GetResult(o) is null) is { } wanted)
        {
            return [$"Say where it goes: '{wanted.Name} {wanted.HelpName}'."];
        }

        return parse.UnmatchedTokens is [var more, ..]
            ? [$"'{Prose.Clip(more)}' is one word too many. Put words that belong together between quotes."]
            : [.. parse.Errors.Select(e => e.Message).Distinct()];
    }

    private static IEnumerable<string> MisspeltOptions(ParseResult parse)
    {
        string[] known = [.. HelpText.OptionsOf(parse.CommandResult.Command).SelectMany(o => o.Aliases.Prepend(o.Name)).Where(n => n.StartsWith('-'))];
        Token[] values = [.. parse.CommandResult.Children.OfType<OptionResult>().SelectMany(o => o.Tokens)];
        return from token in parse.Tokens.TakeWhile(t => t.Type != TokenType.DoubleDash)
               where token.Type == TokenType.Argument && token.Value.Length > 1 && token.Value[0] == '-' && !values.Contains(token)
               let name = token.Value.Split('=')[0]
               select $"'{Prose.Clip(name)}' is no option here. {Instead(name, known)}";
    }

    private static string Instead(string name, string[] known) => NearSpelling.Find(name, known) is { } near
        ? $"Did you mean '{near}'?"
        : $"There are {Prose.And(known.Where(k => k.StartsWith("--", StringComparison.Ordinal)))}.";

    private static string NoCommand(Command root, string word)
    {
        string[] known = [.. root.Subcommands.Select(c => c.Name)];
        return NearSpelling.Find(word, known) is { } near
            ? $"There is no command '{Prose.Clip(word)}'. Did you mean '{near}'?"
            : $"There is no command '{Prose.Clip(word)}'. There are {Prose.And(known)}.";
    }

    private static string[] Missing(ParseResult parse) =>
        [.. parse.CommandResult.Command.Arguments.Where(a => a.Arity.MinimumNumberOfValues > 0 && parse.GetResult(a) is not { Tokens.Count: > 0 }).Select(a => $"<{a.Name}>")];
}
