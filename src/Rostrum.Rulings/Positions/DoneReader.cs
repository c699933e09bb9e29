using System.Collections.Immutable;
using Rostrum.Rulings.Verdicts;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Rulings.Positions;

/// <summary>Reads the <c>done</c> of a position: by time, phrases of actions, each behind the seat that did it where that does not go without saying.</summary>
/// <param name="reading">What the parts of the reader share.</param>
/// <param name="position">The table; whether something was legal when it was done is not asked.</param>
internal sealed class DoneReader(PositionReading reading, Position position)
{
    private readonly ImmutableArray<Deed>.Builder _deeds = ImmutableArray.CreateBuilder<Deed>();

    /// <summary>The record of the game; what cannot be read is left out, with a message.</summary>
    public ToldRecord Read(OutlineNode done)
    {
        if (done is OutlineMapping times)
        {
            foreach (OutlineEntry time in times.Entries)
            {
                ReadTime(time);
            }
        }
        else if (done is not OutlineEmpty)
        {
            reading.Problems.Add(PositionProblems.WantedEntries(done.Span, "the times at which something was done", "the turn before: …"));
        }

        return ToldRecord.Of(position, _deeds.ToImmutable());
    }

    private void ReadTime(OutlineEntry time)
    {
        if (DoneTimes.Named(Prose.Fold(time.Key.Text).ToLowerInvariant()) is { } when)
        {
            Read(time.Value, when, Usual(when));
        }
        else
        {
            reading.Problems.Add(PositionProblems.UnknownTime(time.Key.Span, time.Key.Text, [.. DoneTimes.All.Select(t => t.Words)]));
        }
    }

    // Who acts in a turn is whose turn it is, unless something else is said.
    private int? Usual(DoneWhen when) => position.Seats == 1 ? 0 : when switch
    {
        DoneWhen.ThisTurn => position.Me,
        DoneWhen.TurnBefore when position.Sheet.NextToPlay is null => (position.Me + position.Seats - 1) % position.Seats,
        _ => null,
    };

    private void Read(OutlineNode node, DoneWhen when, int? seat)
    {
        switch (node)
        {
            case OutlineScalar phrase:
                ReadPhrase(phrase, when, seat);
                break;
            case OutlineSequence list:
                foreach (OutlineNode item in list.Items)
                {
                    Read(item, when, seat);
                }

                break;
            case OutlineMapping seats:
                foreach (OutlineEntry entry in seats.Entries.Where(e => SeatOf(e) is not null))
                {
                    Read(entry.Value, when, SeatOf(entry));
                }

                ReportSeats(seats);
                break;
        }
    }

    private int? SeatOf(OutlineEntry entry) => reading.Seats.NumberOf(entry.Key.Text) is { } number && number >= 1 && number <= position.Seats ? number - 1 : null;

    private void ReportSeats(OutlineMapping seats)
    {
        foreach (OutlineEntry entry in seats.Entries.Where(e => SeatOf(e) is null))
        {
            reading.Problems.Add(reading.Seats.NumberOf(entry.Key.Text) is { } number
                ? PositionProblems.SeatBeyond(entry.Key.Span, number, position.Seats, $"{Prose.Count(position.Seats, "player sits", "players sit")} at this table")
                : PositionProblems.UnknownSeat(entry.Key.Span, entry.Key.Text, [.. Enumerable.Range(0, position.Seats).Select(reading.Seats.NameOf)]));
        }
    }

    private void ReadPhrase(OutlineScalar phrase, DoneWhen when, int? seat)
    {
        SourceSpan words = phrase.SpanOf(0, phrase.Text.Length);
        if (seat is not { } who)
        {
            reading.Problems.Add(PositionProblems.NobodyDidIt(words, Prose.Fold(phrase.Text), reading.Seats.NameOf(position.Me)));
        }
        else if (DeedOf(words, when, who) is { } deed)
        {
            _deeds.Add(deed);
        }
    }

    // Of the ways to cut words at the gaps of phrases, the first that names something in each gap.
    private Deed? DeedOf(SourceSpan words, DoneWhen when, int seat)
    {
        DiagnosticBag? problems = null;
        foreach (PhraseMatch match in PhraseMatch.All(position.Sheet, words))
        {
            var own = new DiagnosticBag();
            if (new ChoiceFinder(match, position with { Me = seat }, words, own) { IsOver = true }.Find() is { } proposal)
            {
                return new Deed(match.Action, when, seat, proposal.Chosen, Prose.Fold(words.Text));
            }

            problems ??= own;
        }

        if (problems is null)
        {
            reading.Problems.Add(position.Sheet.Actions.IsEmpty ? RulingProblems.NoActions(words) : RulingProblems.NoSuchAction(words, words.Text, RulingProblems.Nearest(position.Sheet, words.Text)));
        }

        reading.Problems.AddRange(problems?.InOrder() ?? []);
        return null;
    }
}
