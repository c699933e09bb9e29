using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Cli.Starting;

/// <summary>Writes the sheet with which a game starts: each section with a remark that says what it is for.</summary>
/// <param name="game">The game.</param>
internal sealed class NewSheet(NewGame game)
{
    /// <summary>What each full row scores.</summary>
    public const int RowPoints = 3;

    /// <summary>What each piece scores.</summary>
    public const int EachPoints = 2;

    /// <summary>What each set scores.</summary>
    public const int SetPoints = 5;

    /// <summary>How many kinds make a set at the most.</summary>
    public const int MostInSet = 3;

    private const string Cite = "    cite: book 1\n";

    private readonly StringBuilder _text = new();

    /// <summary>What one, two, three, four and more pieces score by the table.</summary>
    public static ImmutableArray<int> Worth { get; } = [1, 3, 6, 10];

    /// <summary>What the board is called.</summary>
    public string Board => Free("board", "field", "ground", "plot");

    private string Row => Free("row", "line", "tier", "bank");

    private string Table => Free("worth", "pay", "yield", "gain");

    private NewPiece First => game.Pieces[0];

    private NewPiece Second => game.Pieces.Length > 1 ? game.Pieces[1] : First;

    /// <summary>The index of the piece that the table counts: another than the first, unless the table is what was chosen.</summary>
    public int Tabled => game.Score == ScoreIdea.Table || game.Pieces.Length == 1 ? 0 : 1;

    /// <summary>The name of the clause of an idea.</summary>
    public string ClauseOf(ScoreIdea idea) => idea switch
    {
        ScoreIdea.Each => First.Plural,
        ScoreIdea.Table => $"many {game.Pieces[Tabled].Plural}",
        ScoreIdea.Sets => "sets",
        ScoreIdea.Rows => $"full {Prose.Plural(Row)}",
        _ => $"{First.Plural} beside others",
    };

    /// <summary>The ideas that the sheet shows: the chosen one, then what teaches an idiom and a table.</summary>
    public ImmutableArray<ScoreIdea> Ideas => [.. new[] { game.Score, game.HasHeaps ? ScoreIdea.Each : ScoreIdea.Rows, ScoreIdea.Table }.Distinct()];

    /// <summary>The file.</summary>
    public string Write()
    {
        Head();
        Things();
        Scoring();
        if (game.Board is not null)
        {
            Laws();
        }
        else if (game.HasTurn)
        {
            Collecting();
        }

        if (game.HasTurn)
        {
            Turn();
        }

        return _text.ToString();
    }

    private void Head()
    {
        string players = game.Fewest == game.Most ? $"{game.Most}" : $"{game.Fewest} to {game.Most}";
        Add($"""
            # A rule sheet. What stands behind a '#' is a remark for you; delete it when you know it.
            rule sheet: 1
            game: {(game.Name.All(c => char.IsLetter(c) || c == ' ') ? game.Name : OutlineQuotes.Quote(game.Name))}
            players: {players}

            # Where the rules stand. Put your rulebook's title here, and its page behind every 'cite: book 1' below.
            sources:
              book: {'{'}title: Rulebook{'}'}

            """);
    }

    private void Things()
    {
        Add("# What is in the box, and how many of each.\npieces:");
        Lines(game.Pieces.Select(p => $"  {p.Name}: {{count: {p.Count.ToString(CultureInfo.InvariantCulture)}, plural: {p.Plural}}}"));
        if (game.HasHeaps)
        {
            Add("# What every player keeps in front of him: 'my …' in the rules below.\nplaces:");
            Lines(game.Pieces.Select(p => $"  {p.Heap}: {{heap of: {p.Name}, of: each player}}"));
        }

        if (game.Board is { } board)
        {
            Add("# One sign for each piece, for drawings of the board.\nsigns:");
            Lines(game.Pieces.Zip(Signs(), (p, sign) => $"  {sign}: {p.Name}"));
            Add("# Every player has such a board. 'rows' gives its rows a word that rules can use.\nboards:");
            Lines([$"  {Board}: {{of: each player, {board.Key}: {board.Shape}, rows: {Row}, holds: 1}}"]);
        }

        Add("# Numbers to look up: so many pieces, so many points. 'last' goes on with the last number.\ntables:");
        Lines([$"  {Table}: {{rows: {{{string.Join(", ", Worth.Select((w, i) => $"{i + 1}: {w}"))}}}, beyond: last, cite: book 1}}"]);
    }

    private void Scoring()
    {
        Add("# What scores at the end. 'says' is the rule in your words, 'cite' its page; 'points' or an idiom is what it means.\n# Idioms are rules that need only a name: 'rostrum read --idioms' lists them. Change or delete what your game has not.\nscore:");
        Lines(Ideas.Select(i => $"  {ClauseOf(i)}:\n{Clause(i)}"));
    }

