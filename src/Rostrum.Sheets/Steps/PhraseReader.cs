using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Steps;

/// <summary>Reads the phrase of an action, <c>place (what) on (spot)</c>, into its words and gaps.</summary>
/// <param name="problems">Where messages go.</param>
/// <param name="name">The name of the action, where the sheet gives one: that it is called like a step is told there, and not once more of its phrase.</param>
internal sealed class PhraseReader(DiagnosticBag problems, string? name = null)
{
    /// <summary>The phrase of an action that has only a name.</summary>
    public static ActionPhrase OfName(string name) => new([new PhrasePart(Prose.Fold(name), false)]);

    /// <summary>The phrase as written; one with a mistake is cut where the mistake begins.</summary>
    public ActionPhrase Read(OutlineScalar phrase) => Read(FormulaText.Of(phrase));

    /// <summary>The phrase as written; one with a mistake is cut where the mistake begins.</summary>
    public ActionPhrase Read(FormulaText phrase)
    {
        var parts = ImmutableArray.CreateBuilder<PhrasePart>();
        int at = 0;
        while (at < phrase.Text.Length)
        {
            int open = phrase.Text.IndexOf('(', at);
            int wordsEnd = open < 0 ? phrase.Text.Length : open;
            AddWords(phrase.Text[at..wordsEnd], parts);
            if (open < 0)
            {
                break;
            }

            int close = phrase.Text.IndexOf(')', open);
            if (!AddGap(phrase, open, close, parts))
            {
                break;
            }

            at = close + 1;
        }

        CheckBeginning(phrase, parts);
        return new ActionPhrase(parts.ToImmutable());
    }

    /// <summary>Reports gaps without a choice and choices without a gap.</summary>
    /// <param name="phrase">The phrase.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="choices">The choices of the action.</param>
    public void CheckGaps(ActionPhrase phrase, SourceSpan at, ImmutableArray<ActionChoice> choices)
    {
        string[] gaps = [.. phrase.Parts.Where(p => p.IsGap).Select(p => p.Words)];
        foreach (string gap in gaps.Where(g => !choices.Any(c => c.Name == g)))
        {
            int start = at.Text.IndexOf($"({gap})", StringComparison.Ordinal);
            SourceSpan place = start < 0 ? at : at.Part(start + 1, gap.Length);
            problems.Add(StepProblems.GapWithoutChoice(place, gap, NearSpelling.Find(gap, choices.Select(c => c.Name))));
        }

        foreach (ActionChoice choice in choices.Where(c => c.Amount != ChoiceAmount.Given && !gaps.Contains(c.Name)))
        {
            problems.Add(StepProblems.ChoiceWithoutGap(choice.At, choice.Name, phrase.InWords));
        }
    }

    private static void AddWords(string words, ImmutableArray<PhrasePart>.Builder parts)
    {
        string folded = Prose.Fold(words);
        if (folded.Length > 0)
        {
            parts.Add(new PhrasePart(folded, false));
        }
    }

    private bool AddGap(FormulaText phrase, int open, int close, ImmutableArray<PhrasePart>.Builder parts)
    {
        string name = close < 0 ? "" : Prose.Fold(phrase.Text[(open + 1)..close]);
        (string What, string Mend)? wrong = (close, name, parts.Count) switch
        {
            ( < 0, _, _) => ("this gap is never closed", "Put ')' behind the name of the choice."),
            (_, "", _) => ("this gap names no choice", "Write the name of a choice between the brackets."),
            (_, _, 0) => ("a phrase cannot begin with a gap", "Begin with a word, as in 'place (what) on (spot)'."),
            _ when parts[^1].IsGap => ("two gaps stand side by side, so nobody could tell where the first ends", "Put a word between them."),
            _ => null,
        };
        if (wrong is { } found)
        {
            problems.Add(StepProblems.PhraseShape(phrase.SpanOf(open, Math.Max(1, close - open + 1)), found.What, found.Mend));
            return false;
        }

        parts.Add(new PhrasePart(name, true));
        return true;
    }

    private void CheckBeginning(FormulaText phrase, ImmutableArray<PhrasePart>.Builder parts)
    {
        if (parts.Count == 0 && !string.IsNullOrWhiteSpace(phrase.Text))
        {
            return;
        }

        if (parts.Count == 0)
        {
            problems.Add(StepProblems.PhraseShape(phrase.Span, "there is no phrase here", "Write the words that a player says, as in 'place (what) on (spot)'."));
            return;
        }

        string lead = parts[0].Words;
        if (StepWords.Named(lead) is { } step && !string.Equals(lead, name, StringComparison.OrdinalIgnoreCase))
        {
            problems.Add(StepProblems.PhraseIsStep(phrase.Span, phrase.Text, step));
        }
    }
}
