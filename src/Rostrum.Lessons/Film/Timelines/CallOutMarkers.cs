using System.Globalization;
using Rostrum.Text;

namespace Rostrum.Lessons.Film.Timelines;

/// <summary>Turns call-outs into markers.</summary>
/// <param name="framesPerSecond">Above 0.</param>
internal sealed class CallOutMarkers(double framesPerSecond)
{
    private const string ForValues = "GREEN";
    private const string ForPickUps = "RED";

    public Marker Of(CallOut callOut) => callOut switch
    {
        CallOut.Value value => Marker(value, value.Said, ForValues, CommentOf(value), About(value, "call-out", value.Said)
            .With("page", value.Page)
            .With("arrows", new OtioValue.List([.. value.Spaces.Select(s => new OtioValue.Text(s))]))),
        CallOut.PickUp pickUp => Marker(pickUp, $"pick-up: {pickUp.Said}", ForPickUps, pickUp.Why, About(pickUp, "pick-up", pickUp.Said)),
        _ => throw new NotSupportedException(callOut.GetType().Name),
    };

    private static string CommentOf(CallOut.Value value)
    {
        string[] parts = [value.Page, value.Spaces.IsEmpty ? "" : $"{(value.Spaces.Length == 1 ? "arrow" : "arrows")} to {Prose.And(value.Spaces)}"];
        return string.Join("; ", parts.Where(p => p.Length > 0));
    }

    private static OtioValue.Record About(CallOut callOut, string kind, string said) => OtioValue.Record.Empty
        .With("kind", kind)
        .With("said", said)
        .With("line", new OtioValue.Number(callOut.Line.ToString(CultureInfo.InvariantCulture)));

    private Marker Marker(CallOut callOut, string name, string colour, string comment, OtioValue.Record about)
    {
        RationalTime start = RationalTime.Of(callOut.Start, framesPerSecond);
        RationalTime end = RationalTime.Of(callOut.End, framesPerSecond);
        // A marker of no length is hard to hit with a pointer.
        var range = new TimeRange(start, start with { Value = Math.Max(1, end.Value - start.Value) });
        return new Marker(name, range, colour, comment, ShotList.Ours(about));
    }
}
