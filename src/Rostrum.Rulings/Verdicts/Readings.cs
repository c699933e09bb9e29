using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Asks one question under every reading that it touches.</summary>
/// <typeparam name="T">The answer.</typeparam>
internal sealed class Readings<T>
{
    private const int MostCombinations = 64;

    private Readings(ImmutableArray<(Setting Setting, T Answer)> all, ImmutableArray<Choice> touched)
    {
        All = all;
        Touched = touched;
    }

    /// <summary>The answers, that of the first alternatives first; never empty.</summary>
    public ImmutableArray<(Setting Setting, T Answer)> All { get; }

    /// <summary>The open choices that an answer depended on.</summary>
    public ImmutableArray<Choice> Touched { get; }

    /// <summary>Asks until no combination touches a further choice. Above 64 combinations each choice is turned by itself, the others at their first.</summary>
    public static Readings<T> Of(Sheet sheet, Func<Setting, ISet<int>, T> ask)
    {
        var touched = new SortedSet<int>();
        var answers = new Dictionary<string, (Setting Setting, T Answer)>();
        while (true)
        {
            Setting[] settings = Settings(sheet, touched);
            int before = touched.Count;
            foreach (Setting setting in settings.Where(s => !answers.ContainsKey(Key(s))))
            {
                answers[Key(setting)] = (setting, ask(setting, touched));
            }

            if (touched.Count == before)
            {
                return new Readings<T>([.. settings.Select(s => answers[Key(s)])], [.. touched.Select(t => sheet.Choices[t])]);
            }
        }
    }

    private static string Key(Setting setting) => string.Join(' ', setting.Chosen.Where(c => c.Value != 0).Select(c => $"{c.Key}:{c.Value}"));

    private static Setting[] Settings(Sheet sheet, SortedSet<int> touched)
    {
        Choice[] choices = [.. touched.Select(t => sheet.Choices[t])];
        if (choices.Aggregate(1L, (product, c) => Math.Min(product * c.Names.Length, int.MaxValue)) <= MostCombinations)
        {
            IEnumerable<Setting> all = [Setting.First];
            return [.. choices.Aggregate(all, (sum, c) => sum.SelectMany(s => Enumerable.Range(0, c.Names.Length).Select(a => s.With(c, a))))];
        }

        return [Setting.First, .. choices.SelectMany(c => Enumerable.Range(1, c.Names.Length - 1).Select(a => Setting.First.With(c, a)))];
    }
}
