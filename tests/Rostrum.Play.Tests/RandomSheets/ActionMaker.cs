using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>An action of a random sheet.</summary>
/// <param name="Name">Its name, the first word of its phrase.</param>
/// <param name="Phrase">Its phrase.</param>
/// <param name="Choices">What it chooses: name and domain.</param>
/// <param name="Steps">What it does.</param>
/// <param name="Known">Its choices as formulas speak of them.</param>
internal sealed record ActionWords(string Name, string Phrase, ImmutableArray<(string Name, string From)> Choices, ImmutableArray<string> Steps, ImmutableArray<Known> Known)
{
    /// <summary>What a law must ask, so that its steps lead somewhere; null for nothing.</summary>
    public string? Needs { get; init; }

    /// <summary>The entry of the section.</summary>
    public string Entry => $"{Name}:\n  phrase: {Phrase}\n"
        + (Choices.IsEmpty ? "" : $"  choose:\n{string.Concat(Choices.Select(c => $"    {c.Name}: {c.From}\n"))}")
        + $"  do:\n{string.Join('\n', Steps.Select(s => $"    - {s.Replace("\n", "\n    ", StringComparison.Ordinal)}"))}";
}

/// <summary>Makes actions: what they choose and what their steps do.</summary>
internal sealed class ActionMaker(Picks picks, TableWords words, FormulaMaker formulas)
{
    /// <summary>So many actions at the most, none twice.</summary>
    public ImmutableArray<ActionWords> Make(int most)
    {
        Func<ActionWords?>[] all = [Lay, Lay, Bring, Shove, Hop, Grab, Gather, Spend, Wake, Trade, Call, Pick, Haul, Renew, Slide, Toss, Burn, Glide, Again, Crown, Wait];
        var made = new List<ActionWords>();
        while (made.Count < most)
        {
            if (picks.Of(all)() is { } action && made.All(m => m.Name != action.Name))
            {
                made.Add(action);
            }
        }

        return [.. made];
    }

    private ActionWords Action(string phrase, (string Name, string From)[] choices, string[] steps, params Known[] known) =>
        new(phrase.Split(' ')[0], phrase, [.. choices], [.. steps, .. Extra(known)], [.. known]);

    // Now and then a step more: marks, extra turns, conditions.
    private IEnumerable<string> Extra(Known[] known)
    {
        if (picks.Percent(15) && Bookkeeping([.. known]) is { } step)
        {
            yield return step;
        }

        if (picks.Percent(15) && Bookkeeping([.. known]) is { } then)
        {
            yield return $"if {formulas.Truth([.. known], 1)}:\n    - {then}";
        }
    }

    /// <summary>A step that needs nobody's choice; null where the sheet has nothing for it.</summary>
    public string? Bookkeeping(ImmutableArray<Known> known)
    {
        MarkWords? number = picks.OrNone(words.Marks.Where(m => m is { Sort: SortKind.Number, Of: null }));
        MarkWords? truth = picks.OrNone(words.Marks.Where(m => m is { Sort: SortKind.Truth, Of: null }));
        PlaceWords? heap = picks.OrNone(words.Places.Where(p => p.Form == PlaceForm.Heap));
        PlaceWords? dealt = picks.OrNone(words.Places.Where(p => p.Form is PlaceForm.Bag or PlaceForm.Deck));
        string mine = number is { IsEach: true } ? $"my {number.Name}" : number?.Name ?? "";
        string?[] all =
        [
            number is null ? null : $"add {formulas.Number(known, 2)} to {mine}",
            number is null ? null : $"take {picks.From(1, 2)} from {mine}",
            number is null ? null : $"set {mine} to {formulas.Number(known, 2)}",
            truth is null ? null : $"set my {truth.Name} to {picks.Of("yes", "no")}",
            words.Marks.Any(m => m.Name == "leader") ? "set leader to me" : null,
            heap is null || heap.Holds.Home is not null ? null : $"move a {heap.Holds.Name} from {heap.Holds.Supply} to {heap.Mine}",
            heap is null || heap.Holds.Home is not null ? null : $"move {picks.Of("all", "2")} {heap.Holds.Plural} from {heap.Mine} to {picks.Of("box", heap.Holds.Supply)}",
            dealt is not null && picks.OrNone(words.Places.Where(p => p.Holds == dealt.Holds && p.Form is PlaceForm.Heap or PlaceForm.Hand && p.Holds == dealt.Holds)) is { } to
                ? $"deal {picks.From(1, 2)} from {dealt.Name} to {to.Mine}" : null,
        ];
        return picks.OrNone(all.OfType<string>());
    }

