namespace Rostrum.Text.Tests;

public class KnownWordsTests
{
    [Theory]
    [InlineData("zebra", "", "The sheet names nothing that could stand here.")]
    [InlineData("zebra", "jug", "Only 'jug' is known.")]
    [InlineData("zebra", "jug jugs bowl bowls glass glasses", "Known are 'jug', 'bowl' and 'glass'.")]
    [InlineData("zebra", "a b c d e f g", "Known are 'a', 'b', 'c', 'd', 'e', 'f' and 'g'.")]
    [InlineData("zebra", "a b c d e f g h", "Known are 'a', 'b', 'c', 'd', 'e', 'f' and 2 others.")]
    [InlineData("watering", "a b c d e f g watcher waterway", "Known are 'waterway', 'watcher', 'a', 'b', 'c', 'd' and 3 others.")]
    public void Few_are_told_and_the_most_alike_first(string found, string known, string told) =>
        Assert.Equal(told, KnownWords.Sentence(found, known.Split(' ', StringSplitOptions.RemoveEmptyEntries)));
}
