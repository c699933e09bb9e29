using System.Collections.Immutable;
using Rostrum.Pictures;

namespace Rostrum.Lessons.HandOuts;

/// <summary>Fills the columns of as many pages as are needed.</summary>
/// <param name="paper">The paper.</param>
/// <param name="size">Of the type, in points.</param>
internal sealed class HandOutLayout(PaperSize paper, double size)
{
    /// <summary>White edge of the paper, in points: what every printer at home leaves, and room for a punch.</summary>
    public const double Margin = 34;

    private const int Columns = 2;
    private const double Gap = 20;
    private const double Head = 40;
    private const double Foot = 30;

    private readonly double _bottom = paper.Height - Margin - Foot;

    /// <summary>How wide a column is.</summary>
    public double ColumnWidth => (paper.Width - (2 * Margin) - ((Columns - 1) * Gap)) / Columns;

    /// <summary>The columns one after the other, each with its blocks and where they begin; two of them make a page.</summary>
    public ImmutableArray<ImmutableArray<(HandOutBlock Block, double Top)>> Fill(IEnumerable<HandOutBlock> blocks)
    {
        var columns = new List<List<(HandOutBlock Block, double Top)>> { new() };
        var waiting = new Queue<HandOutBlock>();
        HandOutBlock[] all = [.. blocks];
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i].MayWait && !Fits(columns[^1], all[i].Before, all[i].Height))
            {
                waiting.Enqueue(all[i]);
                continue;
            }

            while (!Fits(columns[^1], all[i].Before, Needed(all, i)))
            {
                Begin(columns, waiting);
            }

            Put(columns[^1], all[i]);
        }

        while (waiting.Count > 0)
        {
            Begin(columns, waiting);
        }

        return [.. columns.Select(c => c.ToImmutableArray())];
    }

    /// <summary>The pages.</summary>
    /// <param name="handOut">For head and foot.</param>
    /// <param name="columns">As <see cref="Fill"/> gave them.</param>
    public IEnumerable<PaperPage> Pages(HandOut handOut, ImmutableArray<ImmutableArray<(HandOutBlock Block, double Top)>> columns)
    {
        int pages = PagesOf(columns.Length);
        for (int page = 0; page < pages; page++)
        {
            Drawn[] drawn = [.. Enumerable.Range(page * Columns, Columns).Where(c => c < columns.Length)
                .SelectMany(c => columns[c].Select(b => b.Block.Draw(new Point(Margin + (c % Columns * (ColumnWidth + Gap)), b.Top))))];
            yield return new PaperPage(
                paper.Width,
                paper.Height,
                [.. HandOutEdges.Head(handOut.Aid, paper, page), .. drawn.SelectMany(d => d.Nodes), .. HandOutEdges.Foot(handOut.Aid, paper, page, pages)],
                [.. drawn.Select(d => d.Picture).OfType<PlacedScene>()]);
        }
    }

    /// <summary>How many pages so many columns take.</summary>
    public static int PagesOf(int columns) => (columns + Columns - 1) / Columns;

    /// <summary>The blocks of a hand-out in columns of this layout.</summary>
    public IEnumerable<HandOutBlock> Blocks(HandOut handOut, int figures) => new HandOutBlocks(ColumnWidth, size).Of(handOut, figures);

    private static double TopOf(List<(HandOutBlock Block, double Top)> column) => column is [.., var last] ? last.Top + last.Block.Height : Margin + Head;

    // What is higher than a column is put into an empty one all the same.
    private bool Fits(List<(HandOutBlock Block, double Top)> column, double before, double height) => column.Count == 0 || TopOf(column) + before + height <= _bottom;

    private static void Put(List<(HandOutBlock Block, double Top)> column, HandOutBlock block) => column.Add((block, TopOf(column) + (column.Count == 0 ? 0 : block.Before)));

    private void Begin(List<List<(HandOutBlock Block, double Top)>> columns, Queue<HandOutBlock> waiting)
    {
        columns.Add([]);
        while (waiting.TryPeek(out HandOutBlock? drawing) && Fits(columns[^1], drawing.Before, drawing.Height))
        {
            Put(columns[^1], waiting.Dequeue());
        }
    }

    // A heading takes the block behind it along.
    private static double Needed(HandOutBlock[] all, int i) =>
        all[i].Height + (all[i].StaysWithNext && i + 1 < all.Length ? all[i + 1].Before + Needed(all, i + 1) : 0);
}
