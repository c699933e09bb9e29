namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Makes a sheet on which a property fails smaller, section by section and entry by entry, as long as it fails still.</summary>
internal static class SheetShrinker
{
    private const int MostTries = 300;

    /// <summary>A sheet from which nothing can be left out, or as far as the tries go, with what is wrong on it.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="problem">What is wrong on a sheet; null where nothing is.</param>
    public static (RandomSheet Sheet, string Problem) Shrink(RandomSheet sheet, Func<RandomSheet, string?> problem)
    {
        string told = problem(sheet) ?? throw new InvalidOperationException("Nothing is wrong.");
        int tries = 0;
        bool isSmaller = true;
        while (isSmaller && tries < MostTries)
        {
            isSmaller = false;
            foreach (RandomSheet smaller in sheet.Smaller())
            {
                if (++tries < MostTries && problem(smaller) is { } still)
                {
                    (sheet, told, isSmaller) = (smaller, still, true);
                    break;
                }
            }
        }

        return (sheet, told);
    }
}
