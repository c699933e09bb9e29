using System.Collections.Immutable;
using Rostrum.Lessons.Pack;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows the files of a pack with what they are.</summary>
internal static class PackScreen
{
    private const int MostForName = 42;

    /// <summary>One line a file, longer explanations over more.</summary>
    public static string Of(ImmutableArray<PackFile> files)
    {
        var paper = new Paper();
        int nameWidth = Math.Min(MostForName, files.Max(f => DisplayText.WidthOf(f.Name)) + 2);
        foreach (PackFile file in files)
        {
            paper.Pair(file.Name, file.Says, nameWidth);
        }

        return paper.ToString();
    }
}
