using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads what the course of a game hangs on beside its steps: <c>aim</c>, <c>next to play</c>, <c>teams</c>.</summary>
internal static class CourseSection
{
    private static readonly (string Words, AimKind Kind)[] Totals = [("highest total", AimKind.HighestTotal), ("lowest total", AimKind.LowestTotal)];
    private static readonly (string Words, AimKind Kind)[] Targets = [("at least ", AimKind.AtLeast), ("more than ", AimKind.MoreThan)];

    /// <summary><c>highest total</c>, <c>lowest total</c>, <c>at least 40</c>, <c>more than 40</c>.</summary>
    public static Aim Aim(LoadContext context, OutlineNode node)
    {
        if (OutlineAsk.IsLeftOut(node))
        {
            context.LeaveOut("what is played for");
            return Model.Aim.Highest;
        }

        if (OutlineAsk.Text(context, node, "what is played for, such as 'lowest total' or 'at least 40'") is not { } scalar)
        {
            return Model.Aim.Highest;
        }

        string words = Prose.Fold(scalar.Text);
        foreach ((string lead, AimKind kind) in Targets)
        {
            if (words.StartsWith(lead, StringComparison.Ordinal) && OutlineAsk.NumberIn(words[lead.Length..]) is { } target)
            {
                return new Aim(kind, target);
            }
        }

        int found = Array.FindIndex(Totals, t => t.Words == words);
        if (found < 0)
        {
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, words, "something to play for", ["highest total", "lowest total", "at least 40", "more than 40"]));
        }

        return found < 0 ? Model.Aim.Highest : new Aim(Totals[found].Kind, null);
    }

    /// <summary>The formula that gives who plays next, with the frame that it needs; null where there is none.</summary>
    public static (Term? Player, int FrameSize) NextToPlay(LoadContext context, OutlineNode? node)
    {
        if (node is null)
        {
            return (null, 0);
        }

        if (OutlineAsk.IsLeftOut(node))
        {
            context.LeaveOut("'next to play'");
            return (null, 0);
        }

        FormulaReader reader = context.Formulas(new Scope());
        Term player = reader.Value(node is OutlineMapping mapping && mapping.Find("is") is { } means ? means.Value : node, Sort.Player, "next to play");
        return (player, reader.Scope.FrameSize);
    }

    /// <summary>The teams; every seat must be in exactly one.</summary>
    public static ImmutableArray<Team> Teams(LoadContext context, OutlineNode section)
    {
        var teams = ImmutableArray.CreateBuilder<Team>();
        var met = new Dictionary<int, OutlineScalar>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the teams", "Sun: [seat 1, seat 3]"))
        {
            teams.Add(new Team(Prose.Fold(entry.Key.Text), [.. Seats(context, entry.Value, met)]));
        }

        string[] missing = [.. context.SeatNames.Where((_, i) => !met.ContainsKey(i))];
        if (missing.Length > 0 && teams.Count > 0 && teams.All(t => !t.Seats.IsEmpty))
        {
            context.Problems.Add(SheetProblems.SeatWithoutTeam(section.Span, missing));
        }

        return teams.ToImmutable();
    }

    private static IEnumerable<int> Seats(LoadContext context, OutlineNode node, Dictionary<int, OutlineScalar> met)
    {
        foreach (OutlineScalar item in OutlineAsk.Items(context, node, "the seats of a team"))
        {
            string name = Prose.Fold(item.Text);
            int seat = context.SeatNames.IndexOf(name);
            if (seat < 0 && name.StartsWith("seat ", StringComparison.Ordinal) && OutlineAsk.NumberIn(name[5..]) is { } number && number >= 1 && number <= context.SeatNames.Length)
            {
                seat = (int)number - 1;
            }

            if (seat < 0)
            {
                context.Problems.Add(SheetProblems.UnknownWord(item.Span, name, "a seat", context.SeatNames));
            }
            else if (!met.TryAdd(seat, item))
            {
                context.Problems.Add(SheetProblems.SeatInTwoTeams(item.Span, name, met[seat].Span));
            }
            else
            {
                yield return seat;
            }
        }
    }
}