    private string Clause(ScoreIdea idea) => idea switch
    {
        ScoreIdea.Each when game.HasHeaps => $"    says: Each {First.Name} in front of you scores {EachPoints} points.\n{Cite}    idiom: so many for each\n    of: my {First.Heap}\n    points: {EachPoints}",
        ScoreIdea.Each => $"    says: Each {First.Name} on your {Board} scores {EachPoints} points.\n{Cite}    points: {EachPoints} times {Count(First)}",
        ScoreIdea.Table => $"    says: One, two, three or four {game.Pieces[Tabled].Plural} score 1, 3, 6 or 10 points.\n{Cite}    points: {Table} of {Count(game.Pieces[Tabled])}",
        ScoreIdea.Sets => $"    says: Each set of {Prose.And(game.Pieces.Take(MostInSet).Select(p => Prose.A(p.Name)))} scores {SetPoints} points.\n{Cite}    points: {SetPoints} times smallest(({string.Join(", ", game.Pieces.Take(MostInSet).Select(Count))}), it)",
        ScoreIdea.Rows => $"    says: Each full {Row} of your {Board} scores {RowPoints} points.\n{Cite}    idiom: full lines\n    along: {Prose.Plural(Row)}\n    points: {RowPoints}",
        _ => $"    says: {Prose.Sentence(Prose.A(First.Name))} scores 1 point for each {Second.Name} beside it.\n{Cite}    each: s in my {Board} where s shows {Prose.A(First.Name)}\n    points: count(n in neighbours of s where n shows {Prose.A(Second.Name)})",
    };

    private void Laws()
    {
        Add($"""
            # What players do. The words of 'phrase' are those with which you ask: rostrum rule … "place {First.Name} on …"
            actions:
              place:
                says: Take a piece from the supply and put it on your {Board}.
                cite: book 1
                phrase: place (what) on (spot)
                choose:
                  what: one of supply
                  spot: a space in my {Board}
                do: move what to spot

            # What is allowed. An action is legal where it keeps every law that binds it.
            laws:
              empty space:
                says: A piece goes on an empty space.
                cite: book 1
                binds: place
                needs: spot is empty

            """);
    }

    // Without a board, a turn takes pieces of the first kind.
    private void Collecting() => Add($"""
        # What players do. The words of 'phrase' are those with which you ask: rostrum rule … "collect 1"
        actions:
          collect:
            says: Take one or two {First.Plural} from the supply and put them in front of you.
            cite: book 1
            phrase: collect (many)
            choose: {'{'}many: a number from 1 to 2{'}'}
            do: move many {First.Plural} from supply to my {First.Heap}

        # What is allowed. An action is legal where it keeps every law that binds it.
        laws:
          enough {First.Plural}:
            says: Nobody takes more than there is.
            cite: book 1
            binds: collect
            needs: count({First.Plural} in supply) is at least many

        """);

    // What makes a whole game of it.
    private void Turn()
    {
        (string name, string says, string condition) = game.Board is null
            ? ($"last {First.Name}", $"When the last {First.Name} is taken, the game is over.", $"no({First.Plural} in supply)")
            : ($"full {Board}", $"When your {Board} is full or nothing is left to place, the game is over.", $"my {Board} is full or no(supply)");
        Add($"""
            # What a player does in a turn: 'rostrum count' and 'rostrum play' carry it out, one player after the other.
            turn: {(game.Board is null ? "collect" : "place")}

            # When the game is over. It is asked after each turn, of the player who had it; then the score says who wins.
            end:
              {name}:
                says: {says}
                cite: book 1
                if: {condition}
                then: at once
            """);
    }

    private string Count(NewPiece piece) => game.HasHeaps ? $"count(my {piece.Heap})" : $"count({piece.Plural} in my {Board})";

    // A letter of the name that no other piece has; else any.
    private List<char> Signs()
    {
        var signs = new List<char>();
        foreach (NewPiece piece in game.Pieces)
        {
            signs.Add(piece.Name.ToLowerInvariant().Where(char.IsLetter).Concat("abcdefghijklmnopqrstuvwxyz").First(c => !char.IsSurrogate(c) && !signs.Contains(c)));
        }

        return signs;
    }

    private string Free(params string[] names)
    {
        string[] taken = [.. game.Pieces.SelectMany(p => new[] { p.Name, p.Plural }).SelectMany(Prose.WordsOf)];
        return names.FirstOrDefault(n => !taken.Contains(n, StringComparer.OrdinalIgnoreCase) && !taken.Contains(Prose.Plural(n), StringComparer.OrdinalIgnoreCase)) ?? names[0];
    }

    private void Lines(IEnumerable<string> lines) => Add(string.Concat(lines.Select(l => l + "\n")));

    private void Add(string lines) => _text.Append(lines).Append('\n');
}
