using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Sums, products and what they are made of.</content>
internal sealed partial class FormulaParser
{
    // Everything after the parser walks a chain from its end, one call inside the other.
    private const int LongestChain = 256;

    private static readonly string[] AfterDirection = ["while", "round", "off"];

    // sum = product { ("+" | "-" | "except" | "together with") product }
    private Syntax ReadSum()
    {
        Syntax left = ReadProduct();
        for (int parts = 2; !_failed; parts++)
        {
            string? sign = Take("+") ? "+" : Take("-") ? "-" : Take("except") ? "except" : TakeWords("together with") ? "together with" : null;
            if (sign is null)
            {
                break;
            }

            Syntax right = parts > LongestChain ? Fail(FormulaProblems.TooLong(Current.Span)) : ReadProduct();
            left = new Syntax.Binary(sign, left, right, left.Span.To(right.Span));
        }

        return left;
    }

    // product = factor { "times" factor }
    private Syntax ReadProduct()
    {
        Syntax left = ReadFactor();
        for (int parts = 2; !_failed && Take("times"); parts++)
        {
            Syntax right = parts > LongestChain ? Fail(FormulaProblems.TooLong(Current.Span)) : ReadFactor();
            left = new Syntax.Binary("times", left, right, left.Span.To(right.Span));
        }

        return left;
    }

    private Syntax ReadFactor()
    {
        if (++_depth > 64)
        {
            return Fail(FormulaProblems.TooDeep(Current.Span));
        }

        SkipArticle();
        Syntax factor = ReadFactorInner();
        _depth--;
        return factor;
    }

    private Syntax ReadFactorInner()
    {
        Token start = Current;
        if (start.Kind == TokenKind.Number && _names.Match(_tokens, _at).Length < 2)
        {
            _at++;
            return new Syntax.Number(start.Number, start.Span);
        }

        if (Take("("))
        {
            return ReadBrackets(start);
        }

        if (Take("minus"))
        {
            Syntax operand = ReadFactor();
            return new Syntax.Negative(operand, start.Span.To(operand.Span));
        }

        if (Current.Is("-"))
        {
            return Fail(FormulaProblems.MinusSign(start.Span));
        }

        if (Take("it"))
        {
            return new Syntax.It(start.Span);
        }

        return ReadWordFactor(start);
    }

    private Syntax ReadWordFactor(Token start)
    {
        if (LastChoiceAhead() is { } remembered)
        {
            return remembered;
        }

        if (Take("my"))
        {
            return ReadOwned(Owner.My, start);
        }

        if (Take("their"))
        {
            return ReadOwned(Owner.Their, start);
        }

        if (Take("the"))
        {
            return ReadTheOnly(start);
        }

        if ((Current.Is("above") || Current.Is("below")) && Take(Current.Text))
        {
            return ReadUpright(start);
        }

        // `no (…)` goes through something; `no` alone is the word.
        bool isWordNo = Current.Is("no") && !Ahead(1, "(") && _names.Match(_tokens, _at).Length == 1;
        if (!isWordNo && _names.Match(_tokens, _at).Length > 0)
        {
            return ReadNamed();
        }

        return ReadKeyword(start);
    }

    // `above s` is a space; `above` before a word that ends a part is the direction.
    private Syntax ReadUpright(Token start)
    {
        Direction direction = Direction.All.First(d => start.Is(d.Name));
        var noun = new Syntax.Name(direction.Name, [new NameSense(new StepName(direction), false)], start.Span);
        bool isAlone = (Current.Kind == TokenKind.End && _steps) || (Current.Kind == TokenKind.Sign && !Current.Is("(")) || AfterDirection.Any(Current.Is);
        if (isAlone)
        {
            return noun;
        }

        Syntax argument = ReadFactor();
        return new Syntax.Of(noun, null, argument, start.Span.To(argument.Span));
    }

