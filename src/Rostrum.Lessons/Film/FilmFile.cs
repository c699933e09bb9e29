namespace Rostrum.Lessons.Film;

/// <summary>Limits for the files that are read here.</summary>
public static class FilmFile
{
    /// <summary>The largest file that is read, in bytes: 20 MB. A chapter list of a day is shorter than a MB, the timeline of a long film than 5.</summary>
    public const int LargestBytes = 20 * 1024 * 1024;
}
