using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;

namespace Rostrum.Play.Telling;

/// <summary>A thing of a state as a thing of a position, which rulings and pictures know.</summary>
internal static class PlayThings
{
    /// <summary>The thing with everything that is known of it.</summary>
    public static Thing Of(TableState state, int thing)
    {
        ThingClass of = state.Layout.Class(thing);
        int?[] values = [.. of.Values.Select(v => v < 0 ? (int?)null : v)];
        bool faceUp = true;
        for (int i = 0; i < of.States.Length; i++)
        {
            int value = state.StateOf(thing, i);
            if (of.States[i].Attribute < 0)
            {
                faceUp = value == 1;
            }
            else
            {
                values[of.States[i].Attribute] = value < 0 ? null : value;
            }
        }

        return new Thing(of.Kind.Kind, [.. values], of.Card, of.Owner < 0 ? Thing.Nobody : of.Owner, faceUp);
    }
}
