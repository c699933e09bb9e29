using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Published;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Published;

/// <summary>Kiln Night on the day of its video, and later with other rules.</summary>
internal static class PublishedBench
{
    public static PublishedVideo Named { get; } = new("How to play Kiln Night", "2026-11-25");

    private static readonly Lazy<PublishedVideo> Shipped = new(() => Made(null).Video!);

    /// <summary>The video of the shipped lesson.</summary>
    public static PublishedVideo Video(CaptionFile? captions = null) => captions is null ? Shipped.Value : Made(captions).Video!;

    public static (PublishedVideo? Video, string? Refused) Made(CaptionFile? captions)
    {
        Game game = ShippedGames.Open("kiln-night");
        return VideoMaker.Of(game, LessonCheck.Of(game)!, captions, Named);
    }

    /// <summary>The game with other words in its sheet; each must stand there once.</summary>
    public static Game With(params (string Words, string Instead)[] changes) => new(
        ShippedGames.Folder("games/kiln-night", ("sheet.yaml", changes.Aggregate(TestFiles.Read("games/kiln-night/sheet.yaml"), Changed))), ShippedGames.Idioms);

    /// <summary>What the video of the shipped lesson says wrong once the sheet says other words.</summary>
    public static PublishedReport After(params (string Words, string Instead)[] changes) => Of(With(changes), Video());

    public static PublishedReport Of(Game game, PublishedVideo video)
    {
        Assert.Empty(game.Sheet().Problems.Where(p => p.Severity == Severity.Error));
        return PublishedCheck.Of(game, new PublishedFile([video], []), TestContext.Current.CancellationToken);
    }

    /// <summary>Time and clause of each finding.</summary>
    public static string[] Told(PublishedReport report) => [.. report.Findings.Select(f => $"{f.Time.InWords} {f.Clause} {f.Kind}")];

    private static string Changed(string sheet, (string Words, string Instead) change)
    {
        Assert.Equal(2, sheet.Split(change.Words).Length);
        return sheet.Replace(change.Words, change.Instead, StringComparison.Ordinal);
    }
}
