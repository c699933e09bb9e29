using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Makes the course of a game: set-up, turns, hooks, laws, powers, ends, scoring.</summary>
internal sealed class CourseMaker(Picks picks, TableWords words, FormulaMaker formulas, ActionMaker actions)
{
    private readonly List<SheetSection> _sections = [];
    private ImmutableArray<ActionWords> _all = [];

    /// <summary>The sections behind those of the table.</summary>
    public ImmutableArray<SheetSection> Make()
    {
        Words();
        _all = actions.Make(picks.From(2, 5));
        SetUp();
        Turn();
        Add("actions", _all.Select(a => a.Entry));
        Hooks();
        Laws();
        Ends();
        Score();
        return [.. _sections];
    }

    private void Add(string key, IEnumerable<string> entries) => _sections.Add(new SheetSection(key, null, [.. entries]));

    private void Words()
    {
        var entries = new List<string>();
        if (picks.Percent(40))
        {
            BoardWords board = picks.Of(words.Boards);
            var space = new Known("p", SortKind.Space, board);
            entries.Add($"bright ({board.Space} p): p is {picks.Of("empty", "not empty")} {picks.Of("and", "or")} ({formulas.Truth([space], 1)})");
            entries.Add($"level ({board.Space} p): order of p + {formulas.Number([space], 1)}");
            words.Words.Add(("bright", SortKind.Space, SortKind.Truth, board));
            words.Words.Add(("level", SortKind.Space, SortKind.Number, board));
        }

        if (picks.Percent(30) && words.Places.Where(p => p.IsEach).ToArray() is [var place, ..])
        {
            entries.Add($"wealth (player p): count({place.Name} of p) {picks.Of("+", "-")} {picks.From(1, 2)}");
            words.Words.Add(("wealth", SortKind.Player, SortKind.Number, null));
        }

        Add("words", entries);
    }

    private void SetUp()
    {
        var steps = new List<string>();
        foreach (BoardWords board in words.Boards.Where(_ => picks.Percent(70)))
        {
            KindWords kind = picks.Of(words.OnBoards.ToArray());
            var space = new Known("p", SortKind.Space, board);
            string lay = kind.Home is { } home ? $"deal 1 from {home} to p" : $"move {FormulaMaker.A(kind.Name)} from {kind.Supply} to p";
            string loop = $"for each p in {board.Mine} where p is empty{picks.Of(" and order of p is at most 3", "", " and order of p is at least 3")}: {lay}";
            steps.Add(board.IsEach || kind.IsOwned ? $"each player:\n    - {loop}" : loop);
        }

        foreach (PlaceWords place in words.Places.Where(p => p.Form is not (PlaceForm.Bag or PlaceForm.Deck) && (p.Name == "tray" || picks.Percent(65))))
        {
            string from = place.Holds.Home ?? place.Holds.Supply;
            string step = place.Name == "tray" ? "move all dice from supply to tray"
                : place.Form == PlaceForm.Row ? $"for each p in {place.Name}: {(place.Holds.Home is null ? $"move a {place.Holds.Name} from {from} to p" : $"deal 1 from {from} to p")}"
                : place.Holds.Home is null ? $"move {picks.From(1, 2)} {place.Holds.Plural} from {from} to {place.Mine}"
                : $"deal {picks.From(1, 2)} from {from} to {place.Mine}";
            steps.Add(place.IsEach || place.Holds.IsOwned ? $"each player:\n    - {step}" : step);
        }

        if (words.Places.Any(p => p.Name == "tray"))
        {
            steps.Add("roll dice in tray");
        }

        Add("set-up", steps.Select(s => $"- {s}"));
    }

    private void Turn() => Add("turn", Enumerable.Range(0, picks.From(1, 3)).Select(_ => $"- {Phase(0)}"));

    private string Phase(int depth)
    {
        string one = picks.Of(_all).Name;
        string[] some = [.. picks.Some(_all.Select(a => a.Name), picks.From(2, 3))];
        string list = string.Join('\n', some.Select(a => $"    - {a}"));
        return picks.Below(depth > 0 ? 6 : 15) switch
        {
            0 or 1 or 2 => $"one of:\n{list}",
            3 => one,
            4 => $"may: {one}",
            5 => actions.Bookkeeping([]) ?? one,
            6 => $"may {picks.Of("up to 2 times", "up to 3 times")}: {one}",
            7 => $"first possible of:\n{list}",
            8 => $"in any order:\n    - must: {some[0]}\n    - may: {some[^1]}",
            9 => $"repeat {picks.From(2, 3)} times:\n    - {Inner(depth)}",
            10 => $"each {picks.Of("", "other ")}player:\n    - {Inner(depth)}",
            11 => $"if {formulas.Truth([], 1)}:\n    - {Inner(depth)}\n- otherwise:\n    - {Inner(depth)}",
            12 => $"all at once:\n    - each player: {one}",
            13 => $"left of me does: {one}",
            _ => Ordered(),
        };
    }

