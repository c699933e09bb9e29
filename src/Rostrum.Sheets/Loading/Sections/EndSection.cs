using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Sheets.Steps;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>end</c>: when the game ends, what follows and who wins.</summary>
internal static class EndSection
{
    private static readonly (string Words, EndFollow Means)[] Follows =
    [
        ("at once", EndFollow.AtOnce), ("finish the round", EndFollow.FinishTheRound), ("one more round", EndFollow.OneMoreRound),
        ("every other player once more", EndFollow.EveryOtherPlayerOnceMore), ("out", EndFollow.Out),
    ];

    private static readonly (string Words, EndWinner Means)[] Winners =
        [("me", EndWinner.Me), ("opponent", EndWinner.Opponent), ("everyone", EndWinner.Everyone), ("nobody", EndWinner.Nobody)];

    private static readonly (string Words, EndMoment Means)[] Moments =
        [("after each turn", EndMoment.AfterEachTurn), ("after each round", EndMoment.AfterEachRound), ("after each action", EndMoment.AfterEachAction)];

    public static ImmutableArray<EndRule> Read(LoadContext context, OutlineNode section, ImmutableArray<ActionFacts> actions)
    {
        var ends = ImmutableArray.CreateBuilder<EndRule>();
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the ends of the game"))
        {
            if (OutlineAsk.Mapping(context, entry, "when the game ends and what follows") is { } mapping)
            {
                OutlineAsk.CheckKeys(context, mapping, "end");
                ends.Add(End(context, entry.Key, mapping, actions));
            }
        }

        return ends.ToImmutable();
    }

    private static EndRule End(LoadContext context, OutlineScalar key, OutlineMapping mapping, ImmutableArray<ActionFacts> actions)
    {
        string name = Prose.Fold(key.Text);
        FormulaReader reader = context.Formulas(new Scope());
        Term? condition = mapping.Find("if") is { } given ? reader.Value(given.Value, Sort.Truth, name) : null;
        Choice? choice = ForkReader.OfWording(context, mapping, name);
        (EndWinner wins, Term? winner) = Winner(context, reader, mapping, name);
        (EndMoment moment, string? block) = Moment(context, mapping, actions);
        ImmutableArray<Step> steps = mapping.Find("do") is { } last ? new StepReader(context.Declared, reader.Names, reader.Scope, context.Problems).Read(last.Value) : [];
        return new EndRule(
            name, OutlineAsk.Prose(mapping, "says"), ClauseParts.CiteOrWarn(context, mapping, key, name), choice, condition,
            Words(mapping, "then"), Words(mapping, "winner"), key.Span, reader.Scope.FrameSize)
        {
            Follows = OneOf(context, mapping.Find("then")?.Value, "something that can follow", Follows),
            Wins = wins,
            WinnerTerm = winner,
            Moment = moment,
            Block = block,
            Steps = steps,
        };
    }

    private static string? Words(OutlineMapping mapping, string key) => mapping.Find(key) is { } entry ? ClauseParts.Words(entry.Value) : null;

    private static T OneOf<T>(LoadContext context, OutlineNode? node, string what, (string Words, T Means)[] known)
        where T : struct
    {
        if (node is null || OutlineAsk.IsLeftOut(node))
        {
            return default;
        }

        string words = ClauseParts.Words(node);
        int found = Array.FindIndex(known, k => k.Words == words);
        if (found < 0)
        {
            context.Problems.Add(SheetProblems.UnknownWord(node.Span, words, what, known.Select(k => k.Words)));
            return default;
        }

        return known[found].Means;
    }

    // One of the words, or a formula that gives a player or several; a single word that is nearly one of them is taken for a slip.
    private static (EndWinner Wins, Term? Winner) Winner(LoadContext context, FormulaReader reader, OutlineMapping mapping, string owner)
    {
        if (mapping.Find("winner")?.Value is not { } node || OutlineAsk.IsLeftOut(node))
        {
            return (EndWinner.ByTotal, null);
        }

        string words = ClauseParts.Words(node);
        bool isSlip = context.Declared.Names.Find(words).IsEmpty && NearSpelling.Find(words, Winners.Select(w => w.Words)) is not null;
        if (isSlip || Array.Exists(Winners, w => w.Words == words))
        {
            EndWinner wins = OneOf(context, node, "somebody who can win", Winners);
            if (wins == EndWinner.Opponent && !context.Declared.IsForTwo)
            {
                context.Problems.Add(FormulaProblems.TheirNeedsTwo(node.Span, words));
            }

            return (wins, null);
        }

        Term winner = reader.Value(node, Sort.Any, owner);
        if (!winner.Sort.Fits(Sort.Player) && !winner.Sort.Fits(Sort.SetOf(Sort.Player)))
        {
            context.Problems.Add(FormulaProblems.WrongSort(node.Span, winner.Sort, Sort.Player));
        }

        return (EndWinner.Given, winner);
    }

    // `after each round`, `before lay`, `after set-up`
    private static (EndMoment Moment, string? Block) Moment(LoadContext context, OutlineMapping mapping, ImmutableArray<ActionFacts> actions)
    {
        OutlineNode? node = mapping.Find("checked")?.Value;
        string words = node is null ? "" : ClauseParts.Words(node);
        string[] blocks = [.. ActionsSection.BlockKeys, .. actions.Select(a => a.Action.Name)];
        foreach ((string lead, EndMoment moment) in ((string, EndMoment)[])[("before ", EndMoment.BeforeBlock), ("after ", EndMoment.AfterBlock)])
        {
            if (words.StartsWith(lead, StringComparison.Ordinal) && blocks.Contains(words[lead.Length..]))
            {
                return (moment, words[lead.Length..]);
            }
        }

        IEnumerable<(string, EndMoment)> more = blocks.SelectMany(b => ((string, EndMoment)[])[($"before {b}", EndMoment.BeforeBlock), ($"after {b}", EndMoment.AfterBlock)]);
        return (OneOf(context, node, "a moment at which an end can be checked", [.. Moments, .. more]), null);
    }
}
