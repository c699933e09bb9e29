using System.Globalization;
using System.Numerics;

namespace Rostrum.Play.Solving;

/// <summary>An exact number: a whole numerator over a whole denominator above 0, in lowest terms. The default is 0.</summary>
public readonly record struct Fraction : IComparable<Fraction>
{
    // One less than the denominator, so that the default is a number: 0 over 1.
    private readonly BigInteger _belowDenominator;

    /// <summary>A fraction, brought to its lowest terms.</summary>
    /// <param name="numerator">Any whole number.</param>
    /// <param name="denominator">Any whole number but 0.</param>
    /// <exception cref="DivideByZeroException">The denominator is 0.</exception>
    public Fraction(BigInteger numerator, BigInteger denominator)
    {
        if (denominator.IsZero)
        {
            throw new DivideByZeroException();
        }

        BigInteger common = BigInteger.GreatestCommonDivisor(numerator, denominator) * denominator.Sign;
        (Numerator, _belowDenominator) = (numerator / common, (denominator / common) - 1);
    }

    /// <summary>The number above the line.</summary>
    public BigInteger Numerator { get; }

    /// <summary>The number below the line, at least 1.</summary>
    public BigInteger Denominator => _belowDenominator + 1;

    /// <summary>0.</summary>
    public static Fraction Zero { get; }

    /// <summary>1.</summary>
    public static Fraction One { get; } = Of(1);

    /// <summary>A whole number.</summary>
    public static Fraction Of(long whole) => new(whole, 1);

    /// <summary>The nearest number that a double holds.</summary>
    public double ToDouble() => double.CreateChecked(Numerator) / double.CreateChecked(Denominator);

    /// <inheritdoc />
    public int CompareTo(Fraction other) => (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>The sum.</summary>
    public Fraction Plus(Fraction other) => new((Numerator * other.Denominator) + (other.Numerator * Denominator), Denominator * other.Denominator);

    /// <summary>The product.</summary>
    public Fraction Times(Fraction other) => new(Numerator * other.Numerator, Denominator * other.Denominator);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException">The other is 0.</exception>
    public Fraction Over(Fraction other) => new(Numerator * other.Denominator, Denominator * other.Numerator);

    /// <summary>As people write it: <c>5/9</c>, or <c>3</c> for a whole number.</summary>
    public override string ToString() =>
        _belowDenominator.IsZero ? Numerator.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    /// <summary>Adds.</summary>
    public static Fraction operator +(Fraction one, Fraction other) => one.Plus(other);

    /// <summary>Multiplies.</summary>
    public static Fraction operator *(Fraction one, Fraction other) => one.Times(other);

    /// <summary>Divides.</summary>
    public static Fraction operator /(Fraction one, Fraction other) => one.Over(other);

    /// <summary>True where the first is less.</summary>
    public static bool operator <(Fraction one, Fraction other) => one.CompareTo(other) < 0;

    /// <summary>True where the first is greater.</summary>
    public static bool operator >(Fraction one, Fraction other) => one.CompareTo(other) > 0;

    /// <summary>True where the first is not greater.</summary>
    public static bool operator <=(Fraction one, Fraction other) => one.CompareTo(other) <= 0;

    /// <summary>True where the first is not less.</summary>
    public static bool operator >=(Fraction one, Fraction other) => one.CompareTo(other) >= 0;
}
