using System.Collections.Immutable;
using System.Globalization;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>A value of an OpenTimelineIO file, exactly as it stands there. Closed: the six below and no more. Equal by content.</summary>
public abstract record OtioValue
{
    private OtioValue()
    {
    }

    /// <summary>Words.</summary>
    /// <param name="Words">Without escapes.</param>
    public sealed record Text(string Words) : OtioValue;

    /// <summary>A number.</summary>
    /// <param name="Digits">As written: <c>24</c> and <c>24.0</c> are the same number and not the same value.</param>
    public sealed record Number(string Digits) : OtioValue
    {
        /// <summary>The number; infinite where it is too large for one.</summary>
        public double Value => double.Parse(Digits, NumberStyles.Float, CultureInfo.InvariantCulture);

        /// <summary>A number as OpenTimelineIO writes it: with a full stop, in as few digits as give it back.</summary>
        /// <param name="value">A finite number.</param>
        public static Number Of(double value)
        {
            string digits = value.ToString("R", CultureInfo.InvariantCulture);
            return new Number(digits.AsSpan().IndexOfAny('.', 'E') < 0 ? $"{digits}.0" : digits);
        }
    }

    /// <summary>Yes or no.</summary>
    /// <param name="IsTrue">Which.</param>
    public sealed record Flag(bool IsTrue) : OtioValue;

    /// <summary>Nothing: <c>null</c>.</summary>
    public sealed record Nothing : OtioValue;

    /// <summary>A list.</summary>
    /// <param name="Items">In order; may be empty.</param>
    public sealed record List(ImmutableArray<OtioValue> Items) : OtioValue
    {
        /// <summary>Equal lists hold equal values in the same order.</summary>
        /// <param name="other">The other list.</param>
        public bool Equals(List? other) => other is not null && Items.SequenceEqual(other.Items);

        /// <inheritdoc />
        public override int GetHashCode() => Items.Aggregate(0, HashCode.Combine);
    }

    /// <summary>Names with values. One with a name <c>OTIO_SCHEMA</c> is a thing of a timeline, any other is metadata.</summary>
    /// <param name="Entries">In the order of the file; a name that is written twice stands here twice.</param>
    public sealed record Record(ImmutableArray<(string Name, OtioValue Value)> Entries) : OtioValue
    {
        /// <summary>The name under which the sort of a thing stands.</summary>
        public const string SchemaName = "OTIO_SCHEMA";

        /// <summary>Without any names.</summary>
        public static Record Empty { get; } = new([]);

        /// <summary>The value of a name, the last where it is written twice; null where there is none.</summary>
        public OtioValue? this[string name] => Entries.LastOrDefault(e => e.Name == name).Value;

        /// <summary>The sort of the thing without its version, such as <c>Clip</c>; empty for metadata.</summary>
        public string Schema => this[SchemaName] is Text schema ? schema.Words.Split('.')[0] : "";

        /// <summary>The words of a name; null where there are none.</summary>
        public string? WordsOf(string name) => (this[name] as Text)?.Words;

        /// <summary>The number of a name; null where there is none.</summary>
        public double? NumberOf(string name) => (this[name] as Number)?.Value;

        /// <summary>The names and values of a name; null where there are none.</summary>
        public Record? RecordOf(string name) => this[name] as Record;

        /// <summary>The things in a list of a name; empty where there is none.</summary>
        public IEnumerable<Record> RecordsOf(string name) => this[name] is List list ? list.Items.OfType<Record>() : [];

        /// <summary>The same with one more name at the end.</summary>
        public Record With(string name, OtioValue value) => new(Entries.Add((name, value)));

        /// <summary>The same with one more name at the end and words for it.</summary>
        public Record With(string name, string words) => With(name, new Text(words));

        /// <summary>Equal ones hold equal names with equal values in the same order.</summary>
        /// <param name="other">The other.</param>
        public bool Equals(Record? other) => other is not null && Entries.SequenceEqual(other.Entries);

        /// <inheritdoc />
        public override int GetHashCode() => Entries.Aggregate(0, HashCode.Combine);
    }
}
