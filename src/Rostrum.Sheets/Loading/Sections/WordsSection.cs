using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>words</c>: heads first, so that any word may use any other; meanings when they are asked for, with a check for circles.</summary>
internal sealed class WordsSection
{
    private const int MostInside = 40;

    private readonly LoadContext _context;
    private readonly Dictionary<Word, (OutlineNode Node, ImmutableArray<SourceSpan> Through, Vocabulary Names)> _texts = [];
    private readonly Dictionary<Word, WordMeaning> _meanings = [];
    private readonly List<Word> _open = [];

    public WordsSection(LoadContext context)
    {
        _context = context;
        context.Declared.MeaningOf = word => Meaning(word)?.Body;
        context.AddWord = Add;
        context.AddBoundWord = AddBound;
    }

    /// <summary>All words in the order of their indexes, idioms' own words included.</summary>
    public ImmutableArray<WordMeaning> Meanings
    {
        get
        {
            for (int i = 0; i < _context.Words.Count; i++)
            {
                Meaning(_context.Words[i]);
            }

            return [.. _context.Words.Select(w => _meanings.TryGetValue(w, out WordMeaning? m) ? m : Mistake(w))];
        }
    }

    public void Declare(OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(_context, section, "the words", "free (space s): s is empty"))
        {
            if (WordHead.Read(_context, entry.Key) is { } head)
            {
                Word word = Add(head.Name, head.Subjects, entry.Value, entry.Key.Span, [], _context.Declared.Names);
                _context.Declare(word);
            }
        }
    }

    private Word Add(string name, ImmutableArray<Subject> subjects, OutlineNode meaning, SourceSpan at, ImmutableArray<SourceSpan> through, Vocabulary names)
    {
        var word = new Word(name, subjects, _context.Words.Count, at);
        _context.Words.Add(word);
        _texts[word] = (meaning, through, names);
        return word;
    }

    private Word AddBound(string name, ImmutableArray<Subject> subjects, Term meaning, int frameSize)
    {
        var word = new Word(name, subjects, _context.Words.Count, meaning.Origin.At);
        _context.Words.Add(word);
        _meanings[word] = new WordMeaning(word, meaning, frameSize, null, null);
        return word;
    }

    private WordMeaning? Meaning(Word word)
    {
        if (_meanings.TryGetValue(word, out WordMeaning? known))
        {
            return known;
        }

        if (_open.Contains(word))
        {
            _context.Problems.Add(FormulaProblems.Circle(word.DeclaredAt!.Value, word.Name, string.Join(", ", _open.Skip(_open.IndexOf(word)).Select(w => $"'{w.Name}'"))));
            return null;
        }

        if (_open.Count == MostInside)
        {
            _context.Problems.Add(FormulaProblems.TooManyWords(_open[0].DeclaredAt!.Value, _open[0].Name, MostInside));
            return null;
        }

        _open.Add(word);
        WordMeaning meaning = Bind(word);
        _open.Remove(word);
        _meanings[word] = meaning;
        return meaning;
    }

    private WordMeaning Bind(Word word)
    {
        (OutlineNode node, ImmutableArray<SourceSpan> through, Vocabulary names) = _texts[word];
        if (node is not OutlineMapping mapping)
        {
            (Term body, int size) = BindOne(word, node, through, names);
            return new WordMeaning(word, body, size, null, null);
        }

        if (mapping.Find("idiom") is null)
        {
            OutlineAsk.CheckKeys(_context, mapping, "words");
        }

        Forked forked = ForkReader.OfClause(_context, mapping, word.Name, "words");
        (Term Body, int Size)[] bodies = [.. forked.Alternatives.Select(a => BindOne(word, MeaningIn(a), through, names))];
        Term meaning = forked.Choice is null
            ? bodies[0].Body
            : new FormulaReader(_context, new Scope(), names, through).Fork(forked.Choice, [.. bodies.Select(b => b.Body)], mapping.Span);
        return new WordMeaning(word, meaning, bodies.Max(b => b.Size), OutlineAsk.Prose(mapping, "says"), _context.Cite(mapping));
    }

    private static OutlineNode MeaningIn(OutlineMapping mapping) => mapping.Find("means")?.Value ?? (mapping.Find("idiom") is null && mapping.Find("conflict") is null ? new OutlineEmpty(mapping.Span.Part(0, 0)) : mapping);

    private (Term Body, int Size) BindOne(Word word, OutlineNode node, ImmutableArray<SourceSpan> through, Vocabulary names)
    {
        var scope = new Scope();
        var reader = new FormulaReader(_context, scope, names, through);
        foreach (Subject subject in word.Subjects)
        {
            var letter = new LetterName(subject.Name, word.DeclaredAt);
            reader.Declare(letter);
            scope.Declare(letter, subject.Sort);
        }

        Term body = node is OutlineEmpty ? Missing(word, node) : reader.Value(node, Sort.Any, word.Name);
        return (body, scope.FrameSize);
    }

    private Term.NotYet Missing(Word word, OutlineNode node)
    {
        _context.Problems.Add(SheetProblems.WantedText(node.Span, $"what '{word.Name}' means"));
        return new Term.NotYet("a part with a mistake in it", Sort.Any, Origin.Of(node.Span));
    }

    private static WordMeaning Mistake(Word word) =>
        new(word, new Term.NotYet("a part with a mistake in it", Sort.Any, Origin.Of(word.DeclaredAt!.Value)), word.Subjects.Length, null, null);
}
