using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Mending;

namespace Rostrum.Rulings.Games;

/// <summary>What may have slipped near a problem of a sheet: a name misspelt where it is declared, another word of the language, or a slip of the outline.</summary>
/// <param name="game">The game with its problems.</param>
internal sealed partial class SheetGuesses(Game game)
{
    private const int MostWords = 4;

    private readonly OutlineGuesses _outline = new(SheetDialect.Sheets);
    private (SourceText Source, ImmutableArray<Named> Names)? _declared;

    /// <summary>The guesses, likeliest first, each with a fix.</summary>
    public IEnumerable<Diagnostic> About(Diagnostic problem) => [.. Declared(problem), .. Spelled(problem), .. IsOfOutline(problem) ? _outline.About(problem) : []];

    /// <summary>True for a guess that takes nothing away.</summary>
    public bool Keeps(Diagnostic guess) => !IsOfOutline(guess) || _outline.Keeps(guess);

    // Tables of values have rows and no keys.
    private static bool IsOfOutline(Diagnostic problem) => problem.At.Source.Name.EndsWith(".yaml", StringComparison.Ordinal);

    // A word that nothing bears, and a declared name near it that stands more seldom in the sheet: then the declaration is what is misspelt.
    private IEnumerable<Diagnostic> Declared(Diagnostic problem)
    {
        string written = Prose.Fold(problem.At.Text);
        if (!IsOfName(problem) || !PlainName().IsMatch(written))
        {
            return [];
        }

        return from form in (string[])(written.EndsWith('s') ? [written, written[..^1]] : [written])
               from named in DeclaredIn(problem.At.Source)
               where PlainName().IsMatch(named.Name) && NearSpelling.Find(form, [named.Name]) is not null
               let at = named.DeclaredAt!.Value
               let start = at.Text.IndexOf(named.Name, StringComparison.Ordinal)
               where start >= 0 && CountOf(problem.At.Source.Content, form) > CountOf(problem.At.Source.Content, named.Name)
               select GameProblems.DeclaredOtherwise(at.Part(start, named.Name.Length), named.Name, form);
    }

    // After a mend the declarations stand elsewhere.
    private ImmutableArray<Named> DeclaredIn(SourceText source)
    {
        if (!ReferenceEquals(_declared?.Source, source))
        {
            bool isMended = game.Folder.Read(source.Name).Text?.Content != source.Content;
            _declared = (source, isMended ? Names([game.With(source).Sheet()]) : Names([game.Sheet(), .. (game.Sheet().Sheet?.Variants ?? []).Select(v => game.Sheet(v.Name))]));
        }

        return _declared.Value.Names;
    }

    private static ImmutableArray<Named> Names(IEnumerable<SheetReading> readings) =>
        [.. readings.SelectMany(r => r.Sheet?.Names.All.Select(n => n.Symbol) ?? []).Where(n => n.DeclaredAt is not null).DistinctBy(n => n.Name)];

    // Words of the language itself are no names; a name may be nearer to one of them.
    private static IEnumerable<Diagnostic> Spelled(Diagnostic problem)
    {
        string written = problem.At.Text;
        return IsOfName(problem) && PlainName().IsMatch(written)
            ? Vocabulary.GrammarWords.Where(w => w.Length > 2 && NearSpelling.Find(written, [w]) is not null).Order(StringComparer.Ordinal).Take(MostWords)
                .Select(w => GameProblems.OtherSpelling(problem, w))
            : [];
    }

    private static bool IsOfName(Diagnostic problem) => problem.At.Length is > 0 and < 80 && (problem.Id.StartsWith("ROS02", StringComparison.Ordinal) || problem.Id is "ROS0197" or "ROS0180");

    private static int CountOf(string content, string words) => Regex.Count(content, $@"(?<![\w']){Regex.Escape(words)}(?![\w'])", RegexOptions.IgnoreCase);

    [GeneratedRegex(@"^[\p{L}\p{Nd}' -]+$")]
    private static partial Regex PlainName();
}
