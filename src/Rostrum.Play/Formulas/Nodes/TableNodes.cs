using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas.Nodes;

/// <summary>The rows of a table of the sheet with their entries made ready.</summary>
internal sealed class TableRows
{
    private const int MostDense = 4_096;

    private readonly TableVersion _version;
    private readonly Node[] _entries;
    private readonly Node _beyond;

    public TableRows(TableVersion version, Func<Term, Node> ready)
    {
        _version = version;
        _entries = [.. version.Rows.Select(r => ready(r.Entry))];
        _beyond = version.Beyond switch
        {
            TableBeyond.Last when !version.Rows.IsEmpty => _entries[^1],
            TableBeyond.Given when version.BeyondTerm is not null => ready(version.BeyondTerm),
            _ => Constant.None,
        };
    }

    private IEnumerable<long> Keys => _version.Rows.SelectMany(r => new[] { r.Low, r.High }).OfType<long>();

    /// <summary>True where the keys lie close enough together to be looked up in an array.</summary>
    public bool IsDense => Keys.All(k => k is >= 0 and < MostDense);

    /// <summary>The entry for a number key.</summary>
    public Node OfNumber(long number)
    {
        for (int i = 0; i < _entries.Length; i++)
        {
            if (_version.Rows[i].Low <= number && (_version.Rows[i].High is null || _version.Rows[i].High >= number))
            {
                return _entries[i];
            }
        }

        return _version.Rows.All(r => r.Low is null || (r.High ?? r.Low) < number) ? _beyond : Constant.None;
    }

    /// <summary>The entry for a value of an attribute; a numeral counts as its number.</summary>
    public Node OfValue(AttributeValue value)
    {
        int row = _version.Rows.ToList().FindIndex(r => ReferenceEquals(r.Key, value));
        return row >= 0 ? _entries[row] : value.Number is { } number ? OfNumber(number) : Constant.None;
    }

    /// <summary>The table as an array over a number key.</summary>
    public Node Dense(Node key)
    {
        int most = Keys.Any() ? (int)Keys.Max() : -1;
        Node[] all = [.. Enumerable.Range(0, most + 2).Select(n => OfNumber(n))];
        return all.All(n => n is Constant)
            ? new DenseRows(key, [.. all.Select(n => ((Constant)n).Amount)], OfNumber(-1))
            : new DenseEntries(key, all, OfNumber(-1));
    }
}

/// <summary>An entry of a table of plain numbers; keys above all rows share the last place.</summary>
internal sealed class DenseRows(Node key, int[] entries, Node below) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int at = key.Value(run);
        return at == Nothing ? Nothing : at < 0 ? below.Value(run) : entries[Math.Min(at, entries.Length - 1)];
    }
}

/// <summary>An entry of a table of formulas.</summary>
internal sealed class DenseEntries(Node key, Node[] entries, Node below) : Node
{
    /// <inheritdoc />
    public override int Value(Run run)
    {
        int at = key.Value(run);
        return at == Nothing ? Nothing : (at < 0 ? below : entries[Math.Min(at, entries.Length - 1)]).Value(run);
    }
}

/// <summary>An entry of a table whose keys lie far apart.</summary>
internal sealed class RowNode(Node key, TableRows rows) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => key.Value(run) is var at && at == Nothing ? Nothing : rows.OfNumber(at).Value(run);
}

/// <summary>An entry by a value of an attribute.</summary>
internal sealed class ChosenEntry(Node key, Node[] entries) : Node
{
    /// <inheritdoc />
    public override int Value(Run run) => key.Value(run) is var at && at >= 0 ? entries[at].Value(run) : Nothing;
}
