using Rostrum.Cli.Catalogue;
using Rostrum.Sheets.Idioms;
using Rostrum.Text;

namespace Rostrum.Cli.Reports;

/// <summary>What <c>read --idioms --json</c> writes.</summary>
internal sealed record IdiomReport(int Format, IReadOnlyList<IdiomItem> Idioms);

/// <summary>An idiom.</summary>
/// <param name="Name">As sheets write it behind <c>idiom:</c>.</param>
/// <param name="Section">The heading of <c>docs/idioms.md</c> under which it stands.</param>
/// <param name="Group">What it answers, in the words of the trade; may be empty.</param>
/// <param name="Use"><c>score</c>, <c>condition</c> or <c>law</c>.</param>
/// <param name="Says">Its sentence, keys in place of what is filled in.</param>
/// <param name="Parameters">What is filled in.</param>
/// <param name="Clause">A clause to be copied, with its section.</param>
internal sealed record IdiomItem(string Name, string Section, string Group, string Use, string Says, IReadOnlyList<IdiomParameterItem> Parameters, string Clause)
{
    /// <summary>An idiom as it is reported.</summary>
    public static IdiomItem Of(IdiomEntry entry) =>
        new(entry.Idiom.Name, entry.Section, entry.Group, entry.Use, entry.Says, [.. entry.Idiom.Parameters.Select(IdiomParameterItem.Of)], entry.Clause);
}

/// <summary>Something that is filled in: its key, what stands there, what holds where it is left out (null where it must be given).</summary>
internal sealed record IdiomParameterItem(string Key, string Wanted, string? Otherwise)
{
    /// <summary>A parameter as it is reported.</summary>
    public static IdiomParameterItem Of(IdiomParameter parameter) => new(parameter.Name, parameter.Wanted, parameter.Otherwise is { } usual ? Prose.Fold(usual.Text) : null);
}
