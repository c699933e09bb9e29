using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;

namespace Rostrum.Sheets.Formulas;

/// <content>Heads of steps, calls of actions, and the domains of choices.</content>
internal sealed partial class FormulaParser
{
    /// <summary>The whole text as the head of a step that holds others; null (with a message) where it is none.</summary>
    public StepSyntax? ReadAllAsHead(IReadOnlyList<ActionName> actions)
    {
        _steps = true;
        int start = _at;
        StepSyntax? head = ReadHead(actions);
        ExpectEnd();
        return _failed || head is null ? null : head with { Span = _tokens[start].Span.To(_tokens[^1].Span) };
    }

    private StepSyntax? ReadHead(IReadOnlyList<ActionName> actions)
    {
        (string words, StepKind kind) = StepWords.Heads.FirstOrDefault(h => WordsAhead(h.Words));
        if (words is not null && !_tokens[_at + Prose.WordsOf(words).Length].Is("does"))
        {
            TakeWords(words);
            return ReadHeadOf(words, kind);
        }

        bool isStep = CallAhead(actions) is not null || StepWords.Verbs.Any(v => WordsAhead(v.Words));
        if (isStep || !_tokens.Any(t => t.Is("does")))
        {
            Model.ActionName[] known = [.. actions];
            Fail(isStep ? StepProblems.StepsBelow(_tokens[_at].Span.To(_tokens[^1].Span), _tokens[_at].Span.To(_tokens[^1].Span).Text) : UnknownHead(known));
            return null;
        }

        Syntax player = ReadSum();
        if (!_failed && !Take("does"))
        {
            Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'does'"));
        }

        return Step(StepKind.Does, player);
    }

    private Rostrum.Text.Diagnostic UnknownHead(IReadOnlyList<ActionName> actions)
    {
        (Rostrum.Text.SourceSpan at, string? near) = StepHelp.Nearest(_tokens, actions);
        return StepProblems.UnknownStep(at, at.Text, near);
    }

    private StepSyntax ReadHeadOf(string words, StepKind kind) => kind switch
    {
        StepKind.If when words == "otherwise" => Step(kind, Take("if") ? ReadTruth() : null) with { IsOther = true },
        StepKind.If => Step(kind, ReadTruth()),
        StepKind.May => ReadMay(),
        StepKind.ForEach => ReadForEach(),
        StepKind.EachPlayer => ReadEachPlayer(words),
        StepKind.Repeat => ReadRepeat(),
        StepKind.TakeTurns => Step(kind, Take("from") ? ReadSum() : null, TakeWords("among players where") ? ReadTruth() : null, Take("until") ? ReadTruth() : null),
        _ => Step(kind),
    };

    private StepSyntax ReadMay()
    {
        if (TakeWords("any number of times"))
        {
            return Step(StepKind.May, [null]) with { IsOther = true };
        }

        return Step(StepKind.May, TakeWords("up to") ? ReadTimes() : null);
    }

    private Syntax ReadTimes()
    {
        Syntax number = ReadFactor();
        return _failed || Take("times") ? number : Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'times'"));
    }

    private StepSyntax ReadForEach()
    {
        if (!IsLetterAhead())
        {
            Fail(FormulaProblems.Expected(Current.Span, Current.Text, "a letter and 'in', as in 'for each s in my chamber'"));
            return Step(StepKind.ForEach);
        }

        PickSyntax pick = ReadPick();
        return Step(StepKind.ForEach) with { Pick = pick, Order = ReadOrders() };
    }

    private StepSyntax ReadEachPlayer(string words)
    {
        Syntax? from = Take("from") ? ReadSum() : null;
        Syntax? where = Take("where") ? ReadTruth() : null;
        return Step(StepKind.EachPlayer, from, where) with { IsOther = words == "each other player", Order = ReadOrders() };
    }

    private StepSyntax ReadRepeat()
    {
        if (Take("until"))
        {
            return Step(StepKind.Repeat, null, ReadTruth(), null);
        }

        if (Take("while"))
        {
            return Step(StepKind.Repeat, null, null, ReadTruth());
        }

        return Step(StepKind.Repeat, Current.Kind == TokenKind.End ? null : ReadTimes(), null, null);
    }

    // { "," ("by" sum | "lowest first" | "highest first" | "in the order I choose") }
    private StepOrder ReadOrders()
    {
        StepOrder order = StepOrder.None;
        while (Take(","))
        {
            if (Take("by"))
            {
                order = new StepOrder(ReadSum(), order.Kind == StepOrderKind.AsTheyStand ? StepOrderKind.LowestFirst : order.Kind);
                continue;
            }

            StepOrderKind? kind = TakeWords("lowest first") ? StepOrderKind.LowestFirst : TakeWords("highest first") ? StepOrderKind.HighestFirst
                : TakeWords("in the order I choose") ? StepOrderKind.AsChosen : null;
            if (kind is null)
            {
                Fail(FormulaProblems.Expected(Current.Span, Current.Text, "'by' and a number, 'lowest first', 'highest first' or 'in the order I choose'"));
                break;
            }

            order = order with { Kind = kind.Value };
        }

        return order;
    }

    // The action whose words stand here; of several the one with the most words, and the phrase before the bare name.
    private (ActionPhrase Phrase, ActionName Action, int Length)? CallAhead(IReadOnlyList<ActionName> actions)
    {
        (ActionPhrase Phrase, ActionName Action, int Length)? best = null;
        foreach (ActionName action in actions)
        {
            foreach (ActionPhrase phrase in (ActionPhrase[])[action.Phrase, PhraseReader.OfName(action.Name)])
            {
                string? lead = phrase.Parts is [{ IsGap: false } first, ..] ? first.Words : null;
                if (lead is not null && WordsAhead(lead) && Prose.WordsOf(lead).Length is var length && length > (best?.Length ?? 0))
                {
                    best = (phrase, action, length);
                }
            }
        }

        return best;
    }

    // An action's phrase with formulas in its gaps; it may end before any gap.
    private StepSyntax ReadCallStep(ActionName action, ActionPhrase phrase)
    {
        var gaps = ImmutableArray.CreateBuilder<Syntax?>();
        foreach (PhrasePart part in phrase.Parts)
        {
            if (_failed || Current.Kind == TokenKind.End)
            {
                break;
            }

            if (part.IsGap)
            {
                gaps.Add(ReadSum());
            }
            else if (!TakeWords(part.Words))
            {
                Fail(FormulaProblems.Expected(Current.Span, Current.Text, $"'{part.Words}', as in '{phrase.InWords}'"));
            }
        }

        return Step(StepKind.Call, gaps.ToImmutable()) with { Action = action };
    }

    private bool WordsAhead(string words)
    {
        int before = _at;
        bool isThere = TakeWords(words);
        _at = before;
        return isThere;
    }
}
