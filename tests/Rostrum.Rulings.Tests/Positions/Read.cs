using System.Collections.Immutable;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Positions;

/// <summary>One reading of a position text, with the words that tests use to look at it.</summary>
internal sealed record Read(PositionFile File, ImmutableArray<Diagnostic> Problems)
{
    public Position Position => File.Position!;

    public ImmutableArray<string> Told => [.. Problems.Select(p => $"{p.Id} {p.At.StartPosition}-{p.At.EndPosition} {p.Message} {p.Hint}")];

    public static Read Of(string text, Sheet? sheet = null)
    {
        var problems = new DiagnosticBag();
        PositionFile file = PositionReader.Read(sheet ?? TestSheet.Round, new SourceText("positions/test.yaml", text), problems);
        return new Read(file, problems.InOrder());
    }

    public static Read Fine(string text, Sheet? sheet = null)
    {
        Read read = Of(text, sheet);
        Assert.Empty(read.Told);
        return read;
    }

    /// <summary>The only problem of a text.</summary>
    public static Diagnostic Problem(string text, Sheet? sheet = null) => Assert.Single(Of(text, sheet).Problems);

    /// <summary>The text after every fix of its only problem was applied.</summary>
    public static string Mended(string text, Sheet? sheet = null) => TextEdit.Apply(text, Problem(text, sheet).Fix!.Edits);

    /// <summary>What lies on a space of the first board.</summary>
    public Stack On(string space, int seat = 0) =>
        Position.At(0, seat, Position.Sheet.Boards[0].Spaces.Single(s => s.Name.Name == space).Name.Index);

    /// <summary>What lies in a place.</summary>
    public Stack In(string place, int seat = 0, int slot = 0) =>
        Position.Places[Position.Sheet.Places.IndexOf(Position.Sheet.Places.Single(p => p.Place.Name == place))][seat][slot];

    /// <summary>A content in words.</summary>
    public string Say(Stack content) => new PositionWords(Position).Content(content);
}
