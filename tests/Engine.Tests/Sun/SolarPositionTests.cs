using CsCheck;
using Runnel.Engine.Sun;

namespace Runnel.Engine.Tests.Sun;

/// <summary>Where the sun stands, against the printed example of Reda and Andreas 2003 and times computed with it.</summary>
public sealed class SolarPositionTests
{
    private const double GoldenLatitude = 39.742476;
    private const double GoldenLongitude = -105.1786;

    private static SunPlace Golden(int day, double hour = 12 + 30.5 / 60, double pressure = 82) =>
        SolarPosition.Meeus(JulianDay.Of(2003, 10, day, hour + 7), GoldenLatitude, GoldenLongitude, pressure, 11);

    // Published: Reda and Andreas 2003, appendix, 2003-10-17 12:30:30 UTC-7, 820 mbar, 11 °C.
    [Fact]
    public void The_printed_example_is_met()
    {
        Assert.Equal(2452930.312847, JulianDay.Of(2003, 10, 17, 19.5 + 0.5 / 60), 1e-6);
        var sun = Golden(17);
        Assert.Equal(50.11162, sun.Zenith, 0.005);
        Assert.Equal(194.340241, sun.Azimuth, 0.005);
        Assert.Equal(39.872046, sun.TrueElevation, 0.005);
        Assert.Equal(-9.31434, sun.Declination, 0.005);
        Assert.Equal(202.227408, sun.RightAscension, 0.005);
        Assert.Equal(11.10590, sun.HourAngle, 0.005);
        Assert.Equal(14.64, sun.EquationOfTime, 0.02);
        Assert.Equal(0.9965422974, sun.Distance, 5e-5);
    }

    // Published: reference tests of the pvlib library, computed with the same algorithm.
    [Fact]
    public void A_second_day_and_a_second_pressure_are_met()
    {
        Assert.Equal(50.478260, Golden(18).Zenith, 0.005);
        Assert.Equal(194.311132, Golden(18).Azimuth, 0.005);
        Assert.Equal(39.88997, Golden(17, pressure: 90).Elevation, 0.005);
        Assert.Equal(39.88997 - 39.888378, Golden(17, pressure: 90).Elevation - Golden(17).Elevation, 1e-5);
    }

    [Theory]
    [InlineData(2015, 1, 2, 0.983289204601)]
    [InlineData(2015, 8, 2, 1.01486146446)]
    public void The_sun_is_as_far_as_published(int year, int month, int day, double distance) =>
        Assert.Equal(distance, SolarPosition.Meeus(JulianDay.Of(year, month, day, 7), 40, -105).Distance, 5e-5);

    // Published: Meeus, Astronomical Algorithms, examples 7.a and chapter 7's list (from memory).
    [Theory]
    [InlineData(2000, 1, 1, 12, 2451545.0)]
    [InlineData(1999, 1, 1, 0, 2451179.5)]
    [InlineData(1987, 6, 19, 12, 2446966.0)]
    [InlineData(1900, 1, 1, 0, 2415020.5)]
    public void Days_are_counted_as_astronomers_do(int year, int month, int day, double hour, double julian) =>
        Assert.Equal(julian, JulianDay.Of(year, month, day, hour));

    // Derived: days of the calendar follow each other.
    [Fact]
    public void Days_follow_each_other()
    {
        var date = new DateOnly(1900, 1, 1);
        for (var i = 0; i < 73000; i += 13)
        {
            var d = date.AddDays(i);
            Assert.Equal(2415020.5 + i, JulianDay.Of(d.Year, d.Month, d.Day, 0));
        }
    }

