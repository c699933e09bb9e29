using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;
using Attribute = Rostrum.Sheets.Model.Attribute;

namespace Rostrum.Sheets.Idioms;

/// <content>Names of the sheet, what an action chooses, and what every player has.</content>
internal sealed partial class IdiomArgumentReader
{
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
        ParameterForm.Word => symbol is Word { Subjects: [{ Sort.IsMany: false }] },
        ParameterForm.SetWord => symbol is Word { Subjects: [{ Sort.IsMany: true }] },
        ParameterForm.Printed => symbol is PrintedValue,
        ParameterForm.PairWord => symbol is Word { Subjects.Length: 2 },
        ParameterForm.Worth => symbol is Column or Attribute or Word { Subjects: [{ Sort.IsMany: false }] },
        _ => symbol is Attribute,
    };

    private IdiomArgument? Chosen(IdiomParameter parameter, OutlineScalar words)
    {
        string name = Prose.Fold(words.Text);
        ActionChoice[] fitting = ChoicesFor(parameter.Form);
        if (fitting.FirstOrDefault(c => c.Name == name) is { } choice)
        {
            return OfChoice(parameter, choice);
        }

        context.Problems.Add(SheetProblems.UnknownWord(words.Span, name, parameter.Wanted, fitting.Select(c => c.Name)));
        return null;
    }

    private IdiomArgument? OnlyChoiceOf(IdiomParameter parameter)
    {
        ActionChoice[] fitting = ChoicesFor(parameter.Form);
        if (fitting is [var only])
        {
            return OfChoice(parameter, only);
        }

        if (fitting.Length > 1)
        {
            return Missing(parameter, Prose.Or(fitting.Select(c => $"'{c.Name}'")));
        }

        if (clause.Find("idiom")?.Value is { } at && action is not null)
        {
            context.Problems.Add(SheetProblems.ActionChoosesNone(at.Span, idiom.Name, action.Action.Name, parameter.Form == ParameterForm.ChosenThing ? "a thing" : "a space"));
        }

        return null;
    }

    private ActionChoice[] ChoicesFor(ParameterForm form)
    {
        SortKind wanted = form == ParameterForm.ChosenThing ? SortKind.Thing : SortKind.Space;
        return [.. (action?.Choices ?? []).Where(c => c.Sort.Kind == wanted)];
    }

    private static IdiomArgument OfChoice(IdiomParameter parameter, ActionChoice choice)
    {
        var term = new Term.Variable(choice.Slot, choice.Name, choice.Sort, Origin.Of(choice.At));
        return new IdiomArgument(parameter, new TermName(parameter.As, term), choice.Name, Prose.Plural(choice.Name), null);
    }

    // `my coins`, `sticks`, `jugs in my field`, or a word of one player: a number for each player.
    private IdiomArgument? Standing(IdiomParameter parameter, OutlineScalar words)
    {
        int within = words.Text.LastIndexOf(" in ", StringComparison.Ordinal);
        string name = Prose.Fold(words.Text[(within < 0 ? 0 : within + 4)..]);
        name = name.StartsWith("my ", StringComparison.Ordinal) ? name[3..] : name;
        Look? look = null;
        if (within >= 0 && (look = context.Formulas(new Scope()).Look(FormulaText.Of(words).Part(0, within))) is null)
        {
            return null;
        }

        if (context.Declared.Names.Find(name).Select(s => s.Symbol).Select(s => NumberOfEach(s, look, words)).FirstOrDefault(w => w is not null) is { } word)
        {
            string said = look is null ? name : $"{LookWords.Many(look)} in their {name}";
            return new IdiomArgument(parameter, word, said, look is null ? name : $"{LookWords.Many(look)} in your {name}", null);
        }

        IEnumerable<string> known = context.Declared.Names.All.Where(n => n.Symbol is Place { EachPlayer: true } or Mark { EachPlayer: true }).Select(n => n.Words).Distinct();
        context.Problems.Add(SheetProblems.UnknownWord(words.Span, Prose.Fold(words.Text), parameter.Wanted, known));
        return null;
    }

    private Word? NumberOfEach(Named symbol, Look? look, OutlineScalar words)
    {
        Origin origin = Origin.Of(words.Span);
        var scope = new Scope();
        var player = new Term.Variable(scope.Push(null, Sort.Player).Slot, "p", Sort.Player, origin);
        Term? number = symbol switch
        {
            Mark { EachPlayer: true, Sort.Kind: SortKind.Number } mark when look is null => new Term.MarkOf(mark, player, origin),
            Place { EachPlayer: true } place when look is not null || place.Form != PlaceForm.Board => CountIn(new Term.PlaceOf(place, player, origin), look, scope),
            _ => null,
        };
        bool isWord = look is null && symbol is Word { Subjects: [{ Sort.Kind: SortKind.Player }] } known && context.Declared.MeaningOf(known)?.Sort.Kind is SortKind.Number;
        return isWord ? (Word)symbol : number is null ? null : context.AddBoundWord(look is null ? symbol.Name : LookWords.Many(look), [new Subject("p", Sort.Player)], number, scope.FrameSize);
    }

    private static Term.Apply CountIn(Term.PlaceOf place, Look? look, Scope scope)
    {
        Term many = look is null
            ? new Term.Apply(Operations.Of(Op.ThingsIn), null, [place], Sort.ListOf(Sort.Thing), place.Origin)
            : new Term.Within(look, place, Sort.ListOf(Sort.ThingOf(look.Kind)), place.Origin);
        return Count(many, scope);
    }
}
