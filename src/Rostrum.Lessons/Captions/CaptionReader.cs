using Rostrum.Lessons.Captions.Reading;
using Rostrum.Text;

namespace Rostrum.Lessons.Captions;

/// <summary>Reads caption files as platforms and programs write them.</summary>
/// <remarks>A file that cannot be used is refused with one error in <see cref="CaptionFile.Problems"/> and has no cues; all else is tolerated and
/// told once for the whole file, never once for each caption.</remarks>
public static class CaptionReader
{
    /// <summary>The largest file that is read, in bytes: 20 MB. A day of speech takes less than 2 MB, with a time for each word less than 10.</summary>
    public const int LargestFileBytes = 20 * 1024 * 1024;

    /// <summary>Reads a file of which the length is known before.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="lengthBytes">How long it is; where that is more than <see cref="LargestFileBytes"/>, it is refused and <paramref name="read"/> is not called.</param>
    /// <param name="read">Gives its bytes.</param>
    public static CaptionFile Read(string name, long lengthBytes, Func<ReadOnlyMemory<byte>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return lengthBytes > LargestFileBytes ? TooLarge(name, lengthBytes) : Read(name, read());
    }

    /// <summary>Reads the bytes of a file: UTF-8 with or without a byte order sign, UTF-16 with one, else the letters of Western European Windows.</summary>
    /// <param name="name">The name to show in messages.</param>
    /// <param name="bytes">The whole file.</param>
    public static CaptionFile Read(string name, ReadOnlyMemory<byte> bytes)
    {
        // A file may have grown since its length was told.
        if (bytes.Length > LargestFileBytes)
        {
            return TooLarge(name, bytes.Length);
        }

        (SourceText source, CaptionLetters letters) = CaptionBytes.Decode(name, bytes.Span);
        CaptionFile file = Read(source);
        return file.IsRefused || letters == CaptionLetters.Sound ? file : WithProblem(file, LettersProblem(source, letters));
    }

    /// <summary>Reads a text. It is WebVTT where it begins with <c>WEBVTT</c>, else SubRip; its name does not matter.</summary>
    /// <param name="source">The whole file.</param>
    public static CaptionFile Read(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        bool isSigned = WebVttReader.IsSigned(source);
        if (!isSigned && LooksLikeSignature(source))
        {
            return Refused(CaptionFormat.WebVtt, CaptionProblems.MisspeltSignature(FirstLineOf(source), WebVttReader.FirstLine(source).Trim()));
        }

        CaptionFile file = isSigned ? WebVttReader.Read(source) : SubRipReader.Read(source);
        if (file.Cues.IsEmpty)
        {
            return Refused(file.Format, isSigned ? CaptionProblems.NoCues(FirstLineOf(source)) : CaptionProblems.NoCaptions(FirstLineOf(source)));
        }

        return new CaptionFile(file.Format, file.Header, file.Blocks, CaptionChecks.Of(file, source));
    }

    private static bool LooksLikeSignature(SourceText source) =>
        WebVttReader.FirstLine(source).TrimStart().StartsWith("WEBVTT", StringComparison.OrdinalIgnoreCase);

    private static SourceSpan FirstLineOf(SourceText source) => source.Span(0, source.LineEnd(0));

    private static Diagnostic LettersProblem(SourceText source, CaptionLetters letters)
    {
        int at = letters == CaptionLetters.Damaged ? source.Content.IndexOf('\uFFFD', StringComparison.Ordinal) : source.Content.AsSpan().IndexOfAnyExceptInRange('\0', '\x7F');
        return letters == CaptionLetters.Damaged ? CaptionProblems.DamagedLetters(source.Span(at, 1)) : CaptionProblems.WesternLetters(source.Span(at, 1));
    }

    private static CaptionFile WithProblem(CaptionFile file, Diagnostic problem)
    {
        var all = new DiagnosticBag();
        all.AddRange([.. file.Problems, problem]);
        return new CaptionFile(file.Format, file.Header, file.Blocks, all.InOrder());
    }

    private static CaptionFile TooLarge(string name, long lengthBytes) =>
        Refused(CaptionFormat.WebVtt, CaptionProblems.TooLarge(new SourceText(name, "").Whole, lengthBytes));

    private static CaptionFile Refused(CaptionFormat format, Diagnostic problem) => new(format, "", [], [problem]);
}
