using Rostrum.Lessons.Film.Chapters;
using Rostrum.Lessons.Scripts;
using Rostrum.Text;

namespace Rostrum.Lessons.Film;

/// <summary>Messages about what goes to editors and platforms: ROS067x to ROS069x.</summary>
internal static class FilmProblems
{
    public static Diagnostic FirstNotAtZero(SourceSpan at, string time) => new(
        "ROS0670", Severity.Error, at, $"The first chapter begins at {time}, and a platform shows no chapters unless the first begins at 0:00.", "Write a chapter at 0:00 before it.");

    public static Diagnostic TooFew(SourceSpan at, int count) => new(
        "ROS0671", Severity.Error, at, $"There {(count == 1 ? "is" : "are")} {Prose.Word(count)} {(count == 1 ? "chapter" : "chapters")}, and a platform shows none where there are fewer than {Prose.Word(ChapterLimits.Fewest)}.",
        "Divide the lesson into more topics with '##', or write more lines such as '0:00 The aim'.");

    public static Diagnostic NotAscending(SourceSpan at, string time, string before) => new(
        "ROS0672", Severity.Error, at, $"This chapter begins at {time}, no later than the one before it at {before}.", "Put the chapters into the order of their times, or mend the time.");

    public static Diagnostic TooShort(SourceSpan at, string title, long seconds, bool isEstimate) => new(
        "ROS0673", isEstimate ? Severity.Warning : Severity.Error, at,
        $"'{Prose.Clip(title)}' lasts {(isEstimate ? "about " : "")}{Prose.Count(seconds, "second", "seconds")}, and a platform shows no chapters where one is shorter than {ChapterLimits.ShortestSeconds}.",
        "Put it together with a chapter beside it.");

    public static Diagnostic LongTitle(SourceSpan at, int characters, string shown, bool isClippedInList) => new(
        "ROS0674", Severity.Warning, at,
        $"This title has {characters} characters, and below the picture about {ChapterLimits.ShownOnBar} are shown{(isClippedInList ? $", in the list about {ChapterLimits.ShownInList}" : "")}: '{shown}'.",
        "Say the same in fewer words, the weightiest first.");

    public static Diagnostic Untitled(SourceSpan at, string time) => new(
        "ROS0675", Severity.Error, at, $"The chapter at {time} has no title.", $"Write one behind the time, as in '{time} The aim'.");

    public static Diagnostic BehindTheEnd(SourceSpan at, string time, string video) => new(
        "ROS0676", Severity.Error, at, $"This chapter begins at {time}, and the video ends at {video}.", "Look at the time; or is this another cut of the video?");

    public static Diagnostic OtherLength(SourceSpan at, string told, string video, bool isEstimate) => new(
        "ROS0677", Severity.Warning, at,
        $"The chapters last {told} {(isEstimate ? "at the pace of the lesson" : "together")}, and the video lasts {video}.",
        isEstimate ? "Take the times from the video; for the next estimate write your pace at the head, as in 'pace: 130'." : "Look whether the times belong to this cut of the video.");

    public static Diagnostic NoTime(SourceSpan at, string written) => new(
        "ROS0678", Severity.Warning, at, $"'{Prose.Clip(written)}' is no time, so this line is left out.", "Write minutes and seconds, as in '12:05', with hours before them where there are any: '1:02:03'.");

    public static Diagnostic NoMetadata(SourceSpan at) => new(
        "ROS0679", Severity.Error, at, "This is no metadata file of FFmpeg: its first line is not ';FFMETADATA1'.", "Write ';FFMETADATA1' into the first line, or give the file that FFmpeg wrote.");

    public static Diagnostic MetadataLine(SourceSpan at, string line) => new(
        "ROS0680", Severity.Warning, at, $"'{Prose.Clip(line)}' is left out: it is no name with '=' and a value.", "Write 'title=The aim', or begin the line with ';' where it is a note.");

    public static Diagnostic MetadataChapter(SourceSpan at) => new(
        "ROS0680", Severity.Warning, at, "This chapter is left out: its times cannot be read.", "Write 'TIMEBASE=1/1000', 'START=0' and 'END=10000' below '[CHAPTER]', in whole numbers that are not negative.");

