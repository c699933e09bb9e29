namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Makes whole rule sheets by chance: right by construction, and different in boards, pieces, choices, verbs, laws, turns and ends.</summary>
internal static class SheetMaker
{
    /// <summary>The sheet of a number; of the same seed and number it is the same, whichever were made before.</summary>
    /// <param name="seed">The seed of the run.</param>
    /// <param name="number">Which sheet.</param>
    public static RandomSheet Of(ulong seed, int number)
    {
        var words = new TableWords();
        var table = new TableMaker(new Picks(seed, number, 0), words);
        var picks = new Picks(seed, number, 1);
        var sections = table.Make();
        var formulas = new FormulaMaker(picks, words);
        var course = new CourseMaker(picks, words, formulas, new ActionMaker(picks, words, formulas));
        return new RandomSheet(seed, number, [.. sections, .. course.Make()]);
    }
}
