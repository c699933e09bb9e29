using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>Makes slips in shipped texts: always the same one for the same seed and number.</summary>
/// <param name="sheets">Sheets and the tables beside them; two slips of three are made here.</param>
/// <param name="positions">Positions; the third slip is made here.</param>
/// <param name="seed">The seed of the whole measure.</param>
public sealed partial class SlipMaker(ImmutableArray<ShippedText> sheets, ImmutableArray<ShippedText> positions, ulong seed)
{
    private static readonly SlipKind[] Kinds = Enum.GetValues<SlipKind>();

    /// <summary>The slip of a number; the kinds come in turn, and within a text every place is as likely as any other.</summary>
    /// <param name="number">0 or more.</param>
    public Slip Make(int number)
    {
        SlipKind kind = Kinds[number % Kinds.Length];
        var draws = new SlipDraws(seed, number);
        ImmutableArray<ShippedText> texts = draws.Below(3) < 2 ? sheets : positions;
        while (true)
        {
            ShippedText text = ByLength(texts, draws);
            TextEdit[] edits = [.. Edits(kind, text.Text, draws)];
            if (edits.Length > 0)
            {
                return new Slip(number, kind, text, draws.Of(edits));
            }
        }
    }

    // A text of twice as many lines gets twice as many slips.
    private static ShippedText ByLength(ImmutableArray<ShippedText> texts, SlipDraws draws)
    {
        int line = draws.Below(texts.Sum(t => t.Text.LineCount));
        int at = 0;
        while (line >= texts[at].Text.LineCount)
        {
            line -= texts[at].Text.LineCount;
            at++;
        }

        return texts[at];
    }

    // Every place of a text where a slip of this kind can be made; the draws choose what is written there.
    private static IEnumerable<TextEdit> Edits(SlipKind kind, SourceText text, SlipDraws draws) => kind switch
    {
        SlipKind.LetterChanged => Letters(text).Select(i => new TextEdit(text.Span(i, 1), OtherLetter(text.Content[i], draws))),
        SlipKind.LetterDropped => Letters(text).Select(i => new TextEdit(text.Span(i, 1), "")),
        SlipKind.LetterDoubled => Letters(text).Select(i => new TextEdit(text.Span(i, 0), $"{text.Content[i]}")),
        SlipKind.LettersSwapped => Letters(text).Where(i => CanSwap(text.Content, i)).Select(i => new TextEdit(text.Span(i, 2), $"{text.Content[i + 1]}{text.Content[i]}")),
        SlipKind.WordDropped => Words(text).Select(w => WithoutWord(text, w)),
        SlipKind.WordDoubled => Words(text).Select(w => new TextEdit(text.Span(w.Start, 0), $"{w.Text} ")),
        SlipKind.WordReplaced => OneOf(Words(text), draws).Select(w => new TextEdit(w, OtherWord(text, w.Text, draws))),
        SlipKind.NumberChanged => SlipWords.Number().Matches(text.Content).Select(m => new TextEdit(text.Span(m.Index, m.Length), OtherNumber(m.Value, draws))),
        SlipKind.LineMissing => Lines(text).Select(l => new TextEdit(text.Span(text.LineStart(l), text.LineStart(l + 1) - text.LineStart(l)), "")),
        SlipKind.LineDoubled => Lines(text).Select(l => new TextEdit(text.Span(text.LineStart(l), 0), text.Line(l) + "\n")),
        SlipKind.IndentChanged => Lines(text).Select(l => Indented(text, l, draws)),
        SlipKind.CommaMoved => Signs(text, ",").SelectMany(i => Moved(text, i)),
        SlipKind.CommaRemoved => Signs(text, ",").Select(i => new TextEdit(text.Span(i, 1), "")),
        SlipKind.ColonRemoved => Signs(text, ":").Select(i => new TextEdit(text.Span(i, 1), "")),
        SlipKind.BlankRemoved => Signs(text, ":,").Where(i => IsBlank(text.Content, i + 1)).Select(i => new TextEdit(text.Span(i + 1, 1), "")),
        SlipKind.BracketRemoved => Signs(text, "()[]{}\"").Select(i => new TextEdit(text.Span(i, 1), "")),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such slip."),
    };

    // What is written there takes long to find, so the place is chosen first.
    private static IEnumerable<SourceSpan> OneOf(IEnumerable<SourceSpan> places, SlipDraws draws) => places.ToArray() is { Length: > 0 } all ? [draws.Of(all)] : [];

    private static IEnumerable<int> Letters(SourceText text) => Enumerable.Range(0, text.Content.Length).Where(i => char.IsLetter(text.Content[i]));

    private static IEnumerable<SourceSpan> Words(SourceText text) => SlipWords.Word().Matches(text.Content).Select(m => text.Span(m.Index, m.Length));

    private static IEnumerable<int> Signs(SourceText text, string signs) => Enumerable.Range(0, text.Content.Length).Where(i => signs.Contains(text.Content[i], StringComparison.Ordinal));

    private static IEnumerable<int> Lines(SourceText text) => Enumerable.Range(0, text.LineCount - 1).Where(l => !string.IsNullOrWhiteSpace(text.Line(l)));

    private static bool IsBlank(string content, int at) => at < content.Length && content[at] == ' ';
}
