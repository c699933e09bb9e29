using System.Text;
using CsCheck;
using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Film.Corrections;
using Rostrum.Lessons.Film.Timelines;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>Files with a few bytes changed, taken out or doubled are read or refused in a sentence, and whatever was read can be written and read again.</summary>
public sealed class DamagedFileTests
{
    private static readonly ChapterList List =
        new([new Chapter(TimeSpan.Zero, "The aim"), new Chapter(TimeSpan.FromSeconds(70), "Your = turn; #\\ <a> & 🎲"), new Chapter(TimeSpan.FromSeconds(3820), "Scoring")], TimeSpan.FromSeconds(4000));

    private static readonly byte[][] ChapterFiles =
    [
        Encoding.UTF8.GetBytes(ChapterLines.Write(List) + "\nCorrections:\n3:12 A jug.\n"),
        Encoding.UTF8.GetBytes(FfMetadataWriter.Write(List, [new FfTag("title", "Kiln")])),
        Encoding.UTF8.GetBytes(MatroskaChapters.Write(List, MatroskaLanguage.English)),
        Encoding.UTF8.GetBytes(TestFiles.Read("tests/Rostrum.Lessons.Tests/Reference/matroska_chapters_basic.xml")),
    ];

    private static readonly byte[] Timeline = Encoding.UTF8.GetBytes(TestFiles.Read("tests/Rostrum.Lessons.Tests/Reference/otio/transition_test.otio"));

    // (place as a share of the file, bytes taken out, bytes put in)
    private static readonly Gen<(double At, int Out, byte[] In)[]> Damage = Gen.Select(
        Gen.Double[0, 1], Gen.Int[0, 12], Gen.OneOf(Gen.Byte.Array[0, 3], Gen.OneOf("9999999999", "-", ":", "<", ">", "&", "\n", "\\", "=", "\"", "{", "]", "null", "1e999").Select(Encoding.UTF8.GetBytes))).Array[1, 4];

    [Fact]
    public void Damaged_chapters_are_read_or_refused() => Gen.Select(Gen.Int[0, ChapterFiles.Length - 1].Select(i => ChapterFiles[i]), Damage).Hold(
        (file, damage) =>
        {
            byte[] bytes = Damaged(file, damage);

            PlacedChapters read = ChapterReader.Read("chapters", bytes.Length, () => bytes);

            Assert.All(read.Check(TimeSpan.FromHours(1)), p => Assert.NotEmpty(p.Message));
            Assert.Equal(read.IsRefused, read.List.Chapters.IsEmpty && read.Problems.Any(p => p.Severity == Severity.Error));
            ChapterList ordered = read.List with { Chapters = [.. read.List.Ordered] };
            Assert.Equal(ordered.Chapters, FfMetadataReader.Read(new SourceText("a", FfMetadataWriter.Write(read.List, []))).Chapters.List.Chapters);
        },
        cases: 3000);

    [Fact]
    public void Damaged_corrections_are_read() => Damage.Hold(damage =>
    {
        PlacedCorrections read = CorrectionLines.Read(new SourceText("a", Encoding.UTF8.GetString(Damaged(ChapterFiles[0], damage))));

        Assert.Equal(read.Corrections.OrderBy(c => c.Time), CorrectionLines.Read(new SourceText("a", CorrectionLines.Write(read.Corrections))).Corrections);
    });

    [Fact]
    public void Damaged_timelines_are_read_or_refused() => Damage.Hold(
        damage =>
        {
            OtioFile read = OtioReader.Read("a.otio", Damaged(Timeline, damage));

            Assert.Equal(read.Root is null, read.Problems.Length == 1);
            Assert.True(read.Timeline is null || OtioReader.Read("a.otio", Encoding.UTF8.GetBytes(OtioWriter.Write(read.Root!))).Root!.Equals(read.Root));
        },
        cases: 3000);

    private static byte[] Damaged(byte[] file, (double At, int Out, byte[] In)[] damage) => damage.Aggregate(file, (bytes, d) =>
    {
        int at = (int)(d.At * bytes.Length);
        return [.. bytes[..at], .. d.In, .. bytes[Math.Min(bytes.Length, at + d.Out)..]];
    });
}
