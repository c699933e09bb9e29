using System.Collections.Frozen;

namespace Rostrum.Lessons.Speech;

/// <summary>Words that mean the same at any table: a sheet says <c>lay</c>, and its presenter <c>put</c>.</summary>
/// <remarks>Used only to find where a rule is said, never to judge the name of a thing. Words of daily speech, chosen by hand; words that one game
/// may tell apart (<c>left</c> and <c>right</c>, <c>take</c> and <c>draw</c>) are not in one line.</remarks>
internal static class TableTalk
{
    private static readonly string[] Lines =
    [
        "lay place put set", "turn flip reverse", "take get gain grab", "opponent enemy rival", "end over finish finished stop stops", "swap exchange switch trade",
        "neighbour neighbor adjacent next beside touch touching", "empty free vacant", "equal tie draw share shared level", "colour color", "space square cell hex", "begin start beginning",
        "middle centre center", "player person people", "point score", "price cost pay", "whole entire", "biggest largest greatest longest", "hide secret hidden secretly", "allowed allow legal lawful lawfully",
        "pass skip", "split part divide", "move step", "must need needed", "at-least least", "outflank surround capture catch caught enclose", "together simultaneous simultaneously", "reach hit", "value worth", "solo alone", "remove discard",
    ];

    private static readonly FrozenDictionary<string, string> First = Lines
        .Select(l => l.Split(' '))
        .SelectMany(l => l.Select(w => (Word: WordStems.OfWord(w), To: WordStems.OfWord(l[0]))))
        .DistinctBy(p => p.Word, StringComparer.Ordinal)
        .ToFrozenDictionary(p => p.Word, p => p.To, StringComparer.Ordinal);

    /// <summary>The stem that stands for all that mean the same.</summary>
    public static string Of(string stem) => First.GetValueOrDefault(stem, stem);
}
