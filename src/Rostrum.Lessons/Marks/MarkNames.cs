using System.Collections.Immutable;
using Rostrum.Lessons.Coverage;
using Rostrum.Lessons.Scripts;
using Rostrum.Lessons.Speech;
using Rostrum.Lessons.Terms;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Lessons.Marks;

/// <summary>What the names in marks may stand for: clauses, terms, topics.</summary>
internal sealed class MarkNames(Sheet sheet, ScriptSpeech speech, NamedClauses clauses, ImmutableArray<SheetTerm> terms)
{
    private readonly ILookup<string, SheetTerm> _terms = terms.SelectMany(t => t.Phrases.Select(p => (Key: string.Join(' ', p), t)).Append((t.Name, t))).Distinct()
        .ToLookup(p => p.Item1, p => p.t, StringComparer.OrdinalIgnoreCase);

    // Machinery of the sheet that no lesson has to say and a mark may name.
    private readonly HashSet<string> _others = new(
        [.. sheet.Actions.Select(a => a.Action.Name), .. sheet.Tables.Select(t => t.Table.Name), .. sheet.Meanings.Select(m => m.Word.Name), .. sheet.Facts.Select(f => f.Name), .. sheet.CardTables.SelectMany(c => c.Rows).Select(r => r.Card.Name)],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>The clauses of a name.</summary>
    public IEnumerable<LessonClause> Clauses(string name) => clauses.Of(name);

    /// <summary>The term of a name, in any number; null for none.</summary>
    public SheetTerm? Term(string name) => _terms[name].Concat(_terms[string.Join(' ', WordStems.Of(name))]).FirstOrDefault();

    /// <summary>The topics whose heading holds all words of a name.</summary>
    public IEnumerable<int> Topics(string name)
    {
        string[] stems = [.. WordStems.Of(name)];
        return Enumerable.Range(0, speech.TopicStems.Length).Where(t => stems.Length > 0 ? stems.All(speech.TopicStems[t].Contains) : speech.Lesson.Topics[t].Title.Equals(name, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The names of a mark or note that stand for nothing, each with the nearest that would.</summary>
    public IEnumerable<(string Name, string? Near)> Unknown(MarkUse use) =>
        from name in use.Kind == MarkKind.Count ? [] : use.Names
        where !IsKnown(use.Kind, name)
        select (name, NearSpelling.Find(name, clauses.Names.Concat(IsClauseOnly(use.Kind) ? [] : terms.Select(t => t.Name).Concat(speech.Lesson.Topics.Select(t => t.Title)))));

    private static bool IsClauseOnly(MarkKind kind) => kind == MarkKind.LeftOut;

    private bool IsKnown(MarkKind kind, string name) => clauses.Of(name).Any() || _others.Contains(name) || (!IsClauseOnly(kind) && (Term(name) is not null || (kind != MarkKind.Teaches && Topics(name).Any())));
}