    private Syntax ReadKeyword(Token start)
    {
        if (Take("nothing"))
        {
            return new Syntax.Nothing(start.Span);
        }

        if (Take("me") || (start.Text == "I" && Take("I")))
        {
            return new Syntax.Me(start.Span);
        }

        if (Take("yes") || Take("no"))
        {
            return new Syntax.YesNo(start.Is("yes"), start.Span);
        }

        if (start.Kind == TokenKind.Word && !Vocabulary.GrammarWords.Contains(start.Text))
        {
            Diagnostic unknown = NameHelp.Unknown(_names, _tokens, _at);
            return Fail(unknown);
        }

        return Fail(start.Kind == TokenKind.End ? FormulaProblems.EndsEarly(start.Span, _at > 0 ? _tokens[_at - 1].Text : null) : Unexpected());
    }

    // "(" value ["where" truth] ")" | "(" value "," value … ")" | "(" sum "to" sum ")"
    private Syntax ReadBrackets(Token open)
    {
        Vocabulary outer = _names;
        Syntax first = ReadValue();
        if (Take("to"))
        {
            Syntax high = ReadSum();
            return Close(open, new Syntax.Range(first, high, open.Span));
        }

        if (Take("where"))
        {
            Syntax where = ReadTruth();
            _names = outer;
            return Close(open, new Syntax.Filtered(first, where, open.Span));
        }

        if (!Current.Is(","))
        {
            return Close(open, first);
        }

        var items = ImmutableArray.CreateBuilder<Syntax>();
        items.Add(first);
        while (Take(","))
        {
            items.Add(ReadValue());
        }

        return Close(open, new Syntax.Listed(items.ToImmutable(), open.Span));
    }

    private Syntax Close(Token open, Syntax inside)
    {
        if (!Take(")"))
        {
            return _failed ? inside : Fail(NotClosed(open));
        }

        SourceSpan span = open.Span.To(_tokens[_at - 1].Span);
        return inside switch
        {
            Syntax.Range r => r with { Span = span },
            Syntax.Filtered f => f with { Span = span },
            Syntax.Listed l => l with { Span = span },
            _ => inside,
        };
    }

    private Syntax ReadOwned(Owner owner, Token start)
    {
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        if (length == 0)
        {
            return Current.Kind == TokenKind.Word
                ? Fail(NameHelp.Unknown(_names, _tokens, _at))
                : Fail(FormulaProblems.Expected(Current.Span, Current.Text, "what is meant: a place, a mark or a thing"));
        }

        // `my sticks` is the place, `my sticks in …` and `my open shelves in …` are looks.
        bool goesOnAsLook = TellsLook(senses) && (_tokens[_at + length].Is("in") || LookGoesOnAt(_at + length));
        bool isName = senses.Any(s => IsOwnable(s.Symbol)) || !TellsLook(senses);
        if (isName && !goesOnAsLook)
        {
            int first = _at;
            _at += length;
            return new Syntax.Owned(owner, new Syntax.Name(WordsFrom(first), senses, SpanFrom(first)), start.Span.To(SpanFrom(first)));
        }

        Syntax looks = ReadLooks(owner);
        return looks is Syntax.Looks l ? MaybeIn(l with { Span = start.Span.To(l.Span) }, false, start) : looks;
    }

    private Syntax ReadTheOnly(Token start)
    {
        SkipArticle();
        if (IsLookAhead(preferKind: true))
        {
            int before = _at;
            Syntax looks = ReadLooks(ReadOwner());
            if (looks is Syntax.Looks l && Current.Is("in"))
            {
                return MaybeIn(l, true, start);
            }

            _at = before;
        }

        // `the` before anything else is only an article.
        return ReadFactor();
    }

    private Syntax MaybeIn(Syntax.Looks look, bool isOnly, Token start)
    {
        if (!Take("in"))
        {
            return look;
        }

        Syntax container = ReadFactor();
        return new Syntax.PartOf(isOnly, look, container, start.Span.To(container.Span));
    }
}
