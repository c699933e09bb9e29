using System.Collections.Immutable;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Scripts;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Lessons.Review;

/// <summary>Everything that a sheet says and somebody may say aloud: its facts, its clauses, the rows of its tables, of the game and of each variant.</summary>
internal sealed class Statements
{
    private static readonly string[] Unspoken = ["Signs", "Sources", "Open questions", "Appearance"];

    // Sections whose numbers somebody says as they stand there; those of components and tables are facts or rows.
    private static readonly string[] Numbered = ["Facts", "Components", "Laws", "Scoring", "End of the game", "Actions", "Course", "Rating", "Variants"];

    private static readonly string Cost = Stems.Of("cost");

    private const double OfVariantName = 0.25;
    private const double OfScriptWord = 1.5;
    private const int ScriptReach = 8;

    private Statements(Units units, ImmutableArray<Statement> all, ImmutableDictionary<string, double> weights, ImmutableArray<(ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows)> tables) =>
        (Units, All, Weights, Tables) = (units, all, weights, tables);

    /// <summary>What numbers count.</summary>
    public Units Units { get; }

    /// <summary>The statements.</summary>
    public ImmutableArray<Statement> All { get; }

    /// <summary>How much each idea tells: 1 for one that stands in most statements, more for rare ones.</summary>
    public ImmutableDictionary<string, double> Weights { get; }

    /// <summary>The tables of numbers by numbers, with their rows in order.</summary>
    public ImmutableArray<(ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows)> Tables { get; }

    /// <summary>The clauses of the game itself.</summary>
    public ImmutableArray<ReadClause> Clauses { get; private init; } = [];

    /// <summary>How the presenter's script says it.</summary>
    public ScriptWords Script { get; private init; } = ScriptWords.None;

    /// <summary>The statements of a game.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    /// <param name="lesson">The script that was spoken from; null where there is none.</param>
    public static Statements Of(Game game, Lesson? lesson = null)
    {
        Sheet sheet = game.Sheet().Sheet!;
        var units = new Units(sheet);
        ImmutableArray<ReadClause> basis = SheetReadBack.Of(sheet);
        var clauses = basis.Select(c => (Clause: c, Variant: (string?)null)).ToList();
        foreach (VariantFacts variant in sheet.Variants)
        {
            if (game.Sheet(variant.Name) is { IsSound: true, Sheet: { } with })
            {
                clauses.AddRange(SheetReadBack.Differences(sheet, with).Select(d => d.After).OfType<ReadClause>().Select(c => (c, (string?)variant.Name)));
            }
        }

        var raw = clauses.Where(c => !Unspoken.Contains(c.Clause.Section)).Select(c => (c.Clause, c.Variant, Tokens: TokensOf(c.Clause))).ToList();
        Dictionary<string, int> met = raw.SelectMany(r => r.Tokens.Select(t => t.Stem).Where(s => s.Length > 0).Distinct()).GroupBy(s => s).ToDictionary(g => g.Key, g => g.Count());
        // The words of a variant's name stand in its facts and are said once, when it begins.
        HashSet<string> ofGame = [.. raw.Where(r => r.Variant is null && r.Clause.Section is not ("Facts" or "Variants")).SelectMany(r => r.Tokens).Select(t => t.Stem)];
        HashSet<string> ofVariants = [.. sheet.Variants.SelectMany(v => Spoken(v.Name)).Select(t => t.Stem).Where(w => w.Length > 0 && !ofGame.Contains(w))];
        var weights = met.ToImmutableDictionary(m => m.Key, m => Math.Log(1 + ((double)raw.Count / m.Value)) * (ofVariants.Contains(m.Key) ? OfVariantName : 1));
        var tables = Tabled(sheet, basis);
        IEnumerable<Statement> all = raw.Select(r => Made(r.Clause, r.Variant, r.Tokens, units, weights))
            .Select(s => s with { OfVariant = [.. s.Words.Keys.Where(ofVariants.Contains), .. s.Variant is null ? [] : Spoken(s.Variant).Select(t => t.Stem).Where(ofVariants.Contains)] }).Concat(tables.SelectMany(t => Rows(t.Clause, t.Rows, units, weights)))
            .Concat(Counted(sheet, basis, units, weights))
            .Concat(Beyond(sheet, basis, weights));
        ScriptWords script = lesson is null ? ScriptWords.None : ScriptWords.Of(game, sheet, lesson);
        return new Statements(units, [.. all, .. script.Facts.SelectMany(f => Scripted(f, basis, units, weights)).Select(s => s with { OfVariant = [.. Spoken(s.Clause.Name).Select(t => t.Stem).Where(ofVariants.Contains)] })], weights, tables) { Script = script, Clauses = basis };
    }

