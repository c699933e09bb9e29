using System.Text;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Tests;

/// <summary>Writes <c>docs/operations.md</c> from the table of operations.</summary>
internal static class OperationsPage
{
    private const string Head = """
        # Operations

        Every operation of the sheet language. This page is made from the table in the code: `ROSTRUM_WRITE_DOCS=1` before the tests writes it anew.
        The examples are over the bench game of the test kit: a board `my field` of each player, 3 across and 3 up, columns A to C called bay, rows 1 to 3 called tier, spaces called
        shelf; ware with form, glaze and wear; the words `touching (shelf s, shelf t)`, `clash (ware v, ware w)` and `set worth (set of ware w)`; cards called orders,
        such as *First order*, with a picture; sticks, a market of 3 stalls, fire dice, the action `lay`, and two players. On the field lie, from the top row down,
        `li . . / ji bi . / pa jc bc`. `x` is what is gone through: `s in my field where s is empty`.

        """;

    private static readonly (Op First, string Title)[] Groups =
    [
        (Op.And, "Joining truths"), (Op.Same, "Tests"), (Op.Plus, "Signs and names"), (Op.Count, "Going through"), (Op.First, "Elements of lists"), (Op.TopOf, "Properties"),
        (Op.NeighboursOf, "Boards"), (Op.Groups, "Groups, ways, pairs"), (Op.Fits, "Drawings and rounding"), (Op.SpacesOf, "What lies inside"),
    ];

    public static string Make()
    {
        var page = new StringBuilder(Head);
        foreach (Operation operation in Operations.All)
        {
            page.Append(string.Concat(Groups.Where(g => g.First == operation.Id).Select(g => $"\n## {g.Title}\n")));
            page.Append($"\n### {operation.Name}\n\n`{operation.FormInWords}` gives {operation.Gives}. {operation.Summary}\n\n");
            page.Append($"- `{operation.Example.Formula}` gives {operation.Example.Result}\n");
            page.Append($"- refused: `{operation.Refused.Formula}` ([{operation.Refused.Result}](diagnostics/{operation.Refused.Result}.md))\n");
        }

        return page.ToString();
    }
}