    private string Where(Known it, params Known[] before) =>
        picks.Percent(45) ? $" where {Of(formulas.Truth([it, .. before], 1), it)}" : "";

    // A filter that does not speak of the element is no filter.
    private static string Of(string truth, Known it) => truth.Split(' ', '(', ')', ',').Contains(it.Name) ? truth : it.Sort switch
    {
        SortKind.Space or SortKind.Slot => $"({truth}) or it is not empty",
        SortKind.Thing => $"({truth}) or it is a {it.Kind!.Name}",
        _ => $"({truth}) or it is me",
    };

    private (string Name, string From) Spot(string name, BoardWords board, params Known[] before) =>
        (name, $"a {board.Space} in {board.Mine}{Where(new Known("it", SortKind.Space, board), before)}");

    private ActionWords Lay()
    {
        BoardWords board = picks.Of(words.Boards);
        KindWords kind = picks.Of(words.OnBoards.ToArray());
        string from = kind.Home ?? kind.Supply;
        string look = kind.Home is null && kind.Attribute is not null ? $"{picks.Of(kind.Values)} {kind.Name}" : kind.Name;
        return Action("lay on (spot)", [Spot("spot", board)], [kind.Home is null ? $"move {FormulaMaker.A(look)} from {from} to spot" : $"deal 1 from {from} to spot"], new Known("spot", SortKind.Space, board));
    }

    private ActionWords? Bring()
    {
        BoardWords board = picks.Of(words.Boards);
        if (picks.OrNone(words.Places.Where(p => p.IsSeen && words.OnBoards.Contains(p.Holds))) is not { } place)
        {
            return null;
        }

        var what = new Known("what", SortKind.Thing, Kind: place.Holds);
        return Action("bring (what) onto (spot)",
            [("what", $"a {place.Holds.Name} in {place.Mine}{Where(new Known("it", SortKind.Thing, Kind: place.Holds))}"), Spot("spot", board, what)],
            ["move what to spot"], what, new Known("spot", SortKind.Space, board));
    }

    private ActionWords Shove()
    {
        BoardWords board = picks.Of(words.Boards);
        var start = new Known("start", SortKind.Space, board);
        return Action("shove from (start) to (goal)",
            [Spot("start", board), ("goal", $"one of neighbours of start{Where(new Known("it", SortKind.Space, board), start)}")],
            [picks.Of("move top of start to goal", $"move all {picks.Of(words.OnBoards.ToArray()).Plural} from start to goal")], start, new Known("goal", SortKind.Space, board));
    }

    private ActionWords? Hop()
    {
        BoardWords board = picks.Of(words.Boards);
        var start = new Known("start", SortKind.Space, board);
        var middle = new Known("middle", SortKind.Space, board);
        return board.HasRows
            ? Action("hop from (start) over (middle)",
                [Spot("start", board), ("middle", $"one of neighbours of start{Where(new Known("it", SortKind.Space, board), start)}"), ("goal", "across(start, middle)")],
                ["move top of start to goal", picks.Of("move top of middle to box", "nothing", "swap start and middle")], start, middle, new Known("goal", SortKind.Space, board)) with { Needs = "goal is not nothing" }
            : null;
    }

    private ActionWords? Grab() => picks.OrNone(words.Places.Where(p => p.IsSeen)) is { } from && Target(from) is { } to
        ? Action("grab (what)", [("what", $"a {from.Holds.Name} in {from.Mine}{Where(new Known("it", SortKind.Thing, Kind: from.Holds))}")], [$"move what to {to}"], new Known("what", SortKind.Thing, Kind: from.Holds))
        : null;

    private ActionWords? Gather() => picks.OrNone(words.Places.Where(p => p.IsSeen)) is { } from && Target(from) is { } to
        ? Action("gather (which)", [("which", $"{picks.Of("up to 2", "2", "some", "any", "up to 3")} {from.Holds.Plural} in {from.Mine}{Where(new Known("it", SortKind.Thing, Kind: from.Holds))}")], [$"move which to {to}"])
        : null;

    private string? Target(PlaceWords from) =>
        picks.OrNone(words.Places.Where(p => p != from && p.Holds == from.Holds && p.Form is PlaceForm.Heap or PlaceForm.Hand && p.Holds == from.Holds).Select(p => p.Mine).Append("box"));

