using System.Collections.Immutable;
using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;
using Rostrum.Play.Positions;
using Rostrum.Rulings.Evaluation;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Agreement;

/// <summary>Asks both executors the same formulas on the same tables and gathers where they differ.</summary>
internal sealed class Agreement
{
    private readonly FormulaCompiler _compiler;
    private readonly LetterCounter _letters = new();
    private readonly List<Asked> _all = [];

    public Agreement(Sheet sheet, int seats, IEnumerable<Question>? questions = null)
    {
        Layout = TableLayout.Of(sheet, seats);
        _compiler = new FormulaCompiler(Layout, _letters, Setting.First.Of);
        foreach (Question question in questions ?? Question.All(sheet))
        {
            Add(question);
        }
    }

    /// <summary>The numbering.</summary>
    public TableLayout Layout { get; }

    /// <summary>How many answers were compared.</summary>
    public int Compared { get; private set; }

    /// <summary>How many formulas the reference could not answer, so that nothing was compared.</summary>
    public int Open { get; private set; }

    /// <summary>How many formulas are asked on each table.</summary>
    public int Questions => _all.Count;

    /// <summary>A formula of both worlds.</summary>
    /// <param name="Question">The formula, and what its frame begins with.</param>
    /// <param name="Node">The same as a node.</param>
    /// <param name="Letters">The letters of what its frame begins with.</param>
    private sealed record Asked(Question Question, Node Node, ImmutableArray<int> Letters);

    /// <summary>Adds a formula.</summary>
    public void Add(Question question)
    {
        FrameMap frame = _compiler.Frame();
        ImmutableArray<int> letters = [.. question.Given.Select(g => frame.Letter(g.Slot, g.Sort))];
        _all.Add(new Asked(question, _compiler.Compile(question.Term, frame), letters));
    }

    /// <summary>Everything that differs on a table, in words.</summary>
    /// <param name="seed">Lays the table.</param>
    public IEnumerable<string> On(uint seed)
    {
        TableState state = RandomTable.Of(Layout, seed);
        return On(state, StateWriter.Write(state, "random", 0, 0), new Chance(seed));
    }

    /// <summary>Everything that differs on a table, in words.</summary>
    public IEnumerable<string> On(TableState state, Position position, Chance chance)
    {
        var run = new Run(_letters.Count) { State = state };
        var worlds = new BothWorlds(Layout, run, _compiler);
        var values = new RandomValue(Layout, run, chance, _compiler);
        foreach (Asked asked in _all)
        {
            run.Me = chance.Below(Layout.Seats);
            if (Ask(asked, position, run, worlds, values) is { } difference)
            {
                yield return difference;
            }

            run.Release(0);
        }
    }

    private string? Ask(Asked asked, Position position, Run run, BothWorlds worlds, RandomValue values)
    {
        Value[] frame = Evaluator.Frame(asked.Question.FrameSize);
        for (int i = 0; i < asked.Letters.Length; i++)
        {
            (int slot, Sort sort) = asked.Question.Given[i];
            if (values.Of(sort) is not { } given)
            {
                return null;
            }

            run.Letters[asked.Letters[i]] = given;
            frame[slot] = worlds.ToValue(given, sort);
        }

        string subjects = string.Join(", ", asked.Question.Given.Select(g => frame[g.Slot]));
        Value reference = new Evaluator(position, run.Me, Setting.First, new SortedSet<int>()).Evaluate(asked.Question.Term, frame);
        if (!reference.IsSettled)
        {
            Open++;
            return null;
        }

        Compared++;
        string told = $"{asked.Question.Name} for seat {run.Me} of [{subjects}]: rulings say {reference}, play";
        try
        {
            Value node = worlds.ToValue(asked.Node.Value(run), asked.Question.Term.Sort);
            return BothWorlds.AreSame(reference, node) ? null : $"{told} {node}";
        }
        catch (Exception e) when (e is not NotSupportedException)
        {
            return $"{told} {e}";
        }
    }
}
