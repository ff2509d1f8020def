using Runnel.Engine.Quantities;

namespace Runnel.Engine.Tests.Quantities;

public sealed class EstimateTests
{
    private static readonly Origin From = new("tank/water", "Water");

    [Fact]
    public void A_single_number_is_no_range()
    {
        var one = Estimate.Of(50, Units.Fahrenheit, From);
        Assert.False(one.IsRange);
        Assert.Equal(10, one.Likely, 1e-9);
        Assert.Equal(one.Low, one.High);
    }

    [Fact]
    public void A_range_without_a_likely_value_takes_the_middle_and_sorts_its_ends()
    {
        var range = Estimate.Of(300, 200, Units.Litre, From);
        Assert.True(range.IsRange);
        Assert.Equal(0.2, range.Low, 1e-12);
        Assert.Equal(0.25, range.Likely, 1e-12);
        Assert.Equal(0.3, range.High, 1e-12);
        Assert.Equal(0.21, Estimate.Of(200, 300, Units.Litre, From, 210).Likely, 1e-12);
    }
}
