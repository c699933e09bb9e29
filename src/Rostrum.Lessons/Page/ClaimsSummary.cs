using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>How the checkable statements of the lesson came out.</summary>
/// <param name="Right">Statements that agree with the sheet.</param>
/// <param name="Wrong">Statements that do not.</param>
/// <param name="Unsettled">Statements about which the sheet does not say.</param>
/// <param name="Unasked">Statements that could not be asked, such as of a misspelt name.</param>
/// <param name="Findings">One sentence for each statement that is wrong or unsettled and worth a reader's attention.</param>
public sealed record ClaimsSummary(int Right, int Wrong, int Unsettled, int Unasked, ImmutableArray<string> Findings)
{
    /// <summary>All statements that were held against the sheet.</summary>
    public int Checked => Right + Wrong + Unsettled;

    /// <summary>The outcome in one sentence; nothing checked is said to be just that.</summary>
    public string Sentence => this switch
    {
        { Checked: 0, Unasked: > 0 } => $"{Count(Unasked)} not understood; nothing on this page has been held against the rules yet.",
        { Checked: 0 } => "Nothing on this page has been held against the rules yet.",
        { Wrong: 0, Unsettled: 0, Unasked: 0 } => $"{Count(Checked)} held against the rules: all agree.",
        _ => $"{Count(Checked)} held against the rules: {string.Join(", ", Parts())}{(Unasked > 0 ? $"; {Unasked} more not understood" : "")}.",
    };

    private IEnumerable<string> Parts()
    {
        yield return Right == 1 ? "1 agrees" : $"{Right} agree";
        if (Wrong > 0)
        {
            yield return Wrong == 1 ? "1 does not" : $"{Wrong} do not";
        }

        if (Unsettled > 0)
        {
            yield return $"{Unsettled} cannot be settled";
        }
    }

    private static string Count(int number) => number == 1 ? "1 statement" : $"{number} statements";
}
