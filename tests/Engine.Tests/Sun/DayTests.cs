using Runnel.Engine.Sun;

namespace Runnel.Engine.Tests.Sun;

public sealed class DayTests
{
    private static readonly int[] Fifteenth = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];

    [Fact]
    [Proof("solar-declination", Evidence.Published, "FAO-56 example 8: 3 September (J 246), δ 0.120 rad")]
    [Proof("extraterrestrial-radiation", Evidence.Published, "FAO-56 example 8: 20° S, J 246, d_r 0.985, ω_s 1.527 rad, R_a 32.2 MJ/m²/d")]
    [Proof("day-length", Evidence.Published, "FAO-56 example 9: 20° S, 3 September, 11.7 h")]
    public void The_examples_of_FAO_56_are_met()
    {
        Assert.Equal(0.120, DayLength.Declination(246) * Math.PI / 180, 0.0005);
        Assert.Equal(0.985, DayLength.InverseDistance(246), 0.0005);
        Assert.Equal(1.527, DayLength.SunsetAngle(-20, DayLength.Declination(246)) * Math.PI / 180, 0.0005);
        Assert.Equal(32.2, ExtraterrestrialRadiation.Fao56(-20, 246), 0.05);
        Assert.Equal(11.66559, DayLength.Geometric(-20, 246), 0.001);
    }

    [Theory]
    [InlineData(0, new[] { 36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6 })]
    [InlineData(-10, new[] { 39.5, 39.3, 37.8, 34.6, 31.1, 29.1, 29.8, 32.8, 36.3, 38.5, 39.3, 39.4 })]
    [InlineData(-20, new[] { 41.9, 40.0, 36.6, 31.3, 26.6, 24.1, 25.0, 28.9, 34.2, 38.6, 41.2, 42.1 })]
    [InlineData(-30, new[] { 43.1, 39.6, 34.3, 27.2, 21.4, 18.5, 19.6, 24.3, 31.1, 37.5, 42.0, 43.9 })]
    [InlineData(-34, new[] { 43.4, 39.2, 33.0, 25.3, 19.2, 16.2, 17.4, 22.3, 29.6, 36.7, 42.0, 44.3 })]
    [InlineData(-40, new[] { 43.4, 38.1, 30.9, 22.3, 15.8, 12.8, 13.9, 19.1, 27.1, 35.3, 41.8, 44.6 })]
    [InlineData(-50, new[] { 42.7, 35.6, 26.6, 16.7, 10.0, 7.1, 8.2, 13.4, 22.2, 32.1, 40.6, 44.5 })]
    [InlineData(-60, new[] { 41.5, 32.3, 21.5, 10.8, 4.4, 2.0, 2.9, 7.6, 16.7, 28.1, 38.7, 43.9 })]
    [InlineData(-70, new[] { 41.4, 28.6, 15.8, 4.9, 0.2, 0.0, 0.0, 2.2, 10.7, 23.5, 37.3, 45.3 })]
    [InlineData(2, new[] { 35.4, 37.0, 37.8, 37.1, 35.4, 34.2, 34.6, 36.1, 37.3, 37.0, 35.6, 34.8 })]
    [InlineData(10, new[] { 31.8, 34.5, 36.9, 37.9, 37.6, 37.0, 37.1, 37.5, 37.1, 35.1, 32.4, 31.0 })]
    [InlineData(18, new[] { 27.9, 31.5, 35.2, 38.0, 39.0, 39.1, 38.9, 38.2, 36.1, 32.5, 28.7, 26.8 })]
    [Proof("extraterrestrial-radiation", Evidence.Published, "FAO-56 annex 2, table 2.6, the 15th of each month")]
    public void The_table_of_radiation_above_the_air_is_met(double latitude, double[] printed)
    {
        for (var m = 0; m < 12; m++)
        {
            Assert.Equal(printed[m], ExtraterrestrialRadiation.Fao56(latitude, Fifteenth[m]), 0.2);
        }
    }

    [Theory]
    [InlineData(0, new[] { 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0, 12.0 })]
    [InlineData(-10, new[] { 12.5, 12.3, 12.1, 11.8, 11.5, 11.4, 11.5, 11.7, 11.9, 12.2, 12.5, 12.6 })]
    [InlineData(-20, new[] { 13.1, 12.7, 12.1, 11.5, 11.1, 10.8, 10.9, 11.3, 11.9, 12.5, 13.0, 13.2 })]
    [InlineData(-34, new[] { 14.0, 13.2, 12.2, 11.1, 10.2, 9.7, 9.9, 10.7, 11.8, 12.9, 13.8, 14.3 })]
    [InlineData(-42, new[] { 14.7, 13.6, 12.3, 10.8, 9.6, 9.0, 9.2, 10.3, 11.7, 13.2, 14.4, 15.0 })]
    [InlineData(-52, new[] { 16.0, 14.3, 12.5, 10.4, 8.6, 7.5, 8.0, 9.6, 11.6, 13.7, 15.5, 16.5 })]
    [Proof("day-length", Evidence.Published, "FAO-56 annex 2, table 2.7, the 15th of each month")]
    public void The_table_of_day_lengths_is_met(double latitude, double[] printed)
    {
        for (var m = 0; m < 12; m++)
        {
            Assert.Equal(printed[m], DayLength.Geometric(latitude, Fifteenth[m]), 0.11);
        }
    }

    [Fact]
    [Proof("extraterrestrial-radiation", Evidence.Derived, "the integral over the day of the sine of the sun's elevation, added up by the minute")]
    public void The_day_is_the_sum_of_its_minutes()
    {
        foreach (var latitude in new[] { -78.0, -35, 0, 23.4, 42, 66.5, 90 })
        {
            foreach (var day in Fifteenth)
            {
                var declination = DayLength.Declination(day) * Math.PI / 180;
                var phi = latitude * Math.PI / 180;
                var sum = 0.0;
                for (var minute = 0; minute < 1440; minute++)
                {
                    var hour = (minute + 0.5) / 1440 * 2 * Math.PI - Math.PI;
                    sum += Math.Max(0, Math.Sin(phi) * Math.Sin(declination) + Math.Cos(phi) * Math.Cos(declination) * Math.Cos(hour));
                }
                var expected = sum * 0.0820 * (1 + 0.033 * Math.Cos(2 * Math.PI * day / 365));
                Assert.Equal(expected, ExtraterrestrialRadiation.Fao56(latitude, day), 0.002);
                var hours = 0.0;
                for (var h = 0; h < 24; h++)
                {
                    hours += ExtraterrestrialRadiation.MeanSine(latitude, DayLength.Declination(day), -180 + 15 * h, -165 + 15 * h);
                }
                Assert.Equal(sum / 60, hours, 0.001);
            }
        }
    }

    // Published: hourly extraterrestrial radiation at 55° N, 1 January, in the example of the R package sirad; its sum is 0.4 % below FAO-56's.
    [Fact]
    public void The_hours_above_the_air_are_as_published()
    {
        double[] printed = [0.2699, 0.6965, 0.9647, 1.0562, 0.9647, 0.6965, 0.2699];
        for (var i = 0; i < printed.Length; i++)
        {
            var from = -52.5 + 15 * i;
            var sine = ExtraterrestrialRadiation.MeanSine(55, DayLength.Declination(1), from, from + 15);
            Assert.Equal(printed[i], sine * 0.0820 * 60 * DayLength.InverseDistance(1), 0.01);
        }
    }

    [Theory]
    [InlineData(2015, 1, 2, 39.742476, "07:21:55", "16:47:43")]
    [InlineData(1996, 7, 5, -35, "07:08:15", "17:01:04")]
    [InlineData(2004, 12, 4, -35, "04:38:57", "19:02:02")]
    [InlineData(2000, 1, 1, 40, "07:41:51", "17:05:04")]
    [Proof("day-length-seen", Evidence.Published, "sunrise and sunset computed with Reda and Andreas 2003, as given in the pvlib library's tests")]
    public void Day_lengths_as_seen_are_met(int year, int month, int day, double latitude, string rise, string set)
    {
        var declination = SolarPosition.Meeus(JulianDay.Of(year, month, day, latitude > 39 ? 19 : 12), latitude, 0).Declination;
        var published = (TimeSpan.Parse(set, System.Globalization.CultureInfo.InvariantCulture) - TimeSpan.Parse(rise, System.Globalization.CultureInfo.InvariantCulture)).TotalHours;
        Assert.Equal(published, DayLength.WithRefraction(latitude, declination), 0.01);
    }

    [Fact]
    [Proof("day-length-seen", Evidence.Derived, "longer than the day without refraction, twice 0.8333° over 15° an hour at the equator; 24 h and 0 h at the poles")]
    public void Refraction_makes_the_day_longer()
    {
        Assert.Equal(12 + 2 * 0.83337 / 15, DayLength.WithRefraction(0, 0), 1e-4);
        Assert.Equal(24, DayLength.WithRefraction(90, 23.44));
        Assert.Equal(0, DayLength.WithRefraction(-90, 23.44));
        for (var latitude = -60; latitude <= 60; latitude += 5)
        {
            Assert.InRange(DayLength.WithRefraction(latitude, 10) - DayLength.Geometric(latitude, 105), 0.05, 0.6);
        }
    }

    [Fact]
    [Proof("solar-declination", Evidence.Derived, "within the 1.4° known of it of the sun itself, and of Spencer's 1971 series")]
    public void The_simple_declination_keeps_near_the_sun()
    {
        for (var day = 1; day <= 365; day++)
        {
            var sun = SolarPosition.Meeus(JulianDay.Of(2023, 1, 1, 12) + day - 1, 0, 0).Declination;
            Assert.Equal(sun, DayLength.Declination(day), 1.6);
            var b = 2 * Math.PI * (day - 1) / 365;
            var spencer = 0.006918 - 0.399912 * Math.Cos(b) + 0.070257 * Math.Sin(b) - 0.006758 * Math.Cos(2 * b) + 0.000907 * Math.Sin(2 * b)
                - 0.002697 * Math.Cos(3 * b) + 0.00148 * Math.Sin(3 * b);
            Assert.Equal(spencer * 180 / Math.PI, sun, 0.5);
        }
    }

    [Theory]
    [InlineData(25.1, 0, 18.8, 0.05)]
    [InlineData(41.09, 100, 30.90, 0.005)]
    [Proof("clear-sky-day", Evidence.Published, "FAO-56 examples 10/11 and 18: R_a 25.1 gives 18.8; 41.09 at 100 m gives 30.90")]
    public void Cloudless_days_are_as_printed(double above, double elevation, double expected, double tolerance) =>
        Assert.Equal(expected, ClearSky.Fao56(above, elevation), tolerance);

    [Theory]
    [InlineData(0, 1035.092)]
    [InlineData(40, 778.767)]
    [InlineData(60, 487.894)]
    [InlineData(80, 135.742)]
    [InlineData(85, 48.630)]
    [InlineData(90.1, 0)]
    [InlineData(150, 0)]
    [Proof("clear-sky", Evidence.Published, "Haurwitz's equation as evaluated in the pvlib library's reference tests")]
    public void Cloudless_moments_are_as_published(double zenith, double expected) => Assert.Equal(expected, ClearSky.Haurwitz(zenith), 0.001);
}
