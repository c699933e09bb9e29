using Rostrum.Text;

namespace Rostrum.Sheets.Model;

/// <summary>Tells the signs of drawings to somebody who wrote something else.</summary>
public static class SignLegend
{
    private const int Most = 10;

    /// <summary>The legend as a sentence, or what to declare where there is none: <c>The signs are j (jug) and a (ash).</c></summary>
    /// <param name="signs">The signs, in the order of the sheet.</param>
    public static string Told(IEnumerable<DrawingSign> signs)
    {
        string[] all = [.. signs.Select(s => $"{s.Sign} ({s.Stands.Name})")];
        return all.Length switch
        {
            0 => "Declare them under 'signs' in the sheet, as in 'signs: {j: jug}'.",
            1 => $"The only sign is {all[0]}.",
            > Most => $"The signs are {string.Join(", ", all.Take(Most))} and {all.Length - Most} others.",
            _ => $"The signs are {Prose.And(all)}.",
        };
    }

    /// <summary>True for a cell in which somebody wrote a word instead of signs: several letters that are none, so that one message says it all.</summary>
    /// <param name="cell">The letters of the cell.</param>
    /// <param name="signs">The signs.</param>
    public static bool IsWord(string cell, IEnumerable<DrawingSign> signs) =>
        cell.Length > 2 && cell.All(char.IsLetter) && (Of(cell, signs) is not null || cell.Count(c => signs.All(s => s.Sign != c)) > cell.Length / 3);

    /// <summary>The sign that stands for a word, in its singular or plural; null where none does.</summary>
    /// <param name="word">The word.</param>
    /// <param name="signs">The signs.</param>
    public static char? Of(string word, IEnumerable<DrawingSign> signs) =>
        signs.FirstOrDefault(s => s.Stands.Name.Equals(word, StringComparison.OrdinalIgnoreCase) || PluralOf(s.Stands).Equals(word, StringComparison.OrdinalIgnoreCase))?.Sign;

    private static string PluralOf(Named named) => named switch
    {
        Kind kind => kind.Plural,
        AttributeValue value => value.Plural,
        _ => named.Name,
    };
}
