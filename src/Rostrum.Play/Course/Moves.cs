using Rostrum.Play.Layout;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Course;

/// <summary>Moves of things between spots, with what goes without saying: which slot of a row, and which face of a card is seen.</summary>
internal static class Moves
{
    /// <summary>Moves a thing on top of a spot.</summary>
    /// <param name="state">Where it is.</param>
    /// <param name="thing">Which.</param>
    /// <param name="spot">Where it goes.</param>
    /// <param name="faceUp">The face that is said; null where it follows from the place: open places show it, others do not; among open ones it stays.</param>
    /// <param name="at">Where the step stands; null where it is no step of the sheet.</param>
    /// <exception cref="NotPlayableException">It is larger than a space, and the spot is a space.</exception>
    public static void Move(TableState state, int thing, int spot, bool? faceUp, SourceSpan? at = null)
    {
        TableLayout layout = state.Layout;
        RefuseLarge(state, thing, spot, at);
        Holder from = layout.SpotHolder[state.Spot(thing)];
        Holder to = layout.SpotHolder[spot];
        state.Move(thing, spot);
        bool? becomes = faceUp ?? (from.IsOpen && to.IsOpen ? null : to.IsOpen);
        if (becomes is { } up && layout.Class(thing).Card is not null)
        {
            Turn(state, thing, up);
        }
    }

    /// <summary>Lays a piece larger than a space on top of the spaces of a fit.</summary>
    /// <param name="state">Where it is.</param>
    /// <param name="thing">The piece.</param>
    /// <param name="spaces">The spaces, in any order.</param>
    public static void Lay(TableState state, int thing, ReadOnlySpan<int> spaces)
    {
        int[] rising = spaces.ToArray();
        Array.Sort(rising);
        state.Lay(thing, rising);
    }

    /// <summary>Nobody knows how a piece lies that is larger than a space and of which one space is named.</summary>
    /// <exception cref="NotPlayableException">It is larger than a space, and the spot is a space.</exception>
    public static void RefuseLarge(TableState state, int thing, int spot, SourceSpan? at)
    {
        if (state.Layout.Class(thing) is { IsLarge: true } of && state.Layout.SpotHolder[spot].Board is not null)
        {
            throw NamesOneSpace(of, at);
        }
    }

    /// <summary>Pieces larger than a space do not follow single spaces.</summary>
    /// <exception cref="NotPlayableException">One lies there.</exception>
    public static void RefuseLargeOn(TableState state, ReadOnlySpan<int> spots, SourceSpan? at)
    {
        foreach (int spot in spots)
        {
            for (int foot = state.Bottom(spot); foot != TableState.None; foot = state.Above(foot))
            {
                if (state.Layout.Class(state.Layout.ThingOfFoot[foot]) is { IsLarge: true } of)
                {
                    throw NamesOneSpace(of, at);
                }
            }
        }
    }

    private static NotPlayableException NamesOneSpace(ThingClass of, SourceSpan? at) =>
        new($"{Prose.Sentence(Prose.A(of.Kind.Kind.Name))} lies on several spaces, and the step names one.", at);

    /// <summary>Exchanges all that lies in two spots.</summary>
    /// <exception cref="NotPlayableException">A piece larger than a space lies there, and one of the spots is a space.</exception>
    public static void Exchange(TableState state, int one, int other, SourceSpan? at)
    {
        if (state.Layout.SpotHolder[one].Board is not null || state.Layout.SpotHolder[other].Board is not null)
        {
            RefuseLargeOn(state, [one, other], at);
        }

        state.Exchange(one, other);
    }

    /// <summary>Shows or hides the face of a card; a piece goes to the other value of its only state of two.</summary>
    /// <param name="state">Where it is.</param>
    /// <param name="thing">Which.</param>
    /// <param name="faceUp">The face that is said; null to turn it over.</param>
    public static void Turn(TableState state, int thing, bool? faceUp)
    {
        ThingClass of = state.Layout.Class(thing);
        int flipped = of.Kind.FlipState?.Attribute.Index ?? -1;
        for (int i = 0; i < of.States.Length; i++)
        {
            if (of.States[i].Attribute == flipped)
            {
                state.SetState(thing, i, faceUp is { } up ? (up ? 1 : 0) : 1 - state.StateOf(thing, i));
            }
        }
    }

    /// <summary>The spot in which a thing lands that is moved to a holder: its only one, or the first empty slot of a row.</summary>
    /// <returns><see cref="TableState.None"/> where a row is full.</returns>
    /// <exception cref="NotPlayableException">The holder is a board: a space has to be named.</exception>
    public static int Landing(TableState state, Holder holder)
    {
        if (holder.Form == PlaceForm.Board && holder.Length > 1)
        {
            throw new NotPlayableException($"A thing is moved to '{holder.Place.Name}', but not to one of its spaces.", holder.Place.DeclaredAt);
        }

        if (holder.Form != PlaceForm.Row)
        {
            return holder.First;
        }

        for (int slot = holder.First; slot < holder.First + holder.Length; slot++)
        {
            if (state.Count(slot) == 0)
            {
                return slot;
            }
        }

        return TableState.None;
    }
}
