using System.Collections.Immutable;
using System.Text;

namespace Rostrum.Lessons.Pack;

/// <summary>A file of a pack.</summary>
/// <param name="Name">Relative to the pack's folder, with <c>/</c> between parts.</param>
/// <param name="Says">What it is, in a few words.</param>
/// <param name="Bytes">Its content.</param>
public sealed record PackFile(string Name, string Says, ImmutableArray<byte> Bytes)
{
    /// <summary>A file of words, in UTF-8.</summary>
    internal static PackFile OfText(string name, string says, string content) => new(name, says, [.. Encoding.UTF8.GetBytes(content)]);
}
