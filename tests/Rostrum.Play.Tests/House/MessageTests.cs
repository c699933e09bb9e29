using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Play.Tests.House;

/// <summary>The words of this room's messages, and that each has a page.</summary>
public sealed class MessageTests
{
    [Fact]
    public void Every_id_of_this_room_has_a_page() =>
        Assert.Empty(EveryMessage.Of(typeof(GameTable).Assembly, "Rostrum.Play").Select(p => p.Id).Except(DiagnosticPage.All.Select(p => p.Id)));

    [Fact]
    public void No_message_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(GameTable).Assembly, "Rostrum.Play")];

        Assert.NotEmpty(problems);
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In)));
    }
}