    // Published: times computed with the algorithm of Reda and Andreas, in the reference tests of the pvlib library.
    [Theory]
    [InlineData(2015, 1, 2, 39.742476, -105.1786, -7, "07:21:55", "12:04:45", "16:47:43")]
    [InlineData(1996, 7, 5, -35, 0, 0, "07:08:15", "12:04:36", "17:01:04")]
    [InlineData(2004, 12, 4, -35, 0, 0, "04:38:57", "11:50:22", "19:02:02")]
    [InlineData(1994, 1, 2, 35, 0, 0, "07:08:12", null, "16:59:55")]
    [InlineData(2000, 1, 1, 40, -80, -5, "07:41:51", "12:23:23", "17:05:04")]
    // Published by the US Naval Observatory to the minute, as given there.
    [InlineData(2015, 4, 2, 39, -105, -7, "05:43:00", null, "18:24:00")]
    [InlineData(2015, 12, 2, 39, -105, -7, "07:01:00", null, "16:38:00")]
    [InlineData(2015, 1, 2, 39.917, 116.383, 8, "07:36:00", null, "17:00:00")]
    [InlineData(2015, 4, 2, 39.917, 116.383, 8, "05:58:00", null, "18:39:00")]
    [InlineData(2015, 8, 2, 39.917, 116.383, 8, "05:13:00", null, "19:28:00")]
    [InlineData(2015, 12, 2, 39.917, 116.383, 8, "07:17:00", null, "16:50:00")]
    public void It_rises_and_sets_as_published(
        int year, int month, int day, double latitude, double longitude, double zone, string rise, string? transit, string set)
    {
        var times = SunTimes.Of(year, month, day, latitude, longitude, zone);
        var tolerance = rise.EndsWith(":00", StringComparison.Ordinal) ? 60.0 : 15.0;
        Assert.Equal(Seconds(rise), times.Rise!.Value * 3600, tolerance);
        Assert.Equal(Seconds(set), times.Set!.Value * 3600, tolerance);
        if (transit is not null)
        {
            Assert.Equal(Seconds(transit), times.Transit * 3600, 5.0);
        }
    }

    // Published in the same tests under 2 August 2015: sunrise 05:00:27, noon 12:06:58, sunset 19:13:58. The evening printed is that of 1 August, the
    // last to set within the universal day: on 2 August the sun sets a minute earlier, as the almanac's own short formula says.
    [Fact]
    public void A_printed_evening_belongs_to_the_day_before()
    {
        var second = SunTimes.Of(2015, 8, 2, GoldenLatitude, GoldenLongitude, -7);
        Assert.Equal(Seconds("05:00:27"), second.Rise!.Value * 3600, 15.0);
        Assert.Equal(Seconds("12:06:58"), second.Transit * 3600, 5.0);
        Assert.Equal(Seconds("19:13:58"), SunTimes.Of(2015, 8, 1, GoldenLatitude, GoldenLongitude, -7).Set!.Value * 3600, 15.0);
        var evening = Almanac(JulianDay.Of(2015, 8, 2, 7 + second.Set!.Value), GoldenLatitude, GoldenLongitude);
        Assert.Equal(Refraction.Horizon, evening, 0.01);
        Assert.True(Almanac(JulianDay.Of(2015, 8, 2, 7 + 19 + 13.97 / 60), GoldenLatitude, GoldenLongitude) < -1);
    }

    // Derived: two published formulas for one thing: the short one of the Astronomical Almanac claims 0.01° from 1950 to 2050 (from memory, as in
    // Michalsky 1988, The Astronomical Almanac's algorithm for approximate solar position, Solar Energy 40, 227-235).
    [Fact]
    public void The_almanacs_short_formula_agrees() =>
        Gen.Select(Gen.Double[2433282.5, 2469807.5], Gen.Double[-89, 89], Gen.Double[-180, 180]).Sample((julian, latitude, longitude) =>
        {
            var sun = SolarPosition.Meeus(julian, latitude, longitude);
            Assert.Equal(Almanac(julian, latitude, longitude), sun.TrueElevation + 0.00244 * Math.Cos(sun.TrueElevation * Math.PI / 180), 0.02);
        });

    private static double Almanac(double julian, double latitude, double longitude)
    {
        const double radian = Math.PI / 180;
        var n = julian - 2451545;
        var g = (357.528 + 0.9856003 * n) * radian;
        var ecliptic = (280.460 + 0.9856474 * n + 1.915 * Math.Sin(g) + 0.020 * Math.Sin(2 * g)) * radian;
        var obliquity = (23.439 - 4e-7 * n) * radian;
        var ascension = Math.Atan2(Math.Cos(obliquity) * Math.Sin(ecliptic), Math.Cos(ecliptic));
        var declination = Math.Asin(Math.Sin(obliquity) * Math.Sin(ecliptic));
        var hour = (280.46062 + 360.98564737 * n + longitude) * radian - ascension;
        return Math.Asin(Math.Sin(latitude * radian) * Math.Sin(declination)
            + Math.Cos(latitude * radian) * Math.Cos(declination) * Math.Cos(hour)) / radian;
    }

