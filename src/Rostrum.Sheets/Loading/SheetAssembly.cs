using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Loading.Sections;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>Puts the sections of one merged text tree together: names first, then meanings.</summary>
internal sealed class SheetAssembly
{
    private static readonly char[] NoWord = [' ', '\n', '\r', '(', ')', ',', '.', '[', ']'];

    private readonly LoadContext _context;
    private readonly OutlineMapping _tree;
    private readonly CardsSection _cards;
    private readonly WordsSection _words;
    private readonly TablesSection _tables;
    private readonly ActionsSection _actions;

    public SheetAssembly(LoadContext context, OutlineMapping tree)
    {
        (_context, _tree) = (context, tree);
        (_cards, _words, _tables, _actions) = (new(context), new(context), new(context), new(context));
    }

    /// <summary>The typed tree.</summary>
    public Sheet Assemble()
    {
        var uses = new Lazy<ILookup<string, OutlineScalar>>(() => OutlineAsk.TextsOf(_tree).ToLookup(t => Prose.Fold(t.Text)));
        _context.Uses = words => uses.Value[words].Count();
        var texts = new Lazy<string[]>(() => [.. OutlineAsk.TextsOf(_tree).Where(t => t.Style != OutlineStyle.Prose).Select(t => $" {string.Join(' ', t.Text.Split(NoWord, StringSplitOptions.RemoveEmptyEntries))} ")]);
        _context.Mentions = words => texts.Value.Count(t => t.Contains($" {words} ", StringComparison.OrdinalIgnoreCase));
        ImmutableArray<string> seats = DeclareNames();
        _context.OfNames = _context.Problems.InOrder();
        Do("places", s => PlacesSection.ReadLater(_context, s, _actions.Names));
        ImmutableArray<TableFacts> tables = _tables.All;
        ImmutableArray<CardTable> cards = _cards.Bind();
        ImmutableArray<ActionFacts> actions = _actions.Bind();
        ImmutableArray<Law> laws = Section("laws", s => LawsSection.Read(_context, s, actions));
        ImmutableArray<Power> powers = Section("powers", s => _actions.Powers(s, actions, laws));
        ImmutableArray<Block> blocks = _actions.Blocks(_tree);
        ImmutableArray<Hook> hooks = _actions.Hooks(_tree, actions);
        ImmutableArray<EndRule> ends = Section("end", s => EndSection.Read(_context, s, actions));
        ImmutableArray<ScoreClause> score = Section("score", s => ScoreSection.Read(_context, s));
        (ImmutableArray<RatingStep> rating, ImmutableArray<(string, long)> credit) = _tree.Find("rating") is { } r ? ClosingSections.Rating(_context, r.Value, VariantNames()) : ([], []);
        ImmutableArray<(string Words, TieBreak? Means)> ties = Section("ties", s => TiesSection.Read(_context, s));
        (Term? next, int nextFrame) = CourseSection.NextToPlay(_context, _tree.Find("next to play")?.Value);
        Declarations declared = _context.Declared;
        return new Sheet
        {
            Game = OutlineAsk.Prose(_tree, "game") ?? "a game without a name",
            FewestPlayers = declared.Players.Fewest,
            MostPlayers = declared.Players.Most,
            SeatNames = seats,
            Sources = [.. _context.Sources.Values],
            Kinds = [.. declared.Kinds.Values],
            CardTables = cards,
            Boards = [.. declared.Boards.Values],
            Places = [.. declared.Places.Values],
            Marks = [.. _context.Marks],
            MarkFacts = MarksSection.Facts(_context, _tree.Find("marks")?.Value, _actions.Names),
            Signs = [.. _context.Signs.Select(s => new DrawingSign(s.Key, s.Value))],
            Appearance = _context.Appearance,
            Tables = tables,
            Numbers = [.. _context.Numbers],
            Actions = actions,
            Laws = laws,
            Powers = powers,
            Ends = ends,
            Score = score,
            Ties = [.. ties.Select(t => t.Words)],
            TieBreaks = [.. ties.Select(t => t.Means).OfType<TieBreak>()],
            Aim = _tree.Find("aim") is { } aim ? CourseSection.Aim(_context, aim.Value) : Aim.Highest,
            NextToPlay = next,
            NextToPlayFrame = nextFrame,
            Teams = Section("teams", s => CourseSection.Teams(_context, s)),
            Rating = rating,
            RatingCredit = credit,
            RatingCite = (_tree.Find("rating")?.Value as OutlineMapping) is { } ladder ? _context.Cite(ladder) : null,
            Facts = Section("facts", s => FactsSection.Read(_context, s)),
            NotModelled = [.. Section("not modelled", s => ClosingSections.Words(_context, s, "what is left out")), .. _context.LeftOut],
            Questions = Section("open questions", s => ClosingSections.Questions(_context, s)),
            Blocks = blocks,
            Hooks = hooks,
            // Meanings and choices last: binding the other sections adds idioms' words and forks.
            Meanings = _words.Meanings,
            Choices = [.. declared.Choices],
            Tree = _tree,
            Names = declared.Names,
            Scope = declared,
        };
    }

    private string[] VariantNames() => [.. (_tree.Find("variants")?.Value as OutlineMapping)?.Entries.Select(e => Prose.Fold(e.Key.Text)) ?? []];

    private ImmutableArray<string> DeclareNames()
    {
        Do("sources", s => SourcesSection.Read(_context, s));
        Do("players", s => _context.Declared.Players = SourcesSection.Players(_context, s));
        ImmutableArray<string> seats = Section("seats", s => SourcesSection.Seats(_context, s));
        _context.SeatNames = seats.IsEmpty ? [.. Enumerable.Range(1, Math.Clamp(_context.Declared.Players.Most ?? 1, 1, 100)).Select(i => $"seat {i}")] : seats;
        for (int i = 0; i < _context.SeatNames.Length && seats.IsEmpty; i++)
        {
            _context.Declared.Names.Add(_context.SeatNames[i], new SeatName(_context.SeatNames[i], i, null));
        }

        Do("numbers", s => SourcesSection.ReadNumbers(_context, s));
        Do("pieces", s => PiecesSection.Read(_context, s));
        Do("dice", s => PiecesSection.ReadDice(_context, s));
        Do("cards", _cards.Declare);
        Do("boards", s => BoardsSection.Read(_context, s));
        Do("places", s => PlacesSection.Read(_context, s));
        Do("marks", s => MarksSection.Read(_context, s));
        Do("signs", s => SignsSection.Read(_context, s));
        Do("actions", _actions.Declare);
        Do("tables", _tables.Declare);
        Do("words", _words.Declare);
        _context.Declared.Blocks = [.. ActionsSection.BlockKeys.Where(b => _tree.Find(b) is not null)];
        _context.Declared.Ends = _tree.Find("end")?.Value is OutlineMapping ends ? [.. ends.Entries.Select(e => Prose.Fold(e.Key.Text))] : [];
        return seats;
    }

    private void Do(string key, Action<OutlineNode> read)
    {
        if (_tree.Find(key) is { } entry)
        {
            read(entry.Value);
        }
    }

    private ImmutableArray<T> Section<T>(string key, Func<OutlineNode, ImmutableArray<T>> read) =>
        _tree.Find(key) is { } entry ? read(entry.Value) : [];
}
