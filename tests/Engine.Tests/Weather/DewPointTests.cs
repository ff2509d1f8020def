using CsCheck;
using Runnel.Engine.Heat;
using Runnel.Engine.Weather;

namespace Runnel.Engine.Tests.Weather;

public sealed class DewPointTests
{
    [Theory]
    [InlineData(15, 1705)]
    [InlineData(24.5, 3075)]
    [InlineData(19.5, 2267)]
    // Published: FAO-56, annex 2, table 2.3 and example 3.
    public void Saturation_is_as_printed(double temperature, double pressure) => Assert.Equal(pressure, DewPoint.Saturation(temperature), 1.0);

    [Theory]
    [InlineData(1701.5, 14.96)]
    [InlineData(1778.8, 15.65)]
    [Proof("dew-point", Evidence.Published, "FAO-56 example 5's vapour pressures and their dew points as evaluated in a general meteorological library's tests")]
    public void Dew_points_are_as_published(double pressure, double expected)
    {
        Assert.Equal(expected, DewPoint.OfHumidity(21.5, 100 * pressure / DewPoint.Saturation(21.5)), 0.01);
        Assert.Equal(expected, DewPoint.OfHumidity(40, 100 * pressure / DewPoint.Saturation(40)), 0.01);
    }

    [Fact]
    [Proof("dew-point", Evidence.Derived, "humidity and dew point lead back to each other; air at its dew point is full")]
    public void There_and_back() =>
        Gen.Select(Gen.Double[-40, 60], Gen.Double[1, 100]).Sample((air, humidity) =>
        {
            var dew = DewPoint.OfHumidity(air, humidity);
            Assert.True(dew <= air + 1e-9);
            if (dew >= -70)
            {
                Assert.Equal(humidity, DewPoint.Humidity(air, Math.Min(air, dew)), 1e-6);
            }
            Assert.Equal(100, DewPoint.Humidity(air, air), 1e-9);
        });

    [Fact]
    [Proof("dew-point", Evidence.Derived, "the saturation pressure under it is within 0.5 % of Hyland and Wexler's from 0 to 50 °C")]
    public void It_rests_on_a_good_saturation_pressure()
    {
        for (var t = 0.0; t <= 50; t += 0.5)
        {
            Assert.Equal(1, DewPoint.Saturation(t) / SaturationVapourPressure.HylandWexler(t), 0.005);
        }
    }
}
