using System.Collections.Immutable;
using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>A section of a sheet as text.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Value">What stands behind the key; null where entries follow.</param>
/// <param name="Entries">One entry or step each: a first line and deeper lines, without the margin.</param>
internal sealed record SheetSection(string Key, string? Value, ImmutableArray<string> Entries)
{
    /// <summary>The text with its margin; empty for a section without content.</summary>
    public string Text => Value is not null ? $"{Key}: {Value}\n"
        : Entries.IsEmpty ? ""
        : $"{Key}:\n{string.Concat(Entries.Select(e => string.Concat(e.Split('\n').Select(l => $"  {l}\n"))))}";
}

/// <summary>A rule sheet that was made by chance.</summary>
/// <param name="Seed">The seed of the run.</param>
/// <param name="Number">Which sheet of the run.</param>
/// <param name="Sections">What it says.</param>
internal sealed record RandomSheet(ulong Seed, int Number, ImmutableArray<SheetSection> Sections)
{
    /// <summary>The text of <c>sheet.yaml</c>.</summary>
    public string Text => $"rule sheet: 1\ngame: Random {Seed} {Number}\n{string.Concat(Sections.Select(s => s.Text))}";

    /// <summary>Reads the text with the real loader.</summary>
    public SheetReading Read() => SheetReader.Read(GameFolder.InMemory("random", (SheetReader.FileName, Text)), ShippedGames.Idioms, []);

    /// <summary>What the loader refuses, in words.</summary>
    public static string Errors(SheetReading reading) =>
        string.Join('\n', reading.Problems.Where(p => p.Severity == Severity.Error).Select(p => DiagnosticText.Render(p, 160)));

    /// <summary>This sheet with one section or entry less, in every way.</summary>
    public IEnumerable<RandomSheet> Smaller()
    {
        for (int section = Sections.Length - 1; section >= 0; section--)
        {
            yield return this with { Sections = Sections.RemoveAt(section) };
            ImmutableArray<string> entries = Sections[section].Entries;
            for (int entry = entries.Length - 1; entry >= 0 && entries.Length > 1; entry--)
            {
                yield return this with { Sections = Sections.SetItem(section, Sections[section] with { Entries = entries.RemoveAt(entry) }) };
            }
        }
    }
}
