using System.Xml.Linq;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests.House;

/// <summary>Lower never knows higher: the arrows between the rooms, read from the project files.</summary>
public class ArrowTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Rostrum.Text"] = [],
        ["Rostrum.Sheets"] = ["Rostrum.Text"],
        ["Rostrum.Rulings"] = ["Rostrum.Sheets", "Rostrum.Text"],
        ["Rostrum.Play"] = ["Rostrum.Rulings", "Rostrum.Sheets", "Rostrum.Text"],
        ["Rostrum.Pictures"] = ["Rostrum.Rulings", "Rostrum.Sheets", "Rostrum.Text"],
        ["Rostrum.Lessons"] = ["Rostrum.Rulings", "Rostrum.Pictures", "Rostrum.Sheets", "Rostrum.Text"],
        ["Rostrum.Cli"] = ["Rostrum.Play", "Rostrum.Lessons", "Rostrum.Rulings", "Rostrum.Pictures", "Rostrum.Sheets", "Rostrum.Text"],
        ["Rostrum.Testing"] = ["Rostrum.Play", "Rostrum.Lessons", "Rostrum.Rulings", "Rostrum.Pictures", "Rostrum.Sheets", "Rostrum.Text"],
    };

    public static TheoryData<string> Rooms => [.. Allowed.Keys];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_the_rooms_below_it(string room)
    {
        string[] strangers = [.. References($"src/{room}/{room}.csproj").Except(Allowed[room])];

        Assert.Empty(strangers);
    }

    [Fact]
    public void Every_room_is_listed()
    {
        string[] found = [.. Directory.GetDirectories(Path.Combine(TestFiles.Root, "src")).Select(d => Path.GetFileName(d)!).Order(StringComparer.Ordinal)];

        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), found);
    }

    [Fact]
    public void Only_tests_know_the_test_kit()
    {
        IEnumerable<string> users = Allowed.Keys.Where(room => References($"src/{room}/{room}.csproj").Contains("Rostrum.Testing"));

        Assert.Empty(users);
    }

    private static string[] References(string project) =>
        [.. XDocument.Load(Path.Combine(TestFiles.Root, project)).Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value))];
}
