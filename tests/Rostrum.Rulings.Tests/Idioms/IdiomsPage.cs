using System.Collections.Immutable;
using System.Text;
using Rostrum.Sheets.Idioms;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Tests.Idioms;

/// <summary>Writes <c>docs/idioms.md</c> from the files of the idiom library.</summary>
internal static class IdiomsPage
{
    /// <summary>A clause of the page's beginning, as a sheet has it.</summary>
    public const string Score = """
        score:
          bowls:
            says: A run of bowls scores by its length.
            cite: book 3
            idiom: runs by length
            of: bowl
            along: bays
            points: run worth
        """;

    /// <summary>A word of the page's beginning, as a sheet has it.</summary>
    public const string Words = """
        words:
          three jugs: {idiom: at least so many, of: jug, at least: 3}
        """;

    private const string Head = """
        # Idioms

        Rules that many games have, ready to be named: a clause says which idiom it is and fills in what is its own, and needs no formula. This page is made from the
        files in `idioms/`: `ROSTRUM_WRITE_DOCS=1` before the tests writes it anew. An idiom that **scores** stands under `score`; one that is a **condition** stands
        wherever the sheet asks for yes or no: as a word, or in the condition column of a card.

            {score}
            {words}

        The examples are over a board `field` of 3 across and 3 up whose columns are called bay and whose rows are called tier
        ([how lines get their names](language.md#boards)); ware has a form (bowl, jug, plate, lamp) and a glaze (ash, iron, copper), and each piece is written with
        one sign for its form and one for its glaze: `ja` is an ash jug. Rows are written from the top down. There are also four sticks in `my sticks`, a card in
        `my orders`, and the table `run worth: {1: 1, 2: 3, 3: 6}`.

        """;

    /// <summary>The questions with which somebody comes, and the idioms that answer them.</summary>
    public static readonly ImmutableArray<(string Title, ImmutableArray<string> Names)> Sections =
    [
        ("Points for each thing", ["so many for each", "leftovers by a rate", "alone in its line", "different neighbours"]),
        ("Points for lines, runs and groups", ["full lines", "best line", "runs by length", "largest group"]),
        ("Points for cards", ["cards met or not"]),
        ("Conditions on how many", ["at least so many", "more than the others", "so many and none beside another"]),
        ("Conditions on lines", ["so many in one line", "in so many lines", "one in every line", "a line of different ones"]),
    ];

    public static string Make()
    {
        var page = new StringBuilder(Head.Replace("{score}", Indented(Score), StringComparison.Ordinal).Replace("{words}", Indented(Words), StringComparison.Ordinal));
        foreach ((string title, ImmutableArray<string> names) in Sections)
        {
            page.Append($"\n## {title}\n");
            page.AppendJoin("", names.Select(n => Entry(IdiomFile.Of(n))));
        }

        return page.ToString();
    }

    private static string Indented(string text) => text.Replace("\n", "\n    ", StringComparison.Ordinal);

    private static string Entry(IdiomFile file)
    {
        (string with, string on, string gives) = file.Shown("example");
        (string without, string off, string other) = file.Shown("near miss");
        string not = with == without ? $"`{off}` gives **{other}**" : $"with {Inline(without)}, `{off}` gives **{other}**";
        return $"""

            ### {file.Idiom.Name}

            {(file.Idiom.Scores ? "Scores." : "A condition.")} {string.Join(' ', file.Tried.Take(2).Select(t => $"*{t.Reads}*"))}

            | key | what stands there | left out |
            | --- | --- | --- |
            {string.Join('\n', file.Idiom.Parameters.Select(Row))}

            {string.Join('\n', Formulas(file.Idiom).Select(f => "- " + f))}
            - example: {Inline(with)}: *{IdiomFile.Sentence(file.SheetWith(with))}* `{on}` gives **{gives}**
            - near miss: {not}

            """;
    }

    private static string Row(IdiomParameter parameter)
    {
        string? otherwise = parameter.Otherwise?.Text.Trim();
        return $"| `{parameter.Name}` | {parameter.Wanted.Replace('\'', '`')} | {(otherwise is null ? "must be given" : otherwise == "of" ? "as `of`" : otherwise)} |";
    }

    // The meaning is written in names of its own, which its keys stand for.
    private static IEnumerable<string> Formulas(Idiom idiom) =>
        from key in (string[])["words", "each", "points", "means"]
        let value = idiom.Body.Find(key)?.Value
        where value is not null
        from line in value is OutlineMapping words ? words.Entries.Select(e => $"{e.Key.Text}: {((OutlineScalar)e.Value).Text}") : [((OutlineScalar)value).Text]
        select $"{(key == "words" ? "word" : key)}: `{InKeys(idiom, line)}`";

    private static string InKeys(Idiom idiom, string formula) => idiom.Parameters
        .Where(p => p.As != p.Name)
        .Aggregate(formula, (text, p) => text.Replace(p.Plural ?? p.As, $"‹{p.Name}›", StringComparison.Ordinal).Replace(p.As, $"‹{p.Name}›", StringComparison.Ordinal));

    private static string Inline(string clause) =>
        $"`{{{string.Join(", ", clause.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))}}}`";
}
