using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rostrum.Text;

namespace Rostrum.Sheets.Loading.Keys;

/// <summary>The forms of values in a JSON Schema, and how its parts are written.</summary>
/// <remarks>An editor reads a sheet as YAML, and sees less than our own reader: it may take a text for a number, a truth or a list, and the rest of
/// a text in braces behind a comma for a key without a value. So every form takes what is empty, and a key that is not known is only refused where
/// something stands behind it. Only words that both 2020-12 and draft 7 have are used, and neither <c>oneOf</c> nor <c>anyOf</c>.</remarks>
public static class SchemaForms
{
    /// <summary>The name of the form of a key that belongs nowhere.</summary>
    public const string NoKey = "no-key";

    private static readonly JsonWriterOptions Indented = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>A whole number as a pattern, number words to twelve in any case.</summary>
    public static string NumberPattern { get; } =
        $@"({AnyCase("minus")}\s+)*([-+]?[0-9]+|{string.Join('|', Enumerable.Range(1, 12).Select(n => AnyCase(Prose.Word(n))))})";

    /// <summary>A schema's first lines.</summary>
    /// <param name="title">What the file is called.</param>
    /// <param name="says">What it is.</param>
    public static JsonObject Head(string title, string says) =>
        new() { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title, ["description"] = says };

