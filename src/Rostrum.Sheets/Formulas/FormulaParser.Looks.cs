using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <content>Looks: the words that tell a thing.</content>
internal sealed partial class FormulaParser
{
    private Owner ReadOwner() => Take("my") ? Owner.My : Take("their") ? Owner.Their : Owner.None;

    private static bool IsOwnable(Named symbol) =>
        symbol is Place { EachPlayer: true } or Place { Form: PlaceForm.Supply } or Mark { EachPlayer: true } or Region or Word { Subjects.Length: 1 };

    private static bool IsLook(Named symbol) =>
        symbol is Kind or AttributeValue or Card or SpaceNoun or SlotNoun or AdjectiveName or Word { Subjects.Length: 1 }
            or Mark { Sort.Kind: SortKind.Truth } or LookName;

    // The face at the end of a step belongs to the step.
    private bool LookGoesOnAt(int at)
    {
        ImmutableArray<NameSense> senses = _names.Match(_tokens, at).Senses;
        return TellsLook(senses) && !(_steps && senses.Any(s => s.Symbol is AdjectiveName { Adjective: Adjective.FaceUp or Adjective.FaceDown }));
    }

    /// <summary>True where one of the meanings can be a word of a look.</summary>
    internal static bool TellsLook(ImmutableArray<NameSense> senses) => senses.Any(s => IsLook(s.Symbol));

    private bool IsLookAhead(bool preferKind)
    {
        (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
        return length > 0 && senses.Any(s => IsLook(s.Symbol)) && (preferKind || !senses.Any(s => s.Symbol is Place));
    }

    // look = ["my"|"their"] { VALUE | KIND | CARD | SPACES | ADJECTIVE }
    private Syntax ReadLooks(Owner owner)
    {
        int first = _at;
        var parts = ImmutableArray.CreateBuilder<Syntax.Name>();
        SkipArticle();
        while (!_failed && (parts.Count == 0 ? IsLookAhead(preferKind: true) : LookGoesOnAt(_at)))
        {
            (int length, ImmutableArray<NameSense> senses) = _names.Match(_tokens, _at);
            int start = _at;
            _at += length;
            parts.Add(new Syntax.Name(WordsFrom(start), senses, SpanFrom(start)));
        }

        if (parts.Count == 0)
        {
            return _failed ? new Syntax.Broken(Current.Span)
                : Current.Kind == TokenKind.Word && _names.Match(_tokens, _at).Length == 0 ? Fail(NameHelp.Unknown(_names, _tokens, _at))
                : Fail(FormulaProblems.Expected(Current.Span, Current.Text, "words that tell a thing, such as a kind or a value"));
        }

        return new Syntax.Looks(owner, parts.ToImmutable(), SpanFrom(first));
    }
}
