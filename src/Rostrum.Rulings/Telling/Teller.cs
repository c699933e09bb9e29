using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Telling;

/// <summary>Tells why a truth holds or does not: the element that decides it, or the part that is missing.</summary>
/// <remarks>It asks the evaluator again, so that what is told is what was answered.</remarks>
internal sealed partial class Teller(Evaluator evaluator, Naming naming)
{
    private const int MostReasons = 3;

    /// <summary>What spaces are counted as where a formula counts them without saying of what; null for spaces.</summary>
    public Look? Counted { get; init; }

    /// <summary>Why a formula is what it is on this position.</summary>
    public Tale Tell(Term term, Value[] frame) => term switch
    {
        Term.Apply { Operation.Id: Op.And or Op.Or } logic => TellLogic(logic, frame),
        Term.Apply { Operation.Id: Op.Not } not => Tell(not.Argument(0), frame),
        Term.Apply { Operation.Id: Op.Any or Op.No or Op.All } many => TellMany(many, frame),
        Term.Apply { Operation.Form: OperationForm.Test } test => TellTest(test, frame),
        Term.Matches matches => TellMatches(matches, frame),
        Term.Call call => TellCall(call, frame),
        Term.CardCell cell => TellCell(cell, frame),
        Term.Idiomatic idiom => Tell(idiom.Inner, Evaluator.Frame(idiom.FrameSize)),
        Term.Fork fork => Tell(fork.Alternatives[evaluator.Pick(fork.Choice)], frame),
        Term.If condition when evaluator.Ask(condition.Condition, frame).Is is var holds && holds != Kleene.Unknown =>
            Tell(holds == Kleene.Yes ? condition.Then : condition.Otherwise, frame),
        Term.Truth => Tale.Of("the sheet says so"),
        Term.Done done when evaluator.Ask(done, frame).Is is var was && was != Kleene.Unknown => Tale.Of(TellDone(done, was == Kleene.Yes, frame)),
        _ => TellOther(term, frame),
    };

    private Tale TellLogic(Term.Apply logic, Value[] frame)
    {
        bool isAnd = logic.Operation.Id == Op.And;
        Kleene whole = evaluator.Ask(logic, frame).Is;
        Term[] operands = [.. logic.Arguments.Select(a => a!).Where(a => evaluator.Evaluate(a, frame) is not Value.Nothing && !LacksDrawing(a, frame))];
        bool oneDecides = isAnd ? whole == Kleene.No : whole == Kleene.Yes;
        if (oneDecides && operands.FirstOrDefault(o => evaluator.Ask(o, frame).Is == whole) is { } deciding)
        {
            return Tell(deciding, frame);
        }

        Term[] told = [.. operands.Where(o => whole != Kleene.Unknown || evaluator.Ask(o, frame).Is == Kleene.Unknown).Where(o => !IsFormality(o, evaluator.Ask(o, frame).Is))];
        Tale[] tales = [.. (told.Length == 0 ? operands : told).Select(o => Tell(o, frame))];
        Tale[] pointing = [.. tales.Where(t => !t.Spaces.IsEmpty)];
        return Tale.Join((pointing.Length > 0 ? pointing : tales).Take(MostReasons), " and ");
    }

    // A card without a drawing shows none; nobody asks whether it does.
    private bool LacksDrawing(Term term, Value[] frame) =>
        term is Term.Apply { Pick.Domain: Term.Apply { Operation.Id: Op.Fits } fits } && evaluator.Evaluate(fits.Argument(0), frame) is Value.Nothing;

    // That something is there at all goes without saying.
    private static bool IsFormality(Term term, Kleene holds) => term switch
    {
        Term.Apply { Operation.Id: Op.Not } not => not.Arguments[0] is Term.Apply { Operation.Id: Op.IsNothing } && holds == Kleene.Yes,
        Term.Apply { Operation.Id: Op.IsNothing } => holds == Kleene.No,
        _ => false,
    };

    private Tale TellMany(Term.Apply many, Value[] frame)
    {
        Pick pick = many.Pick!;
        Value.Many elements = evaluator.Through(pick, frame);
        if (many.Operation.Id == Op.All)
        {
            Term each = many.Argument(0);
            Member fails = elements.Members.FirstOrDefault(m => Evaluator.With(pick, m.Value, frame, each, evaluator.Ask).Is == Kleene.No);
            return fails.Value is null ? Tale.Of($"it holds for {All(elements, pick)}") : About(pick, fails.Value, each, frame);
        }

        Member witness = elements.Members.FirstOrDefault(m => m.IsCertain);
        if (witness.Value is null)
        {
            return elements.Members.IsEmpty && elements.More == 0 ? Tale.Of(TellNone(pick, frame)) : TellOther(many, frame);
        }

        return pick.Where is null ? TellFound(witness.Value) : About(pick, witness.Value, pick.Where, frame);
    }

    private Tale TellFound(Value found) => found is Value.FitAt fit
        ? new Tale($"the drawing is shown at {Prose.And(naming.SpacesOf(fit))}", naming.SpacesOf(fit))
        : new Tale($"there is {naming.Of(found)}", naming.SpacesOf(found));

    private string TellNone(Pick pick, Value[] frame)
    {
        if (pick.Element.Kind == SortKind.Fit)
        {
            return "the drawing is shown nowhere";
        }

        return pick.Domain is Term.LinesOf lines ? $"there is no such {lines.Family.Name}"
            : pick is { Where: null, Domain: Term.Call { Subjects: [var subject] } call } ? $"{Phrase(subject, frame)} has no {call.Word.Name}"
            : Nouns.Of(pick) is { } look ? $"there is no {(pick.Where is Term.Apply { Operation.Id: Op.And } ? "such " : "")}{Nouns.One(look)}{Among(pick, frame)}"
            : $"there is no such {pick.Element.InWords.Split(' ')[^1]}{Among(pick, frame)}";
    }