    private ActionWords? Spend() => picks.OrNone(words.Marks.Where(m => m is { Sort: SortKind.Number, Of: null })) is { } mark
        ? Action("spend (many)", [("many", $"a number from {picks.Of("1", "0")} to {picks.Of("2", "3", mark.IsEach ? $"my {mark.Name}" : mark.Name)}")],
            [$"{picks.Of("take many from", "add many to")} {(mark.IsEach ? "my " : "")}{mark.Name}"], new Known("many", SortKind.Number))
        : null;

    private ActionWords? Wake()
    {
        BoardWords board = picks.Of(words.Boards);
        if (picks.OrNone(words.OnBoards.Where(k => k.State is not null)) is not { } kind)
        {
            return null;
        }

        string step = kind.StateValues.Count == 2 && picks.Percent(60) ? $"flip top of spot" : $"change top of spot to {picks.Of(kind.StateValues)}";
        return Action("wake (spot)", [("spot", $"a {board.Space} in {board.Mine} where it shows {FormulaMaker.A(kind.Name)}")], [step], new Known("spot", SortKind.Space, board));
    }

    private ActionWords Trade()
    {
        BoardWords board = picks.Of(words.Boards);
        var near = new Known("near", SortKind.Space, board);
        return Action("trade (near) with (far)", [Spot("near", board), Spot("far", board, near)], ["swap near and far"], near, new Known("far", SortKind.Space, board));
    }

    private ActionWords? Call() => picks.OrNone(words.Marks.Where(m => m is { Sort: SortKind.Truth, Of: null })) is { } mark
        ? Action("call (answer)", [("answer", "yes or no")], [$"set my {mark.Name} to answer"], new Known("answer", SortKind.Truth))
        : null;

    private ActionWords? Pick() => words.Marks.Any(m => m.Name == "leader")
        ? Action("pick (who)", [("who", $"a player{picks.Of("", " where it is not me")}")], ["set leader to who"], new Known("who", SortKind.Player))
        : null;

    private ActionWords? Haul() =>
        picks.OrNone(words.Places.Where(p => p.Form is PlaceForm.Bag or PlaceForm.Deck)) is { } from && picks.OrNone(words.Places.Where(p => p.Holds == from.Holds && p.Form is PlaceForm.Heap or PlaceForm.Hand && p.Holds == from.Holds)) is { } to
            ? Action("haul (many)", [("many", $"a number from 1 to {picks.From(1, 3)}")], [$"deal many from {from.Name} to {to.Mine}"], new Known("many", SortKind.Number))
            : null;

    private ActionWords? Renew() =>
        picks.OrNone(words.Places.Where(p => p.Form is PlaceForm.Bag or PlaceForm.Deck)) is { } home && picks.OrNone(words.Places.Where(p => p.Holds == home.Holds && p.Form == PlaceForm.Heap)) is { } heap
            ? Action("renew", [], [$"move all {home.Holds.Plural} from {heap.Mine} to {home.Name}", .. home.Form == PlaceForm.Deck ? new[] { $"shuffle {home.Name}" } : []])
            : null;

    private ActionWords? Slide() => picks.OrNone(words.Boards.Where(b => b.HasRows)) is { } board
        ? Action("slide (line) going (way)", [("line", $"one of {board.Name} rows of {board.Mine}"), ("way", "one of (east, west)")], [$"push line going way {picks.Of("round", "off to box")}"])
        : null;

    private ActionWords? Toss() => words.Places.Any(p => p.Name == "tray") ? Action("toss", [], ["roll dice in tray"]) : null;

    private ActionWords? Burn()
    {
        if (picks.OrNone(words.Marks.Where(m => m.Of is not null)) is not { } mark)
        {
            return null;
        }

        string step = mark.Sort == SortKind.Truth ? $"set {mark.Name} of spot to {picks.Of("yes", "no")}" : $"{picks.Of($"add {picks.From(1, 2)} to", "take 1 from")} {mark.Name} of spot";
        return Action("burn (spot)", [Spot("spot", mark.Of!)], [step], new Known("spot", SortKind.Space, mark.Of));
    }

    private ActionWords? Glide()
    {
        BoardWords board = picks.Of(words.Boards);
        return board.HasRows
            ? Action("glide from (start) going (way)",
                [Spot("start", board), ("way", "a direction"), ("goal", "last of run(x from start going way while x is empty)")],
                ["if goal is not nothing: move top of start to goal"], new Known("start", SortKind.Space, board), new Known("goal", SortKind.Space, board))
            : null;
    }

    private ActionWords Again() => Action("again so", [], ["again"]) with { Name = "go on", Phrase = "go on" };

    private ActionWords Crown() => Action("crown", [], [Bookkeeping([]) ?? "nothing"]);

    private ActionWords Wait() => Action("wait", [], ["nothing"]);
}