    private string Inner(int depth) => Phase(depth + 1).Replace("\n", "\n    ", StringComparison.Ordinal);

    private string Ordered()
    {
        BoardWords board = picks.Of(words.Boards);
        var space = new Known("p", SortKind.Space, board);
        string step = words.Marks.FirstOrDefault(m => m.Of == board) is { } mark
            ? mark.Sort == SortKind.Truth ? $"set {mark.Name} of p to {picks.Of("yes", "no")}" : $"add 1 to {mark.Name} of p"
            : "move top of p to box";
        return $"for each p in {board.Mine} where p is not empty and ({formulas.Truth([space], 2)}){picks.Of(", in the order I choose", ", by order of p, highest first", "")}: {step}";
    }

    private void Hooks()
    {
        if (picks.Percent(25) && actions.Bookkeeping([]) is { } step)
        {
            ActionWords action = picks.Of(_all);
            string key = picks.Of($"after {action.Name}", $"before {action.Name}", "after turn", "before turn");
            bool isOfAction = key.EndsWith(action.Name, StringComparison.Ordinal);
            Add(key, [$"- if {formulas.Truth(isOfAction ? action.Known : [], 1)}: {step}"]);
        }

        if (picks.Percent(15))
        {
            _sections.Add(new SheetSection("next to play", words.Seats == 2 ? picks.Of("opponent", $"me if {formulas.Truth([], 2)} otherwise opponent") : "left of me", []));
        }
    }

    private void Laws()
    {
        var laws = new List<string>();
        foreach (ActionWords action in _all)
        {
            if (action.Needs is { } needs)
            {
                laws.Add($"law {laws.Count + 1}: {{binds: {action.Name}, needs: {needs}}}");
            }

            for (int i = picks.Of(0, 1, 1, 2); i > 0; i--)
            {
                string demand = picks.Of("needs", "forbids", "needs", "forbids", "must leave", "must not leave");
                string unless = picks.Percent(20) ? $", unless: {formulas.Truth(action.Known, 2)}" : "";
                laws.Add($"law {laws.Count + 1}: {{binds: {action.Name}, {demand}: {formulas.Truth(action.Known)}{unless}}}");
            }
        }

        if (picks.Percent(15))
        {
            string name = picks.Of(_all).Name;
            laws.Add($"law memory: {{binds: {name}, forbids: {name} was done {picks.Of("the turn before", "this turn", "the round before by me")}}}");
        }

        Add("laws", laws);

        // A power never lifts a law without which the steps lead nowhere.
        if (picks.OrNone(laws.Where(l => _all.All(a => a.Needs is null || !l.Contains($"binds: {a.Name},", StringComparison.Ordinal)))) is { } law && picks.Percent(25))
        {
            string bound = law.Split("binds: ")[1].Split(',')[0];
            string price = picks.Percent(50) && actions.Bookkeeping([]) is { } step ? $", price: {step}" : "";
            string limit = picks.Of("", ", limit: once a game", ", limit: once a turn", ", limit: 2 times a round");
            Add("powers", [$"Favour: {{lifts: {picks.Of("any one law", law.Split(':')[0])}, for: {bound}{price}{limit}}}"]);
        }
    }

    private void Ends()
    {
        string winner = words.Seats == 2 ? picks.Of("", "", "me", "opponent", "nobody", "everyone") : picks.Of("", "me", "everyone");
        string said = winner.Length > 0 ? $", winner: {winner}" : "";
        var ends = new List<string>();
        if (picks.Percent(40))
        {
            string then = picks.Of("", ", then: finish the round", ", then: one more round", ", checked: after each action", ", then: every other player once more");
            ends.Add($"early: {{if: {formulas.Truth([])}{then}{said}}}");
        }

        ends.Add($"late: {{if: turn number is at least {picks.From(3, 9)}}}");
        Add("end", ends);
    }

    private void Score()
    {
        var score = new List<string> { $"first: {{points: {formulas.Number([])}}}" };
        if (picks.Percent(60))
        {
            BoardWords board = picks.Of(words.Boards);
            var space = new Known("s", SortKind.Space, board);
            score.Add($"each: {{each: s in {board.Mine} where s is {picks.Of("empty", "not empty")} or ({formulas.Truth([space], 2)}), points: {formulas.Number([space], 1)}}}");
        }

        if (picks.Percent(30))
        {
            score.Add($"third: {{points: {formulas.Number([])}}}");
        }

        Add("score", score);
        if (picks.Percent(40))
        {
            _sections.Add(new SheetSection("ties", $"[{picks.Of("lower", "higher")} {formulas.Number([], 2)}, shared]", []));
        }

        if (picks.Percent(20))
        {
            _sections.Add(new SheetSection("aim", picks.Of("lowest total", "at least 5", "highest total"), []));
        }
    }
}
