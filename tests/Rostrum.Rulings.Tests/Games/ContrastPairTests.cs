using Rostrum.Rulings.Positions;
using Rostrum.Rulings.Tallies;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Testing;

namespace Rostrum.Rulings.Tests.Games;

/// <summary>The near misses of Kiln Night: for each rule a pair of positions that differ in one piece and in what that rule says.</summary>
public sealed class ContrastPairTests
{
    private const string Folder = "games/kiln-night/positions";

    /// <summary>For each law a pair, and what is asked of its first and of its near position: the same, or the same for the piece that was moved.</summary>
    private static readonly (string Law, string Pair, string Words, string NearWords)[] Laws =
    [
        ("lowest free shelf", "lowest-shelf", "place iron bowl on A2", "place iron bowl on A2"),
        ("nothing on a lamp", "lamp-below", "place iron bowl on A2", "place iron bowl on A2"),
        ("jugs", "jug-below", "place iron jug on A2", "place iron jug on A2"),
        ("copper and ash", "copper-ash", "place copper jug on B2", "place copper jug on B2"),
        ("placed if it can be", "no-room", "smash iron jug", "smash iron jug"),
        ("at most three", "at-most-three", "accept Commission 5", "accept Commission 5"),
        ("two sticks", "two-sticks", "burn to swap A1 and A2", "burn to swap A1 and A2"),
        ("neighbours only", "neighbours-only", "burn to swap A1 and B1", "burn to swap A1 and C1"),
        ("still lawful", "still-lawful", "burn to swap A1 and B1", "burn to swap A1 and B1"),
        ("two sticks to spare", "spare", "spare", "spare"),
    ];

    private static readonly Sheet Sheet = Game.Sheet("kiln-night");

    public static TheoryData<string> Pairs => [.. Names.Where(n => Names.Contains($"{n}-near"))];

    public static TheoryData<string> ScoringClauses => [.. Sheet.Score.Select(c => c.Name)];

    public static TheoryData<string, string, string, string> LawsWithPairs => [.. Laws];

    public static TheoryData<string> Files => [.. TestFiles.In(Folder, "*.yaml")];

    private static string[] Names => [.. TestFiles.In(Folder, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f))];

    [Fact]
    public void Every_near_position_has_its_other_half() =>
        Assert.DoesNotContain(Names, n => n.EndsWith("-near", StringComparison.Ordinal) && !Names.Contains(n[..^5]));

    [Fact]
    public void Every_law_has_a_pair() => Assert.Equal(Sheet.Laws.Select(l => l.Name), Laws.Select(l => l.Law));

    [Theory]
    [MemberData(nameof(Pairs))]
    public void The_two_of_a_pair_differ_in_one_piece(string pair)
    {
        (string Where, Thing Thing)[] here = [.. Pieces(Game.Kiln(pair))];
        (string Where, Thing Thing)[] near = [.. Pieces(Game.Kiln($"{pair}-near"))];

        Assert.Equal(1, Math.Max(Without(here, near), Without(near, here)));
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void The_two_of_a_pair_are_on_the_same_side_of_the_chamber(string pair) =>
        Assert.Equal(Game.Kiln(pair).Sheet.VariantsOn, Game.Kiln($"{pair}-near").Sheet.VariantsOn);

    [Theory]
    [MemberData(nameof(ScoringClauses))]
    public void A_scoring_clause_gives_other_points_in_the_near_position(string clause) =>
        Assert.NotEqual(Points(clause, clause), Points($"{clause}-near", clause));

    [Theory]
    [MemberData(nameof(LawsWithPairs))]
    public void A_law_alone_forbids_in_one_of_the_two_what_is_legal_in_the_other(string law, string pair, string words, string nearWords) =>
        Assert.Equal(["legal", law], new[] { Verdict(pair, words), Verdict($"{pair}-near", nearWords) }.OrderByDescending(v => v == "legal"));

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_expectation_has_a_reason(string file) =>
        Assert.Empty(Game.File(file).Expectations.Where(e => string.IsNullOrWhiteSpace(e.Because)).Select(e => e.Subject));

    private static Points Points(string position, string clause) => Tally.Of(Game.Kiln(position), 0).Lines.Single(l => l.Clause == clause).Points;

    // The laws that forbid, or the verdict.
    private static string Verdict(string position, string words) => Ruling.On(Game.Kiln(position), words).Ruling switch
    {
        Ruling.Illegal illegal => string.Join(", ", illegal.Breaches.Select(b => b.Clause)),
        { } ruling => ruling.Verdict,
        null => "not understood",
    };

    private static IEnumerable<(string Where, Thing Thing)> Pieces(Position position) =>
        position.Boards.SelectMany((board, b) => board[0].SelectMany((s, i) => s.Things.Select(t => (position.Sheet.Boards[b].Spaces[i].Name.Name, t))))
            .Concat(position.Places.SelectMany((place, p) => place[0].SelectMany(s => s.Things.Select(t => (position.Sheet.Places[p].Place.Name, t)))));

    // Equal things of a heap count as often as they lie there.
    private static int Without((string Where, Thing Thing)[] all, (string Where, Thing Thing)[] others) =>
        all.GroupBy(p => p).Sum(g => Math.Max(0, g.Count() - others.Count(o => o == g.Key)));
}
