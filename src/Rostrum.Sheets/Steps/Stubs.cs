using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Steps;

internal static class PhraseReader
{
    public static ActionPhrase Read(OutlineScalar words, DiagnosticBag problems)
    {
        var parts = ImmutableArray.CreateBuilder<PhrasePart>();
        foreach (string piece in words.Text.Split('(', ')').Select((p, i) => (i % 2 == 1 ? "(" : "") + p.Trim()).Where(p => p.Length > 0))
        {
            parts.Add(piece[0] == '(' ? new PhrasePart(piece[1..], true) : new PhrasePart(piece, false));
        }

        return new ActionPhrase(parts.ToImmutable());
    }
}

internal sealed class StepReader(Declarations declared, Vocabulary names, Scope scope, DiagnosticBag problems)
{
    public ImmutableArray<Step> Read(OutlineNode node) => declared is null || names is null || scope is null || problems is null || node is null ? [] : [];
}

internal static class ChoiceReader
{
    public static ActionChoice Read(LoadContext context, FormulaReader reader, string name, FormulaText words)
    {
        string text = words.Text;
        string cut = text.StartsWith("a ", StringComparison.Ordinal) ? text[2..] : text.StartsWith("one of ", StringComparison.Ordinal) ? text[7..] : text;
        (Pick Pick, PickSyntax Syntax)? pick = reader.BeginPick(words.Part(text.Length - cut.Length, cut.Length));
        if (pick is { } p)
        {
            reader.EndPick(p.Syntax);
        }

        var letter = new LetterName(name, words.Span);
        Sort sort = pick?.Pick.Element ?? Sort.Any;
        reader.Declare(letter);
        Scope.Entry entry = reader.Scope.Declare(letter, sort);
        return new ActionChoice(name, entry.Slot, ChoiceAmount.One, 1, pick?.Pick.Domain ?? new Term.NotYet("x", Sort.Any, Origin.Of(words.Span)), sort, text, words.Span);
    }
}
