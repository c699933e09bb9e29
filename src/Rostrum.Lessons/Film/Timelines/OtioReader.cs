using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>An OpenTimelineIO file.</summary>
/// <param name="Root">Everything that stands in it, unknown things and metadata included; null where it was refused.</param>
/// <param name="Problems">Why it was refused; empty where it was read.</param>
public sealed record OtioFile(OtioValue.Record? Root, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>What we understand of the timeline in it; null where it was refused.</summary>
    public Timeline? Timeline => Root is null ? null : TimelineReading.Of(Root);
}

/// <summary>Reads OpenTimelineIO files and loses nothing: order of names, digits of numbers, things and metadata that we do not know.</summary>
public static class OtioReader
{
    // A timeline of stacks in stacks is a dozen deep.
    private const int Deepest = 256;

    /// <summary>Reads a file of which the length is known before.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="lengthBytes">How long it is; where that is more than <see cref="FilmFile.LargestBytes"/>, it is refused and <paramref name="read"/> is not called.</param>
    /// <param name="read">Gives its bytes.</param>
    public static OtioFile Read(string name, long lengthBytes, Func<ReadOnlyMemory<byte>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (lengthBytes > FilmFile.LargestBytes)
        {
            return Refused(FilmProblems.TooLarge(new SourceText(name, "").Whole, lengthBytes));
        }

        // A file may have grown since its length was told.
        ReadOnlyMemory<byte> bytes = read();
        return bytes.Length > FilmFile.LargestBytes ? Refused(FilmProblems.TooLarge(new SourceText(name, "").Whole, bytes.Length)) : Read(name, bytes.Span);
    }

    /// <summary>Reads the bytes of a file, which are UTF-8.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="bytes">The whole file.</param>
    public static OtioFile Read(string name, ReadOnlySpan<byte> bytes)
    {
        ReadOnlySpan<byte> json = bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? bytes[3..] : bytes;
        var source = new SourceText(name, Encoding.UTF8.GetString(json));
        if (!Utf8.IsValid(json))
        {
            return Refused(FilmProblems.NoTimelineText(Behind(source, source.Content.IndexOf('\uFFFD', StringComparison.Ordinal))));
        }

        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = Deepest });
        try
        {
            reader.Read();
            OtioValue value = Value(ref reader);
            // Whatever follows the value is none of it.
            reader.Read();
            return value is OtioValue.Record { Schema: "Timeline" } root ? new OtioFile(root, []) : Refused(FilmProblems.NoTimeline(source.Span(0, source.LineEnd(0)), SchemaOf(value)));
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException)
        {
            // The second is half of a character in words: '\ud800'.
            return Refused(FilmProblems.NoTimelineText(Behind(source, Encoding.UTF8.GetCharCount(json[..(int)reader.BytesConsumed]))));
        }
    }

    private static OtioValue Value(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.StartObject => Record(ref reader),
        JsonTokenType.StartArray => List(ref reader),
        JsonTokenType.String => new OtioValue.Text(reader.GetString()!),
        JsonTokenType.Number => new OtioValue.Number(Encoding.ASCII.GetString(reader.ValueSpan)),
        JsonTokenType.True => new OtioValue.Flag(true),
        JsonTokenType.False => new OtioValue.Flag(false),
        _ => new OtioValue.Nothing(),
    };

    private static OtioValue.Record Record(ref Utf8JsonReader reader)
    {
        var entries = ImmutableArray.CreateBuilder<(string, OtioValue)>();
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString()!;
            reader.Read();
            entries.Add((name, Value(ref reader)));
        }

        return new OtioValue.Record(entries.ToImmutable());
    }

    private static OtioValue.List List(ref Utf8JsonReader reader)
    {
        var items = ImmutableArray.CreateBuilder<OtioValue>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(Value(ref reader));
        }

        return new OtioValue.List(items.ToImmutable());
    }

    private static string SchemaOf(OtioValue value) => value is OtioValue.Record record ? record.Schema : "";

    private static SourceSpan Behind(SourceText source, int offset)
    {
        int at = Math.Clamp(offset, 0, source.Content.Length);
        return source.Span(at, source.LineEnd(source.LineIndexOf(at)) - at);
    }

    private static OtioFile Refused(Diagnostic problem) => new(null, [problem]);
}
