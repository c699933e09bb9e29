using System.Security.Cryptography;
using System.Text;
using Rostrum.Lessons.Claims;
using Rostrum.Rulings.Games;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Published;

/// <summary>A short sum of what lies on the table in a position, so that one that was laid anew is known from one that is counted anew.</summary>
/// <remarks>The first eight signs of the SHA-256 (FIPS 180-4) of its words. What it expects and says is left out: these change with the rules.</remarks>
internal static class PositionSum
{
    private static readonly string[] Apart = ["says", "expect"];

    private static readonly OutlineDialect Dialect = new(["says"], ["says"]);

    /// <summary>The sum; null where there is no such position that can be read.</summary>
    public static string? Of(Game game, string position) => game.PositionText(position).Text is { } text ? Of(text) : null;

    /// <summary>The sum of a position's file.</summary>
    public static string Of(SourceText text)
    {
        IEnumerable<string> words = OutlineReader.Read(text, Dialect, new DiagnosticBag()).Entries.Where(e => !Apart.Contains(e.Key.Text)).Select(e => $"{e.Key.Text}:{WordsOf(e.Value)}").Order(StringComparer.Ordinal);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', words))))[..8];
    }

    /// <summary>The position that a value asks about; null for none.</summary>
    public static string? AskedBy(string target) => ClaimTarget.Read(target)?.OnPosition;

    private static string WordsOf(OutlineNode node) => node switch
    {
        OutlineScalar scalar => Prose.Fold(scalar.Text),
        OutlineMapping mapping => $"{{{string.Join(", ", mapping.Entries.Select(e => $"{e.Key.Text}: {WordsOf(e.Value)}"))}}}",
        OutlineSequence list => $"[{string.Join(", ", list.Items.Select(WordsOf))}]",
        _ => "",
    };
}
