using System.Collections.Immutable;
using System.Globalization;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads the <c>expect</c> of a position. Whether clauses and laws of these names exist is asked where answers are made.</summary>
/// <param name="problems">Receives messages.</param>
/// <param name="seats">How the seats are called.</param>
/// <param name="players">How many sit at the table.</param>
internal sealed class ExpectationReader(DiagnosticBag problems, SeatWords seats, int players)
{
    /// <summary>The part of what is expected that holds the points of whose turn it is.</summary>
    public const string OfMe = "tally";

    /// <summary>The beginning of a part that holds the points of another seat.</summary>
    public const string TallyOf = "tally of ";

    /// <summary>The part that holds actions and questions.</summary>
    public const string OfRule = "rule";

    private string[] Sections => [OfMe, .. Enumerable.Range(0, players).Select(s => TallyOf + seats.NameOf(s)), OfRule];

    /// <summary>What is expected, in the order of the file; an entry that cannot be read is left out, with a message.</summary>
    public ImmutableArray<Expectation> Read(OutlineNode expect)
    {
        var found = ImmutableArray.CreateBuilder<Expectation>();
        foreach (OutlineEntry section in Entries(expect, "what is expected", "tally:"))
        {
            string name = Prose.Fold(section.Key.Text);
            int? seat = SeatOf(name);
            if (seat is null && name is not (OfMe or OfRule))
            {
                problems.Add(PositionProblems.UnknownExpectation(section.Key.Span, section.Key.Text, Sections));
                continue;
            }

            bool isTally = name != OfRule;
            foreach (OutlineEntry entry in Entries(section.Value, isTally ? "clauses with their points" : "actions or truths with the answer", isTally ? "total: 35" : "place iron jug on B2: legal"))
            {
                if ((isTally ? Tally(entry, seat) : Rule(entry)) is { } expectation)
                {
                    found.Add(expectation);
                }
            }
        }

        return found.ToImmutable();
    }

    private ImmutableArray<OutlineEntry> Entries(OutlineNode node, string what, string example)
    {
        if (node is OutlineMapping mapping)
        {
            return mapping.Entries;
        }

        if (node is not OutlineEmpty)
        {
            problems.Add(PositionProblems.WantedEntries(node.Span, what, example));
        }

        return [];
    }

    // `tally of seat 2`: the 0-based seat; null where no seat of this position is named.
    private int? SeatOf(string section) =>
        section.StartsWith(TallyOf, StringComparison.OrdinalIgnoreCase) && seats.NumberOf(section[TallyOf.Length..]) is { } number && number >= 1 && number <= players ? number - 1 : null;

    private Expectation? Tally(OutlineEntry entry, int? seat)
    {
        OutlineNode? value = Answer(entry, "is");
        if (value is null || Points(value) is not { } points)
        {
            return null;
        }

        return new Expectation.Tally(Subject(entry), points, entry.Key.Span, value.Span, ProseIn(entry, "because"), ProseIn(entry, "cite")) { Seat = seat };
    }

    private ExpectedPoints? Points(OutlineNode value)
    {
        if (value is OutlineMapping { Entries.Length: > 0 } readings)
        {
            ReadingPoints[] points = [.. readings.Entries.Select(OfReading).OfType<ReadingPoints>()];
            return points.Length == readings.Entries.Length ? new ExpectedPoints.ByReading([.. points]) : null;
        }

        string words = value is OutlineScalar text ? Prose.Fold(text.Text) : "";
        if (words == "unsettled")
        {
            return new ExpectedPoints.Unsettled();
        }

        if (words.StartsWith("at least ", StringComparison.Ordinal) && NumberIn(words[9..]) is { } least)
        {
            return new ExpectedPoints.AtLeast(least);
        }

        return Number(value) is { } number ? new ExpectedPoints.Exactly(number) : null;
    }

