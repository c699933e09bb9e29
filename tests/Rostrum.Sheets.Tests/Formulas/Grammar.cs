using System.Text.RegularExpressions;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>The grammar of <c>docs/language.md</c>, read from its fenced block.</summary>
internal sealed partial class Grammar
{
    private readonly Queue<string> _marks;

    private Grammar(string rule) => _marks = new Queue<string>(Marks().Matches(rule).Select(m => m.Value));

    /// <summary>The rules of a page, by name.</summary>
    public static IReadOnlyDictionary<string, GrammarPart> Read(string page)
    {
        string block = Block().Match(page).Groups[1].Value;
        string[] rules = Rule().Split(block).Where(r => r.Contains('=', StringComparison.Ordinal)).ToArray();
        return rules.ToDictionary(r => r[..r.IndexOf('=', StringComparison.Ordinal)].Trim(), r => new Grammar(r[(r.IndexOf('=', StringComparison.Ordinal) + 1)..]).ReadChoice());
    }

    private GrammarPart ReadChoice()
    {
        var options = new List<GrammarPart> { ReadRow() };
        while (_marks.TryPeek(out string? mark) && mark == "|")
        {
            _marks.Dequeue();
            options.Add(ReadRow());
        }

        return options.Count == 1 ? options[0] : new GrammarPart.Choice([.. options]);
    }

    private GrammarPart ReadRow()
    {
        var parts = new List<GrammarPart>();
        while (_marks.TryPeek(out string? mark) && mark is not ("|" or ")" or "]" or "}"))
        {
            parts.Add(ReadOne(_marks.Dequeue()));
        }

        return parts.Count == 1 ? parts[0] : new GrammarPart.Row([.. parts]);
    }

    private GrammarPart ReadOne(string mark) => mark switch
    {
        "(" => Closed(ReadChoice()),
        "[" => Closed(new GrammarPart.Maybe(ReadChoice())),
        "{" => Closed(new GrammarPart.Many(ReadChoice())),
        ['"', ..] => new GrammarPart.Words(mark.Trim('"')),
        _ when mark.All(char.IsUpper) => new GrammarPart.Class(mark),
        _ => new GrammarPart.Rule(mark),
    };

    private GrammarPart Closed(GrammarPart inside)
    {
        _marks.Dequeue();
        return inside;
    }

    [GeneratedRegex("```grammar\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex("(?m)^(?=[a-z])")]
    private static partial Regex Rule();

    [GeneratedRegex("\"[^\"]*\"|[A-Za-z]+|[()\\[\\]{}|]")]
    private static partial Regex Marks();
}

/// <summary>A part of a rule.</summary>
internal abstract record GrammarPart
{
    public sealed record Words(string Said) : GrammarPart;

    public sealed record Class(string Name) : GrammarPart;

    public sealed record Rule(string Name) : GrammarPart;

    public sealed record Row(GrammarPart[] Parts) : GrammarPart;

    public sealed record Choice(GrammarPart[] Options) : GrammarPart;

    public sealed record Maybe(GrammarPart Inside) : GrammarPart;

    public sealed record Many(GrammarPart Inside) : GrammarPart;

    /// <summary>Everything directly inside.</summary>
    public IEnumerable<GrammarPart> Inner => this switch
    {
        Row row => row.Parts,
        Choice choice => choice.Options,
        Maybe maybe => [maybe.Inside],
        Many many => [many.Inside],
        _ => [],
    };

    /// <summary>This and everything inside, however deep.</summary>
    public IEnumerable<GrammarPart> All => Inner.SelectMany(i => i.All).Prepend(this);
}
