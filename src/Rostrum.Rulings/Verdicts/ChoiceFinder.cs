using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Telling;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <summary>Finds what the words in the gaps of a phrase stand for: the shortest name that tells a candidate.</summary>
/// <remarks>A piece or a card that is not where the action would take it from is laid there, and remembered as assumed.</remarks>
internal sealed partial class ChoiceFinder(PhraseMatch match, Position position, SourceSpan at, DiagnosticBag problems)
{
    private readonly Naming _naming = new(position.Sheet, position.Me);
    private readonly List<Value?> _chosen = [];
    private readonly List<string> _assumed = [];
    private readonly Dictionary<int, string> _impossible = [];
    private readonly HashSet<int> _granted = [];
    private readonly Position _before = position;
    private Position _position = position;

    /// <summary>True where the action was done before: what could be chosen then is not known any more, <c>?</c> stands for what nobody says, and things are
    /// looked for on the table as it is now.</summary>
    public bool IsOver { get; init; }

    private Sheet Sheet => _position.Sheet;

    /// <summary>The action with its choices; null where a gap names nothing, which is reported.</summary>
    public Proposal? Find()
    {
        foreach (ActionChoice choice in match.Action.Choices)
        {
            if (choice.Amount == ChoiceAmount.Given || !match.Gaps.TryGetValue(choice.Name, out SourceSpan words))
            {
                _chosen.Add(null);
                continue;
            }

            if (Choose(choice, words) is not { } value)
            {
                return null;
            }

            _chosen.Add(value);
        }

        return new Proposal(match.Action, _position, [.. _chosen], [.. _assumed]) { Impossible = _impossible.ToImmutableDictionary(), Granted = [.. _granted] };
    }

    private Value? Choose(ActionChoice choice, SourceSpan words)
    {
        if (IsOver && words.Text == Untold)
        {
            return NotTold;
        }

        Value.Many domain = Domain(choice);
        if (choice.Amount == ChoiceAmount.One)
        {
            return One(choice, words, domain, []);
        }

        ImmutableArray<SourceSpan> names = choice.Amount is ChoiceAmount.AnyNumber or ChoiceAmount.UpTo && Same("none", Prose.Fold(words.Text)) ? [] : Listed(words);
        if (choice.Amount == ChoiceAmount.Exactly && names.Length != choice.Number)
        {
            problems.Add(RulingProblems.WrongNumber(at, choice.Name, choice.Number, names.Length));
            return null;
        }

        var values = new List<Value>();
        foreach (SourceSpan name in names)
        {
            if (One(choice, name, domain, values) is not { } value)
            {
                return null;
            }

            values.Add(value);
        }

        return Value.Certain(values, isList: true);
    }

    // The parts of a list such as 'A1, B1 and C1'.
    private static ImmutableArray<SourceSpan> Listed(SourceSpan words)
    {
        var parts = ImmutableArray.CreateBuilder<SourceSpan>();
        int from = 0;
        foreach (Match joint in Joint().Matches(words.Text).Append(Match.Empty))
        {
            int end = joint.Success ? joint.Index : words.Text.Length;
            if (end > from)
            {
                parts.Add(words.Part(from, end - from));
            }

            from = joint.Index + joint.Length;
        }

        return parts.ToImmutable();
    }

    [GeneratedRegex(@"\s*,\s+(?:and\s+)?|\s+and\s+", RegexOptions.IgnoreCase)]
    private static partial Regex Joint();

    // What may be chosen, earlier choices known.
    private Value.Many Domain(ActionChoice choice) => Domain(IsOver ? Unfiltered(choice.From) : choice.From);

    private Value.Many Domain(Term from)
    {
        var evaluator = new Evaluator(_position, _position.Me, Setting.First, new SortedSet<int>());
        Value[] frame = Evaluator.Frame(match.Action.FrameSize);
        for (int i = 0; i < _chosen.Count; i++)
        {
            ActionChoice earlier = match.Action.Choices[i];
            frame[earlier.Slot] = _chosen[i] ?? evaluator.Evaluate(earlier.From, frame);
        }

        return Evaluator.AsMany(evaluator.Evaluate(from, frame));
    }

    private Value? One(ActionChoice choice, SourceSpan span, Value.Many domain, List<Value> taken)
    {
        string words = Prose.Fold(span.Text);
        int before = problems.Count;
        Value? named = domain.Members.Select(m => m.Value).FirstOrDefault(v => Names(v).Any(n => Same(n, words)) || IsFit(v, span))
            ?? OfSort(choice.From.Sort.Element ?? choice.Sort, words, domain)
            ?? OtherFit(choice, span)
            ?? (IsOver ? ThingOfBefore(choice, span, domain) : Thing(choice, span, domain, taken));
        if (named is null && problems.Count == before)
        {
            ReportUnknown(choice, span, domain);
        }

        return named;
    }

    // The spaces on which a drawing lies may be named in any order.
    private bool IsFit(Value value, SourceSpan words) =>
        value is Value.FitAt fit && fit.Placement.Spaces.Select(s => _naming.Space(fit.Board, fit.Seat, s)).ToHashSet(StringComparer.OrdinalIgnoreCase)
            .SetEquals(Listed(words).Select(w => Prose.Fold(w.Text)));

    // A way to lay something that a condition of the choice leaves out.
    private Value? OtherFit(ActionChoice choice, SourceSpan words) =>
        choice.From is Term.Filtered { Sort.Element.Kind: SortKind.Fit } all ? Domain(all.Through.Domain).Members.Select(m => m.Value).FirstOrDefault(v => IsFit(v, words)) : null;

    private static bool Same(string name, string words) => string.Equals(name, words, StringComparison.OrdinalIgnoreCase);

    private string[] Names(Value value) => value switch
    {
        Value.SpaceAt space => [Sheet.Boards[space.Board].Spaces[space.Index].Name.Name],
        Value.SlotAt slot => [_naming.Of(slot), $"{slot.Index + 1}"],
        Value.LineAt line => [_naming.Of(line), _naming.Of(line).Split(' ')[^1]],
        Value.PlayerAt player => [_naming.Seat(player.Seat), $"seat {player.Seat + 1}"],
        Value.ThingAt { Thing.Card: { } card } => [card.Name],
        Value.ThingAt => [],
        _ => [_naming.Of(value)],
    };

    // A name that is none of the domain's: a space elsewhere on the board, a number, a direction.
    private Value? OfSort(Sort sort, string words, Value.Many domain)
    {
        switch (sort.Kind)
        {
            case SortKind.Space:
                int first = domain.Members.Select(m => m.Value).OfType<Value.SpaceAt>().FirstOrDefault()?.Board ?? 0;
                return Enumerable.Range(0, Sheet.Boards.Length).OrderByDescending(b => b == first).SelectMany(b => Sheet.Boards[b].Spaces
                    .Where(s => Same(s.Name.Name, words)).Select(s => new Value.SpaceAt(b, Sheet.Boards[b].Place.EachPlayer ? _position.Me : 0, s.Name.Index))).FirstOrDefault();
            case SortKind.Number when long.TryParse(words, System.Globalization.CultureInfo.InvariantCulture, out long number):
                return Value.Of(number);
            case SortKind.Truth when words is "yes" or "no":
                return Value.Of(words == "yes");
            case SortKind.Player:
                return Enumerable.Range(0, _position.Seats).Select(s => new Value.PlayerAt(s)).FirstOrDefault(p => Names(p).Any(n => Same(n, words)));
            default:
                return null;
        }
    }
}
