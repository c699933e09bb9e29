using System.Collections.Immutable;
using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>Writes a player aid for paper as a PDF: one page in type that can be read at the table; where that is not enough, it goes on, and says so.</summary>
/// <remarks>Nothing is ever cut off or left out but drawings, which show what the words say. The same hand-out gives the same bytes.</remarks>
public static class HandOutWriter
{
    /// <summary>The smallest type, in points: our choice, that of small print that is still read without effort.</summary>
    public const double Smallest = 8.5;

    // From roomy to small; drawings go before the type becomes too small for a table.
    private static readonly ImmutableArray<(double Size, int Figures)> Tries =
        [(10.5, 2), (10, 2), (9.5, 2), (9, 2), (10, 1), (9.5, 1), (9, 1), (Smallest, 2), (Smallest, 1), (9, 0), (Smallest, 0)];

    private const double SizeOfMany = 10;

    /// <summary>The hand-out as a PDF.</summary>
    /// <param name="handOut">What to show.</param>
    /// <param name="paper">On which paper.</param>
    public static byte[] Write(HandOut handOut, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(handOut);
        return PaperWriter.Write(new PaperDocument(
            $"{handOut.Aid.Game}: player aid", $"What a player of {handOut.Aid.Game} needs at the table. {handOut.Aid.UnofficialNote}", handOut.Aid.Language, [.. Pages(handOut, paper)]));
    }

    /// <summary>The pages as they are written.</summary>
    internal static ImmutableArray<PaperPage> Pages(HandOut handOut, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        foreach ((double size, int figures) in Tries)
        {
            var layout = new HandOutLayout(paper, size);
            ImmutableArray<ImmutableArray<(HandOutBlock, double)>> columns = layout.Fill(layout.Blocks(handOut, figures));
            if (HandOutLayout.PagesOf(columns.Length) == 1)
            {
                return [.. layout.Pages(handOut, columns)];
            }
        }

        var roomy = new HandOutLayout(paper, SizeOfMany);
        return [.. roomy.Pages(handOut, roomy.Fill(roomy.Blocks(handOut, 2)))];
    }
}
