using Rostrum.Lessons.Shots;

namespace Rostrum.Lessons.Pack;

/// <summary>Names the pictures of a pack after their positions: <c>pictures/E1</c>, <c>pictures/E1-bowls</c>, <c>pictures/E1-bowls-A2</c>.</summary>
internal static class PictureNames
{
    /// <summary>Where the pictures lie in the pack.</summary>
    public const string Folder = "pictures/";

    /// <summary>Each shot that can be drawn, with the name of its files without an ending; equal shots share theirs and come once.</summary>
    public static IEnumerable<(CheckedShot Shot, string Name)> Of(LessonReport report) =>
        report.Shots.Where(s => s.Position is not null).Select(s => (s, NameOf(s))).DistinctBy(p => p.Item2);

    /// <summary>The name of a shot's files, without an ending.</summary>
    public static string NameOf(CheckedShot shot) =>
        Folder + Safe(string.Join('-', ((string?[])[shot.PositionName, shot.Clause, shot.Space]).OfType<string>()));

    private static string Safe(string name) => string.Concat(name.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
}
