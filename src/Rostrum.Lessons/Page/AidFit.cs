using System.Globalization;

namespace Rostrum.Lessons.Page;

/// <summary>The type size and number of columns in which a player aid fills one side of paper.</summary>
/// <param name="TypePoints">Type size in points of 1/72 inch.</param>
/// <param name="Columns">2 or 3.</param>
/// <param name="Fits">False if even the smallest type would need a second side.</param>
/// <remarks>
/// The estimate counts lines. A letter of an embedded typeface is taken as 0.46 em wide (Atkinson Hyperlegible was measured
/// at 0.445 em in running text), a letter of a reader's own typeface, which may be wide, as 0.58 em; a line is 1.3 em high.
/// The printed area is that common to A4 and Letter (216 x 279 mm, 210 x 297 mm)
/// inside 10 mm margins: 190 x 259 mm, less 19 mm for head and foot.
/// </remarks>
internal sealed record AidFit(decimal TypePoints, int Columns, bool Fits)
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private const double ColumnHeight = 240;
    private const double PageWidth = 190;
    private const double Gap = 6;

    /// <summary>From roomy to small; three columns only where a line in two would grow long.</summary>
    private static readonly (decimal TypePoints, int Columns)[] Sizes =
        [(10.5m, 2), (10m, 2), (9.5m, 2), (9m, 3), (8.5m, 3), (8m, 3), (7.5m, 3), (7m, 3)];

    /// <summary>The largest size that fits, or the smallest of all.</summary>
    public static AidFit Of(PlayerAid aid, PageAssets assets)
    {
        double letterEms = assets.Fonts.IsEmpty ? 0.58 : 0.46;
        foreach ((decimal typePoints, int columns) in Sizes)
        {
            if (Lines(aid, letterEms * (double)typePoints, columns) <= columns * LinesPerColumn((double)typePoints))
            {
                return new AidFit(typePoints, columns, Fits: true);
            }
        }

        return new AidFit(Sizes[^1].TypePoints, Sizes[^1].Columns, Fits: false);
    }

    /// <summary>The rules of the style sheet that set this size in print.</summary>
    public string Css() => string.Create(
        CultureInfo.InvariantCulture,
        $"@media print {{ html {{ font-size: {TypePoints}pt; }} .columns {{ columns: {Columns}; }} }}\n");

    private static double LinesPerColumn(double typePoints) =>
        // A line is lost where a column breaks.
        (ColumnHeight / (1.3 * typePoints * MillimetresPerPoint)) - 1;

    private static double Lines(PlayerAid aid, double letterPoints, int columns)
    {
        double width = (PageWidth - (Gap * (columns - 1))) / columns;
        double letters = (width / (letterPoints * MillimetresPerPoint)) - 1;
        return aid.Sections.Sum(section => 2.2 + section.Clauses.Sum(clause => LinesOf(clause, letters)));
    }

    private static double LinesOf(AidClause clause, double lettersPerLine) =>
        Math.Ceiling((clause.Sentence.Length + clause.Page.Length + clause.Note.Length + 2) / lettersPerLine) + 0.25;
}
