using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Pictures.Positions;
using Rostrum.Rulings.Games;
using Rostrum.Sheets.Loading;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>A shipped game in whose texts slips are made, and the check of it: what <c>rostrum check</c> tells of sheet and positions.</summary>
/// <param name="name">The folder under <c>games</c>, or a heading of the language page.</param>
/// <param name="files">Its files by name.</param>
public sealed partial class SlipGame(string name, ImmutableDictionary<string, string> files)
{
    private readonly Game _whole = new(FolderOf(name, files), ShippedGames.Idioms);

    /// <summary>Every game of the repository, and the whole sheets at the head of <c>docs/language.md</c>.</summary>
    public static ImmutableArray<SlipGame> All { get; } = [.. Shipped(), .. OfLanguagePage()];

    /// <summary>Its name.</summary>
    public string Name => name;

    /// <summary>The sheet, the tables beside it and the positions, in ordinal order.</summary>
    public ImmutableArray<ShippedText> Texts { get; } =
        [.. files.OrderBy(f => f.Key, StringComparer.Ordinal).Where(f => !f.Key.EndsWith(".md", StringComparison.Ordinal)).Select(f => new ShippedText(name, new SourceText(f.Key, f.Value)))];

    /// <summary>The game as it is shipped.</summary>
    public Game Whole => _whole;

    /// <summary>The game with one file replaced.</summary>
    public Game With(SourceText file) => _whole.With(file);

    /// <summary>What a check tells of a sheet, its variants one by one included; each problem once, errors before warnings.</summary>
    public static ImmutableArray<Diagnostic> OfSheet(Game game)
    {
        SheetReading basis = game.Sheet();
        IEnumerable<ImmutableArray<string>> variants = (basis.Sheet?.Variants ?? []).Select(v => ImmutableArray.Create(v.Name));
        return [.. new SheetCheck(game, AppearanceCheck.Of).Of(variants).Select(p => p.Problem)];
    }

    /// <summary>What a check tells of one position, expectations that are not met included.</summary>
    public static ImmutableArray<Diagnostic> OfPosition(Game game, SourceText text)
    {
        PositionCheck check = PositionCheck.Of(game, text);
        return [.. check.OfSheet.Select(p => p.Problem).Concat(check.Problems).OrderByDescending(p => p.Severity)];
    }

    private static GameFolder FolderOf(string name, ImmutableDictionary<string, string> files) => new(
        name,
        f => files.TryGetValue(f, out string? text) ? FolderFile.Of(text) : null,
        sub => [.. files.Keys.Where(f => (f.LastIndexOf('/') is var at and >= 0 ? f[..at] : "") == sub).Order(StringComparer.Ordinal)]);

    private static IEnumerable<SlipGame> Shipped() =>
        TestFiles.In("games", SheetReader.FileName).Select(f => f[..f.LastIndexOf('/')]).Select(folder => new SlipGame(
            folder[(folder.LastIndexOf('/') + 1)..],
            TestFiles.In(folder, "*").Where(f => f.EndsWith(".yaml", StringComparison.Ordinal) || f.EndsWith(".csv", StringComparison.Ordinal))
                .ToImmutableDictionary(f => f[(folder.Length + 1)..], f => TestFiles.Read(f).ReplaceLineEndings("\n"))));

    private static IEnumerable<SlipGame> OfLanguagePage() =>
        WholeSheet().Matches(TestFiles.Read("docs/language.md").ReplaceLineEndings("\n")).Select(m => new SlipGame(
            m.Groups["game"].Value,
            ImmutableDictionary<string, string>.Empty.Add(SheetReader.FileName, m.Groups["sheet"].Value).Add("positions/end.yaml", m.Groups["position"].Value)));

    [GeneratedRegex(@"^```sheet\n(?<sheet>rule sheet: 1\ngame: (?<game>[^\n]+)\n.*?)^```$.*?^```position of the sheet\n(?<position>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex WholeSheet();
}