    public static Diagnostic TooLarge(SourceSpan at, long lengthBytes) => new(
        "ROS0681", Severity.Error, at, $"This file is {Math.Max(1, lengthBytes / (1024 * 1024))} MB long, and no file of chapters, corrections or shots is longer than {FilmFile.LargestBytes / (1024 * 1024)} MB.",
        "Give the file with the chapters or shots, not the video.");

    public static Diagnostic NoMatroska(SourceSpan at, bool isXml) => new(
        "ROS0682", Severity.Error, at, isXml ? "This file holds no Matroska chapters: it has no 'Chapters' with an 'EditionEntry'." : "What stands from here on cannot be read as XML.",
        isXml ? "Export the chapters as XML for Matroska." : "Close every mark that is opened, as in '<Chapters>' and '</Chapters>', and write '&' as '&amp;'.");

    public static Diagnostic DeepMatroska(SourceSpan at, int deepest) => new(
        "ROS0682", Severity.Error, at, $"Chapters of this file lie more than {deepest} deep in each other, so it is not read.", "Close each 'ChapterAtom' before the next begins.");

    public static Diagnostic DocumentTypes(SourceSpan at) => new(
        "ROS0683", Severity.Error, at, "This file declares a document kind of its own ('<!DOCTYPE'), which could fetch other files, so it is not read.", "Take the line with '<!DOCTYPE' out, up to its '>'.");

    public static Diagnostic MatroskaTimes(SourceSpan at, bool hasStart) => new(
        "ROS0684", Severity.Warning, at, hasStart ? "This chapter ends before it begins; its end is left out." : "This chapter is left out: it has no start that can be read.",
        hasStart ? "Write the later time into 'ChapterTimeEnd'." : "Write '<ChapterTimeStart>00:03:12.000000000</ChapterTimeStart>'.");

    public static Diagnostic NoTimelineText(SourceSpan at) => new(
        "ROS0685", Severity.Error, at, "What stands from here on cannot be read as a timeline.", "Export the timeline again as OpenTimelineIO ('.otio'); numbers such as 'NaN' cannot be read.");

    public static Diagnostic NoTimeline(SourceSpan at, string kind) => new(
        "ROS0686", Severity.Error, at, kind.Length == 0 ? "This file holds no timeline." : $"This file holds '{Prose.Clip(kind)}' and no timeline.", "Export a whole timeline as OpenTimelineIO ('.otio').");

    public static Diagnostic NoPace(SourceSpan at, string written) => new(
        "ROS0687", Severity.Warning, at, $"'{Prose.Clip(written)}' is no pace, so {Pace.Usual} words a minute are taken.", $"Write a whole number of words a minute, {Pace.Slowest} to {Pace.Fastest}.");

    public static Diagnostic UntimedCorrection(SourceSpan at) => new(
        "ROS0688", Severity.Warning, at, "This correction begins with no time, so no viewer is shown it.", "Write the time in the video before it, as in '3:12 A jug stands only on a plate.'");

    public static Diagnostic EmptyCorrection(SourceSpan at, string time) => new(
        "ROS0689", Severity.Warning, at, $"The correction at {time} says nothing.", "Write behind the time what is right.");

    public static Diagnostic NotHeard(SourceSpan at, string topic, string? time) => new(
        "ROS0664", Severity.Warning, at, time is null ? $"'{Prose.Clip(topic)}' is not heard in the captions for as long as a chapter lasts, so it has none." : $"The words of '{Prose.Clip(topic)}' are not heard in the captions, so its chapter begins at {time} by estimate.",
        "Look at the video; write the times into a file of your own for '--times', and leave the line out where the topic is not in the film.");

    public static Diagnostic OtherFilm(SourceSpan at, string captions, int percent) => new(
        "ROS0665", Severity.Warning, at, $"Of this lesson {percent} % is heard in '{Prose.Clip(captions)}', so the times of its chapters stay estimates.",
        "Look whether these are the captions of this lesson's film; where they are, give the times with '--times'.");

    public static Diagnostic NoTopics(SourceSpan at) => new(
        "ROS0666", Severity.Error, at, "This lesson says nothing, so there is nothing to publish.", "Write a heading with '##' and below it what you say.");
}