    // Derived: at the time found, the sun stands where it was wanted.
    [Fact]
    public void At_sunrise_the_sun_stands_on_the_horizon() =>
        Gen.Select(Gen.Int[1901, 2097], Gen.Int[1, 12], Gen.Int[1, 28], Gen.Double[-60, 60], Gen.Double[-179, 179]).Sample((year, month, day, latitude, longitude) =>
        {
            var zone = Math.Round(longitude / 15);
            zone = Math.Max(-12, zone);
            var times = SunTimes.Of(year, month, day, latitude, longitude, zone);
            Assert.Equal(PolarDay.RisesAndSets, times.Day);
            foreach (var hour in new[] { times.Rise!.Value, times.Set!.Value })
            {
                var sun = SolarPosition.Meeus(JulianDay.Of(year, month, day, 0) + (hour - zone) / 24, latitude, longitude);
                // The times leave the parallax of 0.0024° out, as the source does.
                Assert.Equal(Refraction.Horizon, sun.TrueElevation + 0.00244, 0.001);
            }
            var noon = SolarPosition.Meeus(JulianDay.Of(year, month, day, 0) + (times.Transit - zone) / 24, latitude, longitude);
            Assert.Equal(0, noon.HourAngle, 0.001);
            Assert.InRange(times.Transit, 10.5, 13.5);
        });

    // Known to everyone; derived from the declination: beyond 66.6° there are days without sunrise.
    [Theory]
    [InlineData(6, 21, 71, PolarDay.AlwaysUp)]
    [InlineData(12, 21, 71, PolarDay.AlwaysDown)]
    [InlineData(12, 21, -71, PolarDay.AlwaysUp)]
    [InlineData(6, 21, -71, PolarDay.AlwaysDown)]
    [InlineData(6, 21, 90, PolarDay.AlwaysUp)]
    [InlineData(6, 21, -90, PolarDay.AlwaysDown)]
    [InlineData(3, 20, 71, PolarDay.RisesAndSets)]
    public void The_poles_have_their_long_days(int month, int day, double latitude, PolarDay expected)
    {
        var times = SunTimes.Of(2015, month, day, latitude, -156, -9);
        Assert.Equal(expected, times.Day);
        Assert.Equal(expected == PolarDay.AlwaysUp ? 24 : 0, expected == PolarDay.RisesAndSets ? 0 : times.Length);
    }

    [Fact]
    [Proof("refraction", Evidence.Published, "Reda and Andreas 2003, appendix: e0 39.872046°, 820 mbar, 11 °C give 0.016332°")]
    public void Refraction_is_as_printed() => Assert.Equal(0.016332, Refraction.Saemundsson(39.872046, 82, 11), 5e-7);

    [Fact]
    [Proof("refraction", Evidence.Derived, "it falls with height and rises with pressure and cold; at the horizon it is half a degree and a bit, straight up nothing")]
    public void Refraction_behaves()
    {
        Assert.InRange(Refraction.Saemundsson(-0.5667, 101.0, 10), 0.5, 0.62);
        Assert.Equal(0, Refraction.Saemundsson(90, 101.0, 10), 1e-4);
        for (var h = -0.9; h < 89; h += 0.5)
        {
            Assert.True(Refraction.Saemundsson(h, 101, 10) > Refraction.Saemundsson(h + 0.5, 101, 10));
        }
    }

    // Derived: the course of the sun by two roads: noon height is 90° less latitude and declination apart, and due south or north.
    [Fact]
    public void At_noon_it_stands_in_the_meridian() =>
        Gen.Select(Gen.Double[2430000, 2470000], Gen.Double[-66, 66], Gen.Double[-180, 180]).Sample((julian, latitude, longitude) =>
        {
            var sun = SolarPosition.Meeus(julian, latitude, longitude);
            var noon = SolarPosition.Meeus(julian - sun.HourAngle / 360, latitude, longitude);
            noon = SolarPosition.Meeus(julian - (sun.HourAngle + noon.HourAngle) / 360, latitude, longitude);
            Assert.Equal(0, noon.HourAngle, 0.001);
            Assert.Equal(90 - Math.Abs(latitude - noon.Declination), noon.TrueElevation, 0.003);
            Assert.InRange(sun.Azimuth, 0, 360);
            Assert.True(sun.Elevation >= sun.TrueElevation);
        });

    [Theory]
    [InlineData(double.NaN, 0, 0)]
    [InlineData(2451545, 91, 0)]
    [InlineData(2451545, 0, 181)]
    [InlineData(1, 0, 0)]
    public void Nonsense_is_refused(double julian, double latitude, double longitude) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SolarPosition.Meeus(julian, latitude, longitude));

    private static double Seconds(string time) => TimeSpan.Parse(time, System.Globalization.CultureInfo.InvariantCulture).TotalSeconds;
}
