using System.Numerics;
using CsCheck;
using Rostrum.Testing;
using Rostrum.Play.Solving;

namespace Rostrum.Play.Tests.Solving;

/// <summary>Exact numbers.</summary>
public sealed class FractionTests
{
    private static readonly Gen<Fraction> Any = Gen.Select(Gen.Int[-1000, 1000], Gen.Int[1, 1000]).Select((n, d) => new Fraction(n, d));

    [Theory]
    [InlineData(6, 8, "3/4")]
    [InlineData(6, -8, "-3/4")]
    [InlineData(8, 4, "2")]
    [InlineData(0, -5, "0")]
    public void A_fraction_is_told_in_lowest_terms(int numerator, int denominator, string told) => Assert.Equal(told, new Fraction(numerator, denominator).ToString());

    [Fact]
    public void The_default_is_nought() => Assert.Equal((Fraction.Zero, "0", BigInteger.One), (default(Fraction), default(Fraction).ToString(), default(Fraction).Denominator));

    [Fact]
    public void Nothing_is_divided_by_nought()
    {
        Assert.Throws<DivideByZeroException>(() => new Fraction(1, 0));
        Assert.Throws<DivideByZeroException>(() => Fraction.One / Fraction.Zero);
    }

    [Fact]
    public void Sums_and_products_obey_the_laws_of_arithmetic() => Gen.Select(Any, Any, Any).Hold((a, b, c) =>
        a * (b + c) == (a * b) + (a * c) && a + b == b + a && (b == Fraction.Zero || a / b * b == a));

    [Fact]
    public void The_order_is_that_of_the_numbers() => Gen.Select(Any, Any).Hold((a, b) =>
        a < b == (a.Numerator * b.Denominator < b.Numerator * a.Denominator) && a <= b != a > b && a >= b != a < b && (a.CompareTo(b) == 0) == (a == b));
}
