using System.Reflection;
using CsCheck;
using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Quantities;

public sealed class UnitTests
{
    private static IReadOnlyList<(string Name, Unit Unit)> All { get; } =
    [
        .. typeof(Units).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(f => f.FieldType == typeof(Unit))
            .Select(f => (f.Name, (Unit)f.GetValue(null)!)),
    ];

    public static TheoryData<string, double, string, double> Handbook() => new()
    {
        // NIST Special Publication 811, appendix B; exact ones in full, others as printed.
        { "UsGallon", 1, "Litre", 3.785412 },
        { "ImperialGallon", 1, "Litre", 4.54609 },
        { "CubicFoot", 1, "Litre", 28.31685 },
        { "CubicYard", 1, "CubicMetre", 0.7645549 },
        { "SquareFoot", 1, "SquareMetre", 0.09290304 },
        { "Foot", 1, "Metre", 0.3048 },
        { "Inch", 1, "Millimetre", 25.4 },
        { "Pound", 1, "Kilogram", 0.45359237 },
        { "Ounce", 1, "Gram", 28.34952 },
        { "PoundPerSquareInch", 1, "Kilopascal", 6.894757 },
        { "PoundPerSquareFoot", 1, "KilogramPerSquareMetre", 4.882428 },
        { "PoundPerGallon", 1, "KilogramPerCubicMetre", 119.8264 },
        { "GallonPerMinute", 1, "LitrePerMinute", 3.785412 },
        { "CubicFootPerMinute", 1, "CubicMetrePerSecond", 4.719474e-4 },
        { "KilowattHour", 1, "Megajoule", 3.6 },
        { "Fahrenheit", 32, "Celsius", 0 },
        { "Fahrenheit", 212, "Celsius", 100 },
        { "Fahrenheit", -40, "Celsius", -40 },
        { "FahrenheitDifference", 9, "Kelvin", 5 },
        { "MilligramPerLitre", 1000, "KilogramPerCubicMetre", 1 },
        { "GramPerDay", 1000, "KilogramPerYear", 365 },
        { "KilowattHourPerDay", 24, "Kilowatt", 1 },
        { "Month", 12, "Year", 1 },
        { "HoursPerDay", 24, "One", 1 },
        { "MolePerSquareMetreDay", 86.4, "MicromolePerSquareMetreSecond", 1000 },
    };

    [Theory]
    [MemberData(nameof(Handbook))]
    public void One_unit_is_what_a_handbook_says_of_another(string from, double value, string to, double expected)
    {
        var (a, b) = (Named(from), Named(to));
        Assert.Equal(a.Dimension, b.Dimension);
        Assert.Equal(expected, b.FromSi(a.ToSi(value)), 1e-6 * Math.Max(1e-6, Math.Abs(expected)) + 1e-12);
    }

    [Fact]
    public void Into_SI_and_back_is_the_same_for_every_unit() =>
        Gen.Select(Gen.Int[0, All.Count - 1], Gen.Double[-1e6, 1e6]).Sample((i, x) =>
        {
            var unit = All[i].Unit;
            return Math.Abs(unit.FromSi(unit.ToSi(x)) - x) <= 1e-9 * Math.Max(1, Math.Abs(x));
        });

    [Fact]
    public void Only_temperatures_on_a_scale_have_an_offset() =>
        Assert.All(All, u => Assert.True(u.Unit.Offset == 0 || u.Unit.Dimension.IsPoint, u.Name));

    [Fact]
    public void The_US_unit_of_each_measures_the_same() =>
        Assert.All(All, u => Assert.Equal(u.Unit.Dimension, Units.ForUs(u.Unit).Dimension));

    [Fact]
    public void A_unit_without_a_US_one_stays() => Assert.Same(Units.MilligramPerLitre, Units.ForUs(Units.MilligramPerLitre));

    [Fact]
    public void One_for_each_of_another_divides()
    {
        var price = Unit.Money("EUR").Per(Units.KilowattHour);
        Assert.Equal("EUR/kWh", price.Symbol);
        Assert.Equal(0.36, price.ToSi(0.36) * Units.KilowattHour.Factor, 1e-12);
        Assert.Equal(Units.MoneyDimension / Units.Joule.Dimension, price.Dimension);
    }

    [Fact]
    public void A_temperature_is_not_for_each_of_anything() =>
        Assert.Throws<UnitMismatchException>(() => Units.Celsius.Per(Units.Metre));

    private static Unit Named(string name) => All.Single(u => u.Name == name).Unit;
}
