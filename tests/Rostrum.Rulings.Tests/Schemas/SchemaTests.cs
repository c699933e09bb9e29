using System.Text.Json.Nodes;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Loading.Keys;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Schemas;

/// <summary>The schemas for editors never mark a right line, and are such as editors understand.</summary>
public sealed class SchemaTests
{
    // The words that 2020-12 and draft 7 share and that editors read alike; `errorMessage` and its like are for those that know of it.
    private static readonly string[] Understood =
    [
        "$schema", "$ref", "$defs", "title", "description", "examples", "errorMessage", "patternErrorMessage", "type", "pattern", "required",
        "properties", "patternProperties", "additionalProperties", "items", "allOf", "if", "then", "else",
    ];

    private static readonly EditorSchema OfSheets = new(SheetSchema.Write());
    private static readonly EditorSchema OfPositions = new(PositionSchema.Write());

    public static TheoryData<string> Schemas => [SheetSchema.Write(), PositionSchema.Write()];

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void No_right_sheet_is_marked(bool isOld) => Assert.Equal([], Marked(OfSheets, WrittenTexts.Sheets, isOld));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void No_right_position_is_marked(bool isOld) => Assert.Equal([], Marked(OfPositions, WrittenTexts.Positions, isOld));

    // None of 124 sheets and 183 positions is left out; one that only our own reader understands is to be named here.
    [Fact]
    public void Every_written_text_is_plain_YAML_too()
    {
        Assert.Equal([], WrittenTexts.Sheets.Concat(WrittenTexts.Positions).Where(t => PlainYaml.Read(t.Content) is null).Select(t => t.Name));
        Assert.InRange(WrittenTexts.Sheets.Count, 124, 1000);
        Assert.InRange(WrittenTexts.Positions.Count, 183, 2000);
    }

    [Theory]
    [MemberData(nameof(Schemas))]
    public void Schema_is_one_of_2020_12(string schema) => Assert.Equal([], EditorSchema.MarksInSchema(schema));

    [Theory]
    [MemberData(nameof(Schemas))]
    public void Schema_uses_words_that_editors_read_alike(string schema) =>
        Assert.Empty(WordsOf(JsonNode.Parse(schema)!).Distinct().Except(Understood));

    [Theory]
    [MemberData(nameof(Schemas))]
    public void What_a_schema_refers_to_is_there(string schema)
    {
        JsonNode all = JsonNode.Parse(schema)!;

        Assert.All(SchemasIn(all).Select(s => (string?)s["$ref"]).OfType<string>().Distinct(), r => Assert.NotNull(all["$defs"]![r["#/$defs/".Length..]]));
    }

    [Theory]
    [MemberData(nameof(Schemas))]
    public void Nothing_that_is_no_word_of_ours_is_offered(string schema)
    {
        JsonObject[] all = [.. SchemasIn(JsonNode.Parse(schema))];
        JsonObject[] asked = [.. all.Select(s => s["if"]).OfType<JsonObject>()];

        Assert.DoesNotContain(all.Except(asked), s => s["type"] is JsonArray types && types.Any(t => (string?)t == "boolean"));
        Assert.DoesNotContain(all, s => s["items"] is JsonObject items && (string?)items["$ref"] is { } name && JsonNode.DeepEquals(s, JsonNode.Parse(schema)!["$defs"]![name["#/$defs/".Length..]]));
    }

    [Fact]
    public void Schema_of_positions_is_made_of_the_keys_as_they_are_now()
    {
        string made = PositionSchema.Write();

        Assert.Equal(made, TestFiles.Made("docs/position.schema.json", made));
    }

    [Fact]
    public void Every_key_of_positions_has_help_and_no_help_is_left_over()
    {
        Assert.Equal(PositionDialect.TopKeys, PositionHelp.Top.Select(h => h.Key));
        Assert.Equal(PositionDialect.ExpectKeys, PositionHelp.Expect.Select(h => h.Key));
    }

    [Fact]
    public void Every_key_is_offered_with_its_help()
    {
        JsonNode sheet = JsonNode.Parse(SheetSchema.Write())!;

        Assert.All(SheetHelp.Top.Where(h => !h.IsBeginning), h => Assert.Equal(h.Says, Says(sheet, h.Key).Replace(" Understood, and not used yet.", "", StringComparison.Ordinal)));
        Assert.Equal(SheetHelp.Find(SheetHelp.Entries["boards"], "squares")!.Says, (string?)sheet["$defs"]!["boards-entry"]!["properties"]!["squares"]!["description"]);
        Assert.EndsWith("not used yet.", (string?)sheet["$defs"]!["actions-entry"]!["properties"]!["readings"]!["description"]);
    }

    private static string Says(JsonNode sheet, string key) => (string)sheet["properties"]![key]!["description"]!;

    private static IEnumerable<string> Marked(EditorSchema schema, IEnumerable<(string Name, string Content)> texts, bool isOld) =>
        from text in texts
        let value = PlainYaml.Read(text.Content, isOld)
        where value is not null
        from mark in schema.Marks(value)
        select $"{text.Name}: {mark}";

    private static IEnumerable<string> WordsOf(JsonNode schema) => SchemasIn(schema).SelectMany(s => s.Select(p => p.Key));

    private static IEnumerable<JsonObject> SchemasIn(JsonNode? node) => node is not JsonObject schema ? [] : schema.SelectMany(part => part.Key switch
    {
        "properties" or "patternProperties" or "$defs" => part.Value!.AsObject().SelectMany(p => SchemasIn(p.Value)),
        "allOf" => part.Value!.AsArray().SelectMany(SchemasIn),
        "items" or "additionalProperties" or "if" or "then" or "else" => SchemasIn(part.Value),
        _ => [],
    }).Prepend(schema);
}
