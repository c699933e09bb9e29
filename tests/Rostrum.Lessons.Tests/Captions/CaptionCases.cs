using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>The published cases that lie in <c>Reference</c>.</summary>
internal static class CaptionCases
{
    public static JsonElement WebVtt { get; } = Load("webvtt_cases.json");

    public static JsonElement SubRip { get; } = Load("srt_conventions.json");

    // The file behind this expectation was not to be had; it says that sixty is no limit for hours. Times and words are those of the expectation.
    public static string SixtyHours => "WEBVTT\n\n00:00:00.000 --> 60:00:01.000\ntext1\n\n60:00:00.000 --> 60:00:01.000\ntext2\n";

    public static string Text(this JsonElement element, string name) => element.GetProperty(name).GetString()!;

    private static JsonElement Load(string name) => JsonDocument.Parse(TestFiles.Read($"tests/Rostrum.Lessons.Tests/Reference/{name}")).RootElement;
}
