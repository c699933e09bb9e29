using Rostrum.Play.Formulas;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Course;

/// <summary>Writes a state as a short string of bytes that is equal exactly for positions that nobody could tell apart, and reads it back.</summary>
/// <remarks>
/// By spot: the look codes from the lowest thing up, or, where there is no order, pairs of code and count, codes rising; then 0. A piece larger than a space is
/// told by its look code where it is met first, and on its other spaces by the number under which it was met, beyond all codes. Then the known cards of decks, the
/// numbers and the sets of the course; a thing among them is told by its spot and its height there (or its look, where there is no order). Numbers are written
/// in groups of seven bits, lowest first, the eighth bit saying that more follow. Not safe to share between threads.
/// </remarks>
internal sealed class StateKey(CoursePlan plan)
{
    private readonly TableLayout _layout = plan.Layout;
    private readonly int[] _classOfCode = ClassOfCode(plan.Layout);
    private readonly int[] _firstOfClass = [.. plan.Layout.Classes.Select(c => plan.Layout.ClassOf.IndexOf(c.Number))];
    private readonly int[] _used = new int[plan.Layout.Classes.Length];
    private readonly int[] _codes = new int[plan.Layout.Things];
    private readonly int[] _met = new int[plan.Layout.Things];
    private readonly int[] _feetMet = new int[plan.Layout.Things];
    private int _large;
    private byte[] _bytes = new byte[256];
    private int _length;

    /// <summary>The bytes of a state; valid until the next call.</summary>
    public ReadOnlySpan<byte> Write(TableState state)
    {
        (_length, _large) = (0, 0);
        for (int spot = 0; spot < _layout.Spots; spot++)
        {
            WriteSpot(state, spot);
        }

        int last = state.Numbers.Length - 1;
        while (last >= 0 && state.Numbers[last] == plan.Blank[last])
        {
            last--;
        }

        Put((uint)(last + 1));
        for (int i = 0; i <= last; i++)
        {
            WriteNumber(state, state.Numbers[i], plan.ThingSlots.Numbers[i]);
        }

        for (int i = 0; i < state.Sets.Length; i++)
        {
            WriteSet(state, state.Sets[i], plan.ThingSlots.Sets[i]);
        }

        return _bytes.AsSpan(0, _length);
    }

    private void WriteSpot(TableState state, int spot)
    {
        Holder holder = _layout.SpotHolder[spot];
        if (holder.IsUnseen)
        {
            Put((uint)state.Known(spot));
        }

        if (holder.IsOrdered)
        {
            for (int foot = state.Bottom(spot); foot != TableState.None; foot = state.Above(foot))
            {
                Put((uint)CodeOf(state, foot) + 1);
            }
        }
        else
        {
            WriteHeap(state, spot);
        }

        Put(0);
    }

    private int CodeOf(TableState state, int foot)
    {
        int thing = _layout.ThingOfFoot[foot];
        if (foot != thing)
        {
            return _layout.MostCode + _met[thing];
        }

        if (_layout.SecondFoot[thing] >= 0)
        {
            _met[thing] = _large++;
        }

        return state.LookCode(thing);
    }

    private void WriteHeap(TableState state, int spot)
    {
        int count = 0;
        for (int thing = state.Bottom(spot); thing != TableState.None; thing = state.Above(thing))
        {
            _codes[count++] = state.LookCode(thing);
        }

        Span<int> codes = _codes.AsSpan(0, count);
        codes.Sort();
        for (int i = 0; i < count;)
        {
            int run = i;
            while (run < count && codes[run] == codes[i])
            {
                run++;
            }

            Put((uint)codes[i] + 1);
            Put((uint)(run - i));
            i = run;
        }
    }

    private void WriteNumber(TableState state, int number, bool isThing)
    {
        if (!isThing || number < 0)
        {
            Put(number == Node.Nothing ? 0 : number >= 0 ? ((ulong)number << 1) + 1 : (ulong)-(long)number << 1);
            return;
        }

        int spot = state.Spot(number);
        Put(((ulong)spot << 1) + 1);
        Put((ulong)(_layout.SpotHolder[spot].IsOrdered ? HeightOf(state, number) : state.LookCode(number)));
    }

    private static int HeightOf(TableState state, int thing)
    {
        int height = 0;
        for (int below = state.Below(thing); below != TableState.None; below = state.Below(below))
        {
            height++;
        }

        return height;
    }

    private void WriteSet(TableState state, int[]? set, bool areThings)
    {
        Put(set is null ? 0 : (ulong)set.Length + 1);
        foreach (int element in set ?? [])
        {
            WriteNumber(state, element, areThings);
        }
    }

