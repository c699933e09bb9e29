using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <summary>Reads one formula by precedence climbing. The grammar stands in <c>docs/language.md</c>; each method reads one of its lines.</summary>
internal sealed partial class FormulaParser
{
    private readonly ImmutableArray<Token> _tokens;
    private readonly DiagnosticBag _problems;
    private Vocabulary _names;
    private int _at;
    private int _depth;
    private bool _failed;
    private bool _steps;

    public FormulaParser(FormulaText text, Vocabulary names, DiagnosticBag problems)
    {
        _tokens = Lexer.Cut(text);
        _names = names;
        _problems = problems;
    }

    private Token Current => _tokens[_at];

    /// <summary>The whole text as one formula.</summary>
    public Syntax ReadAll()
    {
        Syntax read = ReadValue();
        ExpectEnd();
        return _failed ? new Syntax.Broken(read.Span) : read;
    }

    /// <summary>The whole text as something to go through.</summary>
    public PickSyntax? ReadAllAsPick()
    {
        PickSyntax pick = ReadPick();
        ExpectEnd();
        return _failed ? null : pick;
    }

    /// <summary>The whole text as a look.</summary>
    public Syntax? ReadAllAsLook()
    {
        Syntax look = ReadLooks(ReadOwner());
        ExpectEnd();
        return _failed ? null : look;
    }

    // value = truth [ "if" truth "otherwise" value ]
    private Syntax ReadValue()
    {
        if (++_depth > 64)
        {
            return Fail(FormulaProblems.TooDeep(Current.Span));
        }

        Syntax first = ReadTruth();
        if (Take("if"))
        {
            Syntax condition = ReadTruth();
            if (!Take("otherwise"))
            {
                _depth--;
                return Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'otherwise' and what holds then"));
            }

            Syntax otherwise = ReadValue();
            first = new Syntax.If(first, condition, otherwise, first.Span.To(otherwise.Span));
        }

        _depth--;
        return first;
    }

    // truth = both { "or" both } ; both = neg { "and" neg } ; `and` beside `or` needs brackets
    private Syntax ReadTruth()
    {
        Syntax first = ReadNegation();
        if (!Current.Is("and") && !Current.Is("or"))
        {
            return first;
        }

        bool isAnd = Current.Is("and");
        var operands = ImmutableArray.CreateBuilder<Syntax>();
        operands.Add(first);
        while (Take(isAnd ? "and" : "or"))
        {
            operands.Add(ReadNegation());
        }

        if (Current.Is("and") || Current.Is("or"))
        {
            return Fail(FormulaProblems.MixedLogic(Current.Span));
        }

        return new Syntax.Logic(isAnd, operands.ToImmutable(), first.Span.To(operands[^1].Span));
    }

    // neg = "not" neg | test
    private Syntax ReadNegation()
    {
        Token start = Current;
        if (!Take("not"))
        {
            return ReadTest();
        }

        if (++_depth > 64)
        {
            return Fail(FormulaProblems.TooDeep(Current.Span));
        }

        Syntax operand = ReadNegation();
        _depth--;
        return new Syntax.Not(operand, start.Span.To(operand.Span));
    }

    private void ExpectEnd()
    {
        if (!_failed && Current.Kind != TokenKind.End)
        {
            Fail(Unexpected());
        }
    }

    // Where fewer brackets close than open, the one that is open here is most likely the one that was forgotten.
    private Diagnostic NotClosed(Token open)
    {
        if (Current.Kind == TokenKind.End)
        {
            return FormulaProblems.Unclosed(open.Span, null);
        }

        bool isShort = _tokens.Count(t => t.Is("(")) > _tokens.Count(t => t.Is(")"));
        return isShort && Vocabulary.GrammarWords.Contains(Current.Text) ? FormulaProblems.Unclosed(open.Span, _tokens[_at - 1].Span) : Unexpected();
    }

    // `0.5`, `0,5`
    private bool IsInsideNumber() =>
        Current.Text is "." or "," && _at > 0 && _tokens[_at - 1].Kind == TokenKind.Number && _tokens[_at + 1].Kind == TokenKind.Number
        && _tokens[_at + 1].Start == Current.Start + 1 && _tokens[_at - 1].Span.End == Current.Span.Start;

    private Diagnostic Unexpected()
    {
        Token token = Current;
        if (IsInsideNumber())
        {
            return FormulaProblems.NotWhole(_tokens[_at - 1].Span.To(_tokens[_at + 1].Span));
        }

        if (token.Kind == TokenKind.Stray)
        {
            return FormulaProblems.StraySign(token.Span, token.Text);
        }

        return token.Kind == TokenKind.Word && !Vocabulary.GrammarWords.Contains(token.Text) && _names.Match(_tokens, _at).Length == 0
            ? NameHelp.Unknown(_names, _tokens, _at)
            : FormulaProblems.Unexpected(token.Span, token.Text, _at > 0 ? _tokens[_at - 1].Text : null);
    }

    private bool Take(string word)
    {
        if (_failed || !Current.Is(word))
        {
            return false;
        }

        _at++;
        return true;
    }

    private bool TakeWords(string words)
    {
        string[] parts = Prose.WordsOf(words);
        for (int i = 0; i < parts.Length; i++)
        {
            if (_at + i >= _tokens.Length || !_tokens[_at + i].Is(parts[i]))
            {
                return false;
            }
        }

        _at += parts.Length;
        return true;
    }

    private bool Ahead(int steps, string word) => _at + steps < _tokens.Length && _tokens[_at + steps].Is(word);

    private void SkipArticle()
    {
        if ((Current.Is("a") || Current.Is("an")) && _at + 1 < _tokens.Length && _tokens[_at + 1].Kind is TokenKind.Word or TokenKind.Number
            && !_tokens[_at + 1].Is("in") && _names.Match(_tokens, _at).Length == 0)
        {
            _at++;
        }
    }

    // After one message a formula says no more: the cursor stands at the end and every method sees it.
    private Syntax.Broken Fail(Diagnostic problem)
    {
        if (!_failed)
        {
            _failed = true;
            _problems.Add(problem);
        }

        _at = _tokens.Length - 1;
        return new Syntax.Broken(problem.At);
    }

    private SourceSpan SpanFrom(int first) => _tokens[first].Span.To(_tokens[Math.Max(first, _at - 1)].Span);
}
