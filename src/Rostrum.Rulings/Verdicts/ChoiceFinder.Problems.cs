using System.Collections.Immutable;
using Rostrum.Rulings.Evaluation;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Verdicts;

/// <content>What is said where words in a gap name nothing: the nearest name, else what can stand there.</content>
internal sealed partial class ChoiceFinder
{
    private const int MostExamples = 6;

    private void ReportUnknown(ActionChoice choice, SourceSpan words, Value.Many domain)
    {
        SortKind sort = (choice.From.Sort.Element ?? choice.Sort).Kind;
        if (sort == SortKind.Space)
        {
            ReportSpace(choice, words, domain);
        }
        else if (IsThing(choice) && Sheet.Boards.Any(b => b.Spaces.Any(s => Same(s.Name.Name, Prose.Fold(words.Text)))))
        {
            problems.Add(RulingProblems.NothingThere(words, choice.Name));
        }
        else if (IsThing(choice) && UnknownWord(words) is { } unknown)
        {
            string? near = unknown.Text.Any(char.IsDigit) ? null : NearSpelling.Find(words.Text, ThingWords()) ?? NearSpelling.Find(unknown.Text, ThingWords());
            problems.Add(RulingProblems.NotAThing(unknown, near, Told([.. KindsAt(choice)])));
        }
        else
        {
            string[] names = [.. domain.Members.Select(m => m.Value is Value.ThingAt { Thing.Card: null } thing ? _naming.Look(thing.Thing) : Names(m.Value).FirstOrDefault()).OfType<string>().Distinct()];
            problems.Add(RulingProblems.NotAChoice(words, choice.Name, NearSpelling.Find(words.Text, names), [.. names.Take(MostExamples)], names.Length));
        }
    }

    private void ReportSpace(ActionChoice choice, SourceSpan words, Value.Many domain)
    {
        BoardFacts board = Sheet.Boards[domain.Members.Select(m => m.Value).OfType<Value.SpaceAt>().FirstOrDefault()?.Board ?? 0];
        string[] names = [.. board.Spaces.OrderBy(s => s.Column).ThenBy(s => s.Row).Select(s => s.Name.Name)];
        problems.Add(RulingProblems.NotASpace(words, choice.Name, board.Noun.Name, $"{board.Noun.Plural} of {board.Place.Name}", NearSpelling.Find(words.Text, names), names));
    }

    // The first word that no name of the sheet holds.
    private SourceSpan? UnknownWord(SourceSpan words)
    {
        HashSet<string> known = [.. ThingWords().SelectMany(Prose.WordsOf).Select(w => w.ToLowerInvariant())];
        return PhraseMatch.TokensOf(words).Where(w => !known.Contains(w.Text.ToLowerInvariant()) && w.Text is not ("a" or "an" or "the" or "my"))
            .Select(w => (SourceSpan?)w).FirstOrDefault();
    }

    private IEnumerable<string> ThingWords() => Sheet.Kinds
        .SelectMany(k => k.Attributes.SelectMany(a => a.Values.Select(v => v.Name)).Append(k.Kind.Name).Append(k.Kind.Plural))
        .Concat(Sheet.CardTables.SelectMany(t => t.Rows).Select(r => r.Card.Name));

    // The kinds that lie where the choice takes from; all where the sheet does not say.
    private IEnumerable<KindFacts> KindsAt(ActionChoice choice)
    {
        ImmutableArray<Kind> held = Held(choice);
        return Sheet.Kinds.Where(k => held.IsEmpty || held.Contains(k.Kind));
    }

    // 'a ware is bowl, jug, plate or lamp; ash, iron or copper', 'there are foxes and hens'
    private IEnumerable<string> Told(KindFacts[] kinds)
    {
        string[] cards = [.. Sheet.CardTables.Where(t => t.Rows.Length > 0 && kinds.Any(k => ReferenceEquals(k.Kind, t.Kind))).Select(t => $"{Prose.A(t.Kind.Name)} is named as in '{t.Rows[0].Card.Name}'")];
        string[] plain = [.. kinds.Where(k => k.Attributes.IsEmpty && k.Kind.Family != KindFamily.Card).Select(k => k.Kind.Plural).Take(MostExamples)];
        IEnumerable<string> looks = kinds.Where(k => !k.Attributes.IsEmpty).Take(MostExamples).Select(k =>
            $"{Prose.A(k.Kind.Name)} is {string.Join("; ", k.Attributes.Where(a => !a.HoldsPlayer).Select(a => Prose.Or(a.Values.Select(v => v.Name))))}");
        return [.. plain.Length == 0 ? [] : new[] { $"there are {Prose.And(plain)}" }, .. looks, .. cards];
    }
}
