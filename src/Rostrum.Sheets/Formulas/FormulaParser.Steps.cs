using System.Collections.Immutable;
using Rostrum.Sheets.Loading.Sections;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Steps that stand alone. The grammar stands in <c>docs/language.md</c>.</content>
internal sealed partial class FormulaParser
{
    /// <summary>The whole text as one step that holds no others; null (with a message) where it is none.</summary>
    public StepSyntax? ReadAllAsStep(IReadOnlyList<ActionName> actions)
    {
        _steps = true;
        int start = _at;
        StepSyntax? step = ReadStep(actions);
        ExpectEnd();
        return _failed || step is null ? null : step with { Span = _tokens[start].Span.To(_tokens[^1].Span) };
    }

    private StepSyntax? ReadStep(IReadOnlyList<ActionName> actions)
    {
        (ActionPhrase Phrase, ActionName Action, int Length)? call = CallAhead(actions);
        if (call is null && Current.Kind == TokenKind.Word && _tokens[_at + 1].Kind == TokenKind.End && ActionsSection.BlockKeys.FirstOrDefault(Current.Is) is { } block)
        {
            _at++;
            return Step(StepKind.Call) with { Block = block };
        }

        (string words, StepKind kind) = StepWords.Verbs.FirstOrDefault(v => WordsAhead(v.Words));
        if (call is { } found && (words is null || found.Length > Prose.WordsOf(words).Length || IsNamedLikeStep(found.Length, words)))
        {
            return ReadCallStep(found.Action, found.Phrase);
        }

        if (words is not null)
        {
            TakeWords(words);
            return ReadVerb(words, kind);
        }

        if (Current.Is("draw") || Current.Is("turn"))
        {
            return ReadOldVerb();
        }

        return UnknownStep(actions);
    }

    // `push` alone, where an action is called so: that its name cannot be had was told where it is declared, and a step of that word would go on.
    private bool IsNamedLikeStep(int length, string words) => length == Prose.WordsOf(words).Length && _tokens[_at + length].Kind == TokenKind.End;

    private StepSyntax? ReadVerb(string words, StepKind kind) => kind switch
    {
        StepKind.Move => ReadMove(),
        StepKind.Deal => ReadDeal(),
        StepKind.Change => words == "flip" ? ReadFlip(ReadSum()) : ReadChange(),
        StepKind.Shuffle or StepKind.Roll or StepKind.Do => Step(kind, ReadSum()),
        StepKind.Swap => Step(kind, ReadSum(), Behind("and", "what it changes places with")),
        StepKind.Push => ReadPush(),
        StepKind.Show => Step(kind, ReadSum(), Behind("to", "who sees it")),
        StepKind.Set => Step(kind, ReadSum(), Behind("to", "its new value", isValue: true)),
        StepKind.Add => Turned(Step(kind, ReadSum(), Behind("to", "the mark"))),
        StepKind.Take => Turned(Step(kind, ReadSum(), Behind("from", "the mark"))),
        StepKind.Let => ReadLet(),
        StepKind.EndGame => ReadEndGame(),
        _ => Step(kind),
    };

    private StepSyntax Step(StepKind kind, params ImmutableArray<Syntax?> parts) => new(kind, parts, Current.Span);

    // The mark stands second in the sentence and first in the step.
    private static StepSyntax Turned(StepSyntax step) => step with { Parts = [step.Parts[1], step.Parts[0]] };

    private Syntax Behind(string word, string what, bool isValue = false)
    {
        if (Take(word))
        {
            return isValue ? ReadValue() : ReadSum();
        }

        return _failed ? new Syntax.Broken(Current.Span) : Fail(FormulaProblems.Expected(Current.Span, Current.Text, $"'{word}' and {what}"));
    }

    // "move" ("all" | "a" | sum) looks "from" sum "to" sum [face]  |  "move" sum "to" sum [face]
    private StepSyntax ReadMove()
    {
        bool isAll = Current.Is("all") && !Ahead(1, "(") && Take("all");
        (Syntax? amount, Syntax what) = isAll ? (null, ReadLooks(ReadOwner())) : ReadAmountAndWhat();
        Syntax? from = isAll || amount is not null ? Behind("from", "where it comes from") : null;

        Syntax to = Behind("to", "where it goes");
        return Step(StepKind.Move, amount, what, from, to) with { FaceUp = ReadFace() };
    }

