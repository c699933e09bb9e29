using Rostrum.Play;
using Rostrum.Play.Ending;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows for each seat whether it can end the game, the turn that does it, and what comes after.</summary>
internal static class ThreatsScreen
{
    private const int Indent = 4;

    /// <summary>The answers, one below the other.</summary>
    public static string Of(string heading, GameTable table, Threats threats)
    {
        var paper = new Paper();
        paper.Wrapped(heading, 0);
        if (threats.Over is { } over)
        {
            paper.Line();
            paper.Wrapped($"The game is over already ({over}).", 0);
        }

        foreach (SeatThreat threat in threats.Seats)
        {
            paper.Line();
            paper.Wrapped($"{table.NameOf(threat.Seat)} {Answer(threat)}", 0);
            foreach (string words in threat.Line)
            {
                paper.Wrapped(words, Indent, hanging: 2);
            }

            if (!threat.TurnsLeft.IsEmpty)
            {
                paper.Wrapped(After(table, threat), Indent);
            }
        }

        if (!threats.Assumed.IsEmpty)
        {
            paper.Line();
            paper.Line("The position does not say, and it was taken for granted:");
            foreach (string words in threats.Assumed)
            {
                paper.Wrapped(words, Indent, hanging: 2);
            }
        }

        return paper.ToString();
    }

    private static string Answer(SeatThreat threat)
    {
        string by = threat.End is null ? "" : $" ({threat.End})";
        string turns = threat.ExtraTurns switch { 0 => "the next turn", 1 => "the next turn and the extra turn that it gives", var more => $"the next turn and the {Prose.Word(more)} extra turns that follow" };
        return threat.CanEnd switch
        {
            CanEnd.Yes => $"can end the game with {turns}{by}:",
            CanEnd.ByChance => $"can end the game with {turns} if chance, or what others decide, comes out so{by}:",
            CanEnd.No => $"cannot end the game with the next turn{(threat.ExtraTurns == 0 ? "" : ", nor with the extra turns that it may give")}.",
            _ when threat.ExtraTurns > 0 => "cannot end the game with the next turn alone, and may be able to with the extra turns that it may give or not: there are too many ways to play them.",
            _ => "may be able to end the game with the next turn or not: there are too many ways to play it, and those that were looked at do not end it.",
        };
    }

    private static string After(GameTable table, SeatThreat threat)
    {
        string[] left = [.. threat.TurnsLeft.Select((t, s) => (Turns: t, Seat: s)).Where(p => p.Turns > 0).Select(p => $"{table.NameOf(p.Seat)} has {Prose.Count(p.Turns, "turn", "turns")} more")];
        return left.Length == 0 ? "Then the game is over at once." : $"Then {Prose.And(left)}.";
    }
}
