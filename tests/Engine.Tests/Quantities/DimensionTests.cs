using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Quantities;

public sealed class DimensionTests
{
    private static readonly Dimension Mass = new(Mass: 1);
    private static readonly Dimension Volume = new(Length: 3);
    private static readonly Dimension Point = Units.Celsius.Dimension;
    private static readonly Dimension Difference = Units.Kelvin.Dimension;
    private static readonly Dimension Nitrogen = new(Mass: 1, Basis: Units.AsNitrogen);
    private static readonly Dimension Ammonia = new(Mass: 1, Basis: Units.AsAmmonia);

    [Fact]
    public void Products_and_quotients_add_and_take_exponents()
    {
        Assert.Equal(Units.MilligramPerLitre.Dimension, Mass / Volume);
        Assert.Equal(Mass, Mass / Volume * Volume);
        Assert.Equal(Dimension.None, Mass / Mass);
        Assert.Equal(Units.Joule.Dimension, Units.Watt.Dimension * Units.HourUnit.Dimension);
        Assert.Equal(Units.Watt.Dimension, Units.WattPerKelvin.Dimension * Difference);
    }

    [Fact]
    public void Only_like_adds_to_like()
    {
        Assert.Equal(Mass, Dimension.Add(Mass, Mass));
        Assert.Throws<UnitMismatchException>(() => Dimension.Add(Mass, Volume));
        Assert.Throws<UnitMismatchException>(() => Dimension.Subtract(Mass, Volume));
    }

    [Fact]
    public void A_temperature_takes_a_difference_and_no_other_temperature()
    {
        Assert.Equal(Point, Dimension.Add(Point, Difference));
        Assert.Equal(Point, Dimension.Add(Difference, Point));
        Assert.Equal(Point, Dimension.Subtract(Point, Difference));
        Assert.Equal(Difference, Dimension.Subtract(Point, Point));
        Assert.Throws<UnitMismatchException>(() => Dimension.Add(Point, Point));
        Assert.Throws<UnitMismatchException>(() => Dimension.Subtract(Difference, Point));
        Assert.Throws<UnitMismatchException>(() => Dimension.Add(Point, Mass));
    }

    [Fact]
    public void A_temperature_is_never_multiplied_or_divided()
    {
        Assert.Throws<UnitMismatchException>(() => Point * Mass);
        Assert.Throws<UnitMismatchException>(() => Mass / Point);
        Assert.Throws<UnitMismatchException>(() => Point / Point);
    }

    [Fact]
    public void A_basis_stays_through_a_product_and_goes_in_a_quotient_of_like()
    {
        Assert.Equal(Units.AsNitrogen, (Nitrogen / Volume).Basis);
        Assert.Equal(Units.AsNitrogen, (Volume * Nitrogen).Basis);
        Assert.Equal(Dimension.None, Nitrogen / Nitrogen);
        Assert.Equal(
            Units.SquareMetre.Dimension, Units.GramNitrogenPerDay.Dimension / Units.GramNitrogenPerSquareMetreDay.Dimension);
    }

    [Fact]
    public void Two_bases_never_meet()
    {
        Assert.Throws<UnitMismatchException>(() => Dimension.Add(Nitrogen, Ammonia));
        Assert.Throws<UnitMismatchException>(() => Dimension.Add(Nitrogen, Mass));
        Assert.Throws<UnitMismatchException>(() => Nitrogen / Ammonia);
        Assert.Throws<UnitMismatchException>(() => Nitrogen * Ammonia);
    }

    [Fact]
    public void It_reads_as_units()
    {
        Assert.Equal("a number", Dimension.None.ToString());
        Assert.Equal("kg·m^-3 as N", Units.MilligramNitrogenPerLitre.Dimension.ToString());
        Assert.Equal("money·s^-1", (Units.MoneyDimension / Units.Month.Dimension).ToString());
    }

    [Fact]
    public void The_named_operators_do_the_same()
    {
        Assert.Equal(Mass * Volume, Dimension.Multiply(Mass, Volume));
        Assert.Equal(Mass / Volume, Dimension.Divide(Mass, Volume));
    }
}