    private string Among(Pick pick, Value[] frame) => pick.Domain is Term.Apply { Operation.Form: OperationForm.Noun } noun ? $" among {Phrase(noun, frame)}" : "";

    private string All(Value.Many elements, Pick pick) =>
        elements.Members.Length is > 0 and <= 6 ? Prose.And(elements.Members.Select(m => naming.Of(m.Value)))
        : Nouns.Of(pick) is { } look ? $"every {Nouns.One(look)}" : $"all {elements.Members.Length} of them";

    private Tale About(Pick pick, Value element, Term term, Value[] frame)
    {
        Tale tale = Evaluator.With(pick, element, frame, term, Tell);
        string name = naming.Of(element);
        string text = tale.Text.Contains(name, StringComparison.Ordinal) ? tale.Text : $"{name}: {tale.Text}";
        return new Tale(text, [.. naming.SpacesOf(element).Concat(tale.Spaces).Distinct()]);
    }

    private Tale TellMatches(Term.Matches matches, Value[] frame)
    {
        Value subject = evaluator.Evaluate(matches.Subject, frame);
        Kleene holds = evaluator.Ask(matches, frame).Is;
        if (matches.Looks is [{ Traits: [{ Word: { } word }], Values.IsEmpty: true, Card: null }] && subject is not (Value.Nothing or Value.Unknown))
        {
            return TellWord(word, [subject]);
        }

        if (subject is Value.SpaceAt or Value.SlotAt)
        {
            return TellSpot(subject);
        }

        if (subject is Value.ThingAt { Spot.Kind: SpotKind.Space } thing)
        {
            return TellSpot(new Value.SpaceAt(thing.Spot.Place, thing.Spot.Seat, thing.Spot.Part));
        }

        string looks = Prose.Or(matches.Looks.Select(Nouns.One));
        return subject is Value.Nothing or Value.Unknown
            ? Tale.Of($"{Called(matches.Subject, frame)} is {naming.Of(subject)}")
            : new Tale($"{naming.Of(subject)} is {(holds == Kleene.Yes ? "" : "not ")}{looks}", naming.SpacesOf(subject));
    }

    /// <summary>What a space or slot holds: <c>A2 shows an ash bowl</c>.</summary>
    private Tale TellSpot(Value spot)
    {
        string name = naming.Of(spot);
        Value.Many things = Evaluator.AsMany(evaluator.ThingsOf(spot));
        string text = things.More != 0 || things.Members.Any(m => !m.IsCertain) ? $"{name} is not given"
            : things.Members.IsEmpty ? $"{name} is empty" : $"{name} shows {Article(things.Members[^1].Value)}";
        return new Tale(text, naming.SpacesOf(spot));
    }

    private string Article(Value thing) =>
        thing is Value.ThingAt { Thing.Card: null } at ? Prose.A(naming.Look(at.Thing)) : naming.Of(thing);

    private Tale TellCall(Term.Call call, Value[] frame)
    {
        Value[] subjects = [.. call.Subjects.Select(s => evaluator.Evaluate(s, frame))];
        return call.Sort.Kind == SortKind.Truth ? TellWord(call.Word, subjects) : TellOther(call, frame);
    }

    // A word of one subject is said by its name, with the reason behind it; one of several by its reason.
    private Tale TellWord(Word word, Value[] subjects)
    {
        WordMeaning meaning = evaluator.Position.Sheet.Meanings[word.Index];
        Tale why = Tell(meaning.Body, Evaluator.FrameOf(meaning, [.. subjects]));
        if (subjects.Length != 1)
        {
            return why;
        }

        Kleene holds = Evaluator.AsTruth(evaluator.CallWord(word, [.. subjects])).Is;
        return new Tale(why.AsReason, why.Spaces) { Claim = $"{naming.Of(subjects[0])} {(IsYou(subjects[0]) ? "are" : "is")} {(holds == Kleene.Yes ? "" : "not ")}{word.Name}" };
    }

    // Who is spoken to is called "you", and the verb follows.
    private bool IsYou(Value value) => value is Value.PlayerAt player && player.Seat == evaluator.Me;

    private Tale TellCell(Term.CardCell cell, Value[] frame)
    {
        Card? card = evaluator.Evaluate(cell.Subject, frame) switch
        {
            Value.CardIs named => named.Card,
            Value.ThingAt thing => thing.Thing.Card,
            _ => null,
        };
        if (card is null || !ReferenceEquals(card.Kind, cell.Column.Kind))
        {
            return TellOther(cell, frame);
        }

        CardRow row = evaluator.Position.Sheet.Cards(card.Kind).Rows[card.Index];
        return Tell(row.Cells[cell.Column.Index], Evaluator.Frame(row.FrameSize));
    }

    private string TellDone(Term.Done done, bool was, Value[] frame) =>
        $"{done.Action.Name} was {(was ? "" : "not ")}done {DoneTimes.All.Single(t => t.When == done.When).Words}{(done.By is null ? "" : $" by {naming.Of(evaluator.Evaluate(done.By, frame))}")}";

    private Tale TellOther(Term term, Value[] frame)
    {
        Value value = evaluator.Evaluate(term, frame);
        Blame why = value.WhyUnknown;
        if (!why.IsAny)
        {
            return new Tale($"{Called(term, frame)} is {naming.Of(value)}", naming.SpacesOf(value));
        }

        IEnumerable<string> facts = naming.Facts(why.Blanks).Select(f => $"{f} is not given");
        return Tale.Of(Prose.And(facts.Concat(why.Gaps.Select(g => g.Told)).Distinct()));
    }
}
