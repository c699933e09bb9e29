using System.Collections.Immutable;

namespace Rostrum.Text.Mending;

/// <summary>Tells causes from what follows from them: mends one problem on trial, reads the text again, and sees which others are gone.</summary>
/// <remarks>A problem that is still there after the mend is a mistake of its own and is never left out. Cost: one reading a trial.</remarks>
/// <param name="look">Reads a text in the place of the file and gives everything that is wrong.</param>
/// <param name="guesses">What may be behind a problem besides what it says itself: other problems, each with a fix; the likeliest first.</param>
/// <param name="budget">How many readings may be made.</param>
public sealed class TrialMending(Func<SourceText, ImmutableArray<Diagnostic>> look, Func<SourceText, Diagnostic, IEnumerable<Diagnostic>> guesses, int budget)
{
    // Mistakes that are told apart; what is left then stays as it was found.
    private const int MostCauses = 6;

    // Problems whose fixes are tried, from the first; further guesses are made about the first few only.
    private const int MostOffers = 8;
    private const int MostGuessed = 2;

    private int _left = budget;

    /// <summary>The problems without those that follow from another one, in the order in which they are best mended.</summary>
    /// <param name="text">The file in which the mistakes lie; problems of other files may be among those that are given.</param>
    /// <param name="problems">Everything that is wrong, the likeliest cause first.</param>
    public ImmutableArray<Diagnostic> CausesOf(SourceText text, ImmutableArray<Diagnostic> problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        var causes = ImmutableArray.CreateBuilder<Diagnostic>();
        var open = problems.ToList();
        SourceText current = text;
        ImmutableArray<Diagnostic> seen = problems;
        while (open.Count > 0 && causes.Count < MostCauses && Best(current, seen) is { } mend)
        {
            var left = new Leftover(mend.Left);
            Diagnostic[] gone = [.. open.Where(p => !left.Take(p))];
            if (gone.Length == 0)
            {
                break;
            }

            causes.Add(Placed(mend.Cause, gone, text, current));
            open.RemoveAll(p => gone.Contains(p));
            (current, seen) = (mend.Text, mend.Left);
        }

        return [.. causes, .. open];
    }

    // What is told was found in a text that is mended already; the first one speaks of the text as it stands.
    private static Diagnostic Placed(Diagnostic cause, Diagnostic[] gone, SourceText text, SourceText current) =>
        ReferenceEquals(text, current) ? cause : gone.FirstOrDefault(g => Key(g) == Key(cause)) ?? gone[0];

    private Mend? Best(SourceText text, ImmutableArray<Diagnostic> problems)
    {
        Mend? best = null;
        foreach (Diagnostic cause in Candidates(text, problems))
        {
            if (_left <= 0)
            {
                break;
            }

            _left--;
            var mended = new SourceText(text.Name, TextEdit.Apply(text.Content, cause.Fix!.Edits));
            ImmutableArray<Diagnostic> left = look(mended);
            if (left.Length < Math.Min(problems.Length, best?.Left.Length ?? int.MaxValue))
            {
                best = new Mend(cause, mended, left);
            }

            if (left.IsEmpty)
            {
                break;
            }
        }

        return best;
    }

    private IEnumerable<Diagnostic> Candidates(SourceText text, ImmutableArray<Diagnostic> problems)
    {
        Diagnostic[] here = [.. problems.Where(p => p.At.Source.Name == text.Name)];
        IEnumerable<Diagnostic> offered = here.Take(MostOffers);
        IEnumerable<Diagnostic> guessed = problems.Length == 1 && here is [{ Fix: not null }] ? [] : here.Take(MostGuessed).SelectMany(p => guesses(text, p));
        return offered.Concat(guessed).Where(c => c.Fix is { } fix && fix.Edits.All(e => e.At.Source.Name == text.Name && e.At.End <= text.Content.Length));
    }

    private static (string, string, string, string) Key(Diagnostic problem) => (problem.Id, problem.Message, problem.At.Source.Name, problem.At.Text);

    private sealed record Mend(Diagnostic Cause, SourceText Text, ImmutableArray<Diagnostic> Left);

    /// <summary>What is still told after a mend; each takes away one problem that was told before.</summary>
    private sealed class Leftover(IEnumerable<Diagnostic> left)
    {
        private readonly Dictionary<(string, string, string, string), int> _counts = left.GroupBy(Key).ToDictionary(g => g.Key, g => g.Count());

        public bool Take(Diagnostic problem)
        {
            if (_counts.GetValueOrDefault(Key(problem)) == 0)
            {
                return false;
            }

            _counts[Key(problem)]--;
            return true;
        }
    }
}
