using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Idioms;

/// <summary>Reads what a clause gives for the parameters of an idiom, in the words of the sheet.</summary>
internal sealed class IdiomArgumentReader(LoadContext context, Idiom idiom, OutlineMapping clause, string owner)
{
    private const string OnlyBoard = "the only board";

    /// <summary>Every argument; null (with messages for all of them) where one is missing or wrong.</summary>
    public ImmutableArray<IdiomArgument>? Read()
    {
        var found = ImmutableArray.CreateBuilder<IdiomArgument>();
        bool isWhole = true;
        foreach (IdiomParameter parameter in idiom.Parameters)
        {
            IdiomArgument? argument = Argument(parameter);
            isWhole &= argument is not null;
            if (argument is not null)
            {
                found.Add(argument);
            }
        }

        return isWhole ? found.ToImmutable() : null;
    }

    private IdiomArgument? Argument(IdiomParameter parameter)
    {
        OutlineNode? given = clause.Find(parameter.Name)?.Value;
        OutlineScalar? usual = parameter.Otherwise;
        if (given is null && usual is not null)
        {
            string words = Prose.Fold(usual.Text);
            if (words == OnlyBoard)
            {
                return OnlyBoardOf(parameter);
            }

            if (idiom.Find(words) is { } other && Argument(other) is { } same)
            {
                return same with { Parameter = parameter };
            }

            given = usual;
        }

        if (given is null)
        {
            OutlineScalar? at = clause.Find("idiom")?.Value as OutlineScalar;
            context.Problems.Add(SheetProblems.IdiomLacks(at?.Span ?? clause.Span, idiom.Name, parameter.Name, parameter.Wanted));
            return null;
        }

        return parameter.Form switch
        {
            ParameterForm.Number => Number(parameter, given),
            ParameterForm.Look => OutlineAsk.Text(context, given, parameter.Wanted) is { } look ? LookOf(parameter, look) : null,
            ParameterForm.Place or ParameterForm.Board => OutlineAsk.Text(context, given, parameter.Wanted) is { } place ? PlaceOf(parameter, place) : null,
            _ => OutlineAsk.Text(context, given, parameter.Wanted) is { } name ? Symbol(parameter, name) : null,
        };
    }

    private IdiomArgument? OnlyBoardOf(IdiomParameter parameter)
    {
        if (context.Declared.Boards.Keys.ToArray() is [var board])
        {
            Origin origin = Origin.Of(clause.Span);
            var term = new Term.PlaceOf(board, board.EachPlayer ? new Term.Me(origin) : null, origin);
            return new IdiomArgument(parameter, new TermName(parameter.As, term), board.EachPlayer ? $"your {board.Name}" : $"the {board.Name}", board.Name, null);
        }

        context.Problems.Add(SheetProblems.IdiomLacks(clause.Span.Part(0, 0), idiom.Name, parameter.Name, parameter.Wanted));
        return null;
    }

    private IdiomArgument Number(IdiomParameter parameter, OutlineNode node)
    {
        Term term = context.Formulas(new Scope()).Value(node, Sort.Number, owner);
        long? plain = node is OutlineScalar scalar ? OutlineAsk.NumberIn(scalar.Text) : null;
        string words = node is OutlineScalar text ? Prose.Fold(text.Text) : "so many";
        return new IdiomArgument(parameter, new TermName(parameter.As, term), words, words, plain);
    }

    private IdiomArgument? LookOf(IdiomParameter parameter, OutlineScalar words)
    {
        Look? look = context.Formulas(new Scope()).Look(FormulaText.Of(words));
        if (look is null)
        {
            return null;
        }

        (string singular, string plural) = (LookWords.One(look), LookWords.Many(look));
        return new IdiomArgument(parameter, new LookName(parameter.As, look with { Words = singular }), singular, plural, null);
    }

    private IdiomArgument? PlaceOf(IdiomParameter parameter, OutlineScalar words)
    {
        Term term = context.Formulas(new Scope()).Value(words, Sort.Place, owner);
        string said = Prose.Fold(words.Text);
        if (parameter.Form == ParameterForm.Board && term is Term.PlaceOf { Place.Form: not PlaceForm.Board })
        {
            context.Problems.Add(SheetProblems.UnknownWord(words.Span, said, "a board", context.Declared.Boards.Keys.Select(b => b.Name)));
            return null;
        }

        said = said.StartsWith("my ", StringComparison.Ordinal) ? $"your {said[3..]}" : said;
        return term is Term.NotYet ? null : new IdiomArgument(parameter, new TermName(parameter.As, term), said, said, null);
    }

    private IdiomArgument? Symbol(IdiomParameter parameter, OutlineScalar words)
    {
        string name = Prose.Fold(words.Text);
        Named? symbol = context.Declared.Names.Find(name).Select(s => s.Symbol).FirstOrDefault(s => Fits(parameter.Form, s));
        if (symbol is null && parameter.Form == ParameterForm.Lines && LinesOf(name) is { } lines)
        {
            context.Problems.Add(SheetProblems.LinesWithoutName(words.Span, lines.Key, lines.Board, lines.Key, lines.Name));
            return null;
        }

        if (symbol is null)
        {
            IEnumerable<string> known = context.Declared.Names.All.Where(n => Fits(parameter.Form, n.Symbol)).Select(n => n.Words).Distinct();
            context.Problems.Add(SheetProblems.UnknownWord(words.Span, name, parameter.Wanted, known));
            return null;
        }

        string plural = symbol is LineFamily family ? family.Plural : Prose.Plural(symbol.Name);
        return new IdiomArgument(parameter, symbol, symbol.Name, plural, null);
    }

    // `rows` of a board that gives them no name: the lines are there, and only the word for them is missing.
    private (string Key, string Name, string Board)? LinesOf(string name)
    {
        (string Key, string Name, LineForm Form)? asked = name switch
        {
            "row" or "rows" => ("rows", "row", LineForm.Rows),
            "column" or "columns" => ("columns", "column", LineForm.Columns),
            _ => null,
        };
        return asked is { } lines && context.Declared.Boards.Values.FirstOrDefault(b => b.Family(lines.Form) is null) is { } board
            ? (lines.Key, lines.Name, board.Place.Name)
            : null;
    }

    private static bool Fits(ParameterForm form, Named symbol) => form switch
    {
        ParameterForm.Lines => symbol is LineFamily,
        ParameterForm.Table => symbol is Table,
        ParameterForm.Column => symbol is Column,
        ParameterForm.Word => symbol is Word { Subjects.Length: 1 },
        _ => symbol is Attribute,
    };
}