    /// <summary>The text of a schema.</summary>
    public static string Write(JsonObject schema)
    {
        ArgumentNullException.ThrowIfNull(schema);
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes, Indented))
        {
            schema.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    /// <summary>The definitions that keys refer to.</summary>
    public static JsonObject Definitions() => new()
    {
        [NoKey] = Typed("No key of this name belongs here.", "null"),
        ["text"] = Typed("A text belongs here.", "string", "number", "boolean", "null"),
        ["number"] = Matching(Typed("A whole number belongs here.", "string", "integer", "null"), NumberPattern, LeftOut),
        ["texts"] = With(Typed("A text or a list of texts belongs here.", "string", "number", "boolean", "null", "array"), ("items", Ref("text"))),
        ["formula"] = Typed("A formula belongs here.", "string", "number", "boolean", "null", "object"),
        ["formulas"] = With(Typed("A formula or a list of them belongs here.", "string", "number", "boolean", "null", "object", "array"), ("items", Ref("formula"))),
        ["names"] = Names(null),
        ["names-of-text"] = Names("text"),
        ["names-of-texts"] = Names("texts"),
        ["names-of-numbers"] = Names("number"),
        ["number-or-names"] = With(Matching(Typed("A whole number belongs here, or names with numbers below.", "string", "integer", "null", "object"), NumberPattern, LeftOut), ("additionalProperties", Ref("number"))),
        ["text-or-names"] = With(Typed("A text belongs here, or names with texts below.", "string", "number", "boolean", "null", "object"), ("additionalProperties", Ref("text"))),
        // A list within a list is not looked into: editors go round and round in items that refer to themselves.
        ["step"] = Heads(),
        ["steps"] = With(Heads(), ("items", Ref("step"))),
    };

    /// <summary>Keys with their descriptions and forms; beginnings of keys are left out.</summary>
    /// <param name="helps">The keys.</param>
    /// <param name="later">Keys that are not used yet: they are offered, and nothing behind them is refused.</param>
    public static JsonObject Properties(IEnumerable<KeyHelp> helps, IReadOnlyCollection<string> later) =>
        new(helps.Where(h => !h.IsBeginning).Select(h => KeyValuePair.Create(h.Key, (JsonNode?)(later.Contains(h.Key) ? Later(h) : Property(h)))));

    /// <summary>The keys of which only the beginning is fixed, by pattern.</summary>
    public static JsonObject Beginnings(IEnumerable<KeyHelp> helps) =>
        new(helps.Where(h => h.IsBeginning).Select(h => KeyValuePair.Create($"^{h.Fixed}", (JsonNode?)Property(h))));

    /// <summary>Keys with nothing but their descriptions.</summary>
    public static JsonObject Descriptions(IEnumerable<KeyHelp> helps) =>
        new(helps.Where(h => !h.IsBeginning).Select(h => KeyValuePair.Create(h.Key, (JsonNode?)new JsonObject { ["description"] = h.Says })));

    /// <summary>Known keys, and no others.</summary>
    /// <remarks>In braces, whatever follows prose and is no key of ours goes on with the prose: <c>{says: On A1, or on B2: at will., points: 3}</c>.
    /// An editor takes <c>or on B2</c> for a key. So beside prose, an unknown key is only refused where it is a single word in small letters.</remarks>
    /// <param name="helps">The keys.</param>
    /// <param name="later">Those that are not used yet.</param>
    public static JsonObject OnlyKeys(IReadOnlyCollection<KeyHelp> helps, IReadOnlyCollection<string> later)
    {
        IEnumerable<string> known = helps.Select(h => h.IsBeginning ? $"^{h.Fixed}" : $"^{h.Key}$");
        var keys = new JsonObject { ["properties"] = Properties(helps, later) };
        if (Beginnings(helps) is { Count: > 0 } beginnings)
        {
            keys["patternProperties"] = beginnings;
        }

        return With(
            keys,
            ("if", new JsonObject { ["properties"] = new JsonObject(SheetDialect.ProseKeys.Where(k => helps.Any(h => h.Key == k)).Order(StringComparer.Ordinal).Select(k => KeyValuePair.Create(k, (JsonNode?)false))) }),
            ("then", NoOthers(known)),
            ("else", NoOthers(known.Append("[^a-z]"))));
    }

    /// <summary>A reference to a definition.</summary>
    public static JsonObject Ref(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    /// <summary>One of some kinds of value.</summary>
    /// <remarks>An editor offers <c>true</c>, <c>false</c> and <c>null</c> wherever a plain <c>type</c> names them, and would write them for everybody who
    /// presses Enter. So they are asked for in an <c>if</c>, where nothing is offered; the <c>else</c> only tells what belongs there.</remarks>
    /// <param name="message">What an editor that knows of it says of another value; to others it is nothing.</param>
    /// <param name="types">The kinds, the usual one first.</param>
    public static JsonObject Typed(string message, params IEnumerable<string> types)
    {
        string[] all = [.. types];
        var kinds = new JsonObject { ["type"] = new JsonArray([.. all.Select(t => (JsonNode?)t)]) };
        return all[0] == "object" && !all.Contains("boolean")
            ? With(kinds, ("errorMessage", message))
            : new() { ["allOf"] = new JsonArray(new JsonObject { ["if"] = kinds, ["else"] = new JsonObject { ["type"] = all[0], ["errorMessage"] = message } }) };
    }

    /// <summary>A form whose texts are one of some patterns, blanks around them or not.</summary>
    public static JsonObject Matching(JsonObject form, params IEnumerable<string> patterns)
    {
        ArgumentNullException.ThrowIfNull(form);
        JsonNode message = form["errorMessage"] ?? form["allOf"]![0]!["else"]!["errorMessage"]!;
        return With(form, ("pattern", $@"^\s*({string.Join('|', patterns)})\s*$"), ("patternErrorMessage", message.DeepClone()));
    }

    /// <summary>A form with more behind it.</summary>
    public static JsonObject With(JsonObject form, params ReadOnlySpan<(string Key, JsonNode Value)> more)
    {
        ArgumentNullException.ThrowIfNull(form);
        foreach ((string key, JsonNode value) in more)
        {
            form[key] = value;
        }

        return form;
    }

    /// <summary>A word as a pattern that takes capital and small letters.</summary>
    public static string AnyCase(string word) => string.Concat(word.Select(c => char.IsLetter(c) ? $"[{char.ToUpperInvariant(c)}{c}]" : $"{c}"));

    /// <summary>What may stand in the place of a section, an entry or a value: that it is left out or, in a variant, taken out.</summary>
    public static string LeftOut => $@"not\s+modelled|{OutlineMerge.Removed}";

    private static JsonObject NoOthers(IEnumerable<string> patterns) =>
        new() { ["patternProperties"] = new JsonObject { [string.Join('|', patterns)] = true }, ["additionalProperties"] = Ref(NoKey) };

    private static JsonObject Heads() => new() { ["properties"] = Properties(SheetHelp.Steps, []), ["additionalProperties"] = Ref("steps") };

    private static JsonObject Later(KeyHelp help) => new() { ["description"] = $"{help.Says} Understood, and not used yet." };

    private static JsonObject Property(KeyHelp help)
    {
        JsonObject property = help.Form is KeyForm.OneOf or KeyForm.OneOfInList ? Closed(help) : FormOf(help.Form) is { } form ? Ref(form) : [];
        property.Insert(0, "description", help.Says);
        if (!help.Words.IsEmpty)
        {
            property["examples"] = new JsonArray([.. help.Words.Select(WordOf)]);
        }

        return property;
    }

    // An editor writes what it offers: a number without quotes.
    private static JsonNode? WordOf(string word) => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : word;

    // YAML may take `yes` for a truth.
    private static JsonObject Closed(KeyHelp help)
    {
        IEnumerable<string> words = help.Words.Concat(help.AlsoRight).Select(w => w.Replace(" ", @"\s+", StringComparison.Ordinal));
        string[] types = ["string", "null", .. help.Words.Contains("yes") ? ["boolean"] : Array.Empty<string>(), .. help.Form == KeyForm.OneOfInList ? ["array"] : Array.Empty<string>()];
        return Matching(Typed($"One of these belongs here: {string.Join("; ", help.Words)}.", types), [.. words, LeftOut]);
    }

    private static JsonObject Names(string? each)
    {
        JsonObject names = Matching(Typed("Names belong below, further in, each with a colon.", "object", "string", "null"), LeftOut);
        return each is null ? names : With(names, ("additionalProperties", Ref(each)));
    }

    private static string? FormOf(KeyForm form) => form switch
    {
        KeyForm.Text => "text",
        KeyForm.Number => "number",
        KeyForm.Texts => "texts",
        KeyForm.Formula => "formula",
        KeyForm.Formulas => "formulas",
        KeyForm.Steps => "steps",
        KeyForm.Names => "names",
        KeyForm.NamesOfText => "names-of-text",
        KeyForm.NamesOfTexts => "names-of-texts",
        KeyForm.NamesOfNumbers => "names-of-numbers",
        KeyForm.NumberOrNames => "number-or-names",
        KeyForm.TextOrNames => "text-or-names",
        _ => null,
    };
}
