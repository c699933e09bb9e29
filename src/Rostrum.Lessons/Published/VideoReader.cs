using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Published;

/// <summary>Reads the videos of the file; tells everything that is wrong and goes on behind it.</summary>
internal sealed class VideoReader(DiagnosticBag problems)
{
    /// <summary>How many rules and values are read, all videos together: a long lesson says 200 of both.</summary>
    public const int MostSaid = 20_000;

    private const string Day = "yyyy-MM-dd";

    /// <summary>Between two names of rules that are not said.</summary>
    public const char Between = ';';

    private int _said;

    /// <summary>The videos below the margin of a file.</summary>
    public ImmutableArray<PublishedVideo> Of(OutlineMapping root)
    {
        Known(root, "the file", PublishedKeys.OfFile);
        ImmutableArray<PublishedVideo> videos = [.. Items(root, PublishedKeys.Videos).Select(Video).OfType<PublishedVideo>()];
        foreach (PublishedVideo twice in videos.GroupBy(v => v.InWords).SelectMany(g => g.Skip(1)))
        {
            problems.Add(PublishedProblems.VideoTwice(twice.At!.Value, twice.InWords));
        }

        return videos;
    }

    private PublishedVideo? Video(OutlineMapping entry)
    {
        Known(entry, "a video", PublishedKeys.OfVideo);
        string? title = Needed(entry, "This video", PublishedKeys.Title);
        string? date = Needed(entry, "This video", PublishedKeys.Date);
        if (title is null || date is null || !IsDay(entry, date))
        {
            return null;
        }

        var video = new PublishedVideo(title, date)
        {
            Address = Words(entry, PublishedKeys.Address) ?? "",
            Length = Time(entry, PublishedKeys.Length),
            PrintingAt = Time(entry, PublishedKeys.Printing),
            Sources = [.. Pairs(entry, PublishedKeys.Sources)],
            Rules = [.. Items(entry, PublishedKeys.Rules).Select(Rule).OfType<PublishedRule>()],
            Sentences = [.. Items(entry, PublishedKeys.Sentences).Select(Sentence).OfType<PublishedSentence>()],
            Positions = [.. Pairs(entry, PublishedKeys.Positions)],
            NotSaid = [.. (Words(entry, PublishedKeys.NotSaid) ?? "").Split(Between).Select(Prose.Fold).Where(n => n.Length > 0)],
            At = entry.Find(PublishedKeys.Title)!.Value.Span,
        };
        Clauses(entry);
        return video;
    }

    private void Clauses(OutlineMapping entry)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (OutlineMapping rule in Items(entry, PublishedKeys.Rules, tells: false))
        {
            if (Words(rule, PublishedKeys.Clause) is { Length: > 0 } clause && !seen.Add(clause))
            {
                problems.Add(PublishedProblems.ClauseTwice(rule.Find(PublishedKeys.Clause)!.Value.Span, clause));
            }
        }
    }

    private PublishedRule? Rule(OutlineMapping entry)
    {
        if (!MaySay(entry, 1))
        {
            return null;
        }

        Known(entry, "a rule", PublishedKeys.OfRule);
        string? clause = Needed(entry, "This rule", PublishedKeys.Clause);
        string? at = Needed(entry, "This rule", PublishedKeys.At);
        string? says = Needed(entry, "This rule", PublishedKeys.Says);
        if (clause is null || at is null || says is null)
        {
            return null;
        }

        VideoTime?[] times = [.. at.Split(',').Select(t => Time(entry.Find(PublishedKeys.At)!, t.Trim()))];
        return times.Contains(null) ? null : new PublishedRule(
            clause, [.. times.OfType<VideoTime>().OrderBy(t => t.At)], says, Words(entry, PublishedKeys.Means) ?? "", Words(entry, PublishedKeys.Status) ?? "", Words(entry, PublishedKeys.Cite) ?? "");
    }

    private PublishedSentence? Sentence(OutlineMapping entry)
    {
        string[] values = (Words(entry, PublishedKeys.Says) ?? "").Split("](");
        if (!MaySay(entry, values.Length))
        {
            return null;
        }

        Known(entry, "a sentence", PublishedKeys.OfSentence);
        string? at = Needed(entry, "This sentence", PublishedKeys.At);
        string? says = Needed(entry, "This sentence", PublishedKeys.Says);
        return at is not null && says is not null && Time(entry.Find(PublishedKeys.At)!, at) is { } time ? new PublishedSentence(time, says) : null;
    }

    // Each value of a sentence is asked, so each counts.
    private bool MaySay(OutlineMapping entry, int many)
    {
        if (_said <= MostSaid && _said + many > MostSaid)
        {
            problems.Add(PublishedProblems.TooMany(entry.Span, MostSaid));
        }

        _said = Math.Min(_said + many, MostSaid + 1);
        return _said <= MostSaid;
    }

    private bool IsDay(OutlineMapping entry, string date)
    {
        bool isDay = DateOnly.TryParseExact(date, Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);
        if (!isDay)
        {
            problems.Add(PublishedProblems.NoDay(entry.Find(PublishedKeys.Date)!.Value.Span, date));
        }

        return isDay;
    }

    private VideoTime? Time(OutlineMapping entry, string key) => Words(entry, key) is { } written ? Time(entry.Find(key)!, written) : null;

    private VideoTime? Time(OutlineEntry entry, string written)
    {
        VideoTime? time = VideoTime.Read(written);
        if (time is null)
        {
            problems.Add(PublishedProblems.NoTime(entry.Value.Span, written));
        }

        return time;
    }

    private void Known(OutlineMapping entry, string what, string[] keys)
    {
        foreach (OutlineScalar key in entry.Entries.Select(e => e.Key).Where(k => !keys.Contains(k.Text)))
        {
            problems.Add(PublishedProblems.UnknownKey(key.Span, key.Text, what, keys));
        }
    }

    private string? Needed(OutlineMapping entry, string what, string key)
    {
        string? words = Words(entry, key);
        if (string.IsNullOrEmpty(words))
        {
            problems.Add(PublishedProblems.Missing(entry.Entries.IsEmpty ? entry.Span : entry.Entries[0].Key.Span, what, key));
        }

        return string.IsNullOrEmpty(words) ? null : words;
    }

    private static string? Words(OutlineMapping entry, string key) => entry.Find(key)?.Value is OutlineScalar scalar ? Prose.Fold(scalar.Text) : null;

    private IEnumerable<(string Name, string Words)> Pairs(OutlineMapping entry, string key)
    {
        switch (entry.Find(key))
        {
            case { Value: OutlineMapping pairs }:
                return pairs.Entries.Where(p => p.Value is OutlineScalar).Select(p => (Prose.Fold(p.Key.Text), Prose.Fold(((OutlineScalar)p.Value).Text)));
            case { Value: OutlineEmpty } or null:
                return [];
            case var other:
                problems.Add(PublishedProblems.NoPairs(other.Key.Span, key));
                return [];
        }
    }

    private IEnumerable<OutlineMapping> Items(OutlineMapping entry, string key, bool tells = true)
    {
        OutlineEntry? found = entry.Find(key);
        foreach (OutlineNode item in found?.Value is OutlineSequence list ? list.Items : [])
        {
            if (item is OutlineMapping mapping)
            {
                yield return mapping;
            }
            else if (tells)
            {
                problems.Add(PublishedProblems.NoList(item.Span.Length > 0 ? item.Span : found!.Key.Span, key));
            }
        }

        if (tells && found is { Value: not (OutlineSequence or OutlineEmpty) })
        {
            problems.Add(PublishedProblems.NoList(found.Key.Span, key));
        }
    }
}
