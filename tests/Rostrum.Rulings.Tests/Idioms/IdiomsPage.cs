using System.Collections.Immutable;
using System.Text;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;
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

    /// <summary>A law of the page's beginning, as a sheet has it.</summary>
    public const string Laws = """
        laws:
          beside a jug: {says: Ware goes beside a jug., cite: book 2, binds: lay, idiom: only next to, near: jug}
        """;

    private const string Head = """
        # Idioms

        Rules that many games have, ready to be named: a clause says which idiom it is and fills in what is its own, and needs no formula. This page is made from the
        files in `idioms/`: `ROSTRUM_WRITE_DOCS=1` before the tests writes it anew. An idiom that **scores** stands under `score`, where `at least` and `at most` may
        cap it; one that is a **condition** stands wherever the sheet asks for yes or no: as a word, in the condition column of a card, behind `needs` of a law; one
        that is a **law** stands under `laws` beside `binds`, speaks of what that action chooses, and may have an `unless`.

            {score}
            {words}
            {laws}

        What stands in ‹ › is what a clause fills in. Amounts are counted (`my sticks`, `jugs in my field`) or are numbers (`my coins`, 3). What every player has
        (`my sticks`, `jugs in my field`, a word of one player) is told as your own and compared for everybody.

        """;

    private const string Bench = """

        ## The benches of the examples

        Most examples are over a board `field` of each player, 3 across and 3 up, whose columns are called bay and whose rows are called tier
        ([how lines get their names](language.md#boards)); ware has a form (bowl, jug, plate, lamp) and a glaze (ash, iron, copper), and each piece is written with
        one sign for its form and one for its glaze: `ja` is an ash jug. Rows are written from the top down. There are also four sticks in `my sticks`, a card in
        `my orders`, no `my shards`, the tables `run worth: {1: 1, 2: 3, 3: 6}` and `ladder: {0: 0, 1: 2, 2: 5, 3: 9, beyond: last}`, the words `clash` (copper with
        ash) and `cost` (3 for a jug, else 1), the marks `coins` and `promise`, and the action `lay (what) on (spot)`. Those marked *on the table* are over a
        `map` of 4 across and 3 up with columns, rows, two areas called shire and a `reward` printed on some spaces, a `trail` of six steps, a hut of each player (`h1`, `h2`), tiles of wood, lake and hill (`w`, `l`, `k`) that
        may be stacked, and the actions `put (what) on (spot)` and `climb off (start) to (goal)`.

        """;

    private const string Ties = """

        ## Ties, ratings and limits

        What follows when totals are level needs no idiom; it is a list under `ties`, asked in order. What has been reached by the total is a `rating`. A clause that
        may not fall below nothing says `at least: 0`, one with a ceiling `at most`.

            {ties}

        """;

    /// <summary>The usual ties, rating and limits, as a sheet has them.</summary>
    public const string Ends = """
        score:
          coins: {says: A coin scores 1; never less than nothing., cite: book 3, idiom: so many for each, of: my coins, points: 1, at least: 0, at most: 10}
        ties: [fewer my shards, more my sticks, higher my coins, shared]
        rating: {steps: {0: apprentice, 20: potter, 40: master}}
        """;

    /// <summary>What somebody wants to say, and the idioms that say it.</summary>
    public static readonly ImmutableArray<(string Title, ImmutableArray<string> Names)> Sections =
    [
        ("Points for what you have",
            ["so many for each", "its own worth", "by their number", "growing with their number", "for so many at least", "one number times another", "different ones by number",
            "leftovers by a rate", "each one missing", "bonus where something holds"]),
        ("Points for sets and pairs", ["one of each as a set", "the lowest counts", "sets of different ones", "sets of alike ones", "best split into sets", "pairs that fit"]),
        ("Points for having more than others", ["the most", "the most and second most", "areas held"]),
        ("Points for pieces by what is beside them or where they stand",
            ["different neighbours", "neighbours of a kind", "enough neighbours", "enough different neighbours", "alone in its line", "as high as it stands", "steps along a track",
            "prize where it stands", "number printed under it"]),
        ("Points for lines", ["full lines", "full lines alike or different", "best line", "each line by its number", "runs by length"]),
        ("Points for groups, ways and areas",
            ["largest group", "largest group of a kind", "each big group", "groups by size", "longest way", "enclosed areas"]),
        ("Points for cards and drawings", ["cards met or not", "drawings on cards"]),
        ("Points for rounds, bids and charts", ["weighed by the round", "bid met exactly", "value uncovered", "highest number uncovered"]),
        ("Conditions on how many", ["at least so many", "more than the others", "so many and none beside another", "few left", "more than anybody"]),
        ("Conditions on lines", ["so many in one line", "in so many lines", "one in every line", "a line of different ones", "no two alike in a line"]),
        ("Conditions on groups", ["all in one group", "a group of at least"]),
        ("Laws on what may lie beside it",
            ["only next to", "never next to", "only next to its like", "never next to its like", "never next to an unlike one", "never next to what clashes"]),
        ("Laws on where it may go", ["only on an empty space", "only on top of", "only on its like", "only inside", "never inside", "held up from below"]),
        ("Laws on height and moving", ["at most so high", "level with its neighbours", "climbs at most", "only so far", "straight over free spaces"]),
        ("Laws on how many", ["only so many", "only so many in a line", "one of each in a line", "stays in one group", "can be paid"]),
    ];

    public static string Make()
    {
        var page = new StringBuilder(Head
            .Replace("{score}", Indented(Score), StringComparison.Ordinal)
            .Replace("{words}", Indented(Words), StringComparison.Ordinal)
            .Replace("{laws}", Indented(Laws), StringComparison.Ordinal));
        page.Append(Index());
        page.Append(Bench);
        foreach ((string title, ImmutableArray<string> names) in Sections)
        {
            page.Append($"\n## {title}\n");
            page.AppendJoin("", names.Select(n => Entry(IdiomFile.Of(n))));
        }

        return page.Append(Ties.Replace("{ties}", Indented(Ends), StringComparison.Ordinal)).ToString();
    }

    // What one wants to say, section by section, and the name under which it stands.
    private static string Index()
    {
        IEnumerable<string> lines = Sections.SelectMany(s => s.Names.Select(n => $"| {IdiomFile.Of(n).Idiom.InNames} | {Link(n)} |").Prepend($"| **{s.Title}** | |"));
        IEnumerable<string> trade = TradeScoring.All.Select(t => $"| {t.Number} | {t.Words} | {Prose.Or(t.Idioms.Select(Link))}{t.Form} |");
        return $"""

            ## What you want to say

            | you want to say | idiom |
            | --- | --- |
            {string.Join('\n', lines)}

            ## The ways of scoring

            | | way of scoring | idiom |
            | --- | --- | --- |
            {string.Join('\n', trade)}

            """;
    }

    private static string Link(string name) => $"[{name}](#{name.Replace(' ', '-')})";

    private static string Indented(string text) => text.Replace("\n", "\n    ", StringComparison.Ordinal);

    private static string Entry(IdiomFile file)
    {
        IdiomShown example = file.Shown("example");
        IdiomShown miss = file.Shown("near miss");
        string clause = miss.With == example.With ? "" : $"with {Inline(miss.With)}, ";
        string note = file.Idiom.Body.Find("note")?.Value is OutlineScalar said ? $" {Prose.Fold(said.Text)}" : "";
        return $"""

            ### {file.Idiom.Name}

            {Use(file)} {string.Join(' ', file.Tried.Take(2).Select(t => $"*{t.Reads}*"))}{note}

            | key | what stands there | left out |
            | --- | --- | --- |
            {string.Join('\n', file.Idiom.Parameters.Select(Row))}

            {string.Join('\n', Formulas(file.Idiom).Select(f => "- " + f))}
            - example: {Inline(example.With)}: *{IdiomFile.Sentence(file.SheetWith(example.With))}* {Told(example)}
            - near miss: {clause}{Told(miss)}

            """;
    }

    private static string Use(IdiomFile file)
    {
        string use = file.Idiom.Kind switch
        {
            IdiomUseKind.Score => "Scores",
            IdiomUseKind.Law => "A law",
            _ => "A condition",
        };
        return file.IsOnTable ? $"{use}, on the table." : $"{use}.";
    }

    private static string Told(IdiomShown shown)
    {
        IEnumerable<string> mine = shown.And.Select(h => $"{h.Place} `{h.Holds}`");
        IEnumerable<string> theirs = shown.They.Select(h => $"their {h.Place} `{h.Holds}`");
        string others = string.Concat(mine.Concat(theirs).Select(w => $", {w}"));
        string tried = shown.Try is null ? "" : $", `{shown.Try}`";
        string gives = shown.Try is null ? "gives" : "is";
        return $"`{shown.On}`{others}{tried} {gives} **{shown.Gives}**";
    }

    private static string Row(IdiomParameter parameter)
    {
        string? otherwise = parameter.Otherwise?.Text.Trim();
        return $"| `{parameter.Name}` | {parameter.Wanted.Replace('\'', '`')} | {(otherwise is null ? "must be given" : otherwise == "of" ? "as `of`" : otherwise)} |";
    }

    // The meaning is written in names of its own, which its keys stand for.
    private static IEnumerable<string> Formulas(Idiom idiom) =>
        from key in (string[])["words", "each", "points", "means", "needs", "forbids", "must leave"]
        let value = idiom.Body.Find(key)?.Value
        where value is not null
        from line in Lines(value)
        select $"{(key == "words" ? "word" : key)}: `{InKeys(idiom, line)}`";

    private static IEnumerable<string> Lines(OutlineNode value) => value switch
    {
        OutlineMapping words => words.Entries.Select(e => $"{e.Key.Text}: {Prose.Fold(((OutlineScalar)e.Value).Text)}"),
        OutlineSequence list => list.Items.Select(i => Prose.Fold(((OutlineScalar)i).Text)),
        _ => [Prose.Fold(((OutlineScalar)value).Text)],
    };

    private static string InKeys(Idiom idiom, string formula) => idiom.Parameters
        .Where(p => p.As != p.Name)
        .Aggregate(formula, (text, p) => text.Replace(p.Plural ?? p.As, $"‹{p.Name}›", StringComparison.Ordinal).Replace(p.As, $"‹{p.Name}›", StringComparison.Ordinal));

    private static string Inline(string clause) =>
        $"`{{{string.Join(", ", clause.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))}}}`";
}
