using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Names, nouns with <c>of</c>, calls and picks.</content>
internal sealed partial class FormulaParser
{
    private Syntax ReadNamed()
    {
        int first = _at;
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        int after = _at + length;
        if (_tokens[after].Is("(") && senses.Any(s => s.Symbol is OperationName { Operation.Form: OperationForm.Function } or Word))
        {
            _at = after;
            return ReadCall(new Syntax.Name(WordsFrom(first), senses, SpanFrom(first)));
        }

        if (TryReadOf(senses, length) is { } of)
        {
            return of;
        }

        if (senses.Any(s => IsLook(s.Symbol)))
        {
            return ReadLookFactor(first, length, senses);
        }

        _at = after;
        return new Syntax.Name(WordsFrom(first), senses, SpanFrom(first));
    }

    private Syntax ReadLookFactor(int first, int length, ImmutableArray<NameSense> senses)
    {
        Syntax looks = ReadLooks(Owner.None);
        if (looks is not Syntax.Looks read)
        {
            return looks;
        }

        if (Current.Is("in"))
        {
            return MaybeIn(read, false, _tokens[first]);
        }

        return read.Parts.Length > 1 ? read : new Syntax.Name(WordsFrom(first, length), senses, read.Span);
    }

    // Words that may stand before a formula and so never begin the name of a choice.
    private static readonly string[] NoChoice = ["while", "until", "above", "below", "minus"];

    // CHOICE "of" ["my"] "last" ACTION: the name of the choice is known only inside that action.
    private Syntax? LastChoiceAhead()
    {
        int first = _at;
        int of = first;
        while (of - first < 4 && _tokens[of].Kind is TokenKind.Word or TokenKind.Number && !Vocabulary.GrammarWords.Contains(_tokens[of].Text) && !NoChoice.Any(_tokens[of].Is))
        {
            of++;
        }

        int last = of + 1 < _tokens.Length && _tokens[of + 1].Is("my") ? of + 2 : of + 1;
        if (of == first || !_tokens[of].Is("of") || last + 1 >= _tokens.Length || !_tokens[last].Is("last"))
        {
            return null;
        }

        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, last + 1);
        if (!senses.Any(s => s.Symbol is ActionName))
        {
            return NoSuchAction(last);
        }

