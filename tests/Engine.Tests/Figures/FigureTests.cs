using Runnel.Engine.Figures;
using Runnel.Engine.Quantities;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Figures;

public sealed class FigureTests
{
    [Fact]
    public void Arithmetic_carries_value_and_unit()
    {
        var energy = (Of(60, Units.Watt) * Of(12, Units.HourUnit)).Called("energy", Units.KilowattHour);
        Assert.Equal(0.72, energy.Value, 1e-12);
        var density = (Of(5, Units.Kilogram) / Of(250, Units.Litre)).Called("density", Units.KilogramPerCubicMetre);
        Assert.Equal(20, density.Value, 1e-9);
        var sum = Of(1, Units.Pound) + Of(1, Units.Kilogram);
        Assert.Equal(1.45359237, sum.Si, 1e-12);
        Assert.Same(Units.Pound, sum.Unit);
        Assert.Equal(-0.5, (Of(0.5, Units.Metre) - Of(1, Units.Metre)).Si, 1e-12);
    }

    [Fact]
    public void Units_that_do_not_fit_are_refused()
    {
        var (litre, kilogram) = (Of(1, Units.Litre), Of(1, Units.Kilogram));
        Assert.Throws<UnitMismatchException>(() => litre + kilogram);
        Assert.Throws<UnitMismatchException>(() => litre - kilogram);
        Assert.Throws<UnitMismatchException>(() => Figure.Smallest(litre, kilogram));
        Assert.Throws<UnitMismatchException>(() => Figure.Largest(litre, kilogram));
        Assert.Throws<UnitMismatchException>(() => litre.As("water", "Water", Units.Kilogram));
        Assert.Throws<UnitMismatchException>(() => litre.RoundUp("packs"));
    }

    [Fact]
    public void Ammonia_and_its_nitrogen_are_different_things()
    {
        Assert.Throws<UnitMismatchException>(() => Of(1, Units.GramAmmoniaPerDay) + Of(1, Units.GramNitrogenPerDay));
        Assert.Throws<UnitMismatchException>(() => Of(1, Units.GramNitrogenPerDay) + Of(1, Units.GramPerDay));
        var area = (Of(6, Units.GramNitrogenPerDay) / Of(0.5, Units.GramNitrogenPerSquareMetreDay)).Called("area", Units.SquareMetre);
        Assert.Equal(12, area.Value, 1e-9);
    }

    [Fact]
    public void Two_temperatures_differ_by_kelvins()
    {
        var difference = Of(68, Units.Fahrenheit) - Of(50, Units.Fahrenheit);
        Assert.Equal(Units.Kelvin.Dimension, difference.Dimension);
        Assert.Equal(10, difference.Si, 1e-9);
        Assert.Equal(18, difference.Called("difference", Units.FahrenheitDifference).Value, 1e-9);
        Assert.Equal(100, (difference * Of(10, Units.WattPerKelvin)).Called("heat", Units.Watt).Value, 1e-9);
        Assert.Throws<UnitMismatchException>(() => difference.Called("difference", Units.Celsius));
    }

    [Fact]
    public void An_unnamed_difference_of_temperatures_is_not_read_off_the_scale()
    {
        Assert.Equal(10, (Of(68, Units.Fahrenheit) - Of(50, Units.Fahrenheit)).Value, 1e-9);
        Assert.Equal(68, (Of(18, Units.FahrenheitDifference) + Of(50, Units.Fahrenheit)).Value, 1e-9);
    }

    [Fact]
    public void A_temperature_takes_a_difference_only()
    {
        Assert.Equal(25, (Of(20, Units.Celsius) + Of(5, Units.Kelvin)).Value, 1e-9);
        Assert.Throws<UnitMismatchException>(() => Of(20, Units.Celsius) + Of(5, Units.Celsius));
        Assert.Throws<UnitMismatchException>(() => Of(20, Units.Celsius) * Of(2, Units.One));
    }

