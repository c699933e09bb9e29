using CsCheck;

namespace Rostrum.Testing;

/// <summary>Property tests whose cases are the same in every run, so that a green tree stays green; with <c>ROSTRUM_NEW_CASES</c> set, every run makes new ones, that many times as many.</summary>
/// <remarks>
/// The slow suite asks for new cases: there a fault nobody knew of may come to light. It prints a seed; a case of its own in the test keeps what it found.
/// </remarks>
public static class SeededCases
{
    /// <summary>Checks a number of cases, the first that fails told as small as it can be made.</summary>
    /// <param name="gen">Makes the cases.</param>
    /// <param name="check">Throws for a case that does not hold.</param>
    /// <param name="cases">How many; at least 1.</param>
    /// <param name="print">How a case is told.</param>
    public static void Hold<T>(this Gen<T> gen, Action<T> check, int cases = 100, Func<T, string>? print = null)
    {
        if (int.TryParse(TestFiles.SettingOf("ROSTRUM_NEW_CASES"), out int times))
        {
            gen.Sample(check, iter: cases * Math.Max(1, times), threads: 1, print: print);
            return;
        }

        for (uint i = 0; i < cases; i++)
        {
            var random = new PCG(i, 20261126);
            string seed = random.ToString();
            T made = gen.Generate(random, null!, out _);
            try
            {
                check(made);
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                // From this seed on, smaller cases that fail too are looked for.
                gen.Sample(check, seed: seed, iter: cases, threads: 1, print: print);
                throw;
            }
        }
    }

    /// <summary>Checks a number of cases, each of which has to give true.</summary>
    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T>(this Gen<T> gen, Func<T, bool> check, int cases = 100) =>
        gen.Hold(
            made =>
            {
                if (!check(made))
                {
                    throw new InvalidOperationException("This case does not hold.");
                }
            },
            cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2), cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2), cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2, made.Item3), cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2, made.Item3), cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2, made.Item3, made.Item4), cases);

    /// <inheritdoc cref="Hold{T}(Gen{T}, Action{T}, int, Func{T, string})"/>
    public static void Hold<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> check, int cases = 100) =>
        gen.Hold(made => check(made.Item1, made.Item2, made.Item3, made.Item4), cases);
}
