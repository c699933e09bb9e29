using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

public sealed class DrawingGuardTests
{
    [Fact]
    public void Drawing_keeps_its_shapes_and_its_references_get_a_prefix() =>
        Assert.Equal(
            "<svg viewBox=\"0 0 9 9\" aria-hidden=\"true\" focusable=\"false\"><defs><pattern id=\"f1-p\" /></defs><use href=\"#f1-p\" /><text fill=\"url(#f1-p)\" style=\"font-size:4px\">A &lt; B</text></svg>",
            DrawingGuard.Clean(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" class=\"skip\" viewBox=\"0 0 9 9\"><metadata><x/></metadata><defs><pattern id=\"p\"/></defs><use xlink:href=\"#p\"/><text fill=\"url(#p)\" style=\"font-size:4px\" data-a=\"b\">A &lt; B</text></svg>",
                "f1"));

    [Theory]
    [InlineData("<svg><script>alert(1)</script></svg>", "holds 'script'")]
    [InlineData("<svg><style>body{display:none}</style></svg>", "holds 'style'")]
    [InlineData("<svg><foreignObject/></svg>", "holds 'foreignObject'")]
    [InlineData("<svg><image href=\"#a\"/></svg>", "holds 'image'")]
    [InlineData("<svg><a href=\"#a\"/></svg>", "holds 'a'")]
    [InlineData("<svg><animate attributeName=\"fill\"/></svg>", "holds 'animate'")]
    [InlineData("<svg onload=\"alert(1)\"/>", "reacts")]
    [InlineData("<svg><use href=\"https://example.org/a#b\"/></svg>", "outside")]
    [InlineData("<svg><rect fill=\"url(https://example.org/a)\"/></svg>", "outside")]
    [InlineData("<svg><rect fill=\"url( 'https://example.org/a')\"/></svg>", "outside")]
    [InlineData("<svg><rect fill=\"u\\72l(//example.org)\"/></svg>", "backslash")]
    [InlineData("<svg><rect style=\"position:fixed\"/></svg>", "sets 'position'")]
    [InlineData("<svg><rect style=\"fill:image-set('a' 1x)\"/></svg>", "image")]
    [InlineData("<html/>", "does not begin")]
    [InlineData("<svg>", "refused")]
    [InlineData("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg>&a;</svg>", "refused")]
    public void Drawing_that_does_more_than_draw_is_refused(string svg, string because)
    {
        ArgumentException problem = Assert.Throws<ArgumentException>(() => DrawingGuard.Clean(svg, "f1"));

        Assert.Contains(because, problem.Message, StringComparison.Ordinal);
    }
}
