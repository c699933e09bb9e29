using System.Collections.Immutable;
using Rostrum.Rulings.Games;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.ReadBack;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>Checks texts with slips in them and says what came of each.</summary>
/// <param name="games">The games whose texts they are.</param>
/// <param name="sample">How many positions of a game are asked where a slip may have changed their answers; chosen by the slip's number.</param>
public sealed class SlipJudge(ImmutableArray<SlipGame> games, int sample)
{
    private static readonly string[] Expected = ["ROS0161", "ROS0162", "ROS0163"];

    private readonly Dictionary<string, (SlipGame Game, string Meaning)> _games = games.ToDictionary(g => g.Name, g => (g, Meaning(g.Whole)));

    /// <summary>What a check says of a slip.</summary>
    public SlipFinding Judge(Slip slip)
    {
        ArgumentNullException.ThrowIfNull(slip);
        SlipFinding finding = slip.File.IsPosition ? OfPosition(slip) : OfSheet(slip);
        return finding.Messages.IsEmpty ? finding : Mended(finding);
    }

    private SlipFinding OfSheet(Slip slip)
    {
        (SlipGame shipped, string meaning) = _games[slip.File.Game];
        Game game = shipped.With(slip.Wrong);
        ImmutableArray<Diagnostic> messages = SlipGame.OfSheet(game);
        if (!messages.IsEmpty)
        {
            return new SlipFinding(slip, SlipOutcome.Told, messages);
        }

        SlipOutcome silent = slip.IsInProse ? SlipOutcome.Prose
            : Meaning(game) == meaning ? SlipOutcome.SameMeaning
            : Sampled(shipped, slip.Number).All(p => SlipGame.OfPosition(game, p).IsEmpty) ? SlipOutcome.OtherMeaning : SlipOutcome.SeenByExpectations;
        return new SlipFinding(slip, silent, []);
    }

    private SlipFinding OfPosition(Slip slip)
    {
        Game game = _games[slip.File.Game].Game.Whole;
        string[] anyway = [.. SlipGame.OfPosition(game, slip.File.Text).Select(p => p.Message)];
        ImmutableArray<Diagnostic> messages = [.. SlipGame.OfPosition(game, slip.Wrong).Where(p => !anyway.Contains(p.Message))];
        if (messages.Any(m => !Expected.Contains(m.Id) || slip.IsAt(m.At)))
        {
            return new SlipFinding(slip, SlipOutcome.Told, messages);
        }

        SlipOutcome silent = !messages.IsEmpty ? SlipOutcome.SeenByExpectations
            : slip.IsInProse ? SlipOutcome.Prose
            : Meaning(game, slip.Wrong) == Meaning(game, slip.File.Text) ? SlipOutcome.SameMeaning : SlipOutcome.OtherMeaning;
        return new SlipFinding(slip, silent, []);
    }

    private SlipFinding Mended(SlipFinding finding)
    {
        Diagnostic[] offers = [.. finding.Messages.Where(m => m.Fix is not null && m.Fix.Edits.All(e => e.At.Source.Name == finding.Slip.Wrong.Name))];
        Diagnostic[] safe = [.. offers.Where(o => o.Fix!.Grade == FixGrade.Safe)];
        return finding with
        {
            Offered = offers.Select(o => Worth(finding.Slip, [o])).DefaultIfEmpty().Max(),
            Safe = safe.Select(o => Worth(finding.Slip, [o])).DefaultIfEmpty().Max(),
            Unsafe = safe.Length == 0 ? null : Broken(finding, safe),
        };
    }

    private FixWorth Worth(Slip slip, Diagnostic[] fixes)
    {
        SourceText mended = Apply(slip, fixes);
        return mended.Content == slip.File.Text.Content ? FixWorth.Restored : MeansTheSame(slip, mended) ? FixWorth.SameMeaning : FixWorth.Other;
    }

    private bool MeansTheSame(Slip slip, SourceText mended)
    {
        (SlipGame shipped, string meaning) = _games[slip.File.Game];
        return slip.File.IsPosition ? Meaning(shipped.Whole, mended) == Meaning(shipped.Whole, slip.File.Text) : Meaning(shipped.With(mended)) == meaning;
    }

    // A safe fix may be applied unseen: no error is left that was not told before, and where none is left, what positions expect comes out.
    private string? Broken(SlipFinding finding, Diagnostic[] safe)
    {
        Slip slip = finding.Slip;
        SlipGame shipped = _games[slip.File.Game].Game;
        SourceText mended = Apply(slip, safe);
        if (mended.Content == slip.File.Text.Content)
        {
            return null;
        }

        Game game = slip.File.IsPosition ? shipped.Whole : shipped.With(mended);
        ImmutableArray<Diagnostic> own = slip.File.IsPosition ? SlipGame.OfPosition(game, mended) : SlipGame.OfSheet(game);
        IEnumerable<Diagnostic> expected = slip.File.IsPosition || own.Any(p => p.Severity == Severity.Error) ? [] : Sampled(shipped, slip.Number).SelectMany(p => SlipGame.OfPosition(game, p));
        HashSet<string> told = [.. finding.Messages.Select(m => m.Message)];
        return own.Where(p => !told.Contains(p.Message)).Concat(expected).FirstOrDefault(p => p.Severity == Severity.Error) is { } error ? $"{error.Id} {error.At}: {error.Message}" : null;
    }

    private IEnumerable<SourceText> Sampled(SlipGame game, int number)
    {
        SourceText[] positions = [.. game.Texts.Where(t => t.IsPosition).Select(t => t.Text)];
        return Enumerable.Range(0, Math.Min(sample, positions.Length)).Select(i => positions[(number + (i * positions.Length / Math.Min(sample, positions.Length))) % positions.Length]);
    }

    private static SourceText Apply(Slip slip, IEnumerable<Diagnostic> fixes)
    {
        // Two that would mend the same words are one.
        IEnumerable<TextEdit> edits = fixes.SelectMany(f => f.Fix!.Edits).DistinctBy(e => (e.At.Start, e.At.Length));
        return new SourceText(slip.Wrong.Name, TextEdit.Apply(slip.Wrong.Content, edits));
    }

    // A sheet with all of its variants, read back as English.
    private static string Meaning(Game game)
    {
        SheetReading basis = game.Sheet();
        IEnumerable<SheetReading> readings = basis.IsSound ? basis.Sheet!.Variants.Select(v => game.Sheet(v.Name)).Prepend(basis) : [basis];
        return string.Join('\n', readings.Select(r => r.IsSound ? string.Join('\n', SheetReadBack.Of(r.Sheet!).Select(Told)) : "not read"));
    }

    private static string Told(ReadClause clause) => $"{clause.Section}|{clause.Name}|{clause.Says}|{clause.Meaning}|{Citation.Tell(clause.Cite)}|{clause.StatusInWords}";

    private static string Meaning(Game game, SourceText position)
    {
        OpenedPosition opened = game.Open(position);
        return opened.Position is { } read
            ? $"{PositionPrinter.Print(read)}\n{string.Join('\n', opened.File!.Expectations.Select(Told))}\n{string.Join(", ", opened.File.Variants)}"
            : "not read";
    }

    private static string Told(Expectation expectation) => expectation switch
    {
        Expectation.Tally t => $"{t.Clause} {t.Points}",
        Expectation.Rule r => $"{r.Phrase} {r.Verdict} {string.Join(", ", r.Breaches.Select(b => b.Name))}",
        _ => "",
    };
}
