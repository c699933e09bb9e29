using System.Text;
using Rostrum.Lessons.Captions;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Captions;

/// <summary>From bytes to captions: letters, refusals, and what is told.</summary>
public sealed class CaptionReaderTests
{
    private const string Content = "WEBVTT\n\n00:01.000 --> 00:02.000\nGrün “石” 🎲\n";

    public static TheoryData<string, byte[]> SoundLetters => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes(Content) },
        { "UTF-8 with a byte order sign", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Content)] },
        { "UTF-16, small end first", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Content)] },
        { "UTF-16, large end first", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Content)] },
    };

    public static TheoryData<string, string> Oddities => new()
    {
        { Vtt("00:01.000 --> 00:03.000\na", "00:02.000 --> 00:04.000\nb", "00:03.000 --> 00:05.000\nc"), "ROS0658 6,1 2 captions begin while an earlier one is still to be seen; this is the first." },
        { Vtt("00:05.000 --> 00:06.000\na", "00:02.000 --> 00:04.000\nb"), "ROS0657 6,1 This caption begins earlier than the one written before." },
        { Vtt("00:05.000 --> 00:05.000\na", "00:06.000 --> 00:04.000\nb"), "ROS0656 3,1 2 captions end no later than they begin; this is the first." },
        { Vtt("06:00:00.001 --> 06:00:01.000\na"), "ROS0659 3,1 This caption stands more than six hours into the video." },
        { Vtt("00:01.000 --> 00:02.000\n<b></b> ", "00:03.000 --> 00:04.000"), "ROS0660 3,1 2 captions have no words; this is the first." },
        { Vtt("0:01.000 --> 00:02.000\na", "00:03.000 --> 00:04.000\nb"), "ROS0655 3,1 These lines are no caption and are left out." },
        { Vtt("00:01.000 --> 00:02.000\na", "lost\nwords", "more"), "ROS0655 6,1 2 passages of this file are no captions and are left out; this is the first." },
        { Vtt("00:01.000 --> 00:02.000\na", "00:02.000 --> 00:04.000\nb"), "" },
    };

    [Theory]
    [MemberData(nameof(SoundLetters))]
    public void Letters_are_read_as_they_were_written(string letters, byte[] bytes)
    {
        CaptionFile file = CaptionReader.Read("lesson.vtt", bytes);

        Assert.Equal((letters, "Grün “石” 🎲"), (letters, Assert.Single(file.Cues).Text));
        Assert.Empty(file.Problems);
    }

    // Curly quotes, dash and euro sign stand in the gap of Latin-1 that Windows filled: index of the WHATWG encoding standard.
    [Fact]
    public void Letters_of_western_windows_are_read_and_told()
    {
        CaptionFile file = CaptionReader.Read("lesson.vtt", (byte[])[.. Encoding.ASCII.GetBytes("WEBVTT\n\n00:01.000 --> 00:02.000\nGr"), 0xFC, (byte)'n', 0x93, 0x80, 0x94, 0x96]);

        Assert.Equal("Grün“€”–", Assert.Single(file.Cues).Text);
        Assert.Equal(("ROS0654", "4,3"), (Assert.Single(file.Problems).Id, file.Problems[0].At.StartPosition.ToString()));
    }

    [Fact]
    public void Halves_of_letters_are_told()
    {
        CaptionFile file = CaptionReader.Read("lesson.vtt", (byte[])[0xFF, 0xFE, .. Encoding.Unicode.GetBytes("WEBVTT\n\n00:01.000 --> 00:02.000\na"), 0x3D, 0xD8, 0x0A]);

        Assert.Equal("a\uFFFD\uFFFD", Assert.Single(file.Cues).Text);
        Assert.Equal("Some letters of this file are damaged and cannot be read.", Assert.Single(file.Problems).Message);
    }

    [Fact]
    public void A_file_that_is_too_long_is_refused_unread()
    {
        CaptionFile file = CaptionReader.Read("lesson.mp4", 200L * 1024 * 1024, () => throw new InvalidOperationException("It was read."));

        Assert.Equal("This file is 200 MB long, and no captions are longer than 20 MB.", Assert.Single(file.Problems).Message);
        Assert.True(file.IsRefused);
    }

    [Fact]
    public void A_file_that_grew_is_refused_and_the_longest_allowed_is_read()
    {
        byte[] bytes = new byte[CaptionReader.LargestFileBytes];
        bytes.AsSpan().Fill((byte)' ');
        Encoding.ASCII.GetBytes("00:00:01,000 --> 00:00:02,000\na").CopyTo(bytes, 0);

        Assert.Single(CaptionReader.Read("lesson.srt", bytes.Length, () => bytes).Cues);
        Assert.Equal("ROS0651", Assert.Single(CaptionReader.Read("lesson.srt", 10, () => new byte[CaptionReader.LargestFileBytes + 1]).Problems).Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Take the stone.\nPlace it --> there.\n")]
    [InlineData("PK\u0003\u0004\0\0")]
    [InlineData("a,b\n1,2\n")]
    public void A_file_without_any_times_is_no_caption_file(string content)
    {
        CaptionFile file = CaptionReader.Read("lesson.srt", Encoding.UTF8.GetBytes(content));

        Assert.Equal(("ROS0652", 0), (Assert.Single(file.Problems).Id, file.Cues.Length));
    }

    [Fact]
    public void A_binary_file_is_refused_and_nothing_is_said_about_its_letters() =>
        Assert.Equal("ROS0652", Assert.Single(CaptionReader.Read("lesson.mp4", (byte[])[0, 0, 0, 0x18, 0x66, 0xFF, 0x80, 0xFE]).Problems).Id);

    [Fact]
    public void Misspelt_signature_is_shown()
    {
        Diagnostic problem = Assert.Single(CaptionReader.Read(new SourceText("a.vtt", "Webvtt\n\n00:01.000 --> 00:02.000\na")).Problems);

        Assert.Equal(("ROS0652", "A WebVTT file begins with 'WEBVTT' and then a blank or the end of the line; this one begins with 'Webvtt'."), (problem.Id, problem.Message));
    }

    [Theory]
    [MemberData(nameof(Oddities))]
    public void Oddities_are_told_once_with_their_first_place(string content, string told) => Assert.Equal(
        told,
        string.Join("; ", CaptionReader.Read(new SourceText("a.vtt", content)).Problems.Select(p => $"{p.Id} {p.At.StartPosition} {p.Message}")));

    [Fact]
    public void A_thousand_flaws_are_five_messages()
    {
        string[] cues = [.. Enumerable.Range(0, 1000).SelectMany(i => new[] { "07:00:00.000 --> 00:00:01.000", "0:0:1 --> x\nlost" })];

        CaptionFile file = CaptionReader.Read(new SourceText("a.vtt", Vtt([.. cues, "07:00:00.000 --> 07:00:01.000", "07:00:00.000 --> 07:00:01.000"])));

        Assert.Equal(["ROS0655", "ROS0656", "ROS0658", "ROS0659", "ROS0660"], file.Problems.Select(p => p.Id).Order(StringComparer.Ordinal));
    }

    private static string Vtt(params string[] blocks) => $"WEBVTT\n\n{string.Join("\n\n", blocks)}\n";
}
