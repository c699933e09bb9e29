using System.Collections.Immutable;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Lessons.Published;

/// <summary>The videos of a game that are out, in the file <see cref="FileName"/>.</summary>
/// <param name="Videos">In the order of the file; what could not be read is left out.</param>
/// <param name="Problems">What is wrong, in the order of the file.</param>
public sealed record PublishedFile(ImmutableArray<PublishedVideo> Videos, ImmutableArray<Diagnostic> Problems)
{
    /// <summary>The name of the file in a game's folder.</summary>
    public const string FileName = "published.yaml";

    /// <summary>The form of the file that is written, and the only one that is read.</summary>
    public const string Format = "1";


    /// <summary>True where something in it is an error.</summary>
    public bool HasErrors => Problems.Any(p => p.Severity == Severity.Error);

    /// <summary>Reads a file.</summary>
    /// <param name="text">The file.</param>
    public static PublishedFile Read(SourceText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new DiagnosticBag();
        OutlineMapping root = OutlineReader.Read(text, PublishedKeys.Dialect, problems);
        if (problems.InOrder().FirstOrDefault(p => p.Severity == Severity.Error) is { } broken)
        {
            // Below a line that breaks the outline nothing is what it seems.
            return new PublishedFile([], [broken]);
        }

        ImmutableArray<PublishedVideo> videos = IsOurs(text, root, problems) ? new VideoReader(problems).Of(root) : [];
        return new PublishedFile(videos, problems.InOrder());
    }

    // What another version wrote is told once and not read: it may mean something else.
    private static bool IsOurs(SourceText text, OutlineMapping root, DiagnosticBag problems)
    {
        if (root.Find(PublishedKeys.Format)?.Value is OutlineScalar { Text: Format })
        {
            return true;
        }

        problems.Add(root.Find(PublishedKeys.Format) is { } format
            ? PublishedProblems.OtherFormat(format.Value is OutlineScalar scalar ? scalar.Span : format.Key.Span, (format.Value as OutlineScalar)?.Text ?? "")
            : PublishedProblems.NoFormat(text.Span(0, 0)));
        return false;
    }
}

/// <summary>The keys of the file.</summary>
internal static class PublishedKeys
{
    public const string Format = "format", Videos = "videos";

    public const string Title = "title", Date = "date", Address = "address", Length = "length", Sources = "sources", Printing = "printing said at", Rules = "rules", Sentences = "sentences", Positions = "positions", NotSaid = "not said";

    public const string Clause = "clause", At = "at", Says = "says", Means = "means", Status = "status", Cite = "cite";

    public static readonly string[] OfFile = [Format, Videos];

    public static readonly string[] OfVideo = [Title, Date, Address, Length, Sources, Printing, Rules, Sentences, Positions, NotSaid];

    public static readonly string[] OfRule = [Clause, At, Says, Means, Status, Cite];

    public static readonly string[] OfSentence = [At, Says];

    public static readonly OutlineDialect Dialect = new(
        [Title, Date, Address, Length, Printing, NotSaid, Clause, At, Says, Means, Status, Cite],
        [.. OfFile, .. OfVideo, .. OfRule]);
}
