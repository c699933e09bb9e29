using Rostrum.Play.Layout;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Whole rule sheets that are made by chance, and games on them that are played by chance.</summary>
public sealed class RandomSheetTests
{
    private const ulong Seed = 20261125;
    private const int Few = 160;
    private const int Many = 2_000;
    private const int MostTold = 3;

    public static TheoryData<string> Properties => [.. SheetProperty.All.Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Properties))]
    public void Holds_on_a_few_random_sheets(string property) => Holds(property, 0, Few);

    [Theory]
    [MemberData(nameof(Properties))]
    [Trait("Category", "Slow")]
    public void Holds_on_many_random_sheets(string property) => Holds(property, Few, Many);

    private static void Holds(string name, int first, int end)
    {
        SheetProperty property = SheetProperty.All.Single(p => p.Name == name);
        var found = new List<string>();
        for (int number = first; number < end && found.Count < MostTold; number++)
        {
            RandomSheet sheet = SheetMaker.Of(Seed, number);
            if (Problem(property, sheet, mustBeSound: true) is not null)
            {
                (RandomSheet small, string problem) = SheetShrinker.Shrink(sheet, s => Problem(property, s, mustBeSound: ReferenceEquals(s, sheet)));
                found.Add($"seed {sheet.Seed}, sheet {sheet.Number}: {problem}\non the sheet\n{small.Text}");
            }
        }

        Assert.True(found.Count == 0, string.Join("\n\n", found));
    }

    // What is wrong on a sheet. A sheet that was made smaller may be refused: nothing is wrong then.
    private static string? Problem(SheetProperty property, RandomSheet sheet, bool mustBeSound)
    {
        var reading = sheet.Read();
        if (!reading.IsSound)
        {
            return mustBeSound ? $"The sheet is refused: {RandomSheet.Errors(reading)}" : null;
        }

        try
        {
            return property.Problems(sheet, GameTable.Of(reading.Sheet!)).FirstOrDefault();
        }
        catch (NotPlayableException why)
        {
            return mustBeSound ? $"The game is refused: {why.Message} {why.At?.Text}" : null;
        }
        catch (Exception e)
        {
            return $"{e.GetType().Name}: {e.Message}\n{e.StackTrace}";
        }
    }
}