    private ReadingPoints? OfReading(OutlineEntry entry) =>
        Number(entry.Value) is { } points ? new ReadingPoints(Subject(entry), points, entry.Value.Span) : null;

    private long? Number(OutlineNode value)
    {
        long? number = value is OutlineScalar text ? NumberIn(Prose.Fold(text.Text)) : null;
        if (number is null)
        {
            problems.Add(PositionProblems.ExpectationShape(value.Span, "how many points are expected", "{is: 5, because: two runs}"));
        }

        return number;
    }

    private static long? NumberIn(string words)
    {
        string digits = words.StartsWith("minus ", StringComparison.Ordinal) ? "-" + words[6..] : words;
        return int.TryParse(digits, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number) ? number : Rostrum.Text.Prose.NumberOf(words);
    }

    private Expectation.Rule? Rule(OutlineEntry entry)
    {
        if (entry.Value is OutlineMapping mapping && mapping.Find("illegal") is { } illegal)
        {
            Answer(entry, "illegal");
            return RuleOf(entry, ExpectedVerdict.Illegal, Laws(illegal.Value), illegal.Value.Span);
        }

        OutlineNode? value = Answer(entry, "is");
        if (value is null)
        {
            return null;
        }

        string word = value is OutlineScalar text ? Prose.Fold(text.Text) : "";
        if (Enum.TryParse(word, ignoreCase: true, out ExpectedVerdict verdict) && word.All(char.IsLetter) && word.Length > 0)
        {
            return RuleOf(entry, verdict, [], value.Span);
        }

        problems.Add(word.Length == 0
            ? PositionProblems.ExpectationShape(value.Span, "which answer is expected", "{is: legal, because: B1 is a plate}")
            : PositionProblems.UnknownVerdict(value.Span, word));
        return null;
    }

    private static Expectation.Rule RuleOf(OutlineEntry entry, ExpectedVerdict verdict, ImmutableArray<ExpectedLaw> laws, SourceSpan at) =>
        new(Subject(entry), verdict, laws, entry.Key.Span, at, ProseIn(entry, "because"), ProseIn(entry, "cite"));

    private ImmutableArray<ExpectedLaw> Laws(OutlineNode node)
    {
        ImmutableArray<OutlineNode> items = node is OutlineSequence list ? list.Items : [node];
        var laws = ImmutableArray.CreateBuilder<ExpectedLaw>();
        foreach (OutlineNode item in items)
        {
            if (item is OutlineScalar text && Prose.Fold(text.Text).Length > 0)
            {
                laws.Add(new ExpectedLaw(Prose.Fold(text.Text), WordCutter.WordsOf(text)));
            }
            else
            {
                problems.Add(PositionProblems.ExpectationShape(item.Span, "which laws are broken", "{illegal: [copper and ash], because: ash stands at A2}"));
            }
        }

        return laws.ToImmutable();
    }

    // The expected answer: under its key, or the value itself where it stands alone; null (with a message) where there is none.
    private OutlineNode? Answer(OutlineEntry entry, string key)
    {
        if (entry.Value is not OutlineMapping mapping)
        {
            return entry.Value;
        }

        foreach (OutlineEntry part in mapping.Entries.Where(p => !PositionDialect.ExpectKeys.Contains(p.Key.Text)))
        {
            problems.Add(PositionProblems.UnknownExpectation(part.Key.Span, part.Key.Text, PositionDialect.ExpectKeys));
        }

        if (mapping.Find(key) is null)
        {
            problems.Add(PositionProblems.ExpectationShape(entry.Key.Span, "what is expected", "{is: legal, because: B1 is a plate}"));
        }

        return mapping.Find(key)?.Value;
    }

    private static string Subject(OutlineEntry entry) => Prose.Fold(entry.Key.Text);

    private static string? ProseIn(OutlineEntry entry, string key) =>
        entry.Value is OutlineMapping mapping && mapping.Find(key)?.Value is OutlineScalar text ? Prose.Fold(text.Text) : null;
}
