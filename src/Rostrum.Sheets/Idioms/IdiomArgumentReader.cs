using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>Reads what a clause gives for the parameters of an idiom, in the words of the sheet.</summary>
/// <param name="context">The sheet that is being read.</param>
/// <param name="idiom">The idiom.</param>
/// <param name="clause">The clause that uses it.</param>
/// <param name="owner">The name of the clause, for answers.</param>
/// <param name="action">The action that the clause binds, for a law; null otherwise.</param>
internal sealed partial class IdiomArgumentReader(LoadContext context, Idiom idiom, OutlineMapping clause, string owner, ActionFacts? action)
{
    private const string OnlyBoard = "the only board";
    private const string OnlyChoice = "the only one chosen";

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
        if (given is not null)
        {
            return Given(parameter, given);
        }

        if (parameter.Otherwise is not { } usual)
        {
            return Missing(parameter);
        }

        string words = Prose.Fold(usual.Text);
        return words switch
        {
            OnlyBoard => OnlyBoardOf(parameter),
            OnlyChoice => OnlyChoiceOf(parameter),
            _ when idiom.Find(words) is { } other => Argument(other) is { } same ? same with { Parameter = parameter } : null,
            _ => Given(parameter, usual),
        };
    }

    private IdiomArgument? Given(IdiomParameter parameter, OutlineNode given)
    {
        switch (parameter.Form)
        {
            case ParameterForm.Number:
                return Number(parameter, given);
            case ParameterForm.Amounts:
                return Amounts(parameter, given);
        }

        if (OutlineAsk.Text(context, given, parameter.Wanted) is not { } words)
        {
            return null;
        }

        return parameter.Form switch
        {
            ParameterForm.Look => LookOf(parameter, words),
            ParameterForm.Place or ParameterForm.Board => PlaceOf(parameter, words),
            ParameterForm.Amount => Amount(parameter, words),
            ParameterForm.Standing => Standing(parameter, words),
            ParameterForm.Things => Formula(parameter, words, Sort.SetOf(Sort.Any)),
            ParameterForm.Spaces => Formula(parameter, words, Sort.SetOf(Sort.Space)),
            ParameterForm.Truth => Formula(parameter, words, Sort.Truth),
            ParameterForm.OneOf => OneOf(parameter, words),
            ParameterForm.ChosenThing or ParameterForm.ChosenSpace => Chosen(parameter, words),
            _ => Symbol(parameter, words),
        };
    }

    private IdiomArgument? Missing(IdiomParameter parameter, string? wanted = null)
    {
        OutlineScalar? at = clause.Find("idiom")?.Value as OutlineScalar;
        context.Problems.Add(SheetProblems.IdiomLacks(at?.Span ?? clause.Span.Part(0, 0), idiom.Name, parameter.Name, wanted ?? parameter.Wanted));
        return null;
    }

    private IdiomArgument? OnlyBoardOf(IdiomParameter parameter)
    {
        if (context.Declared.Boards.Keys.ToArray() is [var board])
        {
            Origin origin = Origin.Of(clause.Span);
            var term = new Term.PlaceOf(board, board.EachPlayer ? new Term.Me(origin) : null, origin);
            return new IdiomArgument(parameter, new TermName(parameter.As, term), board.EachPlayer ? $"your {board.Name}" : $"the {board.Name}", board.Name, null);
        }

        string[] boards = [.. context.Declared.Boards.Keys.Select(b => b.EachPlayer ? $"'my {b.Name}'" : $"'{b.Name}'")];
        return Missing(parameter, boards.Length == 0 ? null : Prose.Or(boards));
    }

    private IdiomArgument? LookOf(IdiomParameter parameter, OutlineScalar words)
    {
        Look? look = context.Formulas(new Scope()).Look(FormulaText.Of(words));
        if (look is null)
        {
            return null;
        }

        if (parameter.IsOfAnybody && look.Owner != LookOwner.Anyone)
        {
            string bare = words.Text.Trim();
            context.Problems.Add(SheetProblems.IdiomComparesAll(words.Span, idiom.Name, bare, bare[(bare.IndexOf(' ', StringComparison.Ordinal) + 1)..]));
            look = look with { Owner = LookOwner.Anyone };
        }

        (string singular, string plural) = (LookWords.One(look), LookWords.Many(look));
        return new IdiomArgument(parameter, new LookName(parameter.As, look with { Words = singular }), singular, plural, null);
    }

    private IdiomArgument? PlaceOf(IdiomParameter parameter, OutlineScalar words)
    {
        Term term = context.Formulas(new Scope()).Value(words, Sort.Place, owner);
        if (parameter.Form == ParameterForm.Board && term is Term.PlaceOf { Place.Form: not PlaceForm.Board })
        {
            context.Problems.Add(SheetProblems.UnknownWord(words.Span, Prose.Fold(words.Text), "a board", context.Declared.Boards.Keys.Select(b => b.Name)));
            return null;
        }

        string said = Told(words);
        said = term is Term.PlaceOf { Place: { EachPlayer: false } place } && said == place.Name ? $"the {said}" : said;
        return term is Term.NotYet ? null : new IdiomArgument(parameter, new TermName(parameter.As, term), said, said, null);
    }

    private IdiomArgument? OneOf(IdiomParameter parameter, OutlineScalar words)
    {
        string said = Prose.Fold(words.Text);
        int at = parameter.Words.IndexOf(said);
        if (at < 0)
        {
            context.Problems.Add(SheetProblems.UnknownWord(words.Span, said, parameter.Wanted, parameter.Words));
            return null;
        }

        return new IdiomArgument(parameter, new TermName(parameter.As, new Term.Number(at + 1, Origin.Of(words.Span))), said, said, null);
    }

    // Told to the player who is counted: `the jugs in your field`.
    private static string Told(OutlineScalar words)
    {
        string said = Prose.Fold(words.Text);
        if (said.Contains('(', StringComparison.Ordinal))
        {
            return said;
        }

        bool tellsPart = (said.Contains(" in ", StringComparison.Ordinal) || Prose.WordsOf(said) is [_, "of", ..]) && !said.StartsWith("the ", StringComparison.Ordinal);
        string yours = $" {said}".Replace(" my ", " your ", StringComparison.Ordinal)[1..];
        return tellsPart ? $"the {yours}" : yours;
    }
}
