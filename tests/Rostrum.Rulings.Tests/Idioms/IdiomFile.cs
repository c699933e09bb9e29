using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary>What a file of the idiom library shows: clauses that were tried, an example and a near miss.</summary>
/// <param name="Idiom">The idiom.</param>
internal sealed record IdiomFile(Idiom Idiom)
{
    public static IEnumerable<IdiomFile> All => BenchGame.Idioms.All.Select(i => new IdiomFile(i));

    public static IdiomFile Of(string name) => new(BenchGame.Idioms.Find(name)!);

    /// <summary>The parameter sets that were tried, each with the sentence that it reads as.</summary>
    public IReadOnlyList<(string With, string Reads)> Tried =>
        [.. ((OutlineSequence)Idiom.Body.Find("tried")!.Value).Items.Cast<OutlineMapping>().Select(t => (Clause(t), Words(t, "reads")))];

    /// <summary>An example: the clause, the field or map, what else lies there, what is tried, what it gives.</summary>
    public IdiomShown Shown(string key)
    {
        var shown = (OutlineMapping)Idiom.Body.Find(key)!.Value;
        string? tried = shown.Find("try") is null ? null : Words(shown, "try");
        return new IdiomShown(Clause(shown), Words(shown, "on"), Holdings(shown, "and"), Holdings(shown, "they"), tried, Words(shown, "gives"));
    }

    /// <summary>True for an idiom whose examples stand on the table bench.</summary>
    public bool IsOnTable => Idiom.Body.Find("over") is not null;

    /// <summary>The text of the position of an example.</summary>
    public string PositionOf(IdiomShown shown) =>
        IsOnTable ? TableBench.PositionWith(shown.On, shown.And) : BenchGame.PositionWith(shown.On, shown.And, shown.They);

    /// <summary>The bench with a clause: idioms that score stand as a scoring clause, laws as a law, those that give a condition as a word.</summary>
    public Sheet SheetWith(string with)
    {
        string section = Idiom.Kind switch
        {
            IdiomUseKind.Score => "\nscore:\n",
            IdiomUseKind.Law => "\nlaws:\n",
            _ => "\nwords:\n",
        };
        string bench = IsOnTable ? TableBench.SheetText : BenchGame.SheetText;
        string text = bench.Replace(section, $"{section}  tried:\n{with}", StringComparison.Ordinal);
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("bench", ("sheet.yaml", text)), BenchGame.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }

    /// <summary>What the clause of such a sheet reads back as.</summary>
    public static string Sentence(Sheet sheet) =>
        sheet.Score.FirstOrDefault(s => s.Name == "tried")?.Bodies[0].Idiom?.Sentence
        ?? sheet.Laws.FirstOrDefault(l => l.Name == "tried")?.Bodies[0][0].Formula
        ?? ((Term.Idiomatic)sheet.Meanings.Single(m => m.Word.Name == "tried").Body).Use.Sentence;

    private static IReadOnlyList<(string Place, string Holds)> Holdings(OutlineMapping shown, string key) =>
        shown.Find(key)?.Value is OutlineMapping holdings ? [.. holdings.Entries.Select(e => (e.Key.Text, Written(e.Value)))] : [];

    private static string Written(OutlineNode node) => node is OutlineSequence list ? $"[{string.Join(", ", list.Items.Select(Written))}]" : Prose.Fold(((OutlineScalar)node).Text);

    // The keys of a clause, one a line, as a sheet would write them.
    private string Clause(OutlineMapping shown)
    {
        var with = (OutlineMapping)shown.Find("with")!.Value;
        IEnumerable<string> keys = with.Entries.Select(e => $"    {e.Key.Text}: {Written(e.Value)}\n");
        return $"    idiom: {Idiom.Name}\n{string.Concat(keys)}";
    }

    private static string Words(OutlineMapping mapping, string key) => Prose.Fold(((OutlineScalar)mapping.Find(key)!.Value).Text);
}

/// <summary>What an example or a near miss shows.</summary>
/// <param name="With">The clause, one key a line.</param>
/// <param name="On">The field or map.</param>
/// <param name="And">What else lies there, or what seat 1 has.</param>
/// <param name="They">What seat 2 has.</param>
/// <param name="Try">The action that is asked about, for a law.</param>
/// <param name="Gives">The points, or yes or no.</param>
internal sealed record IdiomShown(
    string With, string On, IReadOnlyList<(string Place, string Holds)> And, IReadOnlyList<(string Place, string Holds)> They, string? Try, string Gives);
