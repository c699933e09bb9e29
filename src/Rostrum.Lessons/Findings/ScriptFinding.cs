using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Findings;

/// <summary>Something that the check of a script found.</summary>
/// <param name="Problem">What to tell the presenter, with its place.</param>
/// <param name="Concerns">The words that it concerns: with the id of the problem the key of a dismissal.</param>
/// <param name="Clause">The clause of the sheet; null where it concerns none.</param>
/// <param name="Cite">Where the rules say so; null where it concerns no clause, or the sheet names no page.</param>
public sealed record ScriptFinding(Diagnostic Problem, string Concerns, string? Clause = null, Citation? Cite = null)
{
    /// <summary>How the finding is weighed against others of its severity: what is told first is most certain and costs most.</summary>
    internal int Rank => Problem.Id switch
    {
        "ROS0616" => 0,
        "ROS0614" => 1,
        "ROS0615" => 2,
        "ROS0619" => 3,
        "ROS0617" => 4,
        "ROS0611" => 5,
        "ROS0613" => 6,
        "ROS0612" => 7,
        "ROS0618" => 8,
        _ => 9,
    };
}
