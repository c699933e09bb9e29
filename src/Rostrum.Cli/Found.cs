namespace Rostrum.Cli;

/// <summary>Something that was looked for on behalf of the user: the thing, or the sentence that says why there is none.</summary>
/// <param name="Value">The thing; null exactly where there is a complaint.</param>
/// <param name="Complaint">One or two sentences for the user; null where the thing was found.</param>
internal sealed record Found<T>(T? Value, string? Complaint)
    where T : class
{
    /// <summary>The thing.</summary>
    public static Found<T> Of(T value) => new(value, null);

    /// <summary>Why there is none.</summary>
    public static Found<T> None(string complaint) => new(null, complaint);
}
