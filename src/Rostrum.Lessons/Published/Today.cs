using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Model;

namespace Rostrum.Lessons.Published;

/// <summary>The game as it is on the day of a check: what published videos are held against.</summary>
internal sealed class Today
{
    private readonly Game _game;
    private readonly SentenceCheck _sentences;
    private readonly Dictionary<string, string> _sources;
    private readonly Dictionary<string, string?> _sums = new(StringComparer.Ordinal);
    private readonly Dictionary<PublishedVideo, HashSet<string>> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The day.</summary>
    /// <param name="game">A game whose sheet is sound.</param>
    public Today(Game game)
    {
        _game = game;
        Rules = new RuleStates(game);
        _sentences = new SentenceCheck(game);
        _sources = Rules.Sources.ToDictionary(s => s.Name, s => s.Words, StringComparer.Ordinal);
    }

    /// <summary>The rules.</summary>
    public RuleStates Rules { get; }

    /// <summary>A rule of a video as it is now, under another name where it got one; null where there is none any more.</summary>
    public RuleState? Now(PublishedVideo video, PublishedRule then) => Rules.Find(then.Clause) ?? Renamed(video, then);

    /// <summary>A value with what the sheet answers now.</summary>
    public AskedAgain Ask(LessonRun.Claim value) => _sentences.Of(value);

    /// <summary>True where a value asks a position that was laid anew: what is counted on other pieces says nothing of the rules.</summary>
    public bool IsLaidAnew(PublishedVideo video, LessonRun.Claim value) =>
        PositionSum.AskedBy(value.Target) is { } name && video.Positions.FirstOrDefault(p => p.Name == name) is { Sum: { } then } && SumOf(name) != then;

    /// <summary>The sum of a position; null where there is none of this name.</summary>
    public string? SumOf(string position)
    {
        if (!_sums.TryGetValue(position, out string? sum))
        {
            _sums[position] = sum = PositionSum.Of(_game, position);
        }

        return sum;
    }

    /// <summary>What is new since a video was made and says so: a source, or its printing; empty where nothing is.</summary>
    public string Because(PublishedVideo video, Citation? cite)
    {
        if (cite is null || !_sources.TryGetValue(cite.Source.Name, out string? now))
        {
            return "";
        }

        string? then = video.Sources.FirstOrDefault(s => s.Name == cite.Source.Name).Words;
        return then is null ? $"{now} is new since then" : then != now ? $"{now}; then it was {then}" : "";
    }

    // The same sentence and the same meaning in the same section, under a name that the video does not know.
    private RuleState? Renamed(PublishedVideo video, PublishedRule then) => then.Means.Length == 0 ? null : Rules.All.FirstOrDefault(r =>
        r.Means == then.Means && SectionOf(r.Key) == SectionOf(then.Clause) && !IsKnown(video, r.Key) && WordStems.Of(r.Says).SequenceEqual(WordStems.Of(then.Says)));

    private bool IsKnown(PublishedVideo video, string key)
    {
        if (!_known.TryGetValue(video, out HashSet<string>? known))
        {
            _known[video] = known = [.. video.Rules.Select(r => r.Clause), .. video.NotSaid];
        }

        return known.Contains(key);
    }

    private static string SectionOf(string key) => key[..Math.Max(0, key.LastIndexOf('/'))];
}
