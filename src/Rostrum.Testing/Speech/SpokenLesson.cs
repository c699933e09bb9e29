using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Rostrum.Testing.Speech;

/// <summary>A slip that was planted in a spoken lesson.</summary>
/// <param name="Word">The 0-based word of the talk at which it is said.</param>
/// <param name="Said">What is said.</param>
/// <param name="Right">What would be right.</param>
/// <param name="About">What it is about, for people.</param>
/// <param name="IsTerm">True for a wrong word, false for a wrong number.</param>
public sealed record PlantedSlip(int Word, string Said, string Right, string About, bool IsTerm);

/// <summary>What a presenter says, word for word, with the slips that were planted in it.</summary>
/// <param name="Name">The name of its file.</param>
/// <param name="Game">The folder of the game, below <c>games</c>.</param>
/// <param name="LeavesOut">Rules that are never said, such as <c>law jugs</c>; steps of ties as people say them, <c>tie fewer shards</c>.</param>
/// <param name="RowsLeftOut">Table rows that are not spoken, as the file lists them.</param>
/// <param name="Words">The words, with their punctuation.</param>
/// <param name="Slips">The slips, in order.</param>
public sealed partial record SpokenLesson(
    string Name, string Game, ImmutableArray<string> LeavesOut, ImmutableArray<string> RowsLeftOut, ImmutableArray<string> Words, ImmutableArray<PlantedSlip> Slips)
{
    /// <summary>Reads a marked-up file: head lines, an empty line, the talk with <c>[[said|right|about]]</c> for numbers and <c>[[said~right]]</c> for words.</summary>
    public static SpokenLesson Read(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = text.ReplaceLineEndings("\n").Split("\n\n", 2);
        var head = parts[0].Split('\n').Where(l => l.Contains(':', StringComparison.Ordinal)).ToDictionary(l => l[..l.IndexOf(':', StringComparison.Ordinal)].Trim(), l => l[(l.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim());
        var words = ImmutableArray.CreateBuilder<string>();
        var slips = ImmutableArray.CreateBuilder<PlantedSlip>();
        int from = 0;
        foreach (Match mark in Mark().Matches(parts[1]).Append(Match.Empty))
        {
            int end = mark.Success && mark.Length > 0 ? mark.Index : parts[1].Length;
            string before = parts[1][from..end];
            Append(words, before, glue: from > 0);
            if (mark.Length == 0)
            {
                break;
            }

            string said = mark.Groups["said"].Value.Trim();
            bool isTerm = mark.Groups["term"].Success;
            slips.Add(new PlantedSlip(words.Count, said, (isTerm ? mark.Groups["term"] : mark.Groups["right"]).Value.Trim(), mark.Groups["about"].Value.Trim(), isTerm));
            Append(words, said, glue: false);
            from = mark.Index + mark.Length;
        }

        return new SpokenLesson(name, head["game"], [.. Listed(head.GetValueOrDefault("leaves out", "")).Select(l => l.Replace(" my ", " ", StringComparison.Ordinal))], Listed(head.GetValueOrDefault("rows left out", "")), words.ToImmutable(), slips.ToImmutable());
    }

    /// <summary>The same talk without its slips.</summary>
    public SpokenLesson Mended()
    {
        var words = ImmutableArray.CreateBuilder<string>();
        int next = 0;
        foreach (PlantedSlip slip in Slips)
        {
            words.AddRange(Words[next..slip.Word]);
            int end = slip.Word + slip.Said.Split(' ').Length;
            string[] right = slip.Right.Split(' ');
            words.AddRange(right[..^1]);
            words.Add(right[^1] + new string([.. Words[end - 1].Reverse().TakeWhile(c => !char.IsLetterOrDigit(c)).Reverse()]));
            next = end;
        }

        words.AddRange(Words[next..]);
        return this with { Words = words.ToImmutable(), Slips = [] };
    }

    // What stands right behind a mark, such as a comma, belongs to its last word.
    private static void Append(ImmutableArray<string>.Builder words, string text, bool glue)
    {
        string[] more = text.Split((char[])[' ', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);
        bool joins = glue && text.Length > 0 && !char.IsWhiteSpace(text[0]) && words.Count > 0;
        if (joins && more.Length > 0)
        {
            words[^1] += more[0];
        }

        words.AddRange(joins ? more.Skip(1) : more);
    }

    private static ImmutableArray<string> Listed(string words) => words is "" or "none" or "nothing" ? [] : [.. words.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    [GeneratedRegex(@"\[\[(?<said>[^\]|~]+)(?:~(?<term>[^\]]+)|\|(?<right>[^\]|]+)\|(?<about>[^\]]*))\]\]", RegexOptions.CultureInvariant)]
    private static partial Regex Mark();
}
