using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>Calls: words with subjects, operations with parts.</content>
internal sealed partial class Binder
{
    private Term BindCall(Syntax.Call call)
    {
        foreach (NameSense sense in call.Function.Senses)
        {
            switch (sense.Symbol)
            {
                case Word word:
                    return BindWordCall(word, call);
                case OperationName { Operation: { Form: OperationForm.Function } operation }:
                    return BindOperation(operation, call);
            }
        }

        return Broken(call);
    }

    private Term BindWordCall(Word word, Syntax.Call call)
    {
        if (word.Subjects.Length != call.Parts.Length)
        {
            problems.Add(Placed(FormulaProblems.WrongSubjects(call.Span, word.Name, word.Subjects.Length, call.Parts.Length)));
            return Broken(call);
        }

        ImmutableArray<Term> subjects = [.. call.Parts.Select((p, i) => Expect(p.Value!, word.Subjects[i].Sort))];
        return Call(word, subjects, call);
    }

    private Term Call(Word word, ImmutableArray<Term> subjects, Syntax at)
    {
        Term? meaning = declared.MeaningOf(word);
        return meaning is null ? Broken(at) : new Term.Call(word, subjects, meaning.Sort, From(at));
    }

    private Term BindOperation(Operation operation, Syntax.Call call)
    {
        if (operation.Id == Op.Run)
        {
            return BindRun(operation, call);
        }

        Pick? pick = call.Pick is null ? null : BeginPick(call.Pick);
        ImmutableArray<Term?> arguments = BindParts(operation, call, pick);
        if (call.Pick is not null)
        {
            EndPick(call.Pick);
        }

        ReportOnPoints(operation.Id == Op.Fits ? arguments[1] : null, call, "fits", "Say with 'is next to' and 'neighbours of' what must lie where.");
        if (operation.Id == Op.Groups && call.Parts.IsEmpty)
        {
            WrongParts(operation, call);
        }

        return new Term.Apply(operation, pick, arguments, SortOfCall(operation, pick, arguments), From(call));
    }

    private ImmutableArray<Term?> BindParts(Operation operation, Syntax.Call call, Pick? pick)
    {
        Parameter[] parameters = [.. operation.Parameters.Where(p => p.Kind != ParameterKind.Pick)];
        var bound = new Term?[parameters.Length];
        var given = new bool[parameters.Length];
        bool isWrong = false;
        foreach (Part part in call.Parts)
        {
            int at = Array.FindIndex(parameters, p => p.Lead == part.Lead && !given[Array.IndexOf(parameters, p)]);
            if (at < 0)
            {
                isWrong = true;
                continue;
            }

            given[at] = true;
            bound[at] = BindPart(parameters[at], part, pick);
        }

        isWrong |= parameters.Where((p, i) => !given[i] && !p.IsOptional).Any();
        if (isWrong)
        {
            WrongParts(operation, call);
            return [.. parameters.Select((p, i) => bound[i] ?? (p.IsOptional ? null : Broken(call, p.Sort)))];
        }

        return [.. bound];
    }

    private void WrongParts(Operation operation, Syntax.Call call) =>
        problems.Add(Placed(FormulaProblems.WrongParts(call.Span, operation.Name, operation.FormInWords)));

    private Term? BindPart(Parameter parameter, Part part, Pick? pick) => parameter.Kind switch
    {
        ParameterKind.Flag => new Term.Truth(true, new Origin(part.Span, through)),
        ParameterKind.Measure => BindMeasure(part),
        ParameterKind.Look => part.Value is Syntax.Looks looks ? BindLookTerm(looks) : null,
        ParameterKind.Joining => BindJoining(part, pick?.Element ?? Sort.Space),
        ParameterKind.WorthWord => BindWorth(part, pick?.Element ?? Sort.Any),
        _ when parameter.Sort.Kind == SortKind.Truth => BindTruth(part.Value!),
        _ when parameter.Sort.Kind == SortKind.Drawing => BindDrawing(part.Value!),
        _ => Expect(part.Value!, parameter.Sort),
    };

    // A piece that is larger than a space lies like a drawing.
    private Term BindDrawing(Syntax syntax)
    {
        Term term = Bind(syntax);
        return term.Sort is { Kind: SortKind.Thing, Of: Kind kind } && declared.Kinds[kind].Shape is not null ? term : Expect(syntax, Sort.Drawing);
    }

