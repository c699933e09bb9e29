using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Idioms;

/// <summary>Reads one file of the idiom library.</summary>
internal static class IdiomReader
{
    private static readonly string[] Keys = ["idiom", "group", "reads", "note", "parameters", "words", "each", "points", "at least", "at most", "means", "needs", "forbids", "must leave", "must not leave", "over", "tried", "example", "near miss"];

    private static readonly (string Word, ParameterForm Form)[] Forms =
    [
        ("look", ParameterForm.Look), ("lines", ParameterForm.Lines), ("table", ParameterForm.Table), ("board", ParameterForm.Board), ("place", ParameterForm.Place),
        ("number", ParameterForm.Number), ("column", ParameterForm.Column), ("word", ParameterForm.Word), ("attribute", ParameterForm.Attribute),
        ("pair word", ParameterForm.PairWord), ("set word", ParameterForm.SetWord), ("worth", ParameterForm.Worth), ("printed number", ParameterForm.Printed), ("amount", ParameterForm.Amount),
        ("amounts", ParameterForm.Amounts), ("standing", ParameterForm.Standing), ("things", ParameterForm.Things), ("spaces", ParameterForm.Spaces),
        ("condition", ParameterForm.Truth), ("one of", ParameterForm.OneOf), ("chosen thing", ParameterForm.ChosenThing), ("chosen space", ParameterForm.ChosenSpace),
    ];

    /// <summary>The idiom; null where the file is none, which is reported.</summary>
    public static Idiom? Read(SourceText file, DiagnosticBag problems)
    {
        if (OutlineReader.Read(file, SheetDialect.Idioms, problems) is not OutlineMapping body)
        {
            return null;
        }

        foreach (OutlineEntry entry in body.Entries.Where(e => !Keys.Contains(e.Key.Text)))
        {
            problems.Add(SheetProblems.UnknownKey(entry.Key.Span, entry.Key.Text, "an idiom", Keys));
        }

        if (body.Find("idiom")?.Value is not OutlineScalar name || body.Find("reads")?.Value is not OutlineScalar sentence)
        {
            problems.Add(SheetProblems.WantedEntries(body.Span.Part(0, 0), "the name and the sentence of the idiom"));
            return null;
        }

        ImmutableArray<IdiomParameter> parameters = body.Find("parameters")?.Value is OutlineMapping mapping
            ? [.. mapping.Entries.Select(e => Parameter(e, problems)).OfType<IdiomParameter>()]
            : [];
        return new Idiom(Prose.Fold(name.Text), Prose.Fold(sentence.Text), parameters, body, name.Span);
    }

    private static IdiomParameter? Parameter(OutlineEntry entry, DiagnosticBag problems)
    {
        if (entry.Value is not OutlineMapping mapping || mapping.Find("is")?.Value is not OutlineScalar form)
        {
            problems.Add(SheetProblems.WantedEntries(entry.Key.Span, "what the parameter is"));
            return null;
        }

        (string word, ParameterForm found) = Forms.FirstOrDefault(f => f.Word == Prose.Fold(form.Text));
        if (word is null)
        {
            problems.Add(SheetProblems.UnknownWord(form.Span, form.Text, "something that a parameter can be", Forms.Select(f => f.Word)));
            return null;
        }

        string name = Prose.Fold(entry.Key.Text);
        string alias = OutlineAsk.Prose(mapping, "as") ?? name;
        return new IdiomParameter(name, found, alias, OutlineAsk.Prose(mapping, "plural"), mapping.Find("otherwise")?.Value as OutlineScalar)
        {
            IsOfAnybody = OutlineAsk.Prose(mapping, "whose") == "anybody",
            Words = mapping.Find("words")?.Value is OutlineSequence words ? [.. words.Items.OfType<OutlineScalar>().Select(w => Prose.Fold(w.Text))] : [],
        };
    }
}
