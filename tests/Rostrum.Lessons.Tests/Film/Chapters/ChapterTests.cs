using CsCheck;
using Rostrum.Testing;
using Rostrum.Lessons.Film;
using Rostrum.Lessons.Film.Chapters;

namespace Rostrum.Lessons.Tests.Film.Chapters;

/// <summary>The one value from which every form is written.</summary>
public sealed class ChapterTests
{
    [Theory]
    [InlineData("  The\r\naim\t of\0it ", "The aim of it")]
    [InlineData("👩‍👩‍👧‍👦 שלום\u200F", "👩‍👩‍👧‍👦 שלום\u200F")]
    [InlineData("\n", "")]
    public void Title_is_one_line_that_every_form_can_hold(string given, string title) =>
        Assert.Equal(title, new Chapter(TimeSpan.Zero, given).Title);

    [Fact]
    public void What_XML_cannot_hold_is_replaced_in_a_title() =>
        Assert.Equal("half \uFFFD letter\uFFFD", new Chapter(TimeSpan.Zero, "half \uD83D letter\uFFFE").Title);

    [Fact]
    public void Start_is_cut_to_whole_milliseconds() =>
        Assert.Equal(TimeSpan.FromMilliseconds(1), new Chapter(TimeSpan.FromTicks(19_999), "a").Start);

    [Fact]
    public void Start_before_the_film_or_after_any_film_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Chapter(TimeSpan.FromTicks(-1), "a"));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Chapter(FilmTime.Latest + TimeSpan.FromTicks(1), "a"));
    }

    [Fact]
    public void Each_chapter_ends_where_the_next_begins_and_none_before_it_begins() => FilmGen.Any.Hold(list =>
    {
        (Chapter Chapter, TimeSpan End)[] all = [.. list.WithEnds()];

        Assert.Equal(list.Chapters.Length, all.Length);
        Assert.All(all, c => Assert.True(c.End >= c.Chapter.Start));
        Assert.All(all.Zip(all.Skip(1)), pair => Assert.Equal(pair.First.End, pair.Second.Chapter.Start));
    });
}
