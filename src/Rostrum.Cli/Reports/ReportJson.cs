using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Rostrum.Cli.Reports;

/// <summary>Writes reports as JSON: camelCase keys in the order of the records, indented, characters as they are.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(ProblemsReport))]
[JsonSerializable(typeof(CheckReport))]
[JsonSerializable(typeof(ReadReport))]
[JsonSerializable(typeof(TallyReport))]
[JsonSerializable(typeof(RuleReport))]
[JsonSerializable(typeof(DrawReport))]
[JsonSerializable(typeof(LessonItem))]
[JsonSerializable(typeof(PackReport))]
[JsonSerializable(typeof(RefusalReport))]
[JsonSerializable(typeof(IdiomReport))]
[JsonSerializable(typeof(NewReport))]
[JsonSerializable(typeof(CountReport))]
[JsonSerializable(typeof(PlayReport))]
[JsonSerializable(typeof(ThreatsReport))]
[JsonSerializable(typeof(ReviewReport))]
[JsonSerializable(typeof(PublishReport))]
[JsonSerializable(typeof(PublishedCheckReport))]
internal sealed partial class ReportJson : JsonSerializerContext
{
    /// <summary>The version of the shape, the value of <c>format</c> in every report.</summary>
    public const int Format = 1;

    private static readonly ReportJson Ours = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The text of a report, without a line end behind it.</summary>
    public static string Text<T>(T report, Func<ReportJson, JsonTypeInfo<T>> type) => JsonSerializer.Serialize(report, type(Ours));
}
