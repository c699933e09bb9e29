using Rostrum.Sheets.Model;

namespace Rostrum.Play.Layout;

/// <summary>Where things begin: in the one bag or deck of their kind (a deck shuffled), else in the supply of their owner or of the table.</summary>
internal static class StartTable
{
    /// <summary>Puts every thing where it begins.</summary>
    public static void Fill(TableState state)
    {
        TableLayout layout = state.Layout;
        for (int thing = 0; thing < layout.Things; thing++)
        {
            ThingClass of = layout.Class(thing);
            Holder home = Home(layout, of);
            state.Place(thing, home.First);
            for (int i = 0; i < of.States.Length; i++)
            {
                state.SetState(thing, i, FirstState(of, of.States[i].Attribute, home));
            }
        }
    }

    /// <summary>What a changing value of a thing is at first.</summary>
    public static int FirstState(ThingClass of, int attribute, Holder home)
    {
        if (attribute < 0)
        {
            return home.IsOpen ? 1 : 0;
        }

        AttributeFacts facts = of.Kind.Attributes[attribute];
        return facts.HoldsPlayer ? of.Owner : facts.Attribute.Kind.Family == KindFamily.Die ? TableState.None : 0;
    }

    /// <summary>Where things of a class begin.</summary>
    public static Holder Home(TableLayout layout, ThingClass of)
    {
        if (layout.Holders.FirstOrDefault(h => (h.Seat < 0 || h.Seat == of.Owner) && h.Facts?.Starts is { } look && Has(of, look)) is { } named)
        {
            return named;
        }

        Holder[] homes = [.. layout.Holders.Where(h => h.IsUnseen && (h.Seat < 0 || h.Seat == of.Owner) && h.Facts is { StartsEmpty: false } facts && facts.Holds.Contains(of.Kind.Kind))];
        return homes.Length == 1 ? homes[0] : layout.SupplyOf(of.Owner);
    }

    private static bool Has(ThingClass of, Look look) =>
        (look.Kind is null || ReferenceEquals(look.Kind, of.Kind.Kind)) && (look.Card is null || ReferenceEquals(look.Card, of.Card))
        && look.Values.All(v => ReferenceEquals(v.Attribute.Kind, of.Kind.Kind) && of.Values[v.Attribute.Index] == v.Index);
}
