using Rostrum.Sheets.Loading;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Loading;

/// <summary>Every message of this room is written for somebody who never programmed.</summary>
public sealed class MessageTests
{
    public static TheoryData<string> Areas => ["Rostrum.Sheets.Loading", "Rostrum.Sheets.Formulas", "Rostrum.Sheets.Steps", "Rostrum.Sheets.Drawings"];

    [Theory]
    [MemberData(nameof(Areas))]
    public void No_message_uses_a_banned_word(string area)
    {
        Diagnostic[] problems = [.. EveryMessage.Of(typeof(SheetReader).Assembly, area)];

        Assert.NotEmpty(problems);
        Assert.Empty(problems.SelectMany(p => EveryMessage.SaidBy(p).SelectMany(BannedWords.In).Select(w => $"{p.Id}: {w}")).Distinct());
        Assert.All(problems, p => Assert.DoesNotContain("", EveryMessage.SaidBy(p)));
    }
}
