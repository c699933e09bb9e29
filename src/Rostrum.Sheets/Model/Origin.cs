using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>Where a part of the typed tree comes from.</summary>
/// <param name="At">The words themselves: in the sheet, an idiom file, a card table or a variant.</param>
/// <param name="Through">The places that brought them in, nearest first: for the meaning of an idiom, the clause that uses it. Often empty.</param>
public sealed record Origin(SourceSpan At, ImmutableArray<SourceSpan> Through)
{
    /// <summary>Words that stand where they are meant.</summary>
    public static Origin Of(SourceSpan at) => new(at, []);

    /// <summary>The place to show to the author of the sheet: the clause that uses the idiom, else the words themselves.</summary>
    public SourceSpan Shown => Through.IsDefaultOrEmpty ? At : Through[^1];
}
