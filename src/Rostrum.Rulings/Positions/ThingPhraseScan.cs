using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Rulings.Positions;

/// <summary>Walks over the words of a phrase and sorts them: names of the sheet, owner, face, what is not given.</summary>
internal sealed class ThingPhraseScan(PositionReading reading, ImmutableArray<PlacedWord> words)
{
    private readonly string[] _texts = [.. words.Select(w => w.Text)];
    private readonly List<string> _notGiven = [];
    private int _at;
    private int _unknownFrom = -1;
    private bool _fine = true;
    private (bool Said, int? Owner) _owner;
    private (bool Said, bool? Up) _face;

    /// <summary>The names of the sheet that were met, each with all that it may mean.</summary>
    public List<NamedWords> Groups { get; } = [];

    /// <summary>True where the phrase says <c>thing</c>.</summary>
    public bool SaysThing { get; private set; }

    /// <summary>Reads from a word on; false (with messages) where a word means nothing.</summary>
    public bool Read(int start)
    {
        _at = start;
        while (_at < _texts.Length)
        {
            int before = _at;
            if (Name() || Owner() || Face() || Thing() || NotGiven())
            {
                ReportUnknown(before);
            }
            else
            {
                _unknownFrom = _unknownFrom < 0 ? _at : _unknownFrom;
                _at++;
            }
        }

        ReportUnknown(_at);
        return _fine;
    }

    /// <summary>The draft with owner, face and what is not given.</summary>
    public ThingDraft Complete(ThingDraft draft) => draft with
    {
        SaysOwner = _owner.Said,
        Owner = _owner.Owner,
        SaysFace = _face.Said,
        IsFaceUp = _face.Up,
        NotGiven = [.. draft.Kind.Attributes.Select(a => a.Attribute).Where(a => _notGiven.Contains(a.Name, StringComparer.OrdinalIgnoreCase))],
    };

    private bool Name()
    {
        // An attribute may be called like a value; `glaze not given` speaks of the attribute.
        (int length, ImmutableArray<Named> senses) = NotGivenFollows(_at + 1) ? (0, []) : reading.Lexicon.Match(_texts.AsSpan(_at));
        if (length > 0)
        {
            Groups.Add(new NamedWords(senses, words[_at].Span.To(words[_at + length - 1].Span)));
            _at += length;
        }

        return length > 0;
    }

    private bool Owner()
    {
        if (_texts[_at] != "of")
        {
            return false;
        }

        for (int length = Math.Min(4, _texts.Length - _at - 1); length > 0; length--)
        {
            if (SeatIn(string.Join(' ', _texts[(_at + 1)..(_at + 1 + length)]), length) is { } owner)
            {
                _owner = (true, owner.Seat);
                _at += length + 1;
                return true;
            }
        }

        return false;
    }

    private (int? Seat, bool Found)? SeatIn(string name, int length)
    {
        if (name is "nobody" or "somebody")
        {
            return (name == "nobody" ? Positions.Thing.Nobody : null, true);
        }

        int? number = reading.Seats.NumberOf(name);
        if (number > reading.Seats.Most || number == 0)
        {
            SourceSpan at = words[_at + 1].Span.To(words[_at + length].Span);
            reading.Problems.Add(PositionProblems.SeatBeyond(at, number.Value, reading.Seats.Most, reading.Seats.WhyNoMore));
            _fine = false;
        }

        return number is null ? null : (number - 1, true);
    }

    private bool Face()
    {
        if (_texts[_at] != "face" || _at + 1 >= _texts.Length)
        {
            return false;
        }

        bool notGiven = NotGivenFollows(_at + 1);
        if (!notGiven && _texts[_at + 1] is not ("up" or "down"))
        {
            return false;
        }

        _face = (true, notGiven ? null : _texts[_at + 1] == "up");
        _at += notGiven ? 3 : 2;
        return true;
    }

    private bool Thing()
    {
        bool says = _texts[_at] is "thing" or "things";
        SaysThing |= says;
        _at += says ? 1 : 0;
        return says;
    }

    private bool NotGiven()
    {
        for (int length = 1; _at + length + 1 < _texts.Length; length++)
        {
            string name = string.Join(' ', _texts[_at..(_at + length)]);
            if (NotGivenFollows(_at + length) && IsAttribute(name))
            {
                _notGiven.Add(name);
                _at += length + 2;
                return true;
            }
        }

        return false;
    }

    private bool IsAttribute(string name) =>
        reading.Sheet.Kinds.Any(k => k.Attributes.Any(a => string.Equals(a.Attribute.Name, name, StringComparison.OrdinalIgnoreCase)));

    private bool NotGivenFollows(int at) => at + 1 < _texts.Length && _texts[at] == "not" && _texts[at + 1] == "given";

    private void ReportUnknown(int end)
    {
        if (_unknownFrom >= 0)
        {
            _fine = false;
            string found = string.Join(' ', _texts[_unknownFrom..end]);
            SourceSpan at = words[_unknownFrom].Span.To(words[end - 1].Span);
            reading.Problems.Add(found.Contains(',', StringComparison.Ordinal)
                ? PositionProblems.WantsBrackets(words[0].Span.To(words[^1].Span))
                : PositionProblems.UnknownThing(at, found, reading.Lexicon.Names, NearSpelling.Find(found, reading.Lexicon.Names)));
            _unknownFrom = -1;
        }
    }
}

/// <summary>Some words that are a name of the sheet.</summary>
/// <param name="Senses">All that they may mean; never empty.</param>
/// <param name="At">Where they stand.</param>
internal sealed record NamedWords(ImmutableArray<Named> Senses, SourceSpan At);
