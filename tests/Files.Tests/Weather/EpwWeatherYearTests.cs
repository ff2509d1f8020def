using Runnel.Engine.Weather;
using Runnel.Files.Weather;

namespace Runnel.Files.Tests.Weather;

public sealed class EpwWeatherYearTests
{
    private static EpwFile File(InventedEpw epw) => EpwFile.Parse(epw.Text(), "ford.epw").File!;

    [Fact]
    public void The_hours_are_handed_on_as_they_stand()
    {
        var year = File(new()).ToWeatherYear();
        Assert.Equal(WeatherYear.Hours, year.Air.Length);
        Assert.False(year.SolarTime || year.MadeUp);
        for (var h = 0; h < 8760; h++)
        {
            Assert.Equal(InventedEpw.Air(h), year.Air[h]);
            Assert.Equal(InventedEpw.Sun(h), year.Global[h]);
            Assert.Equal(0.71, year.Humidity[h], 1e-12);
            Assert.Equal(InventedEpw.Sun(h) * 0.6, year.Direct[h], 1e-6);
            Assert.Equal(2.6, year.Wind[h]);
        }
    }

    [Fact]
    public void A_29_February_is_left_out()
    {
        var year = File(new() { Leap = true }).ToWeatherYear();
        Assert.Equal(8760, year.Air.Length);
        Assert.Equal(InventedEpw.Air(1415), year.Air[1415]);
        Assert.Equal(InventedEpw.Air(1416 + 24), year.Air[1416]);
        Assert.Equal(InventedEpw.Air(8783), year.Air[8759]);
    }

    // Derived: what reaches the level from the sun and from the sky is the whole; a clear noon is mostly direct, a dull one all diffuse.
    [Fact]
    public void Radiation_that_a_file_does_not_split_is_split()
    {
        var year = File(new() { Change = (_, row) => (row[14], row[15]) = ("9999", "9999") }).ToWeatherYear();
        Assert.Equal(8760, year.Direct.Length);
        for (var h = 0; h < 8760; h++)
        {
            Assert.InRange(year.Diffuse[h], 0, year.Global[h] + 1e-9);
            Assert.InRange(year.Direct[h], 0, 1400);
            Assert.Equal(year.Global[h] == 0, year.Direct[h] + year.Diffuse[h] == 0);
        }
        // 21 December at 42° N, solar noon near 12 by the clock: 400 W/m² is a clear hour; on 21 June a dull one.
        var winter = 354 * 24 + 11;
        var summer = 171 * 24 + 11;
        Assert.True(year.Direct[winter] > 600, $"{year.Direct[winter]}");
        Assert.True(year.Diffuse[summer] > 0.6 * year.Global[summer], $"{year.Diffuse[summer]}");
    }
}
