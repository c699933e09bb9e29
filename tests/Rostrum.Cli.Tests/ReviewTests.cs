using System.Text;
using System.Text.Json;
using Rostrum.Testing;

namespace Rostrum.Cli.Tests;

/// <summary>The command <c>review</c>, on the demo recording and on files that are none.</summary>
public sealed class ReviewTests
{
    private const string German = "heute zeige ich euch ein Spiel bei dem wir auf einem langen Weg viele Steine legen und am Ende gewinnt wer die meisten davon behalten hat aber vorher muss jeder noch seine Wolle verkaufen und das Wetter abwarten bis alle wieder zu Hause sind und endlich schlafen";

    private static string Kiln => TempGame.KilnNight;

    private static string Recording => Path.Combine(Kiln, "recording.vtt");

    [Fact]
    public void Demo_answers_at_once_with_times_and_pages()
    {
        Told told = Told.By("review", Kiln, Recording);

        Assert.Equal(1, told.Code);
        Assert.StartsWith("Certain\n", told.Output);
        Assert.Contains("wrong term", told.Output);
        Assert.Contains("page 2", told.Output);
        Assert.Contains("rules were recognised; ", told.Talk);
        Assert.Contains("Filmed at another place than in the lesson: ", told.Talk);
        Assert.All((told.Output + told.Talk).Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Topics_and_corrections_are_shown_where_they_are_asked_for()
    {
        Assert.DoesNotContain("Correction", Told.By("review", Kiln, Recording).Output);
        Assert.Contains("\nCorrection", Told.By("review", Kiln, Recording, "--corrections").Output);
        Assert.Contains("What is on the table", Told.By("review", Kiln, Recording, "--topics").Output);
    }

    [Fact]
    public void Json_has_every_key_that_scripts_rely_on()
    {
        JsonElement report = Told.By("review", Kiln, Recording, "--json").Json;

        Assert.Equal(
            ["format", "game", "captions", "refused", "findings", "coverage", "topics", "notFilmed", "words", "seconds", "wordsAMinute", "corrections", "files"],
            report.EnumerateObject().Select(p => p.Name));
        Assert.Equal(
            ["time", "seconds", "said", "sheet", "clause", "cite", "kind", "confidence", "list", "because", "heard", "right"],
            report.GetProperty("findings")[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal(["clause", "section", "said", "time"], report.GetProperty("coverage")[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal(["topic", "time", "seconds", "words", "wordsAMinute", "moved", "again"], report.GetProperty("topics")[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal(JsonValueKind.Null, report.GetProperty("refused").ValueKind);
        Assert.All(report.GetProperty("findings").EnumerateArray(), f => Assert.Contains(f.GetProperty("list").GetString(), (string[])["certain", "listen"]));
    }

    [Fact]
    public void Lines_to_publish_are_written_into_a_folder()
    {
        using var made = new TempGame();

        Told told = Told.By("review", Kiln, Recording, "-o", made.Folder);

        Assert.StartsWith("Corrections:\n", File.ReadAllText(made.PathOf("corrections.txt")));
        Assert.StartsWith("Corrections to “How to play Kiln Night”:\n", File.ReadAllText(made.PathOf("pinned-comment.txt")));
        Assert.StartsWith("0:00 The aim\n", File.ReadAllText(made.PathOf("chapters.txt")));
        Assert.Equal(3, Directory.GetFiles(made.Folder).Length);
        Assert.Contains("Written: ", told.Talk);
    }

    [Fact]
    public void Recording_in_which_all_is_right_is_fine_and_leaves_no_old_correction()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly), ("talk.vtt", Vtt(string.Join(' ', Enumerable.Repeat("pebbles go onto your heap and each pebble of the heap of a player is worth a point for pebbles", 6)))));
        game.Write("out/corrections.txt", "Corrections:\n0:10 An old one.\n");

        Told told = Told.By("review", game.Folder, game.PathOf("talk.vtt"), "-o", game.PathOf("out"));

        Assert.Equal(0, told.Code);
        Assert.Empty(File.ReadAllText(game.PathOf("out/corrections.txt")));
    }

    [Theory]
    [InlineData(German)]
    [InlineData("welcome back everybody today we bake a sourdough loaf so warm the water feed the starter mix flour and salt fold the dough every half hour and then leave it overnight in the fridge before you heat the oven as hot as it gets and bake until brown and crisp")]
    [InlineData("only a few words")]
    public void What_is_no_recording_of_the_game_is_refused_in_one_sentence_and_nothing_is_written(string said)
    {
        using var made = new TempGame(("talk.vtt", Vtt(said)));
        string talk = made.PathOf("talk.vtt");

        Told told = Told.By("review", Kiln, talk, "-o", made.PathOf("out"));

        Assert.Equal((2, ""), (told.Code, told.Output));
        Assert.Single(told.Talk.TrimEnd('\n').Split('\n'));
        Assert.StartsWith($"rostrum: '{talk}' is not held against the rules. Only ", told.Talk);
        Assert.False(Directory.Exists(made.PathOf("out")));
        JsonElement json = Told.By("review", Kiln, talk, "--json").Json;
        Assert.StartsWith("Only ", json.GetProperty("refused").GetString());
        Assert.Empty(json.GetProperty("findings").EnumerateArray());
    }

    [Theory]
    [InlineData("plank-road")]
    [InlineData("saltern-steps")]
    [InlineData("signal-terrace")]
    [InlineData("third-bell-market")]
    [InlineData("traditional/reversi")]
    [InlineData("traditional/gin-rummy")]
    public void Recording_of_another_game_is_refused(string game) => Assert.Contains("so this seems to be another game", Told.By("review", Path.Combine(TestFiles.Root, "games", game), Recording).Talk);

    [Theory]
    [InlineData("WEBVTT\n", "This caption file holds no caption.")]
    [InlineData("", "This is no caption file")]
    [InlineData("a picture of a bowl\n", "This is no caption file")]
    [InlineData("webvtt\n\n00:01.000 --> 00:02.000\nbowl\n", "A WebVTT file begins with 'WEBVTT'")]
    public void File_without_captions_is_refused_in_the_words_of_its_reader(string content, string why)
    {
        using var made = new TempGame(("talk.vtt", content));

        Told told = Told.By("review", Kiln, made.PathOf("talk.vtt"));

        Assert.Equal((2, ""), (told.Code, told.Output));
        Assert.Contains(why, told.Talk);
    }

    [Fact]
    public void File_of_200_MB_is_refused_unread_with_the_limit()
    {
        using var made = new TempGame(("talk.vtt", ""));
        using (FileStream stream = File.OpenWrite(made.PathOf("talk.vtt")))
        {
            stream.SetLength(200L * 1024 * 1024);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        Told told = Told.By("review", Kiln, made.PathOf("talk.vtt"));

        Assert.Equal(2, told.Code);
        Assert.Contains("This file is 200 MB long, and no captions are longer than 20 MB.", told.Talk);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 150 * 1024 * 1024);
    }

    [Fact]
    public void Missing_file_and_folder_are_told_with_a_way_out()
    {
        Assert.Contains("The game's folder holds 'recording-free.vtt' and 'recording.vtt'.", Told.By("review", Kiln, "no-such.vtt").Talk);
        Assert.Contains("is a folder. Name a file in it.", Told.By("review", Kiln, Kiln).Talk);
        Assert.Equal(2, Told.By("review", Kiln).Code);
        Assert.Equal(2, Told.By("review", Kiln, Recording, "-o", "").Code);
    }

    [Fact]
    public void Folder_that_cannot_be_made_is_told()
    {
        using var made = new TempGame(("out", "a file"));

        Told told = Told.By("review", Kiln, Recording, "-o", made.PathOf("out"));

        Assert.Equal(2, told.Code);
        Assert.Contains("is a file and no folder", told.Talk);
    }

    [Theory]
    [InlineData("byte order mark")]
    [InlineData("latin-1")]
    [InlineData("backwards")]
    [InlineData("overlapping")]
    public void Odd_captions_give_the_same_findings(string how)
    {
        using var made = new TempGame();
        made.Write("talk.vtt", "");
        File.WriteAllBytes(made.PathOf("talk.vtt"), Odd(how));

        Told told = Told.By("review", Kiln, made.PathOf("talk.vtt"), "--json");

        Assert.Equal(1, told.Code);
        Assert.Contains("wrong term", Certain(told.Json));
        Assert.Equal(Certain(Told.By("review", Kiln, Recording, "--json").Json).Count, Certain(told.Json).Count);
    }

    [Fact]
    public void What_is_odd_about_the_captions_is_told_in_a_line()
    {
        using var made = new TempGame();
        made.Write("talk.vtt", "");
        File.WriteAllBytes(made.PathOf("talk.vtt"), Odd("backwards"));

        Assert.Contains("rostrum: ROS0657 in line ", Told.By("review", Kiln, made.PathOf("talk.vtt")).Talk);
    }

    [Fact]
    public void Six_hours_of_speech_are_reviewed()
    {
        string[] said = File.ReadAllText(Path.Combine(Kiln, "recording.txt")).Split("\n\n", 2)[1].Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        string all = string.Join(' ', Enumerable.Repeat(said.Where(w => !w.StartsWith("[[", StringComparison.Ordinal)), 36).SelectMany(w => w));
        using var made = new TempGame(("talk.vtt", Vtt(all)));

        JsonElement report = Told.By("review", Kiln, made.PathOf("talk.vtt"), "--json").Json;

        Assert.InRange(report.GetProperty("seconds").GetInt32(), 5 * 3600, 7 * 3600);
        Assert.Equal(JsonValueKind.Null, report.GetProperty("refused").ValueKind);
    }

    [Fact]
    public void Lesson_that_cannot_be_read_is_told_and_the_sheet_alone_is_used()
    {
        using var game = TempGame.OfKilnNight();
        File.WriteAllBytes(game.PathOf("lesson.md"), [0xFF, 0xC0, 0x80]);

        Told told = Told.By("review", game.Folder, game.PathOf("recording.vtt"));

        Assert.Equal(1, told.Code);
        Assert.Contains("rostrum: 'lesson.md' is not a text in UTF-8. The recording is held against the sheet alone.\n", told.Talk);
    }

    [Fact]
    public void Sheet_with_errors_is_told_before_anything_is_heard()
    {
        using var game = new TempGame(("sheet.yaml", TempGame.ScoringOnly.Replace("count(my", "count(mine")));

        Assert.Equal(1, Told.By("review", game.Folder, Recording).Code);
    }

    private static List<string?> Certain(JsonElement report) =>
        [.. report.GetProperty("findings").EnumerateArray().Where(f => f.GetProperty("list").GetString() == "certain").Select(f => f.GetProperty("kind").GetString())];

    private static byte[] Odd(string how)
    {
        string text = File.ReadAllText(Recording);
        string[] parts = text.TrimEnd('\n').Split("\n\n");
        return how switch
        {
            "byte order mark" => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)],
            "latin-1" => Encoding.Latin1.GetBytes(text + "\n00:20:00.000 --> 00:20:02.000\ncafé\n"),
            "backwards" => Encoding.UTF8.GetBytes(string.Join("\n\n", [parts[0], .. parts[1..].Chunk(2).Reverse().SelectMany(p => p)]) + "\n"),
            _ => Encoding.UTF8.GetBytes(text + "\n00:00:01.000 --> 00:20:00.000\nKiln Night\n"),
        };
    }

    private static string Vtt(string said)
    {
        string[][] lines = [.. said.Split(' ').Chunk(8)];
        return "WEBVTT\n" + string.Concat(lines.Select((l, i) => $"\n{Time(i)} --> {Time(i + 1)}\n{string.Join(' ', l)}\n"));
    }

    private static string Time(int line) => TimeSpan.FromSeconds(3.2 * line).ToString(@"hh\:mm\:ss\.fff", System.Globalization.CultureInfo.InvariantCulture);
}
