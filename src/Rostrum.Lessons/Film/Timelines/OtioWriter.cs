using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>Writes OpenTimelineIO files, every value as it was read.</summary>
public static class OtioWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 4,
        NewLine = "\n",
        // Names of people and places stay readable; the file is never put into a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        // Values are well formed as they are; a name may stand twice.
        SkipValidation = true,
        MaxDepth = 1000,
    };

    /// <summary>The text of a file, indented by four blanks, with <c>\n</c> as line ends.</summary>
    /// <param name="root">What the file holds.</param>
    public static string Write(OtioValue root)
    {
        ArgumentNullException.ThrowIfNull(root);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            Write(json, root);
        }

        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length) + "\n";
    }

    private static void Write(Utf8JsonWriter json, OtioValue value)
    {
        switch (value)
        {
            case OtioValue.Record record:
                Write(json, record);
                break;
            case OtioValue.List list:
                json.WriteStartArray();
                foreach (OtioValue item in list.Items)
                {
                    Write(json, item);
                }

                json.WriteEndArray();
                break;
            case OtioValue.Text text:
                json.WriteStringValue(text.Words);
                break;
            case OtioValue.Number number:
                json.WriteRawValue(number.Digits);
                break;
            case OtioValue.Flag flag:
                json.WriteBooleanValue(flag.IsTrue);
                break;
            default:
                json.WriteNullValue();
                break;
        }
    }

    private static void Write(Utf8JsonWriter json, OtioValue.Record record)
    {
        json.WriteStartObject();
        foreach ((string name, OtioValue value) in record.Entries)
        {
            json.WritePropertyName(name);
            Write(json, value);
        }

        json.WriteEndObject();
    }
}