    /// <summary>The words of a clause as if they were spoken.</summary>
    public static ImmutableArray<SpokenToken> TokensOf(ReadClause clause) => Spoken(clause.Section == "Facts" ? clause.Says : Sentence(clause));

    /// <summary>Words as if they were spoken.</summary>
    public static ImmutableArray<SpokenToken> Spoken(string words) =>
        SpeechReader.Read([.. Prose.WordsOf(words).Select((w, i) => new TimedWord(w, TimeSpan.Zero, TimeSpan.Zero, 0, false))]);

    /// <summary>What is said of a clause: its sentence and its name.</summary>
    public static string Sentence(ReadClause clause) => clause.Section is "Words" or "Scoring" or "Laws" or "End of the game" && clause.Name.Length > 0 && !clause.Name.Contains('(', StringComparison.Ordinal)
        ? $"{clause.Says} {clause.Name}." : clause.Says;

    private static Statement Made(ReadClause clause, string? variant, ImmutableArray<SpokenToken> tokens, Units units, ImmutableDictionary<string, double> weights)
    {
        ImmutableSortedDictionary<string, double> words = Weighed(tokens, weights);
        bool isFact = clause.Section == "Facts";
        // The name of a fact may hold the key of a row: 'salt for three pans'. Its value is its last number.
        int[] numbers = isFact ? [.. Enumerable.Range(0, tokens.Length).Where(i => tokens[i].Number is not null)] : [];
        var slots = ImmutableArray.CreateBuilder<Slot>();
        for (int i = 0; i < tokens.Length && Numbered.Contains(clause.Section); i++)
        {
            if (tokens[i].Number is not { } value || (isFact ? i != numbers[^1] : units.IsInName(tokens, i)))
            {
                continue;
            }

            string? unit = isFact ? UnitOfFact(clause.Name, units) : units.Of(tokens, i);
            bool isBare = clause.Section == "Components" || words.Keys.All(w => w == unit);
            int keyed = numbers.Length > 1 ? numbers[0] : -1;
            long? key = keyed < 0 ? null : tokens[keyed].Number;
            slots.Add(new Slot(Math.Abs(value), value < 0 ? Stems.Of("point") : unit, key, isBare && key is null) { Near = Beside(tokens, i), IsOrdinal = tokens[i].IsOrdinal, IsMinus = value < 0 || words.ContainsKey(Cost), KeyUnit = key is null ? null : NextUnit(tokens, keyed, units), IsOfEach = isFact ? clause.Name.Contains(" of each", StringComparison.Ordinal) : tokens.Skip(i + 1).Take(3).Any(t => t.Text == "each") });
        }

        return new Statement(clause, variant, words, slots.ToImmutable());
    }

    // The ideas of words, each with what it tells.
    private static ImmutableSortedDictionary<string, double> Weighed(IEnumerable<SpokenToken> tokens, ImmutableDictionary<string, double> weights, double unknown = 1) =>
        tokens.Select(t => t.Stem).Where(s => s.Length > 0).Distinct().ToImmutableSortedDictionary(s => s, s => weights.GetValueOrDefault(s, unknown), StringComparer.Ordinal);

    // The ideas right around a number.
    private static ImmutableHashSet<string> Beside(ImmutableArray<SpokenToken> tokens, int at) => [.. tokens.Skip(Math.Max(0, at - 3)).Take(7).Select(t => t.Stem).Where(s => s.Length > 0)];

    private static IEnumerable<(TableFacts Table, ReadClause Clause)> TableClauses(Sheet sheet, ImmutableArray<ReadClause> basis) =>
        from table in sheet.Tables
        let clause = basis.FirstOrDefault(c => c.Section == "Tables" && c.Name == table.Table.Name)
        where clause is not null
        select (table, clause);

