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

    /// <summary>An example: the clause, the field, what it gives.</summary>
    public (string With, string On, string Gives) Shown(string key)
    {
        var shown = (OutlineMapping)Idiom.Body.Find(key)!.Value;
        return (Clause(shown), Words(shown, "on"), Words(shown, "gives"));
    }

    /// <summary>The bench game with a clause: idioms that score stand as a scoring clause, those that give a condition as a word.</summary>
    public Sheet SheetWith(string with)
    {
        string section = Idiom.Scores ? "\nscore:\n" : "\nwords:\n";
        string text = BenchGame.SheetText.Replace(section, $"{section}  tried:\n{with}", StringComparison.Ordinal);
        SheetReading reading = SheetReader.Read(GameFolder.InMemory("bench", ("sheet.yaml", text)), BenchGame.Idioms, []);
        Assert.Empty(reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        return reading.Sheet!;
    }

    /// <summary>What the clause of such a sheet reads back as.</summary>
    public static string Sentence(Sheet sheet) =>
        sheet.Score.FirstOrDefault(s => s.Name == "tried")?.Bodies[0].Idiom?.Sentence
        ?? ((Term.Idiomatic)sheet.Meanings.Single(m => m.Word.Name == "tried").Body).Use.Sentence;

    // The keys of a clause, one a line, as a sheet would write them.
    private string Clause(OutlineMapping shown)
    {
        var with = (OutlineMapping)shown.Find("with")!.Value;
        IEnumerable<string> keys = with.Entries.Select(e => $"    {e.Key.Text}: {((OutlineScalar)e.Value).Text}\n");
        return $"    idiom: {Idiom.Name}\n{string.Concat(keys)}";
    }

    private static string Words(OutlineMapping mapping, string key) => Prose.Fold(((OutlineScalar)mapping.Find(key)!.Value).Text);
}
