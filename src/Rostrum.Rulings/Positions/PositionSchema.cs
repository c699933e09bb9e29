using System.Text.Json.Nodes;
using Rostrum.Sheets.Loading.Keys;

namespace Rostrum.Rulings.Positions;

/// <summary>Writes the JSON Schema of position files, for editors that complete keys and mark slips while somebody writes.</summary>
/// <remarks>Boards, places, marks and named seats are the author's names, so what stands at the margin is never refused.</remarks>
public static class PositionSchema
{
    private const string Points = "points";
    private const string Answer = "answer";
    private const string Content = "content";

    /// <summary>The schema, from the keys of positions and their help.</summary>
    public static string Write()
    {
        JsonObject schema = SchemaForms.Head("Position", "What lies on the table at a moment of a game, as Rostrum reads it. What it marks is wrong; 'rostrum check' finds much more.");
        schema["type"] = new JsonArray("object", "null");
        JsonObject top = SchemaForms.Properties(PositionHelp.Top.Where(h => h.Key is not ("done" or "expect")), []);
        top["done"] = Done();
        top["expect"] = Expect();
        schema["properties"] = top;
        schema["patternProperties"] = new JsonObject { [$"^{SchemaForms.AnyCase("seat")}\\s+[0-9]+$"] = Seat() };
        schema["additionalProperties"] = SchemaForms.Ref(Content);
        JsonObject all = SchemaForms.Definitions();
        schema["$defs"] = new JsonObject
        {
            [SchemaForms.NoKey] = all[SchemaForms.NoKey]!.DeepClone(),
            ["text"] = all["text"]!.DeepClone(),
            ["texts"] = all["texts"]!.DeepClone(),
            ["number"] = all["number"]!.DeepClone(),
            [Content] = new JsonObject { ["items"] = SchemaForms.Ref("texts"), ["additionalProperties"] = SchemaForms.Ref(Content) },
            [Points] = Expected(OfPoints(), OfPoints()),
            [Answer] = Expected(Verdict("object"), Verdict()),
        };
        return SchemaForms.Write(schema);
    }

    private static JsonObject Seat() => SchemaForms.With(
        SchemaForms.Typed("The places of the seat belong below, further in.", "object", "null"),
        ("description", "What lies before this seat: its boards, places and marks."),
        ("additionalProperties", SchemaForms.Ref(Content)));

    private static JsonObject Done() => SchemaForms.With(
        SchemaForms.Typed("A time such as 'the turn before' belongs below, further in.", "object", "null"),
        ("description", PositionHelp.Top.Single(h => h.Key == "done").Says),
        ("properties", new JsonObject(PositionHelp.Done.Select(h => KeyValuePair.Create(h.Key, (JsonNode?)SchemaForms.With(Phrases("array"), ("description", h.Says), ("items", Phrases())))))),
        ("additionalProperties", SchemaForms.Ref(SchemaForms.NoKey)));

    // A phrase, or seats with phrases.
    private static JsonObject Phrases(params IEnumerable<string> more) => SchemaForms.With(
        SchemaForms.Typed("The phrase of an action belongs here, or a seat with the phrase.", ["string", "number", "boolean", "null", "object", .. more]),
        ("additionalProperties", SchemaForms.Ref("texts")));

    private static JsonObject Expect()
    {
        var sections = new JsonObject(PositionHelp.Sections.Where(s => !s.IsBeginning).Select(s => KeyValuePair.Create(s.Key, (JsonNode?)Section(s))));
        KeyHelp other = PositionHelp.Sections.Single(s => s.IsBeginning);
        return SchemaForms.With(
            SchemaForms.Typed("'tally' or 'rule' belongs below, further in.", "object", "null"),
            ("description", PositionHelp.Top.Single(h => h.Key == "expect").Says),
            ("properties", sections),
            ("patternProperties", new JsonObject { [$"^{SchemaForms.AnyCase(other.Fixed)}"] = Section(other) }),
            ("additionalProperties", SchemaForms.Ref(SchemaForms.NoKey)));
    }

    private static JsonObject Section(KeyHelp help) => SchemaForms.With(
        SchemaForms.Typed("Names belong below, further in, each with a colon.", "object", "null"),
        ("description", help.Says),
        ("additionalProperties", SchemaForms.Ref(help.Key == ExpectationReader.OfRule ? Answer : Points)));

    // The answer alone, or keys with the answer behind `is`.
    private static JsonObject Expected(JsonObject alone, JsonObject behindIs)
    {
        JsonObject keys = SchemaForms.OnlyKeys(PositionHelp.Expect, []);
        behindIs.Insert(0, "description", PositionHelp.Expect.Single(h => h.Key == "is").Says);
        keys["properties"]!["is"] = behindIs;
        return SchemaForms.With(alone, [.. keys.Select(p => (p.Key, p.Value!.DeepClone()))]);
    }

    // Points by reading stand behind `is` as names with numbers.
    private static JsonObject OfPoints() => SchemaForms.Matching(
        SchemaForms.Typed("Points belong here: a whole number, 'at least 4' or 'unsettled'.", "integer", "string", "object", "null"),
        SchemaForms.NumberPattern, $@"at\s+least\s+{SchemaForms.NumberPattern}", "unsettled");

    // YAML may take `yes` for a truth.
    private static JsonObject Verdict(params string[] more)
    {
        string[] words = [.. Enum.GetNames<ExpectedVerdict>().Select(v => v.ToLowerInvariant())];
        JsonObject verdict = SchemaForms.Matching(SchemaForms.Typed($"One of these belongs here: {string.Join("; ", words)}.", ["string", "boolean", "null", .. more]), words.Select(SchemaForms.AnyCase));
        return SchemaForms.With(verdict, ("examples", new JsonArray([.. words.Select(w => (JsonNode?)w)])));
    }
}
