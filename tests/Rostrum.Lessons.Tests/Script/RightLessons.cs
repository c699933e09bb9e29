using Rostrum.Lessons.Coverage;
using Rostrum.Rulings.Games;
using Rostrum.Testing;
using Rostrum.Text;

namespace Rostrum.Lessons.Tests.Script;

/// <summary>Lessons that are right: the one that is shipped, and lessons of other shipped games, written as a presenter would speak, in words of their
/// own, and only then held against the sheets.</summary>
internal static class RightLessons
{
    private const string Folder = "tests/Rostrum.Lessons.Tests/Script/Right";

    /// <summary>The game of each.</summary>
    public static IReadOnlyList<string> Games { get; } =
        ["kiln-night", "plank-road", "saltern-steps", "third-bell-market", "traditional/reversi", "sluicekeepers", "signal-terrace"];

    /// <summary>The words of a lesson.</summary>
    public static string Text(string game) => game == "kiln-night" ? TestFiles.Read("games/kiln-night/lesson.md") : TestFiles.Read($"{Folder}/{Path.GetFileName(game)}.md");

    /// <summary>A lesson checked.</summary>
    public static LessonReport Check(string game, string? text = null) => Check(ShippedGames.Open(game), text ?? Text(game));

    /// <summary>Words checked as the lesson of a game that is open already.</summary>
    public static LessonReport Check(Game game, string text) => LessonCheck.Of(game, new SourceText("lesson.md", text));

    /// <summary>A lesson without the sentences in which it says a clause.</summary>
    public static string Without(LessonReport report, string text, ClauseCover cover)
    {
        var speech = Rostrum.Lessons.Speech.ScriptSpeech.Of(report.Lesson);
        SourceSpan said = speech.Sentences[cover.Sentence].At.To(speech.Sentences[cover.Sentence + cover.Sentences - 1].At);
        return text.Remove(said.Start, said.Length);
    }
}
