using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Formulas;

/// <summary>Turns typed terms into nodes that work on states. What the course alone can answer (what was done before, what can be done) it asks the course for.</summary>
/// <param name="layout">The numbering of the table.</param>
/// <param name="letters">The counter of the run's letters.</param>
/// <param name="readings">Which alternative of each choice is meant, by <see cref="Choice.Id"/>.</param>
internal sealed partial class FormulaCompiler(TableLayout layout, LetterCounter letters, Func<Choice, int> readings)
{
    /// <summary>Compiles terms that only the course of play can answer; null for all others.</summary>
    public Func<Term, FrameMap, Node?> OfCourse { get; set; } = (_, _) => null;

    /// <summary>The numbering of the table.</summary>
    public TableLayout Layout => layout;

    /// <summary>A frame in which nothing is kept yet.</summary>
    public FrameMap Frame() => new(letters);

    /// <summary>The node of a term.</summary>
    /// <exception cref="NotPlayableException">The term has a part that the sheet leaves out or that play does not know yet.</exception>
    public Node Compile(Term term, FrameMap frame) => OfCourse(term, frame) ?? term switch
    {
        Term.Fork fork => Compile(fork.Alternatives[readings(fork.Choice)], frame),
        _ => throw new NotPlayableException($"'{term.Origin.Shown.Text}' is not played yet.", term.Origin.Shown),
    };
}
