using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>Numbers all lines and areas of all boards through, for each player's copy its own.</summary>
internal sealed class LineTable
{
    private readonly Dictionary<(LineFamily Family, int Holder), int> _first = [];
    private readonly TableLayout _layout;

    public LineTable(TableLayout layout)
    {
        _layout = layout;
        var spots = new List<int[]>();
        var owners = new List<int>();
        var orders = new List<int>();
        foreach (Holder holder in layout.Holders.Where(h => h.Board is not null))
        {
            foreach (LineFamily family in holder.Board!.Families)
            {
                _first[(family, holder.Number)] = spots.Count;
                spots.AddRange(family.Lines.Select(l => BoardTables.Spots(holder, l.Spaces)));
                owners.AddRange(family.Lines.Select(_ => holder.Seat));
                orders.AddRange(Enumerable.Range(1, family.Lines.Length));
            }
        }

        (Spots, Owners, Orders) = ([.. spots], [.. owners], [.. orders]);
    }

    /// <summary>By line: its spaces in order.</summary>
    public int[][] Spots { get; }

    /// <summary>By line: the seat whose board it is on; -1 for a board of the table.</summary>
    public int[] Owners { get; }

    /// <summary>By line: its number in its family; the first is 1.</summary>
    public int[] Orders { get; }

    /// <summary>By spot: the line of a family in which it lies; nothing where there is none.</summary>
    public int[] OfSpot(LineFamily family)
    {
        int[] of = new int[_layout.Spots];
        Array.Fill(of, Node.Nothing);
        foreach (Holder holder in Holders(family))
        {
            for (int space = 0; space < holder.Length; space++)
            {
                of[holder.First + space] = family.LineOf(space) is { } line ? _first[(family, holder.Number)] + line : Node.Nothing;
            }
        }

        return of;
    }

    /// <summary>By holder: the line of a family with a 0-based number; nothing for other boards.</summary>
    public int[] OfHolder(LineFamily family, int line)
    {
        int[] of = new int[_layout.Holders.Length];
        Array.Fill(of, Node.Nothing);
        foreach (Holder holder in Holders(family))
        {
            of[holder.Number] = _first[(family, holder.Number)] + line;
        }

        return of;
    }

    /// <summary>By holder: all lines of a family in order; none for other boards.</summary>
    public int[][] AllOfHolder(LineFamily family)
    {
        int[][] of = new int[_layout.Holders.Length][];
        Array.Fill(of, []);
        foreach (Holder holder in Holders(family))
        {
            of[holder.Number] = [.. Enumerable.Range(_first[(family, holder.Number)], family.Lines.Length)];
        }

        return of;
    }

    /// <summary>The family of a line, its board, and its 0-based number in the family.</summary>
    public (LineFamily Family, Holder Holder, int Index) Tell(int line)
    {
        ((LineFamily family, int holder), int first) = _first.Single(f => line >= f.Value && line < f.Value + f.Key.Family.Lines.Length);
        return (family, _layout.Holders[holder], line - first);
    }

    private IEnumerable<Holder> Holders(LineFamily family) => _layout.Holders.Where(h => ReferenceEquals(h.Place, family.Board));
}
