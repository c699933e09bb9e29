namespace Rostrum.Text.Tests;

/// <summary>The fence around a game's folder.</summary>
public sealed class GameFolderTests
{
    private static readonly GameFolder Folder = GameFolder.InMemory("nine-stones", ("sheet.yaml", "game: x"), ("positions/b.yaml", "b"), ("positions/a.yaml", "a"), ("a..b.yaml", "dots"));

    [Theory]
    [InlineData("../secret.yaml")]
    [InlineData("positions/../../secret.yaml")]
    [InlineData("positions/..")]
    [InlineData("..")]
    [InlineData(".")]
    [InlineData("./sheet.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("//server/share")]
    [InlineData("C:/secret.yaml")]
    [InlineData("sheet.yaml:stream")]
    [InlineData("..\\secret.yaml")]
    [InlineData("positions//a.yaml")]
    [InlineData("positions/")]
    [InlineData(".. /secret.yaml")]
    [InlineData(".../secret.yaml")]
    [InlineData("sheet.yaml\0.csv")]
    [InlineData("sheet\n.yaml")]
    public void Name_that_could_lead_out_is_refused_unasked(string name)
    {
        var folder = new GameFolder("x", _ => throw new InvalidOperationException("asked"), _ => throw new InvalidOperationException("asked"));

        Assert.Equal(new FolderReading(null, FolderRefusal.LeavesFolder), folder.Read(name));
        Assert.Empty(folder.FilesIn(name));
    }

    [Theory]
    [InlineData("sheet.yaml", "game: x")]
    [InlineData("positions/a.yaml", "a")]
    [InlineData("a..b.yaml", "dots")]
    public void Name_inside_is_read(string name, string content)
    {
        FolderReading reading = Folder.Read(name);

        Assert.Equal((FolderRefusal.None, name, content), (reading.Refusal, reading.Text!.Name, reading.Text.Content));
    }

    [Theory]
    [InlineData("none.yaml")]
    [InlineData("")]
    [InlineData("Sheet.yaml")]
    public void Missing_file_is_told(string name) => Assert.Equal(FolderRefusal.Missing, Folder.Read(name).Refusal);

    [Fact]
    public void Files_of_a_folder_come_in_order()
    {
        Assert.Equal(["positions/a.yaml", "positions/b.yaml"], Folder.FilesIn("positions"));
        Assert.Equal(["a..b.yaml", "sheet.yaml"], Folder.FilesIn(""));
        Assert.Empty(Folder.FilesIn("none"));
    }

    [Fact]
    public void File_above_four_megabytes_is_refused_unread()
    {
        var folder = new GameFolder("x", _ => new FolderFile(GameFolder.LargestFileBytes + 1, () => throw new InvalidOperationException("read")), _ => []);

        Assert.Equal(FolderRefusal.TooLarge, folder.Read("sheet.yaml").Refusal);
    }

    [Theory]
    [InlineData(GameFolder.LargestFileBytes, FolderRefusal.None)]
    [InlineData(GameFolder.LargestFileBytes + 1, FolderRefusal.TooLarge)]
    public void File_that_grew_while_it_was_read_is_refused(int length, FolderRefusal refusal)
    {
        var folder = new GameFolder("x", _ => new FolderFile(10, () => new string('x', length)), _ => []);

        Assert.Equal(refusal, folder.Read("sheet.yaml").Refusal);
    }

    [Theory]
    [InlineData(FolderRefusal.NotPermitted, "'sheet.yaml' cannot be read: no permission.")]
    [InlineData(FolderRefusal.NotPlain, "'sheet.yaml' is no plain file but a pipe or a device.")]
    public void File_that_the_head_refuses_is_not_read(FolderRefusal refusal, string told)
    {
        var folder = new GameFolder("x", _ => new FolderFile(10, () => throw new InvalidOperationException("It was read.")) { Refusal = refusal }, _ => []);

        Assert.Equal(refusal, folder.Read("sheet.yaml").Refusal);
        Assert.Equal(told, RefusalWords.Told(refusal, "sheet.yaml"));
    }

    [Fact]
    public void Bytes_that_are_no_text_are_told()
    {
        var folder = new GameFolder("x", _ => new FolderFile(10, () => null), _ => []);

        Assert.Equal(FolderRefusal.NotText, folder.Read("sheet.yaml").Refusal);
    }
}
