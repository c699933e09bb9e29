using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <summary>The names of the kernel as symbols: operations, directions, adjectives.</summary>
internal static class KernelNames
{
    private static readonly string[] StepNouns = ["left", "right", "north", "south", "east", "west", "northeast", "northwest", "southeast", "southwest"];

    /// <summary>The kernel's names, for vocabularies whose own names hide them. Nobody adds to it.</summary>
    public static Vocabulary Shared { get; } = Fresh();

    /// <summary>A vocabulary of the kernel's names only, to which names are added that stand beside them.</summary>
    public static Vocabulary Fresh()
    {
        var names = new Vocabulary();
        foreach (Operation operation in Model.Operations.All.Where(o => o.Form is OperationForm.Function or OperationForm.Name || (o.Form == OperationForm.Noun && o.Id is not (Op.Step or Op.SeatBeside))))
        {
            names.Add(operation.Name, new OperationName(operation));
        }

        foreach (string noun in StepNouns)
        {
            names.Add(noun, new StepName(Direction.All.First(d => d.Name == noun)));
        }

        names.Add("empty", new AdjectiveName("empty", Adjective.Empty));
        names.Add("full", new AdjectiveName("full", Adjective.Full));
        names.Add("face up", new AdjectiveName("face up", Adjective.FaceUp));
        names.Add("face down", new AdjectiveName("face down", Adjective.FaceDown));
        names.Add("start player", new StartPlayerName());
        names.Add("round number", new CounterName("round number", CounterKind.Round));
        names.Add("turn number", new CounterName("turn number", CounterKind.Turn));
        names.Add("supply", new Place("supply", PlaceForm.Supply, false, -1, null));
        names.Add("box", new Place("box", PlaceForm.Box, false, -2, null));
        return names;
    }
}

/// <summary>An operation as a name.</summary>
internal sealed class OperationName(Operation operation) : Named(operation.Name, null)
{
    public Operation Operation { get; } = operation;

    public override string Role => "an operation";
}

/// <summary>A direction as a name: <c>left of s</c>, or alone as a direction.</summary>
internal sealed class StepName(Direction direction) : Named(direction.Name, null)
{
    public Direction Direction { get; } = direction;

    public override string Role => "a direction";
}

/// <summary>The player who begins.</summary>
internal sealed class StartPlayerName() : Named("start player", null)
{
    public override string Role => "a player";
}

/// <summary>The number of the round or turn at hand; a sheet may use the name for something of its own.</summary>
internal sealed class CounterName(string name, CounterKind kind) : Named(name, null)
{
    public CounterKind Kind { get; } = kind;

    public override string Role => "a number of the game";
}

/// <summary>An adjective of the kernel as a name.</summary>
internal sealed class AdjectiveName(string name, Adjective adjective) : Named(name, null)
{
    public Adjective Adjective { get; } = adjective;

    public override string Role => "an adjective";
}

/// <summary>A letter, a choice of an action or a subject of a word. Its sort and frame position are known to the binder that met it.</summary>
internal sealed class LetterName(string name, Rostrum.Text.SourceSpan? at) : Named(name, at)
{
    public override string Role => "a letter";
}

/// <summary>A parameter of an idiom that stands for a ready term.</summary>
internal sealed class TermName(string name, Term term, int frameSize = 0) : Named(name, null)
{
    public Term Term { get; } = term;

    /// <summary>The size of frame that the term needs wherever it stands.</summary>
    public int FrameSize { get; } = frameSize;

    public override string Role => "a parameter";
}

/// <summary>A parameter of an idiom that stands for a look.</summary>
internal sealed class LookName(string name, Look look) : Named(name, null)
{
    public Look Look { get; } = look;

    public override string Role => "a parameter";
}
