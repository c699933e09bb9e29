using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>Tests: <c>is</c>, <c>shows</c>, <c>can</c>, <c>was done</c>.</content>
internal sealed partial class FormulaParser
{
    private static readonly (string Words, string Tail)[] Comparisons =
        [("at least", "at least"), ("at most", "at most"), ("more than", "more than"), ("less than", "less than")];

    private static readonly string[] GoesOnAsSum = ["of", "in", "(", "+", "-", "times", "except", "together"];

    private static readonly string[] BehindCall = ["and", "or", "if", "otherwise", "where", "until", "while", "in", "by"];

    private static readonly string[] Moments = [.. DoneTimes.All.Select(t => t.Words)];

    // test = sum [("is"|"am") ["not"] tail | "shows" looks | "can" ACTION] | (ACTION | "this action") "was" ["not"] "done" when ["by" sum]
    private Syntax ReadTest()
    {
        if (DoneAhead() is { } done)
        {
            return done;
        }

        Syntax subject = ReadSum();
        if (Take("is") || Take("am"))
        {
            return ReadTail(subject, Take("not"));
        }

        if (Take("shows"))
        {
            bool negated = Take("not");
            ImmutableArray<Syntax> looks = ReadChoices();
            return new Syntax.Shows(subject, looks, negated, subject.Span.To(looks[^1].Span));
        }

        return Take("can") ? ReadCan(subject) : subject;
    }

    private Syntax ReadTail(Syntax subject, bool negated)
    {
        if (Take("nothing"))
        {
            return Test(subject, negated, "nothing", []);
        }

        foreach ((string words, string tail) in Comparisons)
        {
            if (TakeWords(words))
            {
                return Test(subject, negated, tail, [ReadSum()]);
            }
        }

        if (TakeWords("next to"))
        {
            return Test(subject, negated, "next to", [ReadSum()]);
        }

        if (Take("in"))
        {
            return Test(subject, negated, "in", [ReadSum()]);
        }

        if (Current.Is("between") && !IsBetweenSpaces())
        {
            _at++;
            Syntax low = ReadSum();
            return Take("and")
                ? Test(subject, negated, "between", [low, ReadSum()])
                : Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'and' and the higher number"));
        }

        return Test(subject, negated, "is", ReadChoices());
    }

    // `is between(s, t)` names spaces, `is between (1 + n) and 4` compares: only the first has a comma of its own.
    private bool IsBetweenSpaces()
    {
        int depth = 0;
        for (int i = _at + 1; i < _tokens.Length && (i == _at + 1 ? _tokens[i].Is("(") : depth > 0); i++)
        {
            depth += _tokens[i].Is("(") ? 1 : _tokens[i].Is(")") ? -1 : 0;
            if (depth == 1 && _tokens[i].Is(","))
            {
                return true;
            }
        }

        return false;
    }

    private static Syntax.Test Test(Syntax subject, bool negated, string tail, ImmutableArray<Syntax> operands) =>
        new(subject, negated, tail, operands, subject.Span.To(operands.IsEmpty ? subject.Span : operands[^1].Span));

    // choice { "or" choice }: after `or` only a look, a value or a number that no test follows continues the list
    private ImmutableArray<Syntax> ReadChoices()
    {
        var choices = ImmutableArray.CreateBuilder<Syntax>();
        choices.Add(ReadChoice());
        while (Current.Is("or") && !_failed)
        {
            (int before, int depth, Vocabulary names) = (_at, _depth, _names);
            _at++;
            SkipArticle();
            if (!StartsChoice())
            {
                _at = before;
                break;
            }

            Syntax next = ReadChoice();
            if (Current.Is("is") || Current.Is("am") || Current.Is("shows") || Current.Is("can") || Current.Is("was") || _failed)
            {
                Rewind(before, depth, names);
                break;
            }

            choices.Add(next);
        }

        return choices.ToImmutable();
    }

    private Syntax ReadChoice()
    {
        SkipArticle();
        int start = _at;
        if (Current.Kind == TokenKind.Number && _names.Match(_tokens, _at).Length < 2 && !LookGoesOnAt(_at + 1))
        {
            return ReadSum(); // A number stays one, even where it is a face of a die too.
        }

        Owner owner = ReadOwner();
        if (IsLookAhead(preferKind: true))
        {
            Syntax looks = ReadLooks(owner);
            if (!GoesOnAsSum.Any(Current.Is))
            {
                return looks;
            }
        }

        _at = start;
        return ReadSum();
    }

    private bool StartsChoice()
    {
        if (Current.Kind == TokenKind.Number || Current.Is("my") || Current.Is("their"))
        {
            return true;
        }

        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        bool isCall = length > 0 && _at + length < _tokens.Length && _tokens[_at + length].Is("(");
        return length > 0 && !isCall && !Current.Is("no");
    }

    private void Rewind(int to, int depth, Vocabulary names)
    {
        (_at, _depth, _names) = (to, depth, names);
        _failed = false;
    }

    private Syntax ReadCan(Syntax subject)
    {
        if (CallAhead([.. _names.Actions]) is not { } call)
        {
            int length = _names.Match(_tokens, _at).Length;
            return Fail(length == 0 && Current.Kind == TokenKind.Word ? NameHelp.Unknown(_names, _tokens, _at) : FormulaProblems.Expected(Current.Span, Current.Text, "an action"));
        }

        int first = _at;
        ImmutableArray<Syntax> given = ReadFirstGaps(call.Phrase);
        return _failed ? new Syntax.Broken(subject.Span) : new Syntax.Can(subject, call.Action, call.Phrase, given, subject.Span.To(SpanFrom(first)));
    }

    // The phrase may end before any gap; what stands there then belongs to the formula round it.
    private ImmutableArray<Syntax> ReadFirstGaps(ActionPhrase phrase)
    {
        var given = ImmutableArray.CreateBuilder<Syntax>();
        foreach (PhrasePart part in phrase.Parts)
        {
            if (part.IsGap ? IsEndOfCall() : !TakeWords(part.Words))
            {
                break;
            }

            if (part.IsGap)
            {
                given.Add(ReadSum());
            }
        }

        return given.ToImmutable();
    }

    private bool IsEndOfCall() => _failed || Current.Kind == TokenKind.End || (Current.Kind == TokenKind.Sign && !Current.Is("(")) || BehindCall.Any(Current.Is);

    private Syntax? DoneAhead()
    {
        int start = _at;
        int length = Current.Is("this") && Ahead(1, "action") ? 2 : ActionLengthAhead();
        if (length == 0 || !Ahead(length, "was"))
        {
            return null;
        }

        (_, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        var action = new Syntax.Name(WordsFrom(start, length), senses, _tokens[start].Span.To(_tokens[start + length - 1].Span));
        _at += length + 1;
        bool negated = Take("not");
        if (!Take("done"))
        {
            return Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'done' and when"));
        }

        string? when = Moments.FirstOrDefault(TakeWords);
        if (when is null)
        {
            return Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'this turn', 'the turn before', 'this round', 'the round before' or 'before'"));
        }

        Syntax? by = Take("by") ? ReadSum() : null;
        return new Syntax.Done(action, negated, when, by, SpanFrom(start));
    }

    private int ActionLengthAhead()
    {
        // `lay a peat was done`: the phrase of an action, cut off before its gaps.
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        return senses.IsDefaultOrEmpty || !senses.Any(s => s.Symbol is ActionName) ? 0 : length;
    }

    private string WordsFrom(int first, int? length = null) =>
        string.Join(' ', _tokens.Skip(first).Take(length ?? _at - first).Select(t => t.Text));
}
