using System.Text;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Lays out plain text, 80 columns wide; signs that would move a terminal's cursor are shown as <c>·</c>.</summary>
internal sealed class Paper
{
    /// <summary>Columns of a line.</summary>
    public const int Width = 80;

    private readonly StringBuilder _lines = new();

    /// <summary>One line as it is.</summary>
    public void Line(string text = "") => _lines.Append(DisplayText.Of(text).TrimEnd()).Append('\n');

    /// <summary>Lines that are laid out already, without a line end behind the last.</summary>
    public void Raw(string text) => _lines.Append(text).Append('\n');

    /// <summary>A sentence over as many lines as it needs.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="indent">Blanks before each line.</param>
    /// <param name="hanging">More blanks before each further line.</param>
    public void Wrapped(string text, int indent, int hanging = 0)
    {
        string[] lines = [.. Cut(text, Width - indent - hanging)];
        for (int i = 0; i < lines.Length; i++)
        {
            Line(new string(' ', indent + (i == 0 ? 0 : hanging)) + lines[i]);
        }
    }

    /// <summary>A word with its explanation beside it, two blanks in.</summary>
    /// <param name="word">The word.</param>
    /// <param name="text">The explanation.</param>
    /// <param name="wordWidth">Columns for the word; one that is longer gets a line of its own.</param>
    public void Pair(string word, string text, int wordWidth)
    {
        string[] lines = [.. Cut(text, Width - 2 - wordWidth)];
        bool fits = DisplayText.WidthOf(word) < wordWidth;
        Line($"  {(fits ? Padded(word, wordWidth) + lines[0] : word)}");
        foreach (string line in lines.Skip(fits ? 1 : 0))
        {
            Line(new string(' ', 2 + wordWidth) + line);
        }
    }

    /// <summary>Words at the left edge and words at the right edge; where both do not fit, the right ones come below.</summary>
    public void Edges(string left, string right, int indent = 0)
    {
        int room = Width - indent - DisplayText.WidthOf(left) - DisplayText.WidthOf(right);
        if (room >= 2)
        {
            Line(new string(' ', indent) + left + new string(' ', room) + right);
            return;
        }

        Wrapped(left, indent);
        Line(new string(' ', Math.Max(0, Width - DisplayText.WidthOf(right))) + right);
    }

    /// <summary>The words cut into lines, at least one.</summary>
    /// <param name="text">The words.</param>
    /// <param name="columns">Columns of a line; a longer word stays whole.</param>
    public static IEnumerable<string> Cut(string text, int columns)
    {
        string line = "";
        foreach (string word in DisplayText.Of(text.ReplaceLineEndings(" ")).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && DisplayText.WidthOf(line) + 1 + DisplayText.WidthOf(word) > columns)
            {
                yield return line;
                line = "";
            }

            line = line.Length == 0 ? word : $"{line} {word}";
        }

        yield return line;
    }

    /// <summary>The words with blanks behind them up to a width.</summary>
    public static string Padded(string text, int width) => text + new string(' ', Math.Max(0, width - DisplayText.WidthOf(text)));

    /// <summary>All lines.</summary>
    public override string ToString() => _lines.ToString();
}
