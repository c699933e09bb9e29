using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Lessons.Captions.Words;
using Rostrum.Lessons.Review;
using Rostrum.Testing;
using Rostrum.Testing.Speech;

namespace Rostrum.Benchmarks;

/// <summary>Holds each spoken lesson for tuning against every game of these lessons: its own must be taken, and the others refused.</summary>
internal static class OtherGames
{
    /// <summary>Prints the pairs that are judged wrongly, and the sums.</summary>
    public static int Run(TextWriter to)
    {
        SpokenLesson[] lessons = ReviewFit.Lessons();
        string[] games = [.. lessons.Select(l => l.Game).Distinct()];
        (int own, int refusedOwn, int other, int takenOther) = (0, 0, 0, 0);
        foreach (SpokenLesson lesson in lessons)
        {
            (string text, _) = MachineCaptions.Of(lesson, CaptionNoise.Usual, 155, 7);
            CaptionFile captions = CaptionReader.Read("a.vtt", Encoding.UTF8.GetBytes(text));
            ImmutableArray<TimedWord> words = SpokenWords.Of(captions);
            foreach (string game in games)
            {
                bool isOwn = game == lesson.Game;
                bool isRefused = RecordingReview.Refusal(ShippedGames.Open(game), words) is not null;
                (own, refusedOwn) = (own + (isOwn ? 1 : 0), refusedOwn + (isOwn && isRefused ? 1 : 0));
                (other, takenOther) = (other + (isOwn ? 0 : 1), takenOther + (!isOwn && !isRefused ? 1 : 0));
                if (isOwn == isRefused)
                {
                    (double known, NamesHeard names) = RecordingReview.Kin(ShippedGames.Open(game), words);
                    to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(isOwn ? "refused" : "taken  ")} {lesson.Name} as {game}: {known:0.00} of the words, {names.Heard} of {names.Of} names"));
                }
            }
        }

        to.WriteLine($"own games refused {refusedOwn} of {own}, others taken {takenOther} of {other}");
        return 0;
    }
}