    private Term.Text BindMeasure(Part part)
    {
        if (part.Word is not ("walk" or "span" or "bare" or "group"))
        {
            problems.Add(Placed(FormulaProblems.Expected(part.Span, part.Word ?? "", "'walk', 'span', 'bare' or 'group'")));
        }

        return new Term.Text(part.Word ?? "group", new Origin(part.Span, through));
    }

    private Term.Joining? BindJoining(Part part, Sort element)
    {
        Word? word = (part.Value as Syntax.Name)?.Senses.Select(s => s.Symbol).OfType<Word>().FirstOrDefault();
        bool fits = word is { Subjects.Length: 2 } && word.Subjects.All(s => element.Fits(s.Sort)) && declared.MeaningOf(word) is { } meaning && meaning.Sort.Fits(Sort.Truth);
        if (!fits)
        {
            if (part.Value is not Syntax.Broken)
            {
                problems.Add(Placed(FormulaProblems.NotJoining(part.Value?.Span ?? part.Span, word?.Name ?? part.Span.Text, element)));
            }

            return null;
        }

        var origin = new Origin(part.Span, through);
        Scope.Entry first = scope.Push(null, element, isElement: false);
        Scope.Entry second = scope.Push(null, element, isElement: false);
        Term truth = new Term.Call(word!, [new Term.Variable(first.Slot, "one", element, origin), new Term.Variable(second.Slot, "other", element, origin)], Sort.Truth, origin);
        scope.Pop();
        scope.Pop();
        return new Term.Joining(first.Slot, second.Slot, truth, origin);
    }

    // The word said of a set that is put into the frame; null with a message where it cannot be.
    private Term.Call? BindWorth(Part part, Sort element)
    {
        Word? word = (part.Value as Syntax.Name)?.Senses.Select(s => s.Symbol).OfType<Word>().FirstOrDefault();
        Sort set = Sort.SetOf(element);
        bool fits = word is { Subjects: [var subject] } && set.Fits(subject.Sort) && declared.MeaningOf(word) is { } meaning && meaning.Sort.Fits(Sort.Number);
        if (!fits)
        {
            if (part.Value is not Syntax.Broken)
            {
                problems.Add(Placed(FormulaProblems.NotAWorth(part.Value?.Span ?? part.Span, word?.Name ?? part.Span.Text, element)));
            }

            return null;
        }

        var origin = new Origin(part.Span, through);
        Scope.Entry entry = scope.Push(null, set, isElement: false);
        scope.Pop();
        return new Term.Call(word!, [new Term.Variable(entry.Slot, "set", set, origin)], Sort.Number, origin);
    }

    private Term BindRun(Operation operation, Syntax.Call call)
    {
        if (call.Pick is not { Letter: { } letter } pick)
        {
            return Broken(call, Sort.ListOf(Sort.Space));
        }

        Term from = Expect(pick.Domain, Sort.Space);
        Term going = Expect(call.Parts[0].Value!, Sort.Direction);
        Scope.Entry entry = scope.Push(letter, Sort.Space);
        Term condition = BindTruth(pick.Where!);
        EndPick(pick);
        var along = new Pick(entry.Slot, letter.Name, new Term.Listed([], Sort.ListOf(Sort.Space), From(call)), null, Sort.Space);
        return new Term.Apply(operation, along, [from, going, condition], Sort.ListOf(Sort.Space), From(call));
    }

    private static Sort SortOfCall(Operation operation, Pick? pick, ImmutableArray<Term?> arguments) => operation.Id switch
    {
        Op.Any or Op.No or Op.All => Sort.Truth,
        Op.Most or Op.Least => pick!.Domain.Sort.Kind == SortKind.List ? Sort.ListOf(pick.Element) : Sort.SetOf(pick.Element),
        Op.Ranked => Sort.ListOf(pick!.Element),
        Op.Together => Sort.SetOf(arguments[0]!.Sort.Element ?? Sort.Any),
        Op.Item => arguments[1]!.Sort.Element ?? Sort.Any,
        Op.Across or Op.BeyondRun => Sort.Space,
        Op.BetweenSpaces or Op.Following => Sort.ListOf(Sort.Space),
        Op.Straights => Sort.SetOf(Sort.ListOf(Sort.Space)),
        Op.Groups => Sort.SetOf(Sort.SetOf(pick!.Element)),
        Op.Fits => Sort.SetOf(Sort.Fit),
        _ => Sort.Number,
    };
}
