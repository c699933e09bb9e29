using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>A sheet read from its text, with the files that the tests of this folder speak of.</summary>
/// <param name="Text">The sheet.</param>
/// <param name="Reading">What came of it.</param>
internal sealed record Loaded(string Text, SheetReading Reading)
{
    /// <summary>Files that lie beside every sheet of these tests.</summary>
    public static readonly (string Name, string Content)[] Files =
        [("orders.csv", "name,pay\nFirst order,3\nSecond order,5\n"), ("untitled.csv", "title,pay\nFirst order,3\n"), ("roads.csv", "name,next to,toll,land,across,up\nOld Mill,Ferry,3,hills,0,0\nFerry,\"Old Mill, Inn\",,valley,2,1\nInn,,5,hills,3,0\n"),
         ("doubled.csv", "name,next to\nFerry,\nFerry,\n"), ("loop.csv", "name,next to\nFerry,Ferry\n"),
         ("slip.csv", "name,toll\nMill,3\nFerry,4\nInn,5s\n")];

    public Sheet Sheet => Reading.Sheet!;

    public IEnumerable<string> Ids => Reading.Problems.Select(p => p.Id);

    /// <summary>Each problem as <c>ROS0201 3,5 words</c>: id, place, the underlined words.</summary>
    public IEnumerable<string> Told => Reading.Problems.Select(p => $"{p.Id} {p.At.StartPosition} {p.At.Text}");

    /// <summary>Reads a sheet with the idiom library of the repository.</summary>
    public static Loaded Of(string text, params string[] variants) => With(text, Files, variants);

    /// <summary>Reads a sheet with other files beside it.</summary>
    public static Loaded With(string text, (string Name, string Content)[] files, params string[] variants) =>
        new(text, SheetReader.Read(GameFolder.InMemory("test", [(SheetReader.FileName, text), .. files]), BenchGame.Idioms, variants));

    /// <summary>Reads a sheet with all of its variants on.</summary>
    public static Loaded WithEveryVariant(string text) => Of(text, [.. Of(text).Reading.Sheet?.Variants.Select(v => v.Name) ?? []]);

    /// <summary>The only problem of a sheet.</summary>
    public static Diagnostic Problem(string text, params string[] variants)
    {
        Loaded loaded = Of(text, variants);
        Assert.True(loaded.Reading.Problems.Length == 1, string.Join('\n', loaded.Reading.Problems.Select(p => $"{p.Id} {p.At}: {p.Message} {p.Hint}")));
        return loaded.Reading.Problems[0];
    }

    /// <summary>The sheet with every fix applied.</summary>
    public string Mended() => TextEdit.Apply(Text, Reading.Problems.Where(p => p.Fix is not null).SelectMany(p => p.Fix!.Edits));
}
