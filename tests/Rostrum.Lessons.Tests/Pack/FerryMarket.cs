using System.Text;
using System.Text.RegularExpressions;
using Rostrum.Lessons.Pack;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Pack;

/// <summary>A small game, invented for these tests, of an author who writes little: no set-up, no turn, one source without a rank, tables for two.</summary>
internal static class FerryMarket
{
    private const string Sheet = """
        rule sheet: 1
        game: Ferry Market
        says: Farmers bring crates over the river and sell them on the far bank.
        players: 2 to 4
        sources:
          leaflet: {title: Rules leaflet, pages: 4}
          site: {title: Publisher's web page, date: 2 May 2026, rank: 1}
        pieces:
          crate: {count: 24, cite: leaflet 1, attributes: {fruit: [plum, quince, medlar]}}
          coin: {count: 20, cite: leaflet 1}
        cards:
          buyer:
            cite: leaflet 2
            columns: {worth: number}
            rows: {Miller: {worth: 3}, Baker: {worth: 4}, Innkeeper: {worth: 5}}
            changes:
              Baker: {worth: {conflict: {leaflet 2: 4, site: 6, follow: site, why: The web page is newer.}}}
              Innkeeper: {worth: {conflict: {leaflet 2: 5, site: 8}}}
        boards:
          stall: {cite: leaflet 1, of: each player, squares: 4 across 2 up, rows: row, spaces: plank}
        places:
          purse: {heap of: coin, of: each player, cite: leaflet 1}
          served: {heap of: buyer, of: each player, cite: leaflet 2}
        signs: {p: plum, q: quince, m: medlar}
        facts:
          fruits: {is: 3, cite: leaflet 1}
          planks: {is: 8, cite: leaflet 1}
        score:
          quinces:
            says: A quince scores 1 for each plum beside it.
            cite: leaflet 3
            each: s in my stall where s shows a quince
            readings:
              with corners: {says: Corners count as beside., points: count(n in neighbours of s where n shows a plum) + 1}
              sides only: {points: count(n in neighbours of s where n shows a plum)}
          purse: {says: Two coins score 1 point., cite: leaflet 3, points: down(count(my purse), by 2)}
          buyers: {says: Each buyer that you served scores its worth., cite: leaflet 3, points: sum(c in my served, worth of c)}
        variants:
          market day:
            says: Everything sells twice.
            open questions:
              twice: {says: Does a buyer pay twice too?, cite: leaflet 4}
        """;

    private const string Evening = """
        seat 1:
          stall: |
            2 p q . m
            1 p p q m
            / A B C D
          purse: 5
          served: [Baker, Miller]
        seat 2:
          stall: |
            2 . . q .
            1 m p q p
            / A B C D
          purse: 2
        turn of: seat 1
        """;

    /// <summary>The game.</summary>
    public static Game Game { get; } = new(
        GameFolder.InMemory("ferry-market", ("sheet.yaml", Sheet), ("positions/evening.yaml", Evening), ("positions/busy.yaml", "variants: [market day]\n" + Evening)), ShippedGames.Idioms);

    /// <summary>A file of the pack of a lesson in these words.</summary>
    public static string Pack(string file, string lesson)
    {
        LessonReport report = LessonCheck.Of(Game, new SourceText("lesson.md", $"---\ntitle: Ferry Market\n---\n\n## A\n\n{lesson}\n"));
        return Encoding.UTF8.GetString(LessonPack.Of(Game, report).Single(f => f.Name == file).Bytes.AsSpan());
    }

    /// <summary>The words of a page as a reader meets them, with one blank between them.</summary>
    public static string Words(string lesson) => Told(Pack("lesson.html", lesson));

    /// <summary>The words of a page without its style, drawings and marks.</summary>
    public static string Told(string page) =>
        Prose.Fold(System.Net.WebUtility.HtmlDecode(Regex.Replace(Regex.Replace(page, "<(style|svg).*?</\\1>", "", RegexOptions.Singleline), "<[^>]+>", " ")));
}
