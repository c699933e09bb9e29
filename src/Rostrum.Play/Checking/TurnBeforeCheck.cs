using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Checking;

/// <summary>Finds questions of what I did the turn before, in games where the turn before is always another player's.</summary>
/// <remarks>
/// The turn before can be one's own only after an extra turn, alone, where 'next to play' may name whoever had the turn, or where the others are out. It may also hold
/// something of mine where others act in a player's turn, or where it is asked of somebody else than the player whose turn it is. In all of these nothing is told.
/// </remarks>
internal sealed class TurnBeforeCheck(Sheet sheet)
{
    private readonly List<Term.Done> _asked = [];
    private readonly HashSet<Word> _words = [];
    private bool _isAskedOfOthers;

    /// <summary>Each question once.</summary>
    public IEnumerable<Diagnostic> All()
    {
        if (!TurnsAlternate())
        {
            return [];
        }

        foreach (Term term in Clauses().OfType<Term>())
        {
            Look(term);
        }

        return _isAskedOfOthers ? [] : _asked.Select(d => CourseProblems.NotMyTurnBefore(d.Origin.At, d.Action.Name, sheet.Actions[d.Action.Index].Choices.FirstOrDefault()?.Name));
    }

    private bool TurnsAlternate() =>
        sheet.FewestPlayers >= 2
        && sheet.Blocks.All(b => b.Name != "course")
        && sheet.Ends.All(e => e.Follows != EndFollow.Out)
        && (sheet.NextToPlay is null || NamesAnother(sheet.NextToPlay))
        && sheet.AllSteps.All(s => s.Kind is not (StepKind.Again or StepKind.Do))
        && InTurns().SelectMany(s => s.All).All(s => s.Kind is not (StepKind.EachPlayer or StepKind.Does or StepKind.AllAtOnce or StepKind.TakeTurns));

    private IEnumerable<Step> InTurns() => sheet.Blocks.Where(b => b.Name == "turn").SelectMany(b => b.Steps)
        .Concat(sheet.Actions.SelectMany(a => a.Steps))
        .Concat(sheet.Hooks.Where(h => h.Action is not null || h.Block == "turn").SelectMany(h => h.Steps))
        .Concat(sheet.Powers.SelectMany(p => p.Price));

    // Whoever had the turn is never named.
    private static bool NamesAnother(Term next) => next switch
    {
        Term.Apply { Operation.Id: Op.Opponent } => true,
        Term.Apply { Operation.Id: Op.SeatBeside, Arguments: [Term.Me, ..] } => true,
        Term.If either => NamesAnother(either.Then) && NamesAnother(either.Otherwise),
        _ => false,
    };

    // All that is asked of the player whose turn it is. 'next to play' looks back on the turn that is over, and scores are asked of everybody.
    private IEnumerable<Term?> Clauses() =>
        sheet.Laws.SelectMany(l => l.Bodies.SelectMany(b => b)).SelectMany(b => (IEnumerable<Term?>)b.Truths)
            .Concat(sheet.Powers.Select(p => p.If))
            .Concat(sheet.Actions.SelectMany(a => a.Choices).Select(c => (Term?)c.From))
            .Concat(sheet.Ends.Select(e => e.If))
            .Concat(InTurns().SelectMany(s => s.All).SelectMany(s => s.Terms));

    private void Look(Term term)
    {
        switch (term)
        {
            case Term.Done { When: DoneWhen.TurnBefore, By: Term.Me } done when _asked.All(d => d.Origin.At != done.Origin.At):
                _asked.Add(done);
                break;
            case Term.CanDo { Player: not Term.Me }:
                _isAskedOfOthers = true;
                break;
            case Term.Call call when _words.Add(call.Word) && sheet.Meanings.FirstOrDefault(m => ReferenceEquals(m.Word, call.Word)) is { } meaning:
                Look(meaning.Body);
                break;
        }

        foreach (Term part in TermParts.Of(term))
        {
            Look(part);
        }
    }
}
