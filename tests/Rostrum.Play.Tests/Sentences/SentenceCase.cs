using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Play.Tests.Sentences;

/// <summary>A case of a sentence, as its file has it.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Text">What stands below the key, its margin cut: a position with what is expected, or a transcript.</param>
internal sealed record SentenceCase(string Name, string Text)
{
    /// <summary>The lines of the transcript; empty for a position.</summary>
    public IReadOnlyList<string> Play => [.. Below("play").Split('\n').Where(l => l.StartsWith("- ", StringComparison.Ordinal)).Select(l => l[2..])];

    /// <summary>The position from which the transcript begins; null for the set-up.</summary>
    public string? From => Below("from") is { Length: > 0 } text ? text : null;

    /// <summary>Who refuses the last line; empty where all are legal.</summary>
    public IReadOnlyList<string> By => [.. Line("by").Trim('[', ']').Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>The cases of a file.</summary>
    public static IEnumerable<SentenceCase> Of(string file) => Blocks(file).Select(b => new SentenceCase(b.Key, b.Below));

    private string Below(string key) => Blocks(Text).FirstOrDefault(b => b.Key == key).Below ?? "";

    private string Line(string key) => Text.Split('\n').FirstOrDefault(l => l.StartsWith(key + ": ", StringComparison.Ordinal))?[(key.Length + 2)..] ?? "";

    // The keys at the margin, with the deeper lines that follow each.
    private static IEnumerable<(string Key, string Below)> Blocks(string text)
    {
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].Length > 0 && lines[i][0] is not (' ' or '-' or '#') && lines[i].Contains(':', StringComparison.Ordinal))
            {
                string[] below = [.. lines.Skip(i + 1).TakeWhile(l => l.Length == 0 || l[0] == ' ')];
                yield return (lines[i][..lines[i].IndexOf(':', StringComparison.Ordinal)], string.Join('\n', below.Select(l => l.Length > 1 ? l[2..] : l)));
            }
        }
    }
}
