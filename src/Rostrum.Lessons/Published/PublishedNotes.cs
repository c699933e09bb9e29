using Rostrum.Lessons.Claims;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Scripts;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Published;

/// <summary>Tells what changed since a video was published and makes nothing in it wrong.</summary>
/// <param name="today">What it is held against.</param>
internal sealed class PublishedNotes(Today today)
{
    /// <summary>The notes of a video: sources, rules, positions, values that cannot be asked, new rules.</summary>
    /// <param name="video">The video.</param>
    /// <param name="wrong">The moments at which something is wrong: what cannot be asked there needs no note.</param>
    public IEnumerable<PublishedNote> Of(PublishedVideo video, HashSet<TimeSpan> wrong) =>
        Sources(video).Concat(video.Rules.Select(r => Quiet(video, r)).OfType<PublishedNote>()).Concat(Positions(video)).Concat(Unasked(video, wrong)).Concat(New(video));

    private IEnumerable<PublishedNote> Sources(PublishedVideo video)
    {
        foreach ((string name, string now) in today.Rules.Sources)
        {
            string? then = video.Sources.FirstOrDefault(s => s.Name == name).Words;
            if (then != now)
            {
                yield return then is null ? new PublishedNote(video, name, $"{now} is new since then.") : new PublishedNote(video, name, $"The video was made with {then}; now there is {now}.")
                {
                    Line = new Correction(video.PrintingAt?.At ?? TimeSpan.Zero, $"This video was made with: {then}. Now there is: {now}."),
                };
            }
        }
    }

    private PublishedNote? Quiet(PublishedVideo video, PublishedRule then)
    {
        RuleState? now = today.Now(video, then);
        string at = $"Said at {string.Join(", ", then.Times.Select(t => t.InWords))}";
        string? says = RuleChange.Of(then, now) switch
        {
            ChangeKind.WrittenOtherwise => $"{at}; the sheet says the same and writes it otherwise.",
            ChangeKind.Moved => $"{at}; it stands on {Citation.Tell(now!.Cite)} now, then on {(then.Cite.Length == 0 ? "no page" : then.Cite)}.",
            ChangeKind.None when now!.Key != then.Clause => $"{at}; the sheet calls it '{now.Key}' now.",
            _ => null,
        };
        return says is null ? null : new PublishedNote(video, then.Clause, says);
    }

    private IEnumerable<PublishedNote> Positions(PublishedVideo video) =>
        from position in video.Positions
        let now = today.SumOf(position.Name)
        where now != position.Sum
        select new PublishedNote(video, $"positions/{position.Name}", now is null ? "There is no such position any more, so what was said of it cannot be asked." : "It was laid anew since then, so what was said of it is not asked.");

    private IEnumerable<PublishedNote> Unasked(PublishedVideo video, HashSet<TimeSpan> wrong) =>
        from sentence in video.Sentences
        where !wrong.Contains(sentence.Time.At)
        from value in SaidSentence.Read(sentence.Said).OfType<LessonRun.Claim>()
        where !today.IsLaidAnew(video, value) && today.Ask(value).Checked.Status == ClaimStatus.Unasked
        select new PublishedNote(video, value.Target, $"Said at {sentence.Time.InWords}; it cannot be asked any more.");

    private IEnumerable<PublishedNote> New(PublishedVideo video)
    {
        HashSet<string> known = [.. video.Rules.SelectMany(r => (string?[])[r.Clause, today.Now(video, r)?.Key]).OfType<string>(), .. video.NotSaid];
        return today.Rules.All.Where(r => r.Clause is not null && !known.Contains(Prose.Fold(r.Key))).Select(r => new PublishedNote(video, r.Key, "This rule is new since then, and the video does not say it."));
    }
}
