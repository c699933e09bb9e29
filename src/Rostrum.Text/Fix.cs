using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Text;

/// <summary>How far a fix may be trusted.</summary>
public enum FixGrade
{
    /// <summary>May be applied unseen: it cannot change what another part of the sheet means.</summary>
    Safe,

    /// <summary>One of several possible mends; the author decides.</summary>
    Choice,

    /// <summary>Leaves a blank that the author fills in.</summary>
    Blank,
}

/// <summary>A mend for a problem.</summary>
/// <param name="Title">What it does, such as <c>write 'black'</c>.</param>
/// <param name="Grade">How far it may be trusted.</param>
/// <param name="Edits">Never empty; all in one text, none overlapping.</param>
public sealed record Fix(string Title, FixGrade Grade, ImmutableArray<TextEdit> Edits)
{
    /// <summary>A fix that puts other words in one place.</summary>
    public static Fix Replace(SourceSpan at, string words, FixGrade grade = FixGrade.Safe) =>
        new($"write '{words}'", grade, [new TextEdit(at, words)]);
}

/// <summary>Other words for one stretch of a text; every byte outside the stretch stays as it is.</summary>
/// <param name="At">What is replaced; of length 0 for an insertion.</param>
/// <param name="NewText">What stands there afterwards; empty for a deletion.</param>
public readonly record struct TextEdit(SourceSpan At, string NewText)
{
    /// <summary>Applies edits of one text, in any order.</summary>
    /// <param name="content">The text that the edits speak of.</param>
    /// <param name="edits">None overlapping; insertions at one spot come out in the order in which they are given, before what replaces the
    /// words behind that spot.</param>
    /// <exception cref="ArgumentException">Two edits overlap.</exception>
    public static string Apply(string content, IEnumerable<TextEdit> edits)
    {
        var result = new StringBuilder(content.Length);
        int done = 0;
        foreach (TextEdit edit in edits.OrderBy(e => e.At.Start).ThenBy(e => e.At.End))
        {
            if (edit.At.Start < done)
            {
                throw new ArgumentException("Two edits overlap.", nameof(edits));
            }

            result.Append(content, done, edit.At.Start - done).Append(edit.NewText);
            done = edit.At.End;
        }

        return result.Append(content, done, content.Length - done).ToString();
    }
}
