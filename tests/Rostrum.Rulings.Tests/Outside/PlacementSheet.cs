using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests.Outside;

/// <summary>A sample sheet with one board and one action that places, and the door to its laws: every law of the sheet, asked by the
/// reference evaluator. Words are left out only because counting asks a hundred thousand times; a test holds the door against words.</summary>
internal sealed class PlacementSheet
{
    private readonly ActionFacts _place;

    private PlacementSheet(Sheet sheet)
    {
        Sheet = sheet;
        _place = sheet.Actions.Single(a => a.Action.Name == "place");
    }

    /// <summary>The sheet.</summary>
    public Sheet Sheet { get; }

    /// <summary>How many spaces the board has across.</summary>
    public int Side => Sheet.Boards[0].Columns.Length;

    /// <summary>Nothing on the board.</summary>
    public Position Empty => Enumerable.Range(0, Sheet.Boards[0].Spaces.Length).Aggregate(Position.Blank(Sheet, "empty", 1), (p, s) => p.With(0, 0, s, Stack.Empty));

    /// <summary>One thing of the only kind for each value of its only attribute; one thing where it has none.</summary>
    public ImmutableArray<Thing> Things
    {
        get
        {
            KindFacts kind = Sheet.Kinds[0];
            int?[][] values = kind.Attributes.IsEmpty ? [[]] : [.. kind.Attributes[0].Values.Select((_, i) => new int?[] { i })];
            return [.. values.Select(v => new Thing(kind.Kind, [.. v], null, Thing.Nobody, true))];
        }
    }

    /// <summary>A sample with a board of so many spaces across.</summary>
    public static PlacementSheet Of(string sample, int side, params IEnumerable<string> variants)
    {
        string text = TestFiles.Read($"tests/Rostrum.Rulings.Tests/Samples/{sample}.yaml");
        string size = $"board of {side}";
        IEnumerable<string> on = text.Contains($"{size}:", StringComparison.Ordinal) ? variants.Append(size) : variants;
        SheetReading reading = SheetReader.Read(GameFolder.InMemory(sample, ("sheet.yaml", text)), IdiomLibrary.Read(GameFolder.InMemory("none"), new DiagnosticBag()), [.. on]);
        Assert.Empty(reading.Problems.Select(p => $"{p.At}: {p.Message} {p.Hint}"));
        var sheet = new PlacementSheet(reading.Sheet!);
        Assert.Equal(side, sheet.Side);
        return sheet;
    }

    /// <summary>Whether every law allows a thing on a space.</summary>
    public bool Allows(Position position, Thing thing, int space) => Allows(position, [.. _place.Choices.Select(c => (Value?)Chosen(c, thing, space))]);

    /// <summary>Whether every law allows two spaces at once.</summary>
    public bool Allows(Position position, int first, int second) => Allows(position, [Value.Certain([At(first), At(second)], isList: true)]);

    private static Value Chosen(ActionChoice choice, Thing thing, int space) => choice.Name == "what" ? new Value.ThingAt(thing, Spot.Nowhere, 0) : At(space);

    private static Value.SpaceAt At(int space) => new(0, 0, space);

    private bool Allows(Position position, ImmutableArray<Value?> chosen)
    {
        var judge = new LawJudge(new Proposal(_place, position, chosen, []), Setting.First, new SortedSet<int>());
        return judge.Laws.All(l => judge.Keeps(position, l).Is == Kleene.Yes);
    }
}
