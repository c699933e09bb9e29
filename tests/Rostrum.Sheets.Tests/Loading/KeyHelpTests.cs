using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Loading.Keys;
using Rostrum.Sheets.Steps;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Every key has one line of help, and the schema for editors is made of keys and help.</summary>
public sealed class KeyHelpTests
{
    private static readonly KeyHelp[] All = [.. SheetHelp.Top, .. SheetHelp.Clause, .. SheetHelp.Steps, .. SheetHelp.Entries.Values.SelectMany(e => e)];

    public static TheoryData<string> Sections => [.. SheetDialect.EntryKeys.Keys.Union(SheetHelp.Entries.Keys)];

    public static TheoryData<string, string> ClosedKeys =>
        [.. SheetHelp.Entries.SelectMany(e => e.Value.Where(h => h.Form is KeyForm.OneOf or KeyForm.OneOfInList).Select(h => (e.Key, h.Key)))];

    [Fact]
    public void Every_section_has_help_and_no_help_is_left_over() => Assert.Equal(SheetDialect.TopKeys, Fixed(SheetHelp.Top));

    [Fact]
    public void Every_key_of_clauses_has_help_and_no_help_is_left_over() => Assert.Equal(SheetDialect.ClauseKeys, Fixed(SheetHelp.Clause));

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_key_of_a_section_has_help_and_no_help_is_left_over(string section) =>
        Assert.Equal(SheetDialect.EntryKeys[section].Order(), Fixed(SheetHelp.Entries[section]).Order());

    [Fact]
    public void Heads_of_steps_are_such() =>
        Assert.Empty(SheetHelp.Steps.Where(h => h.Form == KeyForm.Steps && h.Key != "do").Select(h => h.Key).Except(StepWords.Heads.Select(w => w.Words)));

    [Fact]
    public void Help_is_one_short_sentence_or_two_on_one_line()
    {
        Assert.DoesNotContain(All, h => h.Says.Contains('\n', StringComparison.Ordinal) || h.Says.Length > 140 || h.Says[^1] is not ('.' or ']'));
        Assert.Empty(BannedWords.In(string.Join('\n', All.Select(h => h.Says))));
    }

    [Theory]
    [MemberData(nameof(ClosedKeys))]
    public void Words_of_a_closed_key_are_read_and_others_are_refused(string section, string key)
    {
        KeyHelp help = SheetHelp.Entries[section].Single(h => h.Key == key);

        Assert.Equal([], help.Words.Concat(help.AlsoRight).Append("not modelled").Where(w => IsRefused(section, key, w) && !(w == "not modelled" && help.Form == KeyForm.OneOf)));
        Assert.True(IsRefused(section, key, "sideways"));
    }

    [Fact]
    public void Schema_of_sheets_is_made_of_the_keys_as_they_are_now()
    {
        string made = SheetSchema.Write();

        Assert.Equal(made, TestFiles.Made("docs/sheet.schema.json", made));
    }

    private static IEnumerable<string> Fixed(IEnumerable<KeyHelp> helps) => helps.Where(h => !h.IsBeginning).Select(h => h.Key);

    private static bool IsRefused(string section, string key, string word)
    {
        string entry = section switch
        {
            "boards" => "squares: 2 across 2 up",
            "places" => "heap of: coin",
            "marks" => "holds: number",
            "actions" => "do: nothing",
            _ => "if: 1 is 1",
        };
        string sheet = $"rule sheet: 1\nplayers: 2\npieces: {{coin: {{count: 9}}}}\n{section}: {{tried: {{{entry}, {key}: {word}}}}}\n";
        var idioms = IdiomLibrary.Read(GameFolder.InMemory("idioms"), new DiagnosticBag());
        return SheetReader.Read(GameFolder.InMemory("tried", (SheetReader.FileName, sheet)), idioms, []).Problems.Any(p => p.Severity == Severity.Error);
    }
}
