using Rostrum.Play.Chance;
using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;

namespace Rostrum.Play.Tests.Whole;

/// <summary>What is asked of the things on a table, whatever the game.</summary>
internal static class TableChecks
{
    /// <summary>How many things there are of each class, in words; every thing is found where its spot says. A piece larger than a space has all its feet on a board, else one.</summary>
    public static string Things(TableState state)
    {
        int[] counts = new int[state.Layout.Classes.Length];
        for (int spot = 0; spot < state.Layout.Spots; spot++)
        {
            int count = 0;
            for (int foot = state.Bottom(spot); foot != TableState.None; foot = state.Above(foot), count++)
            {
                int thing = state.Layout.ThingOfFoot[foot];
                Assert.Equal(spot, state.Spot(foot));
                Assert.Equal(state.Layout.SpotHolder[spot].Board is null ? 1 : state.Layout.Class(thing).Feet, state.SpotsOf(thing).Distinct().Count());
                counts[state.Layout.ClassOf[thing]] += foot == thing ? 1 : 0;
            }

            Assert.Equal(count, state.Count(spot));
        }

        return string.Join(' ', counts);
    }

    /// <summary>Exchanges things in other hands, bags and unknown parts of decks.</summary>
    /// <returns>False where a seat sees everything.</returns>
    public static bool Mix(TableState state, int seat, Draws draws)
    {
        int[] hidden = [.. Enumerable.Range(0, state.Layout.Things).Where(t => IsHidden(state, t, seat))];
        bool isMixed = false;
        foreach (int thing in hidden)
        {
            int other = hidden[draws.Below((uint)hidden.Length)];
            (ThingClass a, ThingClass b) = (state.Layout.Class(thing), state.Layout.Class(other));
            if (state.Spot(thing) != state.Spot(other) && ReferenceEquals(a.Kind, b.Kind) && a.Owner == b.Owner)
            {
                state.ExchangeThings(thing, other);
                isMixed = true;
            }
        }

        return isMixed;
    }

    private static bool IsHidden(TableState state, int thing, int seat)
    {
        Holder holder = state.Layout.SpotHolder[state.Spot(thing)];
        return holder.Form == PlaceForm.Bag || (holder.Form == PlaceForm.Hand && holder.Seat != seat) || (holder.Form == PlaceForm.Deck && state.Known(state.Spot(thing)) == 0);
    }
}
