using Rostrum.Lessons.Page;

namespace Rostrum.Lessons.Tests.Page;

/// <summary>The markup of the smallest page, so that a change to it is seen.</summary>
public sealed class LessonPageSnapshotTests
{
    [Fact]
    public void Body_of_a_small_page()
    {
        var page = new LessonPage("Game", "Lesson", "Oona", "today", "first printing")
        {
            Topics = [new("Lamps", "lamps", [SamplePage.Says("A lamp scores [4](lamp).")])],
            Slips = [new("lamp", "lone lamp", new SlipAnswer.Fact("4"), SlipBasis.Stated) { Cite = "book 8" }],
        };

        string html = LessonPageWriter.Write(page, PageAssets.None);

        Assert.Equal(
            """
            <body>
            <a class="skip" href="#lesson">Skip to the lesson</a>
            <header class="masthead" id="top">
            <div class="masthead-in">
            <div class="masthead-words">
            <p class="game">Game</p>
            <h1>Lesson</h1>
            <dl class="about">
            <div><dt>Taught by</dt><dd>Oona</dd></div>
            <div><dt>Rules</dt><dd>first printing</dd></div>
            <div><dt>Correct as of</dt><dd>today</dd></div>
            </dl>
            </div>
            </div>
            </header>
            <div class="table">
            <div class="beside">
            <nav aria-labelledby="contents"><h2 id="contents">Contents</h2><ol>
            <li><a href="#topic-lamps">Lamps</a></li>
            <li><a href="#part-checked">How it was checked</a></li>
            </ol></nav></div>
            <main id="lesson" tabindex="-1">
            <section class="topic" aria-labelledby="topic-lamps">
            <div class="text">
            <h2 id="topic-lamps">Lamps</h2>
            <p>A lamp scores <a class="said right" id="said-lamp" href="#slip-lamp">4</a>.</p>
            </div>
            <aside class="slips"><h3 class="slips-head">Checked here<span class="unseen">: Lamps</span></h3>
            <div class="slip facts"><table><caption class="slip-title">As the source says</caption><thead class="unseen"><tr><th scope="col">What</th><th scope="col">Value</th></tr></thead>
            <tbody><tr><th scope="rowgroup" colspan="2" class="cite">book 8</th></tr>
            <tr id="slip-lamp"><th scope="row"><a href="#said-lamp">lone lamp</a></th><td class="value">4</td></tr>
            </tbody>
            </table></div>
            </aside>
            </section>

            """,
            html[html.IndexOf("<body>", StringComparison.Ordinal)..html.IndexOf("<section class=\"topic\" aria-labelledby=\"part-checked\"", StringComparison.Ordinal)]);
    }
}
