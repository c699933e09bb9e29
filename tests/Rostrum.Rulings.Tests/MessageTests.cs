using Rostrum.Rulings.Verdicts;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Rulings.Tests;

/// <summary>Every message of this room is written for somebody who never programmed.</summary>
public sealed class MessageTests
{
    [Fact]
    public void No_message_uses_a_banned_word()
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(Ruling).Assembly, "Rostrum.Rulings")];

        Assert.NotEmpty(problems);
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")).Distinct());
        Assert.All(problems, p => Assert.DoesNotContain("", EveryMessage.SaidBy(p)));
    }
}
