using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Film;

namespace Rostrum.Lessons.Tests.Film;

/// <summary>Times of a film as people write them.</summary>
public sealed class FilmTimeTests
{
    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(999, "0:00")]
    [InlineData(59_999, "0:59")]
    [InlineData(725_000, "12:05")]
    [InlineData(3_599_999, "59:59")]
    [InlineData(3_723_000, "1:02:03")]
    [InlineData(360_000_000, "100:00:00")]
    public void Time_is_written_in_whole_seconds_with_hours_where_there_are_any(long milliseconds, string written) =>
        Assert.Equal(written, FilmTime.Write(TimeSpan.FromMilliseconds(milliseconds)));

    [Theory]
    [InlineData("0:00", 0)]
    [InlineData("00:01:02.5", 62_500)]
    [InlineData("75:00", 4_500_000)]
    [InlineData("1:02:03,250", 3_723_250)]
    [InlineData("00:00:00.001999999", 1)]
    public void Time_is_read_leniently(string written, long milliseconds) =>
        Assert.Equal(milliseconds, FilmTime.Read(written)!.Value.Ticks / TimeSpan.TicksPerMillisecond);

    [Theory]
    [InlineData("")]
    [InlineData("12")]
    [InlineData("0:60")]
    [InlineData("1:60:00")]
    [InlineData("0:5")]
    [InlineData("-1:00")]
    [InlineData("1:00.")]
    [InlineData("1:00.1234567890")]
    [InlineData("1:2:3:4")]
    [InlineData("1000:00:01")]
    [InlineData("99999999999999999999:00")]
    [InlineData("٣:٠٠")]
    public void What_is_no_time_is_none(string written) => Assert.Null(FilmTime.Read(written));

    [Fact]
    public void Written_times_are_read_back() => Gen.Long[0, 3_600_000].Hold(seconds =>
        FilmTime.Read(FilmTime.Write(TimeSpan.FromSeconds(seconds))) == TimeSpan.FromSeconds(seconds));
}
