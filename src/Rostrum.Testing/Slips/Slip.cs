using Rostrum.Sheets.Formulas;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>One small mistake in one shipped text.</summary>
/// <param name="Number">With the seed of its maker, what makes it again.</param>
/// <param name="Kind">What sort of mistake.</param>
/// <param name="File">The text as it is shipped.</param>
/// <param name="Edit">What was changed in it.</param>
public sealed record Slip(int Number, SlipKind Kind, ShippedText File, TextEdit Edit)
{
    /// <summary>The text with the slip in it.</summary>
    public SourceText Wrong { get; } = new(File.Text.Name, TextEdit.Apply(File.Text.Content, [Edit]));

    /// <summary>The 0-based line of the slip in the wrong text; for a line that is missing, the one that stands in its place.</summary>
    public int Line => Wrong.LineIndexOf(Edit.At.Start);

    /// <summary>True where the changed words are prose, a remark or a card's sentence: nothing that Rostrum reads.</summary>
    public bool IsInProse => File.IsProse(Edit.At);

    /// <summary>True where a place belongs to the slip.</summary>
    /// <param name="at">What a message underlines.</param>
    /// <remarks>That is the slip's own line. For a line that stands twice also the second of them; for a missing line the lines beside it, the entry
    /// that it belonged to, and whatever speaks of a name that stood in it.</remarks>
    public bool IsAt(SourceSpan at)
    {
        if (at.Source.Name != Wrong.Name)
        {
            return Kind == SlipKind.LineMissing && Lost(at);
        }

        int line = Wrong.LineIndexOf(at.Start);
        return Kind switch
        {
            SlipKind.LineMissing => line == Line || line == LineBefore() || IsInEntry(line) || Lost(at),
            SlipKind.LineDoubled => line == Line || line == Line + 1,
            _ => line == Line,
        };
    }

    /// <summary>For example <c>#17 letter dropped, sheet.yaml line 31: "glaze" for "glazes"</c>.</summary>
    public override string ToString() =>
        $"#{Number} {InWords(Kind)}, {File.Game} {File.Text.Name} line {Line + 1}: {Shown(Edit.At.Text)} -> {Shown(Edit.NewText)} in {Shown(File.Text.Line(File.Text.LineIndexOf(Edit.At.Start)).Trim())}";

    /// <summary>The kind in words, such as <c>letter dropped</c>.</summary>
    public static string InWords(SlipKind kind) => string.Concat(kind.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));

    private static string Shown(string text) => $"\"{Prose.Clip(text.ReplaceLineEndings(" "), 90)}\"";

    private bool Lost(SourceSpan at) => at.Length > 0 &&
        SlipWords.In(Edit.At.Text).Intersect(SlipWords.In(at.Text), StringComparer.OrdinalIgnoreCase).Except(Vocabulary.GrammarWords).Any();

    private int LineBefore()
    {
        int line = Line - 1;
        while (line > 0 && string.IsNullOrWhiteSpace(Wrong.Line(line)))
        {
            line--;
        }

        return line;
    }

    // The entry that lacks the line, from its head to its end.
    private bool IsInEntry(int line)
    {
        int owner = LineOfOwner();
        int column = Column(Wrong.Line(owner));
        return line >= owner && Column(Edit.At.Text) > 0
            && Enumerable.Range(owner + 1, line - owner).All(i => string.IsNullOrWhiteSpace(Wrong.Line(i)) || Column(Wrong.Line(i)) > column);
    }

    private int LineOfOwner()
    {
        int column = Column(Edit.At.Text);
        int line = Line - 1;
        while (line > 0 && (string.IsNullOrWhiteSpace(Wrong.Line(line)) || Column(Wrong.Line(line)) >= column))
        {
            line--;
        }

        return line;
    }

    private static int Column(string line) => line.Length - line.TrimStart().Length;
}