    [Fact]
    public void A_chain_of_factors_is_one_product_until_a_step_has_a_name()
    {
        var (a, b, c) = (Of(2, Units.One), Of(3, Units.One), Of(4, Units.One));
        var product = Assert.IsType<Product>((a * b * c).How);
        Assert.Equal([a, b, c], product.Factors);
        var named = (a * b).Called("six", Units.One);
        Assert.Equal([named, c], Assert.IsType<Product>((named * c).How).Factors);
        Assert.Equal(24, (a * b * c).Si);
    }

    [Fact]
    public void It_knows_what_it_was_made_from()
    {
        var (a, b) = (Of(2, Units.Metre), Of(3, Units.Metre));
        Assert.Equal([a, b], (a + b).Parents);
        Assert.Equal([a, b], (a - b).Parents);
        Assert.Equal([a, b], (a / b).Parents);
        var least = Figure.Smallest(a, b);
        Assert.Equal(2, least.Value);
        Assert.Same(a, Assert.IsType<Extreme>(least.How).Picked);
        Assert.Equal(3, Figure.Largest(a, b).Value);
    }

    [Theory]
    [InlineData(2.01, 3)]
    [InlineData(3, 3)]
    [InlineData(3.0000000001, 3)]
    [InlineData(0, 0)]
    [InlineData(3.001, 4)]
    public void Packs_are_whole(double packs, double whole)
    {
        var rounded = Of(packs, Units.One).RoundUp("packs");
        Assert.Equal(whole, rounded.Value);
        Assert.Equal("packs", rounded.Unit!.Symbol);
    }

    [Fact]
    public void A_number_that_is_none_never_becomes_a_figure()
    {
        Assert.Throws<ArithmeticException>(() => Of(double.NaN, Units.Metre));
        Assert.Throws<ArithmeticException>(() => Of(1, Units.Metre) / Of(0, Units.Metre));
    }

    [Fact]
    public void Nothing_has_no_sum_and_no_extreme()
    {
        Assert.Throws<ArgumentException>(() => Figure.Sum());
        Assert.Throws<ArgumentException>(() => Figure.Smallest());
        Assert.Equal(6, Figure.Sum(Of(1, Units.One), Of(2, Units.One), Of(3, Units.One)).Si);
    }

    [Fact]
    public void A_given_number_keeps_its_origin_and_takes_the_value_drawn()
    {
        var estimate = Estimate.Of(30, 50, Units.Watt, new("pump/power", "Power of the pump", OriginKind.Default, "a guess"), 35);
        Assert.Equal(35, Figure.Given(estimate).Value);
        var drawn = Figure.Given(estimate, 42);
        Assert.Equal(42, drawn.Value);
        Assert.Equal("Power of the pump", drawn.Label);
        Assert.Equal("a guess", Assert.Single(drawn.How.Sources).Text);
        Assert.Equal(drawn.Low, drawn.High);
        Assert.False(drawn.IsRange);
    }

    [Fact]
    public void A_computed_figure_says_how()
    {
        var part = Of(1, Units.Metre);
        var figure = Figure.Computed(3600, Units.Watt, "heat", "summed over the hours", [part], Source.Practice("so it is done"));
        var how = Assert.IsType<Procedure>(figure.How);
        Assert.Equal("summed over the hours", how.Method);
        Assert.Equal([part], figure.Parents);
        Assert.Equal(SourceKind.CommonPractice, Assert.Single(how.Sources).Kind);
    }

    [Fact]
    public void A_book_keeps_named_figures_in_order_and_no_name_twice()
    {
        var book = new FigureBook();
        var first = book.Name(Of(1, Units.Metre), "a", "First", Units.Metre);
        book.Name(Of(2, Units.Metre), "b", "Second", Units.Foot);
        Assert.Same(first, book["a"]);
        Assert.Equal(["a", "b"], book.All.Select(f => f.Id!));
        Assert.Null(book.Find("c"));
        Assert.Throws<KeyNotFoundException>(() => book["c"]);
        Assert.Throws<ArgumentException>(() => book.Name(Of(3, Units.Metre), "a", "Again", Units.Metre));
        Assert.Throws<UnitMismatchException>(() => book.Name(Of(3, Units.Metre), "d", "Wrong", Units.Watt));
        Assert.Equal(2, book.All.Count);
    }
}
