using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;

namespace Rostrum.Sheets.Formulas;

/// <content>The domains of choices.</content>
internal sealed partial class FormulaParser
{
    /// <summary>The whole text as what may be chosen; null (with a message) where it is none.</summary>
    public DomainSyntax? ReadAllAsDomain()
    {
        DomainSyntax domain = ReadDomain();
        ExpectEnd();
        return _failed ? null : domain;
    }

    private DomainSyntax ReadDomain()
    {
        if (TakeWords("a number from"))
        {
            return new DomainSyntax(ChoiceAmount.One, 0, DomainForm.Numbers, ReadSum(), Behind("to", "the highest number"), null);
        }

        if (WordsAhead("yes or no") && _tokens[_at + 3].Kind == TokenKind.End)
        {
            _at += 3;
            return new DomainSyntax(ChoiceAmount.One, 0, DomainForm.YesOrNo, null, null, null);
        }

        (ChoiceAmount amount, long number) = ReadChoiceAmount();
        return amount == ChoiceAmount.Given
            ? new DomainSyntax(amount, 0, DomainForm.Value, ReadValue(), null, null)
            : ReadElements(amount, number);
    }

    private (ChoiceAmount Amount, long Number) ReadChoiceAmount()
    {
        if (TakeWords("one of") || Take("a") || Take("an"))
        {
            return (ChoiceAmount.One, 0);
        }

        if (WordsAhead("up to") && _at + 2 < _tokens.Length && _tokens[_at + 2].Kind == TokenKind.Number)
        {
            _at += 3;
            return (ChoiceAmount.UpTo, _tokens[_at - 1].Number);
        }

        if (Current.Kind == TokenKind.Number && _names.Match(_tokens, _at).Length < 2 && IsElementsAhead())
        {
            _at++;
            return (ChoiceAmount.Exactly, _tokens[_at - 1].Number);
        }

        if ((Current.Is("some") || Current.Is("any")) && !Ahead(1, "(") && _names.Match(_tokens, _at).Length < 2)
        {
            _at++;
            return (_tokens[_at - 1].Is("some") ? ChoiceAmount.Some : ChoiceAmount.AnyNumber, 0);
        }

        return (ChoiceAmount.Given, 0);
    }

    // `2 shelves in my chamber` chooses, `2 + n` is a value.
    private bool IsElementsAhead() =>
        _tokens[_at + 1].Kind is TokenKind.Word && !((string[])["times", "except", "together", "if", "is", "am", "and", "or", "shows", "can"]).Any(w => Ahead(1, w));

    private DomainSyntax ReadElements(ChoiceAmount amount, long number)
    {
        bool arePlayers = (Current.Is("player") || Current.Is("players")) && IsEndOrWhere(1);
        bool areDirections = (Current.Is("direction") || Current.Is("directions")) && IsEndOrWhere(1);
        DomainForm form = arePlayers ? DomainForm.Players : areDirections ? DomainForm.Directions : DomainForm.Elements;
        Syntax? from = null;
        if (form == DomainForm.Elements)
        {
            from = ReadSum();
        }
        else
        {
            _at++;
        }

        return new DomainSyntax(amount, number, form, from, null, Take("where") ? ReadTruth() : null);
    }

    private bool IsEndOrWhere(int ahead) => _tokens[_at + ahead].Kind == TokenKind.End || Ahead(ahead, "where");
}
