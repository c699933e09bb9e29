namespace Rostrum.Pictures.Tests;

/// <summary>The demo game in the notation of its worked examples: form b j p l, glaze a i c, "!" cracked, "." free, "-" no shelf.</summary>
internal static class KilnNight
{
    public static readonly string[] AllWare =
    [
        .. from form in "bjpl" from glaze in "aic" from flaw in new[] { "", "!" } select $"{form}{glaze}{flaw}",
    ];

    public static BoardPicture E2 => Chamber(
        ". . . . .",
        "bi . lc! . .",
        "bi bi! ji lc bi",
        "pi pa pi pi ba");

    public static BoardPicture E3 => Chamber(
        "- - - - la",
        "- - - . ba",
        "- - li . bi",
        "- . bi ji ba",
        "lc bc pc pc bi",
        "pc pi jc pc bi");

    /// <summary>A chamber from its rows, the highest first.</summary>
    public static BoardPicture Chamber(params string[] rows)
    {
        string[][] cells = [.. rows.Reverse().Select(row => row.Split(' '))];
        return BoardPicture.OfRows(
            "chamber",
            title: null,
            [.. "ABCDEFG".Take(cells[0].Length).Select(letter => letter.ToString())],
            [.. cells.Select((row, index) => new BoardRow($"{index + 1}", [.. row.Select(Cell)]))]);
    }

    public static CellPicture Cell(string word) => word switch
    {
        "." => CellPicture.Empty,
        "-" => CellPicture.None,
        _ => CellPicture.Holding(Ware(word)),
    };

    public static PieceLook Ware(string word)
    {
        string form = word[0] switch { 'b' => "bowl", 'j' => "jug", 'p' => "plate", _ => "lamp" };
        (string glaze, string emblem) = word[1] switch { 'a' => ("ash", "dots"), 'i' => ("iron", "bars"), _ => ("copper", "ring") };
        string? flaw = word.EndsWith('!') ? "cracked" : null;
        return PieceLook.Of(form, glaze, emblem, flaw, $"{flaw} {glaze} {form}".Trim());
    }

    public static TablePicture Table(BoardPicture board) => new("A chamber", [board]);

    /// <summary>All nodes of a scene, groups opened.</summary>
    public static IEnumerable<SceneNode> Flat(this Scene scene) => scene.Nodes.SelectMany(Flat);

    public static IEnumerable<string> Texts(this Scene scene) => scene.Flat().OfType<SceneNode.Text>().Select(text => text.Content);

    public static SceneNode.Group Group(this Scene scene, string id) =>
        scene.Nodes.SelectMany(Groups).Single(group => group.Id == id);

    private static IEnumerable<SceneNode> Flat(SceneNode node) =>
        node is SceneNode.Group group ? group.Children.SelectMany(Flat) : [node];

    private static IEnumerable<SceneNode.Group> Groups(SceneNode node) =>
        node is SceneNode.Group group ? group.Children.SelectMany(Groups).Prepend(group) : [];
}
