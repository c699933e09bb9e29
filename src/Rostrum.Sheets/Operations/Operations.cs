using System.Collections.Immutable;

namespace Rostrum.Sheets.Model;

/// <summary>The one table of operations: the reference page, suggestions, the grammar of calls and the tests are made from it.</summary>
public static partial class Operations
{
    private static readonly Parameter PickOne = new("x", ParameterKind.Pick, Sort.Any);
    private static readonly Sort Spaces = Sort.SetOf(Sort.Space);

    /// <summary>Every operation, in the order of the reference page.</summary>
    public static ImmutableArray<Operation> All { get; } =
        [.. Logic(), .. Tests(), .. Signs(), .. Counting(), .. Elements(), .. Properties(), .. Geometry(), .. Graphs(), .. Figures(), .. Inner()];

    private static readonly ImmutableDictionary<Op, Operation> ById = All.ToImmutableDictionary(o => o.Id);

    /// <summary>The operation of this identity.</summary>
    public static Operation Of(Op id) => ById[id];

    private static Parameter Value(string name, Sort sort, string? lead = null, bool optional = false) =>
        new(name, ParameterKind.Value, sort, lead, optional);

    private static Parameter Each(string name, Sort sort, string? lead = null) => new(name, ParameterKind.Each, sort, lead);

    private static OperationExample Ex(string formula, string result) => new(formula, result);
}
