using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Idioms;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>What the sections share while one sheet is read.</summary>
/// <param name="folder">The game's files.</param>
/// <param name="idioms">The idiom library.</param>
/// <param name="problems">Where messages go.</param>
internal sealed class LoadContext(GameFolder folder, IdiomLibrary idioms, DiagnosticBag problems)
{
    private readonly Dictionary<string, RuleSource> _sources = new(StringComparer.OrdinalIgnoreCase);

    public GameFolder Folder { get; } = folder;

    public IdiomLibrary Idioms { get; } = idioms;

    public DiagnosticBag Problems { get; } = problems;

    public Declarations Declared { get; } = new();

    /// <summary>What the letters of drawings stand for.</summary>
    public Dictionary<char, Named> Signs { get; } = [];

    /// <summary>The words by index, those of idioms included.</summary>
    public List<Word> Words { get; } = [];

    /// <summary>Adds a word of an idiom: name, subjects, meaning, place, the places that brought it in, the names at hand.</summary>
    public Func<string, ImmutableArray<Subject>, OutlineNode, SourceSpan, ImmutableArray<SourceSpan>, Vocabulary, Word> AddWord { get; set; } =
        (_, _, _, _, _, _) => throw new InvalidOperationException("Words are not read yet.");

    /// <summary>Adds a word whose meaning is bound already, such as what a clause gives to an idiom: name, subjects, meaning, size of its frame.</summary>
    public Func<string, ImmutableArray<Subject>, Term, int, Word> AddBoundWord { get; set; } =
        (_, _, _, _) => throw new InvalidOperationException("Words are not read yet.");

    /// <summary>The constants.</summary>
    public List<NumberConstant> Numbers { get; } = [];

    /// <summary>The marks.</summary>
    public List<Mark> Marks { get; } = [];

    /// <summary>What the author left out by <c>not modelled</c> in the place of a section or an entry, in words.</summary>
    public List<string> LeftOut { get; } = [];

    /// <summary>How often words stand by themselves in the sheet, as a key or as a text.</summary>
    public Func<string, int> Uses { get; set; } = _ => 0;

    /// <summary>In how many texts of the sheet words stand, alone or among others; prose is left out.</summary>
    public Func<string, int> Mentions { get; set; } = _ => 0;

    /// <summary>What was found before all names were known.</summary>
    public ImmutableArray<Diagnostic> OfNames { get; set; } = [];

    /// <summary>Notes that something is not modelled.</summary>
    public void LeaveOut(string what) => LeftOut.Add(what);

    /// <summary>The names of the seats, or <c>seat 1</c>, <c>seat 2</c> … where they have none.</summary>
    public ImmutableArray<string> SeatNames { get; set; } = ["seat 1"];

    /// <summary>How pieces are drawn.</summary>
    public Appearance Appearance { get; set; } = Appearance.None;

    public IReadOnlyDictionary<string, RuleSource> Sources => _sources;

    public void AddSource(RuleSource source) => _sources[source.Name] = source;

    /// <summary>Declares a name for formulas; one that holds a word of the grammar or that means something else already is reported.</summary>
    public void Declare(Named symbol, string? plural = null)
    {
        string[] parts = Prose.WordsOf(symbol.Name);
        string? grammar = parts.Where((p, i) => !(symbol is Card && p == "of" && i > 0 && i < parts.Length - 1)).FirstOrDefault(Vocabulary.GrammarWords.Contains);
        if (grammar is not null && parts.Length > 0 && symbol.DeclaredAt is { } at)
        {
            Problems.Add(SheetProblems.GrammarWordInName(at, symbol.Name, grammar));
            return;
        }

        Named? other = Declared.Names.Find(symbol.Name).Select(s => s.Symbol).FirstOrDefault(s => !MayShare(s, symbol));
        if (other is not null && symbol.DeclaredAt is { } here)
        {
            Problems.Add(SheetProblems.NameTaken(here, symbol.Name, symbol.Role, other));
            return;
        }

        if (symbol is Place && symbol.DeclaredAt is { } there && OtherNumber(symbol.Name) is { } twin)
        {
            Problems.Add(SheetProblems.OneNameTwice(there, symbol.Name, twin));
        }

        Declared.Names.Add(symbol.Name, symbol);
        if (plural is not null && plural != symbol.Name)
        {
            Declared.Names.Add(plural, symbol, isPlural: true);
        }
    }

    // A place whose name is the plural of this one, or the singular.
    private Place? OtherNumber(string name) => Declared.Names.Places
        .FirstOrDefault(p => Prose.Plural(p.Name) == name || Prose.Plural(name) == p.Name);

    /// <summary>Binds a formula of the sheet in a scope.</summary>
    public FormulaReader Formulas(Scope scope) => new(this, scope, Declared.Names, []);

    /// <summary>Reads the citation of a clause; null where it has none.</summary>
    public Citation? Cite(OutlineMapping clause) => clause.Find("cite") is { } entry ? CitationReader.Read(this, entry.Value) : null;

    // A place may bear its kind's plural; a board and its kind, a mark and a place may not share. An operation such as `order` is only
    // meant before `of`, where no kind can stand, so cards may well be called orders.
    private static bool MayShare(Named one, Named other) => (one, other) switch
    {
        (Place, Kind) or (Kind, Place) => true,
        (OperationName { Operation.Form: OperationForm.Noun }, Kind) => true,
        // Seats are often called by the compass; a direction stands before `of` or where a direction is wanted.
        (StepName, SeatName) => true,
        (CounterName, _) => true,
        _ => false,
    };
}