        _at = last + 1 + length;
        var choice = new Syntax.Name(WordsFrom(first, of - first), [], _tokens[first].Span.To(_tokens[of - 1].Span));
        return new Syntax.OfLast(choice, last > of + 1, new Syntax.Name(WordsFrom(last + 1), senses, SpanFrom(last + 1)), SpanFrom(first));
    }

    // `last` before a word is nothing but the last time that an action was done, unless a name begins with it.
    private Syntax.Broken? NoSuchAction(int last)
    {
        int end = last + 1;
        while (_tokens[end].Kind is TokenKind.Word or TokenKind.Number && !Vocabulary.GrammarWords.Contains(_tokens[end].Text))
        {
            end++;
        }

        if (end == last + 1 || _names.Match(_tokens, last).Length > 1)
        {
            return null;
        }

        return Fail(FormulaProblems.NoSuchAction(_tokens[last + 1].Span.To(_tokens[end - 1].Span), WordsFrom(last + 1, end - last - 1), NameHelp.Actions(_names)));
    }

    // NOUN [LABEL] "of" factor
    private Syntax? TryReadOf(ImmutableArray<NameSense> senses, int length)
    {
        int first = _at;
        int after = _at + length;
        int labelLength = LabelAhead(senses, after);
        bool hasLabel = labelLength > 0;
        int ofAt = after + labelLength;
        if (!_tokens[ofAt].Is("of"))
        {
            return senses.Length > 0 && senses.All(s => s.Symbol is LineFamily) && IsLabel(_tokens[after])
                ? Fail(FormulaProblems.LineNeedsBoard(_tokens[first].Span.To(_tokens[after].Span), $"{WordsFrom(first, length)} {_tokens[after].Text}", ((LineFamily)senses[0].Symbol).Board))
                : null;
        }

        var noun = new Syntax.Name(WordsFrom(first, length), senses, _tokens[first].Span.To(_tokens[after - 1].Span));
        Token? label = hasLabel ? _tokens[after] with { Text = WordsFrom(after, labelLength), Span = _tokens[after].Span.To(_tokens[ofAt - 1].Span) } : null;
        _at = ofAt + 1;
        if (!senses.Any(s => IsNoun(s.Symbol)))
        {
            return Fail(FormulaProblems.NotANoun(noun.Span, noun.Words, senses[0].Symbol));
        }

        Syntax argument = ReadFactor();
        return new Syntax.Of(noun, label, argument, noun.Span.To(argument.Span));
    }

    // How many words before `of` are a label: one, or those of an area whose name has several.
    private int LabelAhead(ImmutableArray<NameSense> senses, int after)
    {
        LineFamily[] families = [.. senses.Select(s => s.Symbol).OfType<LineFamily>()];
        if (families.Length == 0 || after + 1 >= _tokens.Length)
        {
            return 0;
        }

        int most = families.SelectMany(f => f.Lines).Select(l => Prose.WordsOf(l.Label).Length).DefaultIfEmpty(1).Max();
        int length = Enumerable.Range(1, Math.Max(most, 1)).FirstOrDefault(n => after + n < _tokens.Length && _tokens[after + n].Is("of"));
        return length > 0 && _tokens.Skip(after).Take(length).All(t => t.Kind is TokenKind.Word or TokenKind.Number) ? length : 0;
    }

    private static bool IsLabel(Token token) =>
        token.Kind == TokenKind.Number || (token.Kind == TokenKind.Word && (token.Text == "A" || !Vocabulary.GrammarWords.Contains(token.Text)));

    private static bool IsNoun(Named symbol) =>
        symbol is LineFamily or OperationName { Operation.Form: OperationForm.Noun } or StepName or Model.Attribute or Column or Table or Mark or Region or Link or PrintedValue
            or Place { EachPlayer: true } or Word { Subjects.Length: 1 };

    private Syntax ReadCall(Syntax.Name function)
    {
        Token open = Current;
        _at++;
        Vocabulary outer = _names;
        Operation? operation = function.Senses.Select(s => s.Symbol).OfType<OperationName>().Select(o => o.Operation).FirstOrDefault(o => o.Form == OperationForm.Function);
        PickSyntax? pick = null;
        ImmutableArray<Part> parts;
        if (operation is { Id: Op.Run })
        {
            (pick, parts) = ReadRun();
        }
        else
        {
            pick = operation is { HasPick: true } ? ReadPick() : null;
            parts = ReadParts(operation, afterPick: pick is not null);
        }

        _names = outer;
        if (!Take(")"))
        {
            return _failed ? new Syntax.Broken(function.Span) : Fail(NotClosed(open));
        }

        return new Syntax.Call(function, pick, parts, function.Span.To(_tokens[_at - 1].Span));
    }

    private ImmutableArray<Part> ReadParts(Operation? operation, bool afterPick)
    {
        var parts = ImmutableArray.CreateBuilder<Part>();
        if (!afterPick && !Current.Is(")"))
        {
            parts.Add(ReadPart(operation));
        }

        while (Take(","))
        {
            parts.Add(ReadPart(operation));
        }

        return parts.ToImmutable();
    }

    private Part ReadPart(Operation? operation)
    {
        int first = _at;
        foreach (Parameter parameter in operation?.Parameters.Where(p => p.Lead is not null) ?? [])
        {
            if (!TakeWords(parameter.Lead!))
            {
                continue;
            }

            return parameter.Kind switch
            {
                ParameterKind.Flag => new Part(parameter.Lead, null, parameter.Lead, SpanFrom(first)),
                ParameterKind.Measure => new Part(parameter.Lead, null, ReadBareWord(), SpanFrom(first)),
                ParameterKind.Look => new Part(parameter.Lead, ReadLooks(ReadOwner()), null, SpanFrom(first)),
                ParameterKind.Joining or ParameterKind.WorthWord => new Part(parameter.Lead, ReadBareName(), null, SpanFrom(first)),
                _ => new Part(parameter.Lead, ReadValue(), null, SpanFrom(first)),
            };
        }

        return new Part(null, ReadValue(), null, SpanFrom(first));
    }

    // "run(" LETTER "from" sum "going" sum "while" truth ")"
    private (PickSyntax? Pick, ImmutableArray<Part> Parts) ReadRun()
    {
        Token letterAt = Current;
        if (Current.Kind != TokenKind.Word || !Ahead(1, "from"))
        {
            Fail(FormulaProblems.Expected(Current.Span, Current.Text, "a letter and 'from', as in run(x from s going left while x is empty)"));
            return (null, []);
        }

        _at += 2;
        Syntax from = ReadSum();
        Syntax? going = Take("going") ? ReadSum() : null;
        if (going is null || !Take("while"))
        {
            Fail(FormulaProblems.Expected(Current.Span, Current.Text, going is null ? "'going' and a direction" : "'while' and a truth"));
            return (null, []);
        }

        LetterName letter = Declare(letterAt);
        Syntax condition = ReadTruth();
        return (new PickSyntax(letter, from, condition), [new Part("going", going, null, going.Span)]);
    }

    // pick = [LETTER "in"] sum ["where" truth]
    private PickSyntax ReadPick()
    {
        Token start = Current;
        bool hasLetter = IsLetterAhead();
        if (hasLetter)
        {
            _at += 2;
        }

        // The letter is known only after its domain, so that `s in neighbours of s` speaks of an outer s.
        Syntax domain = ReadSum();
        LetterName? letter = hasLetter ? Declare(start) : null;
        Syntax? where = Take("where") ? ReadTruth() : null;
        return new PickSyntax(letter, domain, where);
    }

    private bool IsLetterAhead()
    {
        bool wordThenIn = Current.Kind == TokenKind.Word && Ahead(1, "in") && !Vocabulary.GrammarWords.Contains(Current.Text);
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        return wordThenIn && (length == 0 || (length == 1 && !senses.Any(s => IsLook(s.Symbol))));
    }

    private LetterName Declare(Token at)
    {
        var letter = new LetterName(at.Text, at.Span);
        _names = _names.Inner();
        _names.Add(at.Text, letter);
        return letter;
    }

    private string ReadBareWord()
    {
        Token word = Current;
        if (word.Kind != TokenKind.Word)
        {
            Fail(FormulaProblems.Expected(word.Span, word.Text, "one word"));
            return "";
        }

        _at++;
        return word.Text;
    }

    private Syntax ReadBareName()
    {
        int first = _at;
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        if (length == 0)
        {
            return Fail(Current.Kind == TokenKind.Word ? NameHelp.Unknown(_names, _tokens, _at) : FormulaProblems.Expected(Current.Span, Current.Text, "the name of a word"));
        }

        _at += length;
        return new Syntax.Name(WordsFrom(first), senses, SpanFrom(first));
    }
}
