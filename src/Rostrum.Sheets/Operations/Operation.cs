using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>An operation of the sheet language, with everything that anybody has to know about it. The table is <see cref="Operations.All"/>.</summary>
/// <param name="Id">Its identity for the executors.</param>
/// <param name="Name">As formulas write it.</param>
/// <param name="Form">How it is written.</param>
/// <param name="Parameters">What it takes, in order.</param>
/// <param name="Gives">What it gives, in words.</param>
/// <param name="Summary">What it means: one or two sentences.</param>
public sealed record Operation(Op Id, string Name, OperationForm Form, ImmutableArray<Parameter> Parameters, string Gives, string Summary)
{
    /// <summary>Which part of a position it looks at by itself, its arguments left out.</summary>
    public Reads Reads { get; init; } = Reads.Nothing;

    /// <summary>How the fast executor may turn it into work on whole sets of spaces.</summary>
    public MaskForm Mask { get; init; } = MaskForm.Loop;

    /// <summary>How an explanation tells it.</summary>
    public Telling Telling { get; init; } = Telling.Value;

    /// <summary>A formula over the bench sheet with what it gives on the bench position.</summary>
    public required OperationExample Example { get; init; }

    /// <summary>A formula over the bench sheet that is refused, with the id of the message.</summary>
    public required OperationExample Refused { get; init; }

    /// <summary>How it is written, for messages and the reference page: <c>fits(drawing, board[, rotated][, mirrored][, with look])</c>.</summary>
    public string FormInWords => Form switch
    {
        OperationForm.Function => $"{Name}({string.Concat(Parameters.Select((p, i) => (p.IsOptional ? "[" : "") + (i == 0 ? "" : ", ") + p.InWords + (p.IsOptional ? "]" : "")))})",
        OperationForm.Noun when Id == Op.Step => $"{Name} {Parameters[0].Name}",
        OperationForm.Test when Parameters.Length == 1 => $"{Parameters[0].Name} {Name}",
        OperationForm.Noun => $"{Name} of {Parameters[0].Name}",
        OperationForm.Name => Name,
        _ when Parameters.Length == 1 => $"{Name} {Parameters[0].Name}",
        _ => $"{Parameters[0].Name} {Name} {string.Join(" and ", Parameters.Skip(1).Select(p => p.Name))}",
    };

    /// <summary>True where the first parameter is a pick.</summary>
    public bool HasPick => !Parameters.IsEmpty && Parameters[0].Kind == ParameterKind.Pick;
}

/// <summary>A formula and its result, or a refused formula and the id of its message.</summary>
/// <param name="Formula">As an author writes it.</param>
/// <param name="Result">What it gives, in words; or a diagnostic id.</param>
public sealed record OperationExample(string Formula, string Result);

/// <summary>How an operation is written.</summary>
public enum OperationForm
{
    /// <summary><c>name(…)</c>.</summary>
    Function,

    /// <summary><c>name of …</c>.</summary>
    Noun,

    /// <summary><c>… is name …</c>.</summary>
    Test,

    /// <summary>Between or before numbers or sets.</summary>
    Sign,

    /// <summary>Between or before truths.</summary>
    Logic,

    /// <summary>A name alone.</summary>
    Name,
}

/// <summary>A parameter of an operation.</summary>
/// <param name="Name">For the reference page and messages.</param>
/// <param name="Kind">What may stand there.</param>
/// <param name="Sort">The sort that is wanted, for values.</param>
/// <param name="Lead">The words that must stand before it, such as <c>joined by</c>; null for none.</param>
/// <param name="IsOptional">True where it may be left out.</param>
public sealed record Parameter(string Name, ParameterKind Kind, Sort Sort, string? Lead = null, bool IsOptional = false)
{
    /// <summary>Its lead and name, as the reference page shows it.</summary>
    public string InWords => Kind == ParameterKind.Flag ? Lead! : Lead is null ? Name : $"{Lead} {Name}";
}

/// <summary>What may stand as a parameter.</summary>
public enum ParameterKind
{
    /// <summary>Elements to go through: <c>s in my chamber where …</c>.</summary>
    Pick,

    /// <summary>A formula.</summary>
    Value,

    /// <summary>A formula that is asked for each element of the pick, in which its letter or <c>it</c> may stand.</summary>
    Each,

    /// <summary>The name of a truth word of two subjects, asked of pairs.</summary>
    Joining,

    /// <summary>The name of a word of one subject that is a set.</summary>
    WorthWord,

    /// <summary>A look.</summary>
    Look,

    /// <summary>A word that is there or not, such as <c>rotated</c>.</summary>
    Flag,

    /// <summary>One of <c>walk</c>, <c>span</c>, <c>bare</c>, <c>group</c>.</summary>
    Measure,
}

/// <summary>What part of a position an operation looks at.</summary>
public enum Reads
{
    /// <summary>Only its arguments.</summary>
    Nothing,

    /// <summary>The shape of a board, which never changes.</summary>
    Geometry,

    /// <summary>What lies in places.</summary>
    Contents,

    /// <summary>Who sits where.</summary>
    Seats,

    /// <summary>What was done before.</summary>
    Memory,
}

/// <summary>How an operation turns into work on whole sets of spaces.</summary>
public enum MaskForm
{
    /// <summary>It does not; the fast executor goes through the elements.</summary>
    Loop,

    /// <summary>Counting the bits of a set.</summary>
    Count,

    /// <summary>And, or, not of sets.</summary>
    Algebra,

    /// <summary>Shifting a set along the neighbours.</summary>
    Shift,

    /// <summary>A set or a number known before play.</summary>
    Constant,

    /// <summary>Growing a set along the neighbours until nothing changes.</summary>
    Flood,
}

/// <summary>How an explanation tells an operation.</summary>
public enum Telling
{
    /// <summary>Its value.</summary>
    Value,

    /// <summary>The element that decides it.</summary>
    Witness,

    /// <summary>Its parts, which add up.</summary>
    Parts,

    /// <summary>The elements that count.</summary>
    Elements,

    /// <summary>The element with the greatest or least number.</summary>
    Extreme,
}