    // Rows that only a reading of the table has: nobody is wrong who speaks of them.
    private static IEnumerable<Statement> Beyond(Sheet sheet, ImmutableArray<ReadClause> basis, ImmutableDictionary<string, double> weights) =>
        from pair in TableClauses(sheet, basis)
        let numbers = pair.Table.Versions.SelectMany(v => v.Rows).SelectMany(r => new[] { KeyOf(r), r.Entry is Term.Number entry ? entry.Amount : null }).OfType<long>().Where(n => n > 1).Distinct()
        let words = Weighed(TokensOf(pair.Clause), weights)
        select new Statement(pair.Clause, null, words, [.. numbers.Select(n => new Slot(n, null, null, false) { IsOnlyRight = true })]);

    // The fact as the script says it, with the words of its sentence.
    private static IEnumerable<Statement> Scripted((string Fact, string Sentence, long Number) said, ImmutableArray<ReadClause> basis, Units units, ImmutableDictionary<string, double> weights)
    {
        ImmutableArray<SpokenToken> tokens = Spoken(said.Sentence);
        int at = tokens.ToList().FindIndex(t => t.Size == said.Number && !t.IsOrdinal);
        if (at < 0 || basis.FirstOrDefault(c => c.Section == "Facts" && c.Name == said.Fact) is not { } clause)
        {
            yield break;
        }

        ImmutableArray<SpokenToken> near = [.. tokens.Skip(Math.Max(0, at - ScriptReach)).Take((2 * ScriptReach) + 1)];
        ImmutableSortedDictionary<string, double> words = Weighed(near, weights, OfScriptWord);
        yield return new Statement(clause, null, words, [new Slot(said.Number, units.Of(tokens, at) ?? UnitOfFact(said.Fact, units), null, false) { Near = Beside(tokens, at) }]);
    }

    // What follows from things and boards, told by their clause.
    private static IEnumerable<Statement> Counted(Sheet sheet, ImmutableArray<ReadClause> basis, Units units, ImmutableDictionary<string, double> weights) =>
        from count in SheetCounts.Of(sheet)
        let clause = basis.FirstOrDefault(c => c.Section is "Components" or "Places" && c.Name == count.Name)
        where clause is not null
        select Made(clause with { Section = "Components", Says = count.Says }, null, Spoken(count.Says), units, weights);

    // What 'one, two, three, four pans' count.
    private static string? NextUnit(ImmutableArray<SpokenToken> tokens, int at, Units units) =>
        tokens.Skip(at + 1).Take(12).Select(t => t.Stem).FirstOrDefault(units.Is);

    private static string? UnitOfFact(string name, Units units)
    {
        string last = Prose.WordsOf(Units.Head(name)).Select(w => Stems.Of(w.ToLowerInvariant())).LastOrDefault(units.Is) ?? "";
        return last.Length == 0 ? null : last == Stems.Of("cost") ? Stems.Of("point") : last;
    }

    private static ImmutableArray<(ReadClause Clause, ImmutableArray<(long Key, long Value)> Rows)> Tabled(Sheet sheet, ImmutableArray<ReadClause> basis) =>
    [
        .. from pair in TableClauses(sheet, basis)
           let rows = pair.Table.Versions[0].Rows.Select(r => (Key: KeyOf(r), Value: r.Entry is Term.Number number ? number.Amount : (long?)null)).ToArray()
           where rows.Count(r => r is { Key: not null, Value: not null }) >= 3
           select (pair.Clause, rows.Where(r => r is { Key: not null, Value: not null }).Select(r => (r.Key!.Value, r.Value!.Value)).ToImmutableArray()),
    ];

    private static long? KeyOf(TableRow row) => row.Low is { } low && row.Low == row.High ? low : null;

    // A row is said with its key beside it: 'three bowls make six'.
    private static IEnumerable<Statement> Rows(ReadClause clause, ImmutableArray<(long Key, long Value)> rows, Units units, ImmutableDictionary<string, double> weights)
    {
        ImmutableArray<SpokenToken> tokens = TokensOf(clause);
        ImmutableSortedDictionary<string, double> words = Weighed(tokens, weights);
        string? unit = words.ContainsKey(Stems.Of("point")) ? Stems.Of("point") : tokens.Select((t, i) => t.Amount is null ? null : units.Of(tokens, i)).LastOrDefault(u => u is not null);
        string? keyUnit = NextUnit(tokens, tokens.ToList().FindIndex(t => t.Amount is not null), units);
        return rows.Select(r => new Statement(clause, null, words, [new Slot(r.Value, unit, r.Key, false) { KeyUnit = keyUnit }]));
    }
}
