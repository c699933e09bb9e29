using Rostrum.Play.Formulas.Nodes;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <content>Whether things and spaces have a look.</content>
internal sealed partial class FormulaCompiler
{
    private Node Matches(Term.Matches term, FrameMap frame)
    {
        Node subject = Compile(term.Subject, frame);
        Sort sort = term.AsksTop ? Sort.Thing : term.Subject.Sort;
        return new MatchesNode(term.AsksTop ? new TopNode(subject, _isPart) : subject, [.. term.Looks.Select(l => LookTestOf(l, sort))]);
    }

    /// <summary>The test of a look for subjects of a sort.</summary>
    public LookTest LookTestOf(Look look, Sort subject)
    {
        if (subject.Kind == SortKind.Thing)
        {
            return LookOfThing(look);
        }

        if (subject.Kind == SortKind.Value)
        {
            bool[] values = [.. layout.Values.All.Select(look.Values.Contains)];
            return new TabledLook(() => values);
        }

        LookTest[] tests = [.. OwnerTests(look, subject), .. look.Traits.Select(t => TraitTest(t, subject))];
        return tests.Length == 1 ? tests[0] : new AllLooks(tests);
    }

    private IEnumerable<LookTest> OwnerTests(Look look, Sort subject)
    {
        if (look.Owner == LookOwner.Anyone)
        {
            yield break;
        }

        bool isMine = look.Owner == LookOwner.Mine;
        yield return subject.Kind switch
        {
            SortKind.Thing => new ThingOwnerLook(Owners, isMine),
            SortKind.Space or SortKind.Slot => new OwnerLook(() => _ownerOfSpot, isMine),
            SortKind.Place => new OwnerLook(() => _ownerOfHolder, isMine),
            SortKind.Line => new OwnerLook(() => _lines.Owners, isMine),
            _ => new ConstantLook(false),
        };
    }

    private LookTest LookOfThing(Look look)
    {
        bool[] classes = [.. layout.Classes.Select(c => ClassFits(c, look))];
        LookTest[] more = [.. OwnerTests(look, Sort.Thing), .. look.Traits.Select(t => TraitTest(t, Sort.Thing))];
        ThingClass? any = layout.Classes.FirstOrDefault(c => classes[c.Number]);
        (int, int)[] states = any is null ? [] : [.. look.Values.Select(v => (StateIndex(any, v.Attribute.Index), v.Index)).Where(s => s.Item1 >= 0)];
        return new ThingLook(classes, states, more);
    }

    // As far as what never changes tells.
    private static bool ClassFits(ThingClass of, Look look)
    {
        if ((look.Kind is not null && !ReferenceEquals(look.Kind, of.Kind.Kind)) || (look.Card is not null && !ReferenceEquals(look.Card, of.Card)))
        {
            return false;
        }

        return look.Values.All(v => ReferenceEquals(v.Attribute.Kind, of.Kind.Kind)
            && (StateIndex(of, v.Attribute.Index) >= 0 || (v.Attribute.Index < of.Values.Length && of.Values[v.Attribute.Index] == v.Index)));
    }

    private LookTest TraitTest(Trait trait, Sort subject) => trait.Adjective switch
    {
        Adjective.Word => WordTest(trait.Word!),
        Adjective.Empty => EmptyTest(subject),
        Adjective.Full => FullTest(subject),
        Adjective.FaceUp when subject.Kind == SortKind.Thing => new FaceLook([.. layout.Classes.Select(c => StateIndex(c, -1))], isUp: true),
        Adjective.FaceDown when subject.Kind == SortKind.Thing => new FaceLook([.. layout.Classes.Select(c => StateIndex(c, -1))], isUp: false),
        _ => new ConstantLook(false),
    };

    private LookTest WordTest(Word word)
    {
        Said said = SaidOf(word);
        return new WordLook(said.Letters[0], said.Body);
    }

    private LookTest EmptyTest(Sort subject)
    {
        LookTest spot = new HeightLook([.. Enumerable.Repeat(1, layout.Spots)], isAtLeast: false);
        return subject.Kind switch
        {
            SortKind.Space or SortKind.Slot => spot,
            SortKind.Place => new EverySpotLook(() => _spotsOfHolder, spot),
            SortKind.Line => new EverySpotLook(() => _lines.Spots, spot),
            SortKind.Fit => new FitLook(_fits, spot),
            SortKind.Set or SortKind.List => new EveryElementLook(EmptyTest(subject.Element!), nothing: true),
            SortKind.Thing or SortKind.Player => new ConstantLook(false),
            _ => new ConstantLook(true),
        };
    }

    private LookTest FullTest(Sort subject)
    {
        LookTest spot = new HeightLook([.. layout.SpotHolder.Select(h => h.Board?.MostInSpace ?? 1)], isAtLeast: true);
        return subject.Kind switch
        {
            SortKind.Space or SortKind.Slot => spot,
            SortKind.Place => new EverySpotLook(() => _spotsOfHolder, spot),
            SortKind.Line => new EverySpotLook(() => _lines.Spots, spot),
            SortKind.Fit => new FitLook(_fits, spot),
            SortKind.Set or SortKind.List => new EveryElementLook(FullTest(subject.Element!), nothing: false),
            SortKind.Thing or SortKind.Player => new ConstantLook(false),
            _ => new ConstantLook(true),
        };
    }
}
