using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.Sentences;

/// <summary>The thirty hard sentences, and the small games of <c>Sheets</c>: every case of each sheet comes out as its author says.</summary>
public sealed class SentenceTests
{
    private const string Path = "tests/Rostrum.Play.Tests/";
    private const string Ending = ".cases.yaml";

    public static TheoryData<string> Sentences => [.. In("Sentences"), .. In("Sheets")];

    private static IEnumerable<string> In(string folder) => TestFiles.In(Path + folder, "*" + Ending).Select(f => f[Path.Length..^Ending.Length]);

    [Fact]
    public void There_are_thirty() => Assert.Equal(30, In("Sentences").Count());

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sentence_is_modelled_in_full(string sentence)
    {
        Sheet sheet = SheetOf(sentence);

        string problems = string.Join('\n', Cases(sentence).SelectMany(c => Problems(sheet, c)));
        Assert.True(problems.Length == 0, problems);
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void A_sentence_has_a_case_where_it_holds_and_one_where_it_does_not(string sentence) =>
        Assert.True(Cases(sentence).Count() >= 2, "One case says too little.");

    private static IEnumerable<SentenceCase> Cases(string sentence) => SentenceCase.Of(TestFiles.Read($"{Path}{sentence}{Ending}"));

    private static Sheet SheetOf(string sentence)
    {
        SheetReading reading = SheetReader.Read(GameFolder.InMemory(sentence, [(SheetReader.FileName, TestFiles.Read($"{Path}{sentence}.yaml"))]), ShippedGames.Idioms, []);
        Assert.Empty(reading.Problems.Select(p => $"{p.At}: {p.Message}"));
        return reading.Sheet!;
    }

    private static IEnumerable<string> Problems(Sheet sheet, SentenceCase sentence)
    {
        IEnumerable<string> problems = sentence.Play.Count > 0 ? OfTranscript(sheet, sentence) : OfPosition(sheet, sentence.Text, isExpecting: true).Problems;
        return problems.Select(p => $"{sentence.Name}: {p}");
    }

    private static (Position? Position, IEnumerable<string> Problems) OfPosition(Sheet sheet, string text, bool isExpecting)
    {
        var problems = new DiagnosticBag();
        PositionFile file = PositionReader.Read(sheet, new SourceText("case.yaml", text), problems);
        IEnumerable<Diagnostic> unmet = file.Position is null ? [] : ExpectationCheck.Of(file.Position, file.Expectations);
        string[] missing = isExpecting && file.Expectations.IsEmpty ? ["nothing is expected"] : [];
        return (file.Position, [.. problems.InOrder().Concat(unmet).Select(p => $"{p.Message} {p.Hint}"), .. missing]);
    }

    private static IEnumerable<string> OfTranscript(Sheet sheet, SentenceCase sentence)
    {
        (Position? from, IEnumerable<string> problems) = sentence.From is { } text ? OfPosition(sheet, text, isExpecting: false) : (null, []);
        if (problems.Any())
        {
            return problems;
        }

        TranscriptResult result = Transcript.Play(GameTable.Of(sheet, from?.Seats), sentence.Play, from);
        if (sentence.By.Count == 0)
        {
            return result.Refusal is { } refusal ? [$"line {refusal.Line + 1} '{refusal.Words}' is refused by {Prose.And(refusal.Why.By.Select(b => b.Clause))}: {refusal.Why.Because}"] : [];
        }

        return result.Refusal is null ? ["the last line is not refused"]
            : result.Refusal.Line != sentence.Play.Count - 1 || !result.Refusal.Why.By.Select(b => b.Clause).Order().SequenceEqual(sentence.By.Order())
                ? [$"line {result.Refusal.Line + 1} '{result.Refusal.Words}' is refused by {Prose.And(result.Refusal.Why.By.Select(b => b.Clause))}: {result.Refusal.Why.Because}"]
                : [];
    }
}
