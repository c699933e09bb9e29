using System.Globalization;
using Rostrum.Play.Layout;
using Rostrum.Rulings.Positions;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Play.Positions;

/// <content>What a position does not give: as another state has it, or as is taken for granted and told.</content>
internal sealed partial class StateReader
{
    // A thing that the position has elsewhere is not there any more.
    private void LayOtherwise(Position position, TableState state, TableState from)
    {
        HashSet<int> open = [.. layout.Holders.SelectMany(h => Enumerable.Range(h.First, h.Length).Where(s => ContentOf(position, h, s - h.First) is not { IsGiven: true }))];
        var like = new Dictionary<int, int>();
        foreach (Holder holder in layout.Holders)
        {
            foreach (int spot in Enumerable.Range(holder.First, holder.Length).Where(open.Contains))
            {
                if (from.Known(spot) > 0)
                {
                    state.SetKnown(spot, from.Known(spot));
                }

                for (int foot = from.Bottom(spot); foot != TableState.None; foot = from.Above(foot))
                {
                    int thing = layout.ThingOfFoot[foot];
                    if (foot == thing && from.SpotsOf(thing).All(open.Contains) && TakeLike(thing, state, from) is { } taken)
                    {
                        like[thing] = taken;
                    }

                    Follow(foot, spot, state, like);
                }

                state.RestoreKnown(spot, Math.Min(from.Known(spot), state.Count(spot)));
            }
        }
    }

    // Null where the position has all things of that look elsewhere.
    private int? TakeLike(int thing, TableState state, TableState from)
    {
        ThingClass of = layout.Class(thing);
        if (!_left[of.Number].TryDequeue(out int taken))
        {
            return null;
        }

        for (int i = 0; i < of.States.Length; i++)
        {
            state.SetState(taken, i, from.StateOf(thing, i));
        }

        return taken;
    }

    // A piece larger than a space follows with each foot.
    private void Follow(int foot, int spot, TableState state, Dictionary<int, int> like)
    {
        int thing = layout.ThingOfFoot[foot];
        if (!like.TryGetValue(thing, out int taken))
        {
            return;
        }

        if (foot == thing)
        {
            state.Place(taken, spot);
        }
        else
        {
            state.PutOnTop(layout.Foot(taken, foot - layout.SecondFoot[thing] + 1), spot);
        }
    }

    private void Assume(Holder holder, int part)
    {
        if (holder.IsUnseen && holder.Facts is { StartsEmpty: false })
        {
            _open.Add(holder);
            assumed!.Add($"{Prose.Sentence(_naming.Place(holder.Place, Math.Max(0, holder.Seat)))} holds what begins there and lies nowhere else.");
        }
        else
        {
            assumed!.Add($"Nothing lies {Where(holder, part)}.");
        }
    }

    // False where nobody says what the mark holds.
    private bool FromElsewhere(Mark mark, int at, TableState state)
    {
        int slot = markBase + layout.MarkStart[mark.Index] + at;
        if (otherwise is not null)
        {
            state.Numbers[slot] = otherwise.Numbers[slot];
            return true;
        }

        if (assumed is null)
        {
            return false;
        }

        long? number = MarkTable.ToPosition(layout, mark, at, state.Numbers[slot]);
        string first = mark.Sort.Kind == SortKind.Truth ? (number == 1 ? "yes" : "no")
            : mark.Sort.Kind == SortKind.Number ? number?.ToString(CultureInfo.InvariantCulture) ?? "" : "as at the beginning";
        assumed.Add($"{Prose.Sentence(mark.Name)}{Whose(mark, at)} is {first}.");
        return true;
    }
}
