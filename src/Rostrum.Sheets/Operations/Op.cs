#pragma warning disable CS1591 // Each member is described by its entry in the table of operations.
namespace Rostrum.Sheets.Model;

/// <summary>The identities of the operations; <see cref="Operations.All"/> says what each means.</summary>
public enum Op
{
    And, Or, Not,
    Same, IsNothing, In, NextTo, AtLeast, AtMost, MoreThan, LessThan, Between, WasDone, Can,
    Plus, Minus, Negative, Times, Except, TogetherWith, Range,
    Players, Opponent,
    Count, Any, No, All, Sum, Largest, Smallest, Different, Most, Least, Ranked, Together,
    First, Last, Item, OrderOf,
    TopOf, HeightOf, OwnerOf, PlaceOfThing, FaceOf,
    NeighboursOf, SidesOf, CornersOf, EdgeOf, RimOf, Step, AdvanceOf,
    Across, BetweenSpaces, Distance, Straights, Run, BeyondRun, Following,
    Groups, LongestWay, MostPairs, BestSplit,
    Fits, AnchorOf, Difference, Down, Up, Nearest,
    SpacesOf, ThingsIn, SlotsOf,
    SeatBeside,
}
