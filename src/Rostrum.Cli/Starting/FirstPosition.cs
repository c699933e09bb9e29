using System.Globalization;
using System.Text;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Cli.Starting;

/// <summary>Lays out a first position of a new game and works out by hand what it scores.</summary>
internal sealed class FirstPosition
{
    private const int MostOnBoard = 12;

    private readonly NewGame _game;
    private readonly NewSheet _text;
    private readonly Sheet _sheet;
    private readonly BoardSpace[] _row;
    private readonly List<int> _laid = [];
    private readonly int[] _heaps;

    /// <summary>A position of a game.</summary>
    /// <param name="game">The game.</param>
    /// <param name="sheet">Its sheet, read.</param>
    public FirstPosition(NewGame game, Sheet sheet)
    {
        (_game, _text, _sheet) = (game, new NewSheet(game), sheet);
        _row = [.. sheet.Boards.SelectMany(b => b.Spaces).Where(s => s.Row == 0).OrderBy(s => s.Column)];
        int[] left = [.. game.Pieces.Select(p => game.HasHeaps ? Math.Max(1, p.Count - 1) : p.Count)];
        for (int i = 0; i < Math.Min(_row.Length, MostOnBoard) && left.Any(n => n > 0); i++)
        {
            int kind = Enumerable.Range(i, left.Length).Select(k => k % left.Length).First(k => left[k] > 0);
            left[kind]--;
            _laid.Add(kind);
        }

        _heaps = [.. game.Pieces.Select((p, i) => Math.Min(p.Count - _laid.Count(k => k == i), Math.Max(1, 4 - i)))];
    }

    /// <summary>A space on which nothing lies, for a question; null where there is none.</summary>
    public string? EmptySpace => _sheet.Boards.SelectMany(b => b.Spaces).Where(s => _laid.Count == 0 || s.Row != 0 || Array.IndexOf(_row, s) >= _laid.Count).MinBy(s => s.Row)?.Name.Name;

    /// <summary>The file.</summary>
    public string Write()
    {
        var list = new StringBuilder("seat 1:\n");
        if (_game.Board is not null)
        {
            list.Append(CultureInfo.InvariantCulture, $"  {_text.Board}:{(_laid.Count == 0 ? " []" : "")}\n").AppendJoin("", _laid.Select((k, i) => $"    {_row[i].Name.Name}: {_game.Pieces[k].Name}\n"));
        }

        list.AppendJoin("", _game.HasHeaps ? _game.Pieces.Select((p, i) => string.Create(CultureInfo.InvariantCulture, $"  {p.Heap}: {_heaps[i]}\n")) : []);
        PositionFile read = PositionReader.Read(_sheet, new SourceText("first.yaml", list.ToString()), new DiagnosticBag());
        string laid = read.Position is { } position ? PositionPrinter.Print(position) : list.ToString();
        return $"""
            # One position: what lies on the table of seat 1. What is not written is not known, which is not the same as nothing.
            # Draw or count something else, and ask: rostrum tally … first
            says: The first position.
            {laid}
            # What must come out. 'rostrum check' holds it against the sheet.
            expect:
              tally:
            {string.Concat(_text.Ideas.Select(i => Line(_text.ClauseOf(i), Points(i))))}    total: {_text.Ideas.Sum(Points)}

            """;
    }

    private static string Line(string clause, int points) => string.Create(CultureInfo.InvariantCulture, $"    {clause}: {points}\n");

    private int Points(ScoreIdea idea) => idea switch
    {
        ScoreIdea.Each => NewSheet.EachPoints * Many(0),
        ScoreIdea.Table => Many(_text.Tabled) == 0 ? 0 : NewSheet.Worth[Math.Min(Many(_text.Tabled), NewSheet.Worth.Length) - 1],
        ScoreIdea.Sets => NewSheet.SetPoints * Enumerable.Range(0, Math.Min(_game.Pieces.Length, NewSheet.MostInSet)).Min(Many),
        ScoreIdea.Rows => _laid.Count == _row.Length ? NewSheet.RowPoints : 0,
        _ => Beside(),
    };

    private int Many(int kind) => _game.HasHeaps ? _heaps[kind] : _laid.Count(k => k == kind);

    // Everything lies in one row, side by side.
    private int Beside()
    {
        int other = _game.Pieces.Length > 1 ? 1 : 0;
        return Enumerable.Range(0, _laid.Count).Where(i => _laid[i] == 0).Sum(i => new[] { i - 1, i + 1 }.Count(n => n >= 0 && n < _laid.Count && _laid[n] == other));
    }
}
