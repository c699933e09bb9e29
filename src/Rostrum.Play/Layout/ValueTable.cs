using System.Collections.Immutable;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>Numbers the values of all attributes through, so that a value is one number at play whatever its attribute.</summary>
internal sealed class ValueTable
{
    private readonly Dictionary<Rostrum.Sheets.Model.Attribute, (AttributeFacts Facts, int First)> _of = [];

    public ValueTable(Sheet sheet)
    {
        var all = ImmutableArray.CreateBuilder<AttributeValue>();
        foreach (AttributeFacts facts in sheet.Kinds.SelectMany(k => k.Attributes))
        {
            _of[facts.Attribute] = (facts, all.Count);
            all.AddRange(facts.Values);
        }

        All = all.ToImmutable();
    }

    /// <summary>Every value by its number.</summary>
    public ImmutableArray<AttributeValue> All { get; }

    /// <summary>The values of an attribute.</summary>
    public AttributeFacts Facts(Rostrum.Sheets.Model.Attribute attribute) => _of[attribute].Facts;

    /// <summary>The number of a value.</summary>
    public int Of(AttributeValue value) => _of[value.Attribute].First + value.Index;

    /// <summary>The number of the first value of an attribute; the others follow.</summary>
    public int First(Rostrum.Sheets.Model.Attribute attribute) => _of[attribute].First;

    /// <summary>True where every value of the attribute is a number, so that formulas take it as that number.</summary>
    public bool IsNumeric(Rostrum.Sheets.Model.Attribute attribute)
    {
        AttributeFacts facts = Facts(attribute);
        return !facts.HoldsPlayer && facts.Values.Length > 0 && facts.Values.All(v => v.Number is not null);
    }
}
