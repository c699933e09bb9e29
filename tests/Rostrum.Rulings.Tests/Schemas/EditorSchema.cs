using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>What an editor marks in a text by a schema; JsonSchema.Net is the judge, which shares no code with us.</summary>
internal sealed class EditorSchema(string schema)
{
    private static readonly EvaluationOptions EveryPlace = new() { OutputFormat = OutputFormat.List };

    private readonly JsonSchema _schema = JsonSchema.FromText(schema);

    /// <summary>The places that are marked, such as <c>/pieces/apple/count</c>, each once.</summary>
    public IReadOnlyList<string> Marks(JsonNode? value)
    {
        EvaluationResults results = _schema.Evaluate(JsonSerializer.SerializeToElement(value), EveryPlace);
        return results.IsValid
            ? []
            : [.. (results.Details ?? []).Where(d => !d.IsValid && d.Errors is { Count: > 0 } && !d.EvaluationPath.ToString().Contains("/if/", StringComparison.Ordinal) && !d.EvaluationPath.ToString().EndsWith("/if", StringComparison.Ordinal))
                .Select(d => d.InstanceLocation.ToString()).Distinct()];
    }

    /// <summary>What the meta-schema of 2020-12 marks in a schema.</summary>
    public static IReadOnlyList<string> MarksInSchema(string schema)
    {
        EvaluationResults results = MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(schema).RootElement, EveryPlace);
        return results.IsValid ? [] : [.. (results.Details ?? []).Where(d => !d.IsValid).Select(d => d.InstanceLocation.ToString()).Distinct()];
    }
}