    private void Put(ulong value)
    {
        if (_length + 10 > _bytes.Length)
        {
            Array.Resize(ref _bytes, 2 * _bytes.Length);
        }

        while (value > 127)
        {
            _bytes[_length++] = unchecked((byte)(value | 128));
            value >>= 7;
        }

        _bytes[_length++] = (byte)value;
    }

    /// <summary>The state that these bytes tell.</summary>
    public TableState Read(ReadOnlySpan<byte> bytes)
    {
        var state = new TableState(_layout, plan.Numbers, plan.Sets);
        Array.Clear(_used);
        _large = 0;
        int at = 0;
        for (int spot = 0; spot < _layout.Spots; spot++)
        {
            ReadSpot(state, spot, bytes, ref at);
        }

        plan.Blank.CopyTo(state.Numbers);
        int count = (int)Take(bytes, ref at);
        for (int i = 0; i < count; i++)
        {
            state.Numbers[i] = ReadNumber(state, bytes, ref at, plan.ThingSlots.Numbers[i]);
        }

        for (int i = 0; i < state.Sets.Length; i++)
        {
            int length = (int)Take(bytes, ref at) - 1;
            state.Sets[i] = length < 0 ? null : new int[length];
            for (int k = 0; k < length; k++)
            {
                state.Sets[i]![k] = ReadNumber(state, bytes, ref at, plan.ThingSlots.Sets[i]);
            }
        }

        return state;
    }

    private void ReadSpot(TableState state, int spot, ReadOnlySpan<byte> bytes, ref int at)
    {
        Holder holder = _layout.SpotHolder[spot];
        int known = holder.IsUnseen ? (int)Take(bytes, ref at) : 0;
        for (int code = (int)Take(bytes, ref at) - 1; code >= 0; code = (int)Take(bytes, ref at) - 1)
        {
            int count = holder.IsOrdered ? 1 : (int)Take(bytes, ref at);
            for (int i = 0; i < count; i++)
            {
                state.PutOnTop(FootOf(state, code), spot);
            }
        }

        state.RestoreKnown(spot, known);
    }

    // Here numbers of pieces larger than a space lead to the pieces, as they lead from them where a state is written.
    private int FootOf(TableState state, int code)
    {
        if (code >= _layout.MostCode)
        {
            int met = _met[code - _layout.MostCode];
            return _layout.Foot(met, _feetMet[met]++);
        }

        int thing = Thing(state, code);
        if (_layout.SecondFoot[thing] >= 0)
        {
            _met[_large++] = thing;
            _feetMet[thing] = 1;
        }

        return thing;
    }

    // The next unused thing that may look so, made to look so.
    private int Thing(TableState state, int code)
    {
        ThingClass of = _layout.Classes[_classOfCode[code]];
        int thing = _firstOfClass[of.Number] + _used[of.Number]++;
        int rest = code - of.Code;
        for (int i = of.States.Length - 1; i >= 0; i--)
        {
            state.SetState(thing, i, (rest % of.States[i].Count) - (of.States[i].Attribute < 0 ? 0 : 1));
            rest /= of.States[i].Count;
        }

        return thing;
    }

    private int ReadNumber(TableState state, ReadOnlySpan<byte> bytes, ref int at, bool isThing)
    {
        ulong value = Take(bytes, ref at);
        int number = value == 0 ? Node.Nothing : (value & 1) == 1 ? (int)(value >> 1) : -(int)(value >> 1);
        if (!isThing || number < 0)
        {
            return number;
        }

        int wanted = (int)Take(bytes, ref at);
        int foot = state.Bottom(number);
        for (int height = 0; foot != TableState.None; foot = state.Above(foot), height++)
        {
            if (_layout.SpotHolder[number].IsOrdered ? height == wanted : state.LookCode(foot) == wanted)
            {
                break;
            }
        }

        return foot;
    }

    private static ulong Take(ReadOnlySpan<byte> bytes, ref int at)
    {
        ulong value = 0;
        int shift = 0;
        while (bytes[at] > 127)
        {
            value |= (ulong)(bytes[at++] & 127) << shift;
            shift += 7;
        }

        return value | (ulong)bytes[at++] << shift;
    }

    private static int[] ClassOfCode(TableLayout layout)
    {
        int[] classes = new int[layout.MostCode];
        foreach (ThingClass of in layout.Classes)
        {
            Array.Fill(classes, of.Number, of.Code, of.Codes);
        }

        return classes;
    }
}
