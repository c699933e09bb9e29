using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Rostrum.Sheets.Loading.Keys;

/// <summary>Writes the JSON Schema of <c>sheet.yaml</c>, for editors that complete keys and mark slips while somebody writes.</summary>
/// <remarks>It says less than <c>rostrum check</c>, and never refuses a right line: names are the author's, and what a formula says is not looked at.</remarks>
public static class SheetSchema
{
    // An idiom brings keys of its own, which only the library knows.
    private static readonly ImmutableArray<string> WithIdioms = ["words", "laws", "score"];

    /// <summary>The schema, from <see cref="SheetDialect"/> and <see cref="SheetHelp"/>.</summary>
    public static string Write()
    {
        JsonObject schema = SchemaForms.Head("Rule sheet", "The rules of a tabletop game as Rostrum reads them. What it marks is wrong; 'rostrum check' finds much more.");
        schema["type"] = new JsonArray("object", "null");
        schema["properties"] = Sections(SheetHelp.Top, ofVariant: false);
        schema["patternProperties"] = SchemaForms.Beginnings(SheetHelp.Top);
        schema["additionalProperties"] = SchemaForms.Ref(SchemaForms.NoKey);
        JsonObject definitions = SchemaForms.Definitions();
        foreach (string section in SheetDialect.TopKeys.Where(k => k != "variants" && SheetDialect.EntryKeys.ContainsKey(k)))
        {
            definitions[NameOf(section, ofVariant: false)] = Entry(section);
        }

        foreach (string section in WithIdioms)
        {
            definitions[NameOf(section, ofVariant: true)] = OpenEntry(section);
        }

        definitions["variant"] = Variant();
        schema["$defs"] = definitions;
        return SchemaForms.Write(schema);
    }

    private static JsonObject Sections(ImmutableArray<KeyHelp> helps, bool ofVariant)
    {
        JsonObject sections = SchemaForms.Properties(helps.Where(h => !SheetDialect.EntryKeys.ContainsKey(h.Key)), ["aim"]);
        return new JsonObject(helps.Where(h => !h.IsBeginning).Select(h => KeyValuePair.Create(h.Key, sections.ContainsKey(h.Key) ? sections[h.Key]?.DeepClone() : Section(h, ofVariant))));
    }

    private static JsonObject Section(KeyHelp help, bool ofVariant)
    {
        string entry = help.Form == KeyForm.Variants ? "variant" : NameOf(help.Key, ofVariant && WithIdioms.Contains(help.Key));
        if (help.Form == KeyForm.Keys)
        {
            return SchemaForms.With(SchemaForms.Ref(entry), ("description", help.Says));
        }

        JsonObject section = SchemaForms.Matching(SchemaForms.Typed("Names belong below, further in, each with a colon.", "object", "string", "null"), SchemaForms.LeftOut);
        section.Insert(0, "description", help.Says);
        return SchemaForms.With(section, ("additionalProperties", SchemaForms.Ref(entry)));
    }

    private static string NameOf(string section, bool ofVariant) => $"{section.Replace(' ', '-')}-{(ofVariant ? "of-variant" : "entry")}";

    // Where an entry may be a text alone, that text is short for its most important key.
    private static JsonObject Value(string section) => section switch
    {
        "sources" or "facts" or "marks" or "words" or "score" => SchemaForms.Typed("A text or keys belong here.", "object", "string", "number", "boolean", "null"),
        "open questions" => SchemaForms.Typed("A text or keys belong here.", "object", "array", "string", "number", "boolean", "null"),
        "actions" => [],
        "tables" => SchemaForms.With(Keys("Rows belong below, further in."), ("pattern", @"^\s*(not modelled|removed)")),
        _ => SchemaForms.Matching(Keys("Keys belong below, further in."), SchemaForms.LeftOut),
    };

    private static JsonObject Keys(string message) => SchemaForms.Typed(message, "object", "string", "null");

    private static JsonObject Entry(string section)
    {
        JsonObject entry = Value(section);
        if (WithIdioms.Contains(section))
        {
            return SchemaForms.With(
                entry,
                ("if", new JsonObject { ["required"] = new JsonArray("idiom") }),
                ("then", new JsonObject { ["properties"] = SchemaForms.Descriptions(OwnKeys(section)) }),
                ("else", Closed(section)));
        }

        // Rows may stand beside the keys of a table.
        JsonObject keys = section == "tables"
            ? new JsonObject { ["properties"] = SchemaForms.Properties(OwnKeys(section), LaterOf(section)), ["additionalProperties"] = SchemaForms.Ref("formulas") }
            : Closed(section);
        return SchemaForms.With(entry, [.. keys.Select(p => (p.Key, p.Value!.DeepClone()))]);
    }

    private static JsonObject Closed(string section) => SchemaForms.OnlyKeys(OwnKeys(section), LaterOf(section));

    // A variant may change keys of a clause that names its idiom in the base.
    private static JsonObject OpenEntry(string section) => SchemaForms.With(Value(section), ("properties", SchemaForms.Descriptions(OwnKeys(section))));

    private static JsonObject Variant()
    {
        ImmutableArray<KeyHelp> own = [.. SheetHelp.Clause.Where(h => h.Key is "says" or "cite"), .. SheetHelp.Entries["variants"]];
        JsonObject variant = SchemaForms.Matching(Keys("Sections of the sheet belong below, further in."), SchemaForms.LeftOut);
        return SchemaForms.With(
            variant,
            ("properties", Sections([.. own, .. SheetHelp.Top.Where(h => SheetHelp.Find(own, h.Key) is null)], ofVariant: true)),
            ("patternProperties", SchemaForms.Beginnings(SheetHelp.Top)),
            ("additionalProperties", SchemaForms.Ref(SchemaForms.NoKey)));
    }

    // Words may name an idiom like other clauses; the list of keys leaves it to the idiom.
    private static ImmutableArray<KeyHelp> OwnKeys(string section)
    {
        ImmutableArray<KeyHelp> own = SheetHelp.Entries[section];
        return [.. own, .. WithIdioms.Contains(section) && SheetHelp.Find(own, "idiom") is null ? [SheetHelp.Idiom] : ImmutableArray<KeyHelp>.Empty, .. SheetHelp.Clause];
    }

    private static string[] LaterOf(string section) =>
        [.. SheetDialect.LaterKeys[""], .. SheetDialect.LaterKeys.GetValueOrDefault(section, [])];
}
