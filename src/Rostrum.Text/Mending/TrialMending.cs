using System.Collections.Immutable;

namespace Rostrum.Text.Mending;

/// <summary>Tells causes from what follows from them: mends one problem on trial, reads the files again, and sees which others are gone.</summary>
/// <remarks>A problem that is still there after the mend is a mistake of its own and is never left out, and a mend that brings new problems is none.
/// Cost: one reading a trial.</remarks>
/// <param name="look">Reads everything with some files replaced and gives all that is wrong.</param>
/// <param name="guesses">What may be behind a problem besides what it says itself: other problems, each with a fix; the likeliest first.</param>
/// <param name="keeps">False for a guess that need not be tried: it takes something away.</param>
/// <param name="budget">How many readings may be made.</param>
public sealed class TrialMending(
    Func<ImmutableArray<SourceText>, ImmutableArray<Diagnostic>> look, Func<Diagnostic, IEnumerable<Diagnostic>> guesses, Func<Diagnostic, bool> keeps, int budget)
{
    // Mistakes that are told apart; what is left then stays as it was found.
    private const int MostCauses = 6;

    // Problems whose fixes are tried, from the first; further guesses are made about the first few only.
    private const int MostOffers = 8;
    private const int MostGuessed = 2;

    // Guesses that are looked at for one reading that may be made.
    private const int GlancesAReading = 3;

    private readonly HashSet<Fix> _doubtful = [];
    private readonly HashSet<Fix> _proved = [];
    private int _left = budget;
    private int _glances = budget * GlancesAReading;

    /// <summary>The problems without those that follow from another one, in the order in which they are best mended. A fix that does not hold what it
    /// promises is no longer called safe.</summary>
    /// <param name="problems">Everything that is wrong, the likeliest cause first.</param>
    public ImmutableArray<Diagnostic> CausesOf(ImmutableArray<Diagnostic> problems)
    {
        var causes = new List<Diagnostic>();
        var open = problems.ToList();
        ImmutableArray<SourceText> current = [];
        ImmutableArray<Diagnostic> seen = problems;
        while (open.Count > 0 && causes.Count < MostCauses && _left > 0 && Best(current, seen) is { } mend)
        {
            var left = new Leftover(mend.Left);
            Diagnostic[] gone = [.. open.Where(p => !left.Take(p))];
            if (gone.Length == 0)
            {
                break;
            }

            causes.Add(Placed(mend.Cause, gone, current));
            open.RemoveAll(p => gone.Contains(p));
            (current, seen) = (mend.Files, mend.Left);
        }

        return [.. causes.Concat(open).Select(p => p.Fix is { Grade: FixGrade.Safe } fix && (IsFarOff(fix) || !IsProved(fix, problems)) ? p with { Fix = fix with { Grade = FixGrade.Choice } } : p)];
    }

    // Two letters away, another name of the sheet may be meant as well.
    private static bool IsFarOff(Fix fix) =>
        fix.Edits is [{ At.Length: > 0, NewText.Length: > 0 } edit] && edit.NewText.All(IsOfWords) && edit.At.Text.All(IsOfWords) && !NearSpelling.IsOneOff(edit.At.Text, edit.NewText);

    private static bool IsOfWords(char c) => char.IsLetter(c) || c is ' ' or '\'' or '-';

    // What is told later was found in files that are mended already; the first one speaks of them as they stand.
    private static Diagnostic Placed(Diagnostic cause, Diagnostic[] gone, ImmutableArray<SourceText> current) =>
        current.IsEmpty ? cause : gone.FirstOrDefault(g => Key(g) == Key(cause)) ?? gone[0];

    private bool IsProved(Fix fix, ImmutableArray<Diagnostic> problems)
    {
        if (!_proved.Contains(fix) && !_doubtful.Contains(fix) && _left > 0)
        {
            _left--;
            Judge(fix, look([Mended([], fix)]), problems);
        }

        return !_doubtful.Contains(fix);
    }

    private bool Judge(Fix fix, ImmutableArray<Diagnostic> left, ImmutableArray<Diagnostic> problems)
    {
        var before = new Leftover(problems);
        bool isClean = left.All(before.Take) && left.Length < problems.Length;
        (isClean ? _proved : _doubtful).Add(fix);
        return isClean;
    }

    private Mend? Best(ImmutableArray<SourceText> current, ImmutableArray<Diagnostic> problems)
    {
        Mend? best = null;
        foreach (Diagnostic cause in Candidates(current, problems))
        {
            if (_left <= 0)
            {
                break;
            }

            _left--;
            SourceText mended = Mended(current, cause.Fix!);
            ImmutableArray<SourceText> files = [.. current.Where(f => f.Name != mended.Name), mended];
            ImmutableArray<Diagnostic> left = look(files);
            if (Judge(cause.Fix!, left, problems) && left.Length < (best?.Left.Length ?? int.MaxValue))
            {
                best = new Mend(cause, files, left);
            }

            if (left.IsEmpty)
            {
                break;
            }
        }

        return best;
    }

    private static SourceText Mended(ImmutableArray<SourceText> current, Fix fix)
    {
        SourceText source = fix.Edits[0].At.Source;
        SourceText file = current.FirstOrDefault(f => f.Name == source.Name) ?? source;
        return new SourceText(file.Name, TextEdit.Apply(file.Content, fix.Edits));
    }

    private IEnumerable<Diagnostic> Candidates(ImmutableArray<SourceText> current, ImmutableArray<Diagnostic> problems)
    {
        IEnumerable<Diagnostic> offered = problems.Where(p => p.Fix is not null).Take(MostOffers);
        ILookup<bool, Diagnostic> guessed = problems.Take(MostGuessed).SelectMany(guesses).Where(g => g.Fix is not null).ToLookup(g => g.Id == Certain);
        return guessed[true].Concat(offered).Concat(guessed[false].Where(IsKept)).Where(c => IsOfNow(c.Fix!, current));
    }

    private bool IsKept(Diagnostic guess) => _glances-- > 0 && keeps(guess);

    // Places in a file as it stood before a mend are no places of the mended one.
    private static bool IsOfNow(Fix fix, ImmutableArray<SourceText> current) =>
        fix.Edits.All(e => current.FirstOrDefault(f => f.Name == e.At.Source.Name) is not { } file || file.Content == e.At.Source.Content);

    /// <summary>The id of guesses that are tried before what the problems offer themselves: a name that is misspelt where it is declared.</summary>
    private const string Certain = "ROS0215";

    private static (string, string, string, string) Key(Diagnostic problem) => (problem.Id, problem.Message, problem.At.Source.Name, problem.At.Text);

    private sealed record Mend(Diagnostic Cause, ImmutableArray<SourceText> Files, ImmutableArray<Diagnostic> Left);

    /// <summary>Problems of one reading; each takes away one problem of another.</summary>
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
