using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class LinkFilterTests
{
    [Theory]
    [InlineData("https://example.org/a?b=c#d")]
    [InlineData("http://example.org")]
    [InlineData("HTTPS://example.org")]
    [InlineData("mailto:a@example.org")]
    [InlineData("#here")]
    [InlineData("drawings/E1.svg")]
    [InlineData("../index.html?at=1:30")]
    public void Address_is_allowed(string target) => Assert.True(LinkFilter.Allows(target));

    [Theory]
    [InlineData("")]
    [InlineData("javascript:alert(1)")]
    [InlineData("JaVaScript:alert(1)")]
    [InlineData(" javascript:alert(1)")]
    [InlineData("java\nscript:alert(1)")]
    [InlineData("\u0001javascript:alert(1)")]
    [InlineData("data:text/html,x")]
    [InlineData("vbscript:x")]
    [InlineData("file:///etc/passwd")]
    [InlineData("//example.org/x")]
    [InlineData("\\\\example.org\\x")]
    [InlineData("/\\example.org")]
    [InlineData("tally:E1/total")]
    public void Address_is_refused(string target) => Assert.False(LinkFilter.Allows(target));
}
