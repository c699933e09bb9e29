using System.Globalization;
using System.Text;

namespace Rostrum.Lessons.Page;

/// <summary>Turns any name into an id that is safe in a page and in a link, and unique.</summary>
internal sealed class AnchorNames
{
    private readonly Dictionary<string, string> _given = new(StringComparer.Ordinal);
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    /// <summary>The id of a name; the same name gets the same id, different names get different ids.</summary>
    /// <param name="prefix">What kind of thing it is, such as <c>slip</c>.</param>
    /// <param name="name">Any text.</param>
    public string Of(string prefix, string name)
    {
        string key = $"{prefix} {name}";
        if (!_given.TryGetValue(key, out string? id))
        {
            id = Free($"{prefix}-{Plain(name)}");
            _given.Add(key, id);
        }

        return id;
    }

    private string Free(string wanted)
    {
        string id = wanted;
        for (int copy = 2; !_taken.Add(id); copy++)
        {
            id = string.Create(CultureInfo.InvariantCulture, $"{wanted}--{copy}");
        }

        return id;
    }

    private static string Plain(string name)
    {
        var plain = new StringBuilder();
        foreach (char letter in name.ToLowerInvariant())
        {
            plain.Append(char.IsAsciiLetterOrDigit(letter) ? letter : '-');
        }

        return plain.ToString();
    }
}
