using CsCheck;
using Runnel.Engine.Filter;
using Runnel.Engine.Quantities;
using Runnel.Engine.Water;
using static Runnel.Engine.Tests.Formulary;

namespace Runnel.Engine.Tests.Filter;

public sealed class FilterTests
{
    private const string MillerExample =
        "Miller, Biofilter decisions, Florida A and M University: 4 kg/d at 0.20 g/m²/d need 20 000 m²; at 245 m²/m³ that is 81.6 m³";

    private const string FaoExample =
        "from memory: FAO Technical Paper 589, appendix 4: 7.5 g/d at 0.57 g/m²/d need 13.2 m²; at 300 m²/m³ that is 44 L";

    [Fact]
    [Proof("filter-area-nitrogen", Evidence.Published, MillerExample)]
    [Proof("media-for-area", Evidence.Published, MillerExample)]
    public void The_example_for_a_trickling_filter_comes_out()
    {
        var area = FilterArea.FromNitrogen(4000, 0.2);
        Assert.Equal(20000, area, 1e-6);
        Assert.Equal(81.6, MediaVolume.ForArea(area, 245) / 1000, 0.05);
    }

    [Fact]
    [Proof("filter-area", Evidence.Published, FaoExample)]
    [Proof("media-for-area", Evidence.Published, FaoExample)]
    public void The_example_of_the_technical_paper_comes_out()
    {
        var area = FilterArea.Fao(AmmoniaFromFeed.Fao(200, 32));
        Assert.Equal(13.2, area, 0.1);
        Assert.Equal(44, MediaVolume.ForArea(area, 300), 0.5);
    }

    [Fact]
    [Proof("filter-area", Evidence.Derived, "one load on two bases needs one area")]
    [Proof("filter-area-nitrogen", Evidence.Derived, "one load on two bases needs one area")]
    public void Counting_as_ammonia_or_as_nitrogen_needs_the_same_area() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[0.05, 2]).Sample((ammonia, rate) =>
        {
            var a = FilterArea.Fao(ammonia, rate);
            var b = FilterArea.FromNitrogen(AmmoniaBasis.ToNitrogen(ammonia), AmmoniaBasis.ToNitrogen(rate));
            return Math.Abs(a / b - 1) < 1e-12;
        });

    [Fact]
    public void The_two_default_rates_are_the_same_rate() =>
        Assert.Equal(FilterFormulas.FilterAreaNitrogen.Inputs[1].Default!.Value, AmmoniaBasis.ToNitrogen(FilterFormulas.FilterArea.Inputs[1].Default!.Value), 0.005);

    [Fact]
    [Proof("filter-area-nitrogen", Evidence.Measured,
        "Harwanto, Oh and Jo 2011: 288.1 g N/m³/d at the highest load on 500 m²/m³, so the default rate asks for no less surface than was measured to do")]
    public void The_default_rate_is_more_careful_than_a_measured_filter()
    {
        const double measured = 500;
        Assert.InRange(FilterArea.FromNitrogen(288.1), measured, 1.5 * measured);
    }

    [Fact]
    [Proof("nitrification-temperature-factor", Evidence.Derived, "limits: 1 at 20 °C, the same ratio for each °C")]
    public void Twenty_degrees_is_one_and_each_degree_the_same_ratio()
    {
        Assert.Equal(1, NitrificationTemperature.Theta(20), 1e-12);
        for (var t = 10; t < 34; t++)
        {
            Assert.Equal(1.04, NitrificationTemperature.Theta(t + 1) / NitrificationTemperature.Theta(t), 1e-9);
        }
    }

    [Fact]
    [Proof("nitrification-temperature-factor", Evidence.Published, "Zhu and Chen 2002: at 20 °C, 4.275 % for each °C where ammonia limits")]
    public void The_default_is_near_a_published_rate_for_each_degree() =>
        Assert.Equal(4.275, 100 * (NitrificationTemperature.Theta(20.5) - NitrificationTemperature.Theta(19.5)), 0.4);

    [Fact]
    public void Figures_in_other_units_give_the_same()
    {
        var area = FilterFormulas.FilterArea.Apply(Of(0.0075, Multiple("kg NH3/d", Units.GramAmmoniaPerDay, 1000)), Of(0.57, Units.GramAmmoniaPerSquareMetreDay));
        Assert.Equal(FilterArea.Fao(7.5), area.Value, 1e-9);
        var media = FilterFormulas.MediaForArea.Apply(area.Called("surface", Units.SquareFoot), Of(300, Units.SquareMetrePerCubicMetre));
        Assert.Equal(MediaVolume.ForArea(FilterArea.Fao(7.5), 300), media.Value, 1e-9);
        Assert.Equal(
            NitrificationTemperature.Theta(15),
            FilterFormulas.NitrificationTemperatureFactor.Apply(Of(59, Units.Fahrenheit), Of(104, Units.Percent)).Value,
            1e-9);
        Assert.Equal(
            FilterArea.FromNitrogen(5.9),
            FilterFormulas.FilterAreaNitrogen.Apply(Of(5.9, Units.GramNitrogenPerDay), Of(0.47, Units.GramNitrogenPerSquareMetreDay)).Value,
            1e-9);
    }

    [Fact]
    public void A_load_as_nitrogen_is_refused_where_ammonia_is_wanted() =>
        Assert.Throws<UnitMismatchException>(() =>
            FilterFormulas.FilterArea.Apply(Of(6, Units.GramNitrogenPerDay), Of(0.57, Units.GramAmmoniaPerSquareMetreDay)));

    [Fact]
    public void Sand_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => MediaVolume.ForArea(13, 5000));

    private static Unit Multiple(string symbol, Unit of, double times) => new(symbol, of.Dimension, of.Factor * times);
}