    private (Syntax? Amount, Syntax What) ReadAmountAndWhat()
    {
        Token start = Current;
        if (ReadOneLook() is { } one)
        {
            return (new Syntax.Number(1, start.Span), one);
        }

        Syntax first = ReadSum();
        if (!_failed && (IsLookAhead(preferKind: true) || Current.Is("my") || Current.Is("their")))
        {
            return (first, ReadLooks(ReadOwner()));
        }

        bool isBareLook = first is Syntax.Looks || (first is Syntax.Name name && TellsLook(name.Senses) && !name.Senses.Any(s => s.Symbol is Card));
        return isBareLook && Current.Is("from") ? (null, Fail(StepProblems.HowMany(first.Span, first.Span.Text))) : (null, first);
    }

    // `a jug from …` is one of several; `a jug in …` is a formula.
    private Syntax.Looks? ReadOneLook()
    {
        int before = _at;
        if (!Take("a") && !Take("an"))
        {
            return null;
        }

        Owner owner = ReadOwner();
        Syntax? looks = IsLookAhead(preferKind: true) ? ReadLooks(owner) : null;
        if (looks is Syntax.Looks read && Current.Is("from"))
        {
            return read;
        }

        _at = before;
        return null;
    }

    private StepSyntax ReadDeal()
    {
        Syntax amount = ReadSum();
        Syntax from = Behind("from", "the bag or deck");
        return Step(StepKind.Deal, amount, from, Behind("to", "where it goes")) with { FaceUp = ReadFace() };
    }

    private StepSyntax ReadChange() => Step(StepKind.Change, ReadSum(), Behind("to", "what it becomes"));

    private StepSyntax ReadFlip(Syntax what) => Step(StepKind.Change, what, null) with { FaceUp = ReadFace() };

    private bool? ReadFace() => TakeWords("face up") ? true : TakeWords("face down") ? false : null;

    private StepSyntax ReadOldVerb()
    {
        Token old = Current;
        _at++;
        if (old.Is("draw"))
        {
            _problems.Add(StepProblems.OldWord(old.Span, old.Text, "deal"));
            return ReadDeal();
        }

        Syntax what = ReadSum();
        bool isChange = Current.Is("to");
        if (!_failed)
        {
            _problems.Add(StepProblems.OldWord(old.Span, old.Text, isChange ? "change" : "flip"));
        }

        return isChange ? Step(StepKind.Change, what, Behind("to", "what it becomes")) : ReadFlip(what);
    }

    private StepSyntax ReadPush()
    {
        Syntax line = ReadSum();
        Syntax going = Behind("going", "a direction");
        if (_failed || Take("round"))
        {
            return Step(StepKind.Push, line, going, null);
        }

        Syntax off = TakeWords("off to") ? ReadSum() : Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'round', or 'off to' and a place"));
        return Step(StepKind.Push, line, going, off);
    }

    private StepSyntax ReadLet()
    {
        int first = _at;
        while (Current.Kind is TokenKind.Word or TokenKind.Number && !Current.Is("be"))
        {
            _at++;
        }

        if (_at == first || !Current.Is("be"))
        {
            Fail(FormulaProblems.Expected(Current.Span, Current.Text, "a name and 'be'"));
            return Step(StepKind.Let);
        }

        var named = new LetterName(WordsFrom(first), SpanFrom(first));
        return Step(StepKind.Let, Behind("be", "what it stands for", isValue: true)) with { Named = named };
    }

    private StepSyntax ReadEndGame()
    {
        int first = _at;
        if (Current.Kind == TokenKind.End)
        {
            Fail(FormulaProblems.Expected(Current.Span, "", "the name of an end"));
            return Step(StepKind.EndGame);
        }

        _at = _tokens.Length - 1;
        return Step(StepKind.EndGame) with { End = WordsFrom(first), EndAt = SpanFrom(first) };
    }

    private StepSyntax? UnknownStep(IReadOnlyList<ActionName> actions)
    {
        if (StepWords.Heads.FirstOrDefault(h => WordsAhead(h.Words)).Words is not null)
        {
            SourceSpan head = Current.Span.To(_tokens[Math.Max(_at, _tokens.Length - 2)].Span);
            Fail(StepProblems.NoSteps(head, head.Text));
            return null;
        }

        if (Current.Kind == TokenKind.End)
        {
            Fail(StepProblems.NoSteps(Current.Span, ""));
            return null;
        }

        (SourceSpan at, string? near) = StepHelp.Nearest(_tokens, actions);
        Fail(StepProblems.UnknownStep(at, at.Text, near));
        return null;
    }
}
